import type { BikeShape } from '../bikeShape.ts'
import { bikeShape } from '../bikeShape.ts'
import { projection } from '../projection.ts'
import type { Projection } from '../projection.ts'
import { lifted, raised } from '../side/lifted.ts'
import { chassisPoint, POINTS, SideBike } from '../side/SideBike.tsx'
import type { Spot } from '../state.ts'
import { bikeAt } from './bike.tsx'
import { Call, Floor, Words } from './parts.tsx'
import { Beam, Chocks, PaddockStand, Strap, SupportStand } from './supports.tsx'

export const FLOOR = 262
export const SCALE = 150
export const BEAM = 40
const VIEW = projection(SCALE, [60, FLOOR])
const RISE = 0.07
/** How far a paddock stand lifts the rear tyre off the floor [m]. Common practice, no source. */
const ON_ITS_STAND = 0.03

/** A bike that hangs by its frame at one end: where it stands, and its places on the drawing. */
export interface Hung {
  shape: BikeShape
  view: Projection
  at(name: keyof typeof POINTS): Spot
}

function hung(shape: BikeShape): Hung {
  return { shape, view: VIEW, at: (name) => VIEW.spot(chassisPoint(shape, POINTS[name])) }
}

/** Front wheel hanging at full extension and clear of the floor; the rear is on its paddock stand, which carries it under the axle. */
export const FRONT_HUNG = hung(
  raised(lifted(bikeShape(bikeAt(0, 0.02)), 'rearAxle', RISE - ON_ITS_STAND), ON_ITS_STAND),
)

/** Thickness of the board under a front tyre that only rests [m]. */
export const BOARD = 0.03

/** As FRONT_HUNG, with the front tyre resting on a board: the fork at full extension, the frame on its stands. */
export const FRONT_RESTING = hung(
  raised(lifted(bikeShape(bikeAt(0, 0.02)), 'rearAxle', BOARD - ON_ITS_STAND), ON_ITS_STAND),
)

/** Rear wheel hanging at full extension and clear of the floor; the front wheel stands with its own load. */
export const REAR_HUNG = hung(lifted(bikeShape(bikeAt(0.02, 0)), 'frontAxle', RISE))

/** The bike on its two stands, a strap from each side of the frame to the beam; hung at the front its rear is on a paddock stand, hung at the rear its front wheel is between wedges. The far strap passes behind the bike. */
export function HungBike({ of: { shape, view, at }, end }: { of: Hung; end: 'front' | 'rear' }) {
  const held = at(end === 'front' ? 'headGusset' : 'seatJunction')
  const [rear, front] = [view.spot(shape.rearAxle), view.spot(shape.frontAxle)]
  const [far, near] = end === 'front' ? [-20, 34] : [24, -30]
  const middle = held[0] + (far + near) / 2
  return (
    <>
      <Beam from={middle - 52} to={middle + 52} y={BEAM} />
      <Strap from={held} to={[held[0] + far, BEAM]} />
      <SideBike shape={shape} projection={view} />
      <Strap from={held} to={[held[0] + near, BEAM]} />
      <SupportStand at={at(end === 'front' ? 'railFront' : 'railRear')} floor={FLOOR} />
      {end === 'front' ? (
        <PaddockStand axle={rear} floor={FLOOR} />
      ) : (
        <Chocks x={front[0]} radius={shape.frontRadius * SCALE} floor={FLOOR} />
      )}
      <Floor from={0} to={360} y={FLOOR} />
    </>
  )
}

/** What holds a bike whose front is free, named below the floor: the rear's stand by its axle, the frame's by the pad under a tube. */
export function StandsNamed({ rear, pad }: { rear: Spot; pad: Spot }) {
  return (
    <>
      <Words
        at={[rear[0], FLOOR + 22]}
        anchor="middle"
        lines={['rear on its stand,', 'wheels chocked']}
      />
      <Call
        at={[pad[0] - 14, FLOOR + 22]}
        anchor="middle"
        from={[pad[0], FLOOR + 10]}
        to={[pad[0], pad[1] + 4]}
        lines={['a stand under', 'each frame tube']}
      />
    </>
  )
}

import type { BikePicture } from '../../../src/calculators/bike-picture.ts'
import type { Say } from '../../../src/calculators/say.ts'
import { Dimension } from './Dimension.tsx'
import { LoadArrow } from './LoadArrow.tsx'
import type { Projection } from './projection.ts'
import { LETTERS, LOAD_SCALE } from './side-view-scale.ts'

/** Below the ground: loads as arrows under the contacts, wheelbase between them, trail ahead of the front one. */
export function SideDimensions({ now, before, projection, say }: { now: BikePicture; before: BikePicture | null; projection: Projection; say: Say }) {
  const { spot, ground } = projection
  const { wheelbase, trail } = now.pose
  const [rear, front, foot] = [spot({ x: 0, z: 0 })[0], spot({ x: wheelbase, z: 0 })[0], spot({ x: wheelbase + trail, z: 0 })[0]]
  const deepest = Math.max(0, ...[now.loads, before?.loads].flatMap((loads) => (loads ? [loads.front, loads.rear] : []))) * LOAD_SCALE
  const below = ground + 3 + (deepest > 0 ? deepest : 0) + LETTERS
  const arrows = now.loads
    ? ([
        ['rear', rear],
        ['front', front],
      ] as const)
    : []
  return (
    <g>
      {arrows.map(([end, x]) => (
        <g key={end}>
          {before?.loads && <LoadArrow tip={[x - 5, ground + 2]} load={before.loads[end]} scale={LOAD_SCALE} state="before" />}
          <LoadArrow tip={[x, ground + 2]} load={now.loads![end]} scale={LOAD_SCALE} text={say.quantity(now.loads![end], 'kg load', 1)} />
        </g>
      ))}
      <Dimension from={[front, ground + 3]} to={[foot, ground + 3]} offset={11} text={`trail ${say.quantity(trail, 'mm', 1)}`} place="before" />
      <Dimension from={[rear, below]} to={[front, below]} offset={LETTERS - 4} text={`wheelbase ${say.quantity(wheelbase, 'mm', 1)}`} />
    </g>
  )
}

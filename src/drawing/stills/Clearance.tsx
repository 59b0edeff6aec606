import type { StillProps } from '../props.ts'
import { Dimension } from '../Dimension.tsx'
import { direction, round } from '../state.ts'
import type { Spot } from '../state.ts'
import { Bike, bikeAt, Window } from './bike.tsx'
import { Call, Frame } from './parts.tsx'

const SCALE = 250
const TRAVEL = 0.12
const HANGING = bikeAt(0, 0)

export default function Clearance({ prefix }: StillProps) {
  return (
    <Frame
      height={292}
      label="The front wheel hanging, and dashed where it stands at full travel: tyre and mudguard have moved up along the fork by the full travel, towards the lower yoke and the radiator. The gap that is left must not vanish."
    >
      <Window id={`${prefix}-cut`} x={0} y={0} width={360} height={292}>
        <Bike picture={HANGING} scale={SCALE} origin={[-196, 300]}>
          {({ spot }, shape) => {
            const [axle, yoke] = [spot(shape.frontAxle), spot(shape.lowerYoke)]
            const [ux, uy] = direction(axle, yoke)
            const up = TRAVEL * SCALE
            const raised: Spot = [axle[0] + ux * up, axle[1] + uy * up]
            const r = shape.frontRadius * SCALE
            const tyreTop: Spot = [axle[0] + ux * r, axle[1] + uy * r]
            const lower: Spot = [yoke[0] - ux * 4, yoke[1] - uy * 4]
            return (
              <>
                <circle
                  class="before clear"
                  cx={round(raised[0])}
                  cy={round(raised[1])}
                  r={round(r)}
                />
                <Dimension from={tyreTop} to={lower} offset={66} text="" state="now" />
                <Dimension
                  from={tyreTop}
                  to={[tyreTop[0] + ux * up, tyreTop[1] + uy * up]}
                  offset={42}
                  text=""
                  state="before"
                />
                <Call
                  at={[354, 30]}
                  anchor="end"
                  from={[274, 26]}
                  to={[yoke[0] + 6, yoke[1]]}
                  lines={['lower yoke']}
                />
                <Call
                  at={[354, 66]}
                  anchor="end"
                  from={[312, 72]}
                  to={[lower[0] - uy * 66 - ux * 12, lower[1] + ux * 66 - uy * 12]}
                  lines={['gap, hanging']}
                />
                <Call
                  at={[354, 104]}
                  anchor="end"
                  from={[312, 110]}
                  to={[tyreTop[0] - uy * 42 + ux * 20, tyreTop[1] + ux * 42 + uy * 20]}
                  lines={['full travel']}
                />
                <Call
                  at={[354, 206]}
                  anchor="end"
                  from={[314, 188]}
                  to={[raised[0] + r * 0.96, raised[1] + r * 0.28]}
                  lines={['tyre at', 'full travel']}
                />
              </>
            )
          }}
        </Bike>
      </Window>
    </Frame>
  )
}

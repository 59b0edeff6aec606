import type { StillProps } from '../props.ts'
import { Dimension } from '../Dimension.tsx'
import { tailLine } from '../side/SideBike.tsx'
import { Bike, Window } from './bike.tsx'
import { Call, Floor, Frame } from './parts.tsx'

const FLOOR = 268

export default function RearMarks({ prefix }: StillProps) {
  return (
    <Frame
      height={284}
      label="The rear of the bike: a dot at the axle’s centre, and a line on tape on the tail straight above it. The length between them is the reading."
    >
      <Window id={`${prefix}-cut`} x={0} y={0} width={360} height={FLOOR + 12}>
        <Bike scale={252} origin={[104, FLOOR]}>
          {({ spot }, shape) => {
            const axle = spot(shape.rearAxle)
            const tail = spot(tailLine(shape))
            return (
              <>
                <rect class="tape" x={tail[0] - 16} y={tail[1] - 7} width="32" height="14" />
                <line class="mark" x1={tail[0] - 16} x2={tail[0] + 16} y1={tail[1]} y2={tail[1]} />
                <circle class="now paper" cx={axle[0]} cy={axle[1]} r="5" />
                <circle class="now solid" cx={axle[0]} cy={axle[1]} r="2" />
                <Dimension from={axle} to={tail} text="" state="now" />
                <Call
                  at={[134, 16]}
                  from={[130, 14]}
                  to={[tail[0] + 12, tail[1] - 4]}
                  lines={['line on tape, on a part', 'bolted to the frame']}
                />
                <Call
                  at={[204, 252]}
                  from={[200, 247]}
                  to={[axle[0] + 5, axle[1]]}
                  lines={['centre of the axle']}
                />
                <text class="now end halo" x={axle[0] - 8} y={(axle[1] + tail[1]) / 2 - 16}>
                  rear length
                </text>
              </>
            )
          }}
        </Bike>
        <Floor from={0} to={360} y={FLOOR} />
      </Window>
    </Frame>
  )
}

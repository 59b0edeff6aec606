import type { StillProps } from '../props.ts'
import { Dimension } from '../Dimension.tsx'
import { shockEyes, tailLine } from '../side/SideBike.tsx'
import { Bike, bikeAt, Window } from './bike.tsx'
import { Call, Frame } from './parts.tsx'

const HANGING = bikeAt(0, 0)

export default function MotionRatio({ prefix }: StillProps) {
  return (
    <Frame
      height={300}
      label="The rear end: the shock’s length between the centres of its two bolts, and the wheel’s length from the axle to a line on the tail, read at the same moment."
    >
      <Window id={`${prefix}-cut`} x={0} y={0} width={360} height={300}>
        <Bike picture={HANGING} scale={290} origin={[66, 300]}>
          {({ spot }, shape) => {
            const eyes = shockEyes(shape)
            const [foot, head] = [spot(eyes.foot), spot(eyes.head)]
            const axle = spot(shape.rearAxle)
            const tail = spot(tailLine(shape))
            return (
              <>
                <circle class="now paper" cx={foot[0]} cy={foot[1]} r="4" />
                <circle class="now paper" cx={head[0]} cy={head[1]} r="4" />
                <Dimension from={foot} to={head} offset={-34} text="" state="now" />
                <line class="mark" x1={tail[0] - 14} x2={tail[0] + 14} y1={tail[1]} y2={tail[1]} />
                <Dimension from={axle} to={tail} text="" state="now" />
                <text class="now start halo" x={tail[0] + 8} y={(axle[1] + tail[1]) / 2 + 6}>
                  wheel
                </text>
                <Call
                  at={[112, 16]}
                  from={[150, 40]}
                  to={[(head[0] + foot[0]) / 2 - 33, (head[1] + foot[1]) / 2 - 20]}
                  lines={['shock length,', 'bolt to bolt']}
                />
              </>
            )
          }}
        </Bike>
      </Window>
    </Frame>
  )
}

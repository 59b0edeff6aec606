import ForkSectionKit from '../ForkSection.tsx'
import { Dimension } from '../Dimension.tsx'
import { LEG } from './legs.ts'
import { Call, Frame } from './parts.tsx'

const X = 120
const TOP = 46
const SCALE = 0.92e3
const ACROSS = 1.5e3
const HEIGHT = 0.13
const CUT = 0.29

export default function OilHeight() {
  const y = (depth: number): number => TOP + depth * SCALE
  const leg = {
    ...LEG,
    used: LEG.travel,
    spring: null,
    spacerLength: 0,
    washers: [],
    oilDepth: HEIGHT,
    damper: 'none' as const,
  }
  const right = 206
  return (
    <Frame
      height={y(CUT) + 40}
      label="A leg upright and collapsed, spring and spacer out: the oil height is read from the tube’s top rim down to the oil. A syringe tube with a stop on the rim draws off what stands above."
    >
      <g class="no-cap">
        <ForkSectionKit
          leg={leg}
          state="now"
          x={X}
          top={TOP}
          scale={SCALE}
          across={ACROSS}
          cut={CUT}
        />
      </g>
      <path class="syringe" d={`M${X + 12} 8V${y(HEIGHT)}`} />
      <rect class="now solid" x={X - 6} y={TOP - 8} width="48" height="8" />
      <Dimension from={[X - 46, y(HEIGHT)]} to={[X - 46, y(0)]} text="" state="now" />
      <line class="guide" x1={X - 54} x2={X - 28} y1={y(0)} y2={y(0)} />
      <line class="guide" x1={X - 54} x2={X - 28} y1={y(HEIGHT)} y2={y(HEIGHT)} />
      <text class="now end" x={X - 52} y={y(HEIGHT / 2) - 4}>
        oil
      </text>
      <text class="now end" x={X - 52} y={y(HEIGHT / 2) + 12}>
        height
      </text>
      <Call at={[right, 24]} from={[right - 4, 20]} to={[X + 13, 24]} lines={['syringe tube']} />
      <Call
        at={[right, TOP + 22]}
        from={[right - 4, TOP + 17]}
        to={[X + 40, TOP - 3]}
        lines={['stop, resting on', 'the rim']}
      />
      <Call
        at={[right, y(0.09)]}
        from={[right - 4, y(0.09) - 4]}
        to={[X + 13, y(HEIGHT) - 2]}
        lines={['open end, at the', 'manual’s height']}
      />
      <Call
        at={[right, y(0.19)]}
        from={[right - 4, y(0.19) - 4]}
        to={[X + 20, y(0.185)]}
        lines={['oil; spring out,', 'leg pushed together']}
      />
    </Frame>
  )
}

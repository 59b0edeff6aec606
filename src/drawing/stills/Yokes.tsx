import { Dimension } from '../Dimension.tsx'
import { Call, Frame } from './parts.tsx'

// Front view, 0.9 units a millimetre: tubes of 43 mm, 200 mm apart, yokes 185 mm apart.
const LEFT = 96
const RIGHT = 276
const TUBE = 39
const TOP = 62
const LOWER = TOP + 166
const centres = [LEFT, RIGHT]

export default function Yokes() {
  return (
    <Frame
      height={300}
      label="Both fork tubes from the front, through the upper and the lower yoke, with a pinch bolt at each clamp. The height of each tube above the upper yoke is measured to the tube’s edge, without the cap."
    >
      {centres.map((x) => (
        <g key={x}>
          <rect class="now fill" x={x - TUBE / 2} y={TOP - 16} width={TUBE} height="238" />
          <rect class="metal" x={x - TUBE / 2 - 2} y={TOP - 21} width={TUBE + 4} height="5" />
          <path class="metal" d={`M${x - 11} ${TOP - 21}v-9h22v9z`} />
          <path class="break" d={`M${x - 26} 284q13 -6 26 0t26 0`} />
        </g>
      ))}
      <rect class="metal" x={LEFT - 31} y={TOP} width={RIGHT - LEFT + 62} height="24" rx="4" />
      <rect class="metal" x={LEFT - 31} y={LOWER} width={RIGHT - LEFT + 62} height="30" rx="4" />
      <rect
        class="metal"
        x={(LEFT + RIGHT) / 2 - 16}
        y={TOP + 24}
        width="32"
        height={LOWER - TOP - 24}
      />
      <line
        class="axis ink"
        x1={(LEFT + RIGHT) / 2}
        x2={(LEFT + RIGHT) / 2}
        y1={TOP - 26}
        y2={LOWER + 44}
      />
      {centres.map((x) => (
        <g key={x}>
          {[TOP + 12, LOWER + 9, LOWER + 21].map((y) => (
            <g key={y}>
              <circle class="now paper" cx={x + (x === LEFT ? -24 : 24)} cy={y} r="4.5" />
              <path class="now" d={`M${x + (x === LEFT ? -26.5 : 21.5)} ${y}h5`} />
            </g>
          ))}
        </g>
      ))}
      <Dimension from={[LEFT - 40, TOP]} to={[LEFT - 40, TOP - 16]} text="" state="now" />
      <Dimension from={[RIGHT + 40, TOP]} to={[RIGHT + 40, TOP - 16]} text="" state="now" />
      <text class="now start" x="6" y={TOP - 30}>
        left
      </text>
      <text class="now end" x="354" y={TOP - 30}>
        right
      </text>
      <Call
        at={[186, 16]}
        from={[182, 12]}
        to={[LEFT + 8, TOP - 27]}
        lines={['cap: not measured']}
      />
      <Call
        at={[134, TOP + 56]}
        from={[130, TOP + 52]}
        to={[LEFT - 21, TOP + 15]}
        lines={['upper pinch bolt']}
      />
      <Call
        at={[134, LOWER - 32]}
        from={[130, LOWER - 37]}
        to={[LEFT - 21, LOWER + 7]}
        lines={['lower pinch bolts']}
      />
      <text class="middle quiet halo" x={(LEFT + RIGHT) / 2} y={TOP} dy="1.25em">
        upper yoke
      </text>
      <text class="middle quiet halo" x={(LEFT + RIGHT) / 2} y={LOWER} dy="1.5em">
        lower yoke
      </text>
    </Frame>
  )
}

import { Arrowhead } from '../Arrowhead.tsx'
import { Frame, Ring, Words } from './parts.tsx'

// Both feet of a fork from the front, about 0.8 units a millimetre: legs 200 mm apart, the axle through both.
const LEFT = 100
const RIGHT = 260
const MIDDLE = (LEFT + RIGHT) / 2
const AXLE = 196
const TOP = 24

/** The lower end of a leg: tube, dust seal, slider, foot. */
function Leg({ x }: { x: number }) {
  return (
    <g>
      <rect class="now fill" x={x - 17} y={TOP - 24} width="34" height="54" />
      <rect class="support-pad" x={x - 24} y={TOP + 26} width="48" height="8" rx="2" />
      <path
        class="metal"
        d={`M${x - 22} ${TOP + 34}h44v${AXLE - TOP - 74}q0 8 6 14v44q0 12 -12 12h-32q-12 0 -12 -12v-44q6 -6 6 -14z`}
      />
    </g>
  )
}

/** Tyre, rim, hub, discs and spacers between the legs. */
function WheelFromFront() {
  return (
    <g>
      <rect
        class="now fill"
        x={MIDDLE - 36}
        y={TOP + 12}
        width="72"
        height={AXLE - TOP + 44}
        rx="30"
      />
      <path
        class="detail"
        d={`M${MIDDLE - 12} ${TOP + 16}v${AXLE - TOP + 36}M${MIDDLE + 12} ${TOP + 16}v${AXLE - TOP + 36}`}
      />
      {[-47, 43].map((aside) => (
        <rect key={aside} class="metal" x={MIDDLE + aside} y={AXLE - 62} width="4" height="124" />
      ))}
      <rect class="metal" x={MIDDLE - 43} y={AXLE - 20} width="86" height="40" rx="4" />
    </g>
  )
}

function Arrow({ from, to }: { from: readonly [number, number]; to: readonly [number, number] }) {
  const [dx, dy] = [Math.sign(to[0] - from[0]), Math.sign(to[1] - from[1])]
  return (
    <g class="move now">
      <line class="shaft" x1={from[0]} y1={from[1]} x2={to[0] - dx * 6} y2={to[1] - dy * 6} />
      <Arrowhead at={to} along={[dx, dy]} size={9} />
    </g>
  )
}

function BothWays({
  at: [x, y],
  half,
  level = false,
}: {
  at: readonly [number, number]
  half: number
  level?: boolean
}) {
  const [dx, dy] = level ? [half, 0] : [0, half]
  return (
    <>
      <Arrow from={[x, y]} to={[x - dx, y - dy]} />
      <Arrow from={[x, y]} to={[x + dx, y + dy]} />
    </>
  )
}

const STEPS = [
  'axle tight in the left foot',
  'pump the fork: the right foot slides',
  'only then the pinch bolts',
]

export default function AxleClampAndBounce() {
  const bolts = [AXLE - 21, AXLE + 21]
  return (
    <Frame
      height={342}
      label="Both feet of the fork from the front, the axle through them and the hub. 1: the axle is tight in the left foot, and the pinch bolts of the right foot are loose. 2: the fork is pumped, and the right foot slides along the axle to where it does not bind. 3: only then are the pinch bolts tightened."
    >
      <rect
        class="outside-screw"
        x={LEFT - 36}
        y={AXLE - 8}
        width={RIGHT - LEFT + 76}
        height="16"
      />
      <WheelFromFront />
      <Leg x={LEFT} />
      <Leg x={RIGHT} />
      <path
        class="hidden-line"
        d={`M${LEFT - 28} ${AXLE - 8}H${RIGHT + 28}M${LEFT - 28} ${AXLE + 8}H${RIGHT + 28}`}
      />
      <path
        class="support-metal"
        d={`M${LEFT - 52} ${AXLE - 15}h18v30h-18zM${LEFT - 52} ${AXLE - 5}h18M${LEFT - 52} ${AXLE + 5}h18`}
      />
      {bolts.map((y) => (
        <g key={y}>
          <circle class="outside-screw" cx={RIGHT} cy={y} r="7" />
          <polygon
            class="outside-hole"
            points={[0, 1, 2, 3, 4, 5]
              .map(
                (c) =>
                  `${RIGHT + 3.6 * Math.cos((c * Math.PI) / 3)},${y + 3.6 * Math.sin((c * Math.PI) / 3)}`,
              )
              .join(' ')}
          />
        </g>
      ))}
      <BothWays at={[LEFT - 50, TOP + 74]} half={34} />
      <BothWays at={[RIGHT + 50, TOP + 74]} half={34} />
      <BothWays at={[RIGHT, AXLE + 58]} half={26} level />
      <Ring at={[LEFT - 66, AXLE]} number={1} />
      <Ring at={[RIGHT + 42, AXLE + 58]} number={2} />
      <Ring at={[RIGHT + 44, AXLE - 21]} number={3} />
      {STEPS.map((step, index) => (
        <g key={step}>
          <Ring at={[18, 282 + 23 * index]} number={index + 1} />
          <Words at={[36, 287 + 23 * index]} lines={[step]} />
        </g>
      ))}
    </Frame>
  )
}

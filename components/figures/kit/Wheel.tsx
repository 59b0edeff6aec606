import { round } from './state.ts'
import type { Spot } from './state.ts'

interface WheelProps {
  axle: Spot
  /** tyre, outside [viewBox units] */
  radius: number
  state: 'now' | 'before'
  /** brake disc [viewBox units] */
  disc?: number
  /** viewBox units per metre */
  scale: number
}

// A road tyre's section is about a third of its radius; the rim's flange stands 12 mm inside it.
const SECTION = 0.28
const SPOKES = 5

function Spokes({ axle: [x, y], from, to }: { axle: Spot; from: number; to: number }) {
  return (
    <>
      {Array.from({ length: SPOKES }, (_, index) => {
        const angle = (index / SPOKES) * 2 * Math.PI - Math.PI / 2
        const spread = 0.16
        const at = (r: number, turn: number): string => `${round(x + r * Math.cos(angle + turn))} ${round(y + r * Math.sin(angle + turn))}`
        return <path key={index} class="detail" d={`M${at(from, 0.4)} L${at(to, spread)} M${at(from, -0.4)} L${at(to, -spread)}`} />
      })}
    </>
  )
}

/** A wheel: tyre, rim, spokes, brake disc, hub. Before: the outline alone. */
export function Wheel({ axle, radius, state, disc, scale }: WheelProps) {
  const [cx, cy] = [round(axle[0]), round(axle[1])]
  if (state === 'before') return <circle class="before" cx={cx} cy={cy} r={round(radius)} />
  const section = radius * SECTION
  const rim = radius - section
  return (
    <g>
      <circle class="tyre" cx={cx} cy={cy} r={round(radius - section / 2)} stroke-width={round(section)} />
      <circle class="now" cx={cx} cy={cy} r={round(radius)} />
      <circle class="now thin" cx={cx} cy={cy} r={round(rim)} />
      <circle class="detail" cx={cx} cy={cy} r={round(rim - 0.016 * scale)} />
      <Spokes axle={axle} from={0.045 * scale} to={rim - 0.018 * scale} />
      {disc !== undefined && (
        <>
          <circle class="detail" cx={cx} cy={cy} r={round(disc)} />
          <circle class="detail" cx={cx} cy={cy} r={round(disc * 0.76)} />
        </>
      )}
      <circle class="metal" cx={cx} cy={cy} r={round(0.042 * scale)} />
      <circle class="now solid" cx={cx} cy={cy} r={round(0.011 * scale)} />
    </g>
  )
}

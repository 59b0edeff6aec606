import { round } from '../state.ts'
import SpringCoils from '../SpringCoils.tsx'
import { Call, Frame, Words } from './parts.tsx'

// In millimetres times 2: a bore of 38, a spring of 36 outside, a washer of 2, a spacer of 31.
const MM = 2
const TOP = 78
const SEAT = 202
const FOOT = 308
const BORE = 38 * MM
const WIDE = 43 * MM

function Tube({ x }: { x: number }) {
  const wall = (WIDE - BORE) / 2
  return (
    <g class="fork-section now">
      {[x - WIDE / 2, x + BORE / 2].map((left) => (
        <rect key={left} class="part" x={left} y={TOP - 20} width={wall} height={FOOT - TOP + 20} />
      ))}
      <SpringCoils
        x={x}
        radius={(36 - 4.5) * (MM / 2)}
        from={SEAT}
        to={FOOT}
        wire={4.5 * MM}
        coils={6}
      />
      <line class="centre" x1={x} x2={x} y1={TOP - 34} y2={FOOT + 10} />
    </g>
  )
}

/** Washer and spacer: flat, or with one edge caught on the wall. The tilt is what the bore allows a washer of 36 mm wedged across 38 mm. */
function Stack({ x, tilt }: { x: number; tilt: number }) {
  const washer = 36 * MM
  const lift = tilt === 0 ? 0 : 22
  return (
    <g class="fork-section now">
      <g transform={`rotate(${tilt} ${x} ${SEAT - 2 - lift})`}>
        <rect
          class="part washer"
          x={x - washer / 2 - (tilt === 0 ? 0 : 5)}
          y={SEAT - 4 - lift}
          width={washer + (tilt === 0 ? 0 : 10)}
          height="4"
        />
      </g>
      <g transform={`rotate(${round(tilt / 7)} ${x} ${SEAT - lift})`}>
        <rect
          class="part spacer"
          x={x - 31}
          y={TOP - 26 - lift * 1.1}
          width="62"
          height={SEAT - TOP + 22 - (tilt === 0 ? 0 : 22) + lift * 0.2}
        />
      </g>
    </g>
  )
}

export default function Washer() {
  return (
    <Frame
      height={352}
      label="Left: the washer lies flat on the spring, and the spacer stands straight on it. Right: the washer is cocked, one edge caught on the tube’s wall; the spacer leans and stands higher. A cocked washer looks like more preload, until it slips."
    >
      <Tube x={84} />
      <Stack x={84} tilt={0} />
      <Tube x={252} />
      <Stack x={252} tilt={-28} />
      <Words at={[84, FOOT + 28]} anchor="middle" lines={['flat: right']} tone="now" />
      <Words at={[252, FOOT + 28]} anchor="middle" lines={['cocked: take it out']} tone="before" />
      <Call
        at={[168, SEAT + 34]}
        anchor="middle"
        from={[168, SEAT + 22]}
        to={[116, SEAT - 3]}
        lines={['washer']}
      />
      <line class="leader" x1="168" y1={SEAT + 22} x2="222" y2={SEAT - 6} />
      <circle class="leader-end" cx="222" cy={SEAT - 6} r="2" />
      <Words at={[168, TOP + 40]} anchor="middle" lines={['spacer']} tone="quiet" />
    </Frame>
  )
}

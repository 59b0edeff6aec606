import { Call, Frame, Move } from './parts.tsx'

// From above, front of the bike to the left of the page's top. The bar turns about the steering stem.
const STEM = { x: 180, y: 92 }
const BAR =
  'M-10 -4 h20 l16 10 l104 26 h34 v10 h-36 l-104 -26 l-24 -10 h0 l-24 10 l-104 26 h-36 v-10 h34 l104 -26 z'

export default function LockToLock() {
  return (
    <Frame
      height={258}
      label="The handlebar from above, straight and dashed at one lock. At the lock the grip comes near the tank: a thumb must fit between. Hoses and cables must stay slack at both locks."
    >
      <path class="now fill" d="M180 120 C236 120 262 166 256 244 H104 C98 166 124 120 180 120 Z" />
      <g transform={`translate(${STEM.x} ${STEM.y}) rotate(32)`}>
        <path class="before bar-ghost" d={BAR} />
      </g>
      <g transform={`translate(${STEM.x} ${STEM.y}) rotate(-32)`}>
        <path class="before bar-ghost" d={BAR} />
      </g>
      <g transform={`translate(${STEM.x} ${STEM.y})`}>
        <path class="metal" d={BAR} />
        <circle class="now paper" r="9" />
      </g>
      <path
        class="hose"
        d={`M${STEM.x + 92} ${STEM.y + 12} C${STEM.x + 60} ${STEM.y - 60} ${STEM.x + 10} ${STEM.y - 70} ${STEM.x} ${STEM.y - 34}`}
      />
      <Move from={[STEM.x - 152, STEM.y + 12]} to={[STEM.x - 156, STEM.y - 24]} />
      <Move from={[STEM.x + 152, STEM.y + 62]} to={[STEM.x + 142, STEM.y + 86]} />
      <Call
        at={[252, 20]}
        from={[248, 24]}
        to={[STEM.x + 52, STEM.y - 43]}
        lines={['hose, slack', 'at both locks']}
      />
      <Call
        at={[278, 214]}
        from={[290, 202]}
        to={[STEM.x + 98, STEM.y + 101]}
        lines={['thumb and', 'tank clear']}
      />
      <text class="middle quiet" x="180" y="212">
        tank
      </text>
      <text class="start quiet" x="6" y="20">
        from above
      </text>
    </Frame>
  )
}

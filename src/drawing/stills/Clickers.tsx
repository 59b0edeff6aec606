import { Call, Frame, Words } from './parts.tsx'

/** A slotted screw from its end, with the way that it turns. */
function Screw({ x, y, r }: { x: number; y: number; r: number }) {
  return (
    <g>
      <circle class="now paper" cx={x} cy={y} r={r} />
      <path
        class="now thick"
        d={`M${x - r * 0.6} ${y - r * 0.35}L${x + r * 0.6} ${y + r * 0.35}`}
      />
    </g>
  )
}

/** A needle over its seat: the gap is what the oil flows through. */
function Needle({ x, gap, name }: { x: number; gap: number; name: readonly string[] }) {
  return (
    <g>
      <path class="metal" d={`M${x - 44} 262h32l7 20h-39zM${x + 44} 262h-32l-7 20h39z`} />
      <path class="now fill" d={`M${x - 9} ${210 - gap}h18v${40}l-9 26l-9 -26z`} />
      <Words at={[x, 306]} anchor="middle" lines={name} />
    </g>
  )
}

export default function Clickers() {
  const hex = [0, 1, 2, 3, 4, 5]
    .map(
      (corner) =>
        `${96 + 34 * Math.cos((corner * Math.PI) / 3)},${84 + 34 * Math.sin((corner * Math.PI) / 3)}`,
    )
    .join(' ')
  return (
    <Frame
      height={318}
      label="Above: a fork cap from above, with the preload adjuster as the larger nut and the rebound screw in its middle; and the compression screw at the foot of the leg. Below: the needle on its seat when the screw is fully in, and lifted off it when the screw is counted out."
    >
      <circle class="metal" cx="96" cy="84" r="52" />
      <polygon class="now fill" points={hex} />
      <Screw x={96} y={84} r={13} />
      <path class="now" d="M96 62 A22 22 0 0 1 117 78" />
      <Call at={[6, 18]} from={[48, 23]} to={[78, 62]} lines={['preload: the larger nut']} />
      <Call at={[20, 160]} from={[84, 147]} to={[94, 92]} lines={['rebound: the small screw']} />
      <path class="metal" d="M206 26h54v70q0 14 -8 18l4 24h-46l4 -24q-8 -4 -8 -18z" />
      <circle class="now paper" cx="233" cy="118" r="13" />
      <Screw x={233} y={142} r={7} />
      <Call
        at={[266, 112]}
        from={[262, 117]}
        to={[240, 138]}
        lines={['compression,', 'at the foot']}
      />
      <text class="middle quiet" x="233" y="66">
        leg
      </text>
      <Needle x={96} gap={0} name={['fully in: stop lightly']} />
      <Needle x={262} gap={16} name={['counted out: a gap']} />
    </Frame>
  )
}

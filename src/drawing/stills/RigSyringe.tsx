import { Call, Floor, Frame } from './parts.tsx'

const X = 110
const [TOP, FOOT] = [112, 268]
const WIDE = 30

/** A mark of the barrel every 5 cm³, a long one with its number every 10. */
function Scale() {
  const step = (FOOT - 14 - TOP) / 12
  return (
    <g>
      {Array.from({ length: 13 }, (_, index) => {
        const y = FOOT - 14 - index * step
        return (
          <g key={index}>
            <line
              class="detail"
              x1={X + WIDE - (index % 2 === 0 ? 16 : 9)}
              x2={X + WIDE}
              y1={y}
              y2={y}
            />
            {index % 4 === 0 && (
              <text class="start quiet" x={X + WIDE + 5} y={y} dy="0.35em">
                {index * 5}
              </text>
            )}
          </g>
        )
      })}
    </g>
  )
}

export default function RigSyringe() {
  const piston = 158
  return (
    <Frame
      height={322}
      label="A syringe of 60 cubic centimetres upright in a stand, its outlet at the bottom closed by a cap. A plate on the plunger carries masses of one kilogram. The volume of air is read at the lower edge of the piston."
    >
      <path class="metal" d="M28 300h164v8H28zM40 60h10v240H40z" />
      <path class="metal" d={`M50 146h${X - WIDE - 50}v12H50zM50 226h${X - WIDE - 50}v12H50z`} />
      <rect class="now fill thin" x={X - WIDE} y={piston} width={2 * WIDE} height={FOOT - piston} />
      <path
        class="syringe"
        d={`M${X - WIDE} ${TOP - 6}V${FOOT}H${X - 8}V${FOOT + 14}H${X + 8}V${FOOT}H${X + WIDE}V${TOP - 6}`}
      />
      <rect class="now solid" x={X - 12} y={FOOT + 14} width="24" height="12" rx="2" />
      <rect class="metal" x={X - WIDE + 3} y={piston - 14} width={2 * WIDE - 6} height="14" />
      <rect class="metal" x={X - 5} y="78" width="10" height={piston - 92} />
      <rect class="metal" x={X - 44} y="70" width="88" height="8" />
      {[0, 1, 2].map((mass) => (
        <rect
          key={mass}
          class="support-metal"
          x={X - 26}
          y={50 - 20 * mass}
          width="52"
          height="19"
          rx="2"
        />
      ))}
      <Scale />
      <Floor from={16} to={210} y={308} />
      <Call
        at={[214, 28]}
        from={[210, 24]}
        to={[X + 26, 40]}
        lines={['1 to 5 masses of', '1 kg, in the middle']}
      />
      <Call at={[214, 84]} from={[210, 80]} to={[X + 40, 75]} lines={['plate on the', 'plunger']} />
      <Call
        at={[214, 122]}
        from={[210, 118]}
        to={[X + 10, piston]}
        lines={['read here, at the', 'piston’s lower edge']}
      />
      <Call
        at={[214, 168]}
        from={[210, 164]}
        to={[X + WIDE, 176]}
        lines={['barrel 0–60 cm³,', 'read to 0.5 cm³']}
      />
      <Call
        at={[214, 216]}
        from={[210, 212]}
        to={[X + 6, 214]}
        lines={['air, 50 cm³', 'at the start']}
      />
      <Call
        at={[214, 284]}
        from={[210, 280]}
        to={[X + 12, FOOT + 20]}
        lines={['cap: closed', 'before any mass']}
      />
      <Call at={[16, 44]} from={[34, 50]} to={[45, 70]} lines={['stand']} />
    </Frame>
  )
}

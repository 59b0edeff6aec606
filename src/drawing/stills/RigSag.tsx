import { round } from '../state.ts'
import { Leg } from '../Leg.tsx'
import { Call, Floor, Frame } from './parts.tsx'

/** The leg's centre line, and the height of its seal. */
const [X, SEAL] = [84, 214]
const SCALE = 900
const EXPOSED = 0.15
const MARK = SEAL - EXPOSED * SCALE
/** The rule's left edge, and how far it reaches above the seal [mm]. */
const RULE = { x: X + 22, reach: 190, width: 18 }

/** The rule held against the tube, a long mark every 50 mm. */
function Rule() {
  const marks = Array.from({ length: RULE.reach / 10 }, (_, index) => {
    const y = SEAL - ((index + 1) * 10 * SCALE) / 1000
    return `M${RULE.x} ${round(y)}h${index % 5 === 4 ? 11 : 6}`
  })
  const height = (RULE.reach * SCALE) / 1000
  return (
    <g>
      <rect class="tape" x={RULE.x} y={SEAL - height} width={RULE.width} height={height} />
      <path class="detail" d={marks.join('')} />
    </g>
  )
}

/** A wheel scale with its display, from the side. */
function WheelScale({ x, floor }: { x: number; floor: number }) {
  return (
    <g>
      <rect class="support-metal" x={x} y={floor - 16} width="120" height="10" rx="2" />
      <path
        class="metal"
        d={`M${x + 8} ${floor - 6}h12v6h-12zM${x + 100} ${floor - 6}h12v6h-12z`}
      />
      <path class="outside-wire thin" d={`M${x + 120} ${floor - 11}h18`} />
      <rect class="support-metal" x={x + 138} y={floor - 24} width="38" height="24" rx="3" />
      <rect class="support-hole" x={x + 144} y={floor - 18} width="26" height="12" />
    </g>
  )
}

export default function RigSag() {
  return (
    <Frame
      height={356}
      label="One fork leg with a steel rule against its tube. The rule’s square end is beside the dust seal, and the length is read at the lower yoke’s edge, where tape marks the place. Below, a wheel scale with a display for the mass of the rider in gear."
    >
      <Leg
        x={X}
        seal={SEAL}
        scale={SCALE}
        exposed={EXPOSED}
        tubeDiameter={0.043}
        state="now"
        label=""
      />
      <Rule />
      <Call
        at={[178, 30]}
        from={[174, 26]}
        to={[RULE.x + 12, 52]}
        lines={['steel rule, 0–300 mm,', 'read to 0.5 mm']}
      />
      <Call
        at={[178, 82]}
        from={[174, 78]}
        to={[RULE.x + 4, MARK]}
        lines={['read here: lower yoke’s', 'edge, marked with tape']}
      />
      <Call at={[178, 146]} from={[174, 142]} to={[X + 10, 150]} lines={['exposed tube']} />
      <Call
        at={[178, 196]}
        from={[174, 192]}
        to={[RULE.x + 6, SEAL]}
        lines={['rule’s square end,', 'beside the dust seal']}
      />
      <WheelScale x={30} floor={338} />
      <Call
        at={[222, 290]}
        from={[218, 300]}
        to={[196, 320]}
        lines={['wheel scale,', '0–150 kg, to 0.1,', 'for rider in gear']}
      />
      <Floor from={16} to={344} y={338} />
    </Frame>
  )
}

import { Leg } from '../Leg.tsx'
import { Call, Frame } from './parts.tsx'

const SCALE = 1000
const SEAL = 216

export default function Marks() {
  const mark = SEAL - 0.112 * SCALE
  return (
    <Frame
      height={262}
      label="A fork leg: the exposed tube is measured from the dust seal up to the edge of the lower yoke, where a strip of tape is stuck. A cable tie on the tube shows the deepest stroke."
    >
      <Leg
        x={96}
        seal={SEAL}
        scale={SCALE}
        exposed={0.112}
        tubeDiameter={0.043}
        state="now"
        text="measure this"
        label=""
        side="left"
      />
      <path class="tape" d={`M${96 - 32} ${mark - 5}h64v10h-64z`} />
      <line class="mark" x1={96 - 32} x2={96 + 32} y1={mark} y2={mark} />
      <rect class="tie" x={96 - 23} y={SEAL - 38} width="46" height="4" />
      <rect class="tie" x={96 + 19} y={SEAL - 41} width="9" height="9" />
      <Call
        at={[192, mark - 26]}
        from={[188, mark - 30]}
        to={[134, mark - 18]}
        lines={['edge of the lower', 'yoke or casting']}
      />
      <Call
        at={[192, mark + 20]}
        from={[188, mark + 15]}
        to={[127, mark - 2]}
        lines={['tape, with a fine line']}
      />
      <Call
        at={[192, SEAL - 32]}
        from={[188, SEAL - 36]}
        to={[124, SEAL - 36]}
        lines={['cable tie or ring:', 'the deepest stroke']}
      />
      <Call
        at={[192, SEAL + 22]}
        from={[188, SEAL + 17]}
        to={[124, SEAL + 2]}
        lines={['dust seal, a rubber lip']}
      />
    </Frame>
  )
}

import { Dimension } from '../kit/Dimension.tsx'
import SpringCoils from '../kit/SpringCoils.tsx'
import { Call, Frame, Move } from './parts.tsx'

const X = 150
const TOP = 92
const FOOT = 262

export default function SpringTest() {
  return (
    <Frame
      height={330}
      label="A spring in a press: scale, flat plate, spring with a guide rod inside, upper plate, screw. A latched guard surrounds the spring. The length is read between the two plates that touch it."
    >
      <path class="metal" d="M40 20h220v18H40zM40 300h220v18H40z" />
      <path class="metal" d="M44 38h12v262H44zM244 38h12v262h-12z" />
      <rect class="metal" x={X - 8} y="6" width="16" height={TOP - 20} />
      <path class="detail" d={`M${X - 8} 44l16 4M${X - 8} 52l16 4M${X - 8} 60l16 4M${X - 8} 68l16 4`} />
      <Move from={[X + 28, 52]} to={[X + 28, 80]} />
      <rect class="now solid" x={X - 52} y={TOP - 12} width="104" height="12" />
      <g class="fork-section now">
        <SpringCoils x={X} radius={26} from={TOP} to={FOOT} wire={8} coils={10} />
      </g>
      <rect class="rod" x={X - 7} y={TOP} width="14" height={FOOT - TOP} />
      <rect class="now solid" x={X - 52} y={FOOT} width="104" height="12" />
      <rect class="metal" x={X - 62} y={FOOT + 12} width="124" height="26" rx="3" />
      <rect class="now paper thin" x={X - 22} y={FOOT + 18} width="44" height="14" />
      <rect class="before guard" x={X - 74} y={TOP - 22} width="148" height={FOOT - TOP + 44} />
      <Dimension from={[X - 62, FOOT]} to={[X - 62, TOP]} text="length" state="now" turned />
      <Call at={[272, 84]} from={[268, 80]} to={[X + 50, TOP - 5]} lines={['plate']} />
      <Call at={[272, 140]} from={[268, 136]} to={[X + 74, 152]} lines={['guard,', 'latched']} />
      <Call at={[272, 204]} from={[268, 200]} to={[X + 5, 212]} lines={['guide rod,', 'slides freely']} />
      <Call at={[272, 284]} from={[268, 280]} to={[X + 48, FOOT + 25]} lines={['scale: zero', 'it unloaded']} />
    </Frame>
  )
}

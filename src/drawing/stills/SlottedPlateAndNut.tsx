import SpringCoils from '../SpringCoils.tsx'
import { Call, Frame, Move, Words } from './parts.tsx'

// 2 units a millimetre across: a tube of 43 in a bore of 38, a spacer of 33, a rod of 12.
const X = 112
const RIM = 176

export default function SlottedPlateAndNut() {
  return (
    <Frame
      height={332}
      label="The top of a cartridge leg in section. From above: the cap on the cartridge rod, the locknut under it, the slotted plate pushed in under the nut, the spacer that the spring presses up against the plate, the tube’s rim. The plate is pushed in from the side while the spacer is held down with a tool; fingers stay out of the gap between spacer and nut. Beside it the plate from above: its slot is wider than the rod and narrower than the nut."
    >
      <g class="fork-section now">
        <rect class="part" x={X - 43} y={RIM} width="5" height="130" />
        <rect class="part" x={X + 38} y={RIM} width="5" height="130" />
        <SpringCoils x={X} radius={31} from={240} to={306} wire={9} coils={4} />
        <rect class="part spacer" x={X - 33} y="112" width="66" height="124" />
        <rect class="part washer" x={X - 36} y="236" width="72" height="4" />
      </g>
      <rect class="metal" x={X - 8} y="60" width="16" height="246" />
      <path class="detail" d={[66, 72, 78, 84, 90].map((y) => `M${X - 8} ${y}l16 3`).join('')} />
      <rect class="now fill" x={X - 40} y="26" width="80" height="22" rx="2" />
      <rect class="now fill" x={X - 26} y="12" width="52" height="14" rx="2" />
      <rect class="now fill" x={X - 22} y="48" width="44" height="18" />
      <path class="now solid" d={`M${X - 18} 84h36l4 6v8l-4 6h-36l-4 -6v-8z`} />
      <rect class="support-pad" x={X - 74} y="105" width="112" height="7" />
      <Move from={[X - 104, 108]} to={[X - 78, 108]} />
      <path class="break" d={`M${X - 54} 306q13 -6 27 0t27 0t27 0t27 0`} />
      <Call at={[4, 66]} from={[56, 88]} to={[X - 28, 100]} lines={['no fingers', 'in here']} />
      <Call at={[186, 24]} from={[182, 20]} to={[X + 40, 36]} lines={['cap, on the rod']} />
      <Call at={[186, 72]} from={[182, 70]} to={[X + 22, 94]} lines={['locknut']} />
      <Call
        at={[186, 116]}
        from={[182, 112]}
        to={[X + 36, 109]}
        lines={['slotted plate,', 'under the nut']}
      />
      <Call
        at={[186, 164]}
        from={[182, 160]}
        to={[X + 33, 146]}
        lines={['spacer, pushed up', 'by the spring']}
      />
      <g transform="translate(258 244)">
        <path class="support-metal" d="M-56 -26h92a26 26 0 0 1 0 52h-92z" />
        <path class="support-hole" d="M37 -10h-37a10 10 0 0 0 0 20h63v-20z" />
        <circle class="metal" r="8" />
        <circle class="now dashed-ring" r="22" />
      </g>
      <Words at={[186, 296]} lines={['slot: rod passes,', 'nut does not']} tone="quiet" />
    </Frame>
  )
}

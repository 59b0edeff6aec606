import SpringCoils from '../SpringCoils.tsx'
import { Call, Frame, Move } from './parts.tsx'

const X = 104
const RIM = 132

export default function RodPuller() {
  return (
    <Frame
      height={328}
      label="An open cartridge leg in section: a puller, a thin threaded rod with a handle, is screwed on the end of the cartridge rod and holds it up above the tube’s rim. Its handle is narrower than the spring, so spring and spacer go down over it."
    >
      <g class="fork-section now">
        <rect class="part" x={X - 43} y={RIM} width="5" height="186" />
        <rect class="part" x={X + 38} y={RIM} width="5" height="186" />
        <SpringCoils x={X} radius={31} from={196} to={318} wire={9} coils={7} />
      </g>
      <rect class="metal" x={X - 8} y="160" width="16" height="158" />
      <path class="detail" d={[164, 170, 176, 182].map((y) => `M${X - 8} ${y}l16 3`).join('')} />
      <rect class="now fill" x={X - 4} y="30" width="8" height="112" />
      <rect class="now solid" x={X - 11} y="140" width="22" height="34" rx="2" />
      <rect class="now solid" x={X - 20} y="22" width="40" height="10" rx="5" />
      <Move from={[X + 58, 96]} to={[X + 58, 46]} />
      <path class="break" d={`M${X - 54} 318q13 -6 27 0t27 0t27 0t27 0`} />
      <Call
        at={[186, 32]}
        from={[182, 28]}
        to={[X + 22, 27]}
        lines={['handle: slim enough', 'to pass the spring']}
      />
      <Call
        at={[186, 124]}
        from={[182, 124]}
        to={[X + 12, 156]}
        lines={['puller, screwed on', 'the rod’s thread']}
      />
      <Call at={[186, 190]} from={[182, 186]} to={[X + 8, 190]} lines={['cartridge rod']} />
      <Call
        at={[186, 246]}
        from={[182, 242]}
        to={[X + 32, 252]}
        lines={['spring goes', 'down over it']}
      />
    </Frame>
  )
}

import type { ComponentChildren } from 'preact'
import {
  CapSide,
  CrossHead,
  EndView,
  FootSide,
  Hex,
  PreloadSide,
  Slotted,
  Socket,
  ValveEnd,
  Wire,
} from './outside.tsx'
import { Call, Frame, Words } from './parts.tsx'

const SIDE = 48
const END = 136
const CAP = 66
const FOOT = 176
const LABEL = 196

/** A label at the right, its leader to a part. */
function Label({
  y,
  to,
  lines,
}: {
  y: number
  to: readonly [number, number]
  lines: readonly string[]
}) {
  return <Call at={[LABEL, y]} from={[LABEL - 4, y - 4]} to={to} lines={lines} />
}

function Views({
  cap = 'cap: side, above',
  foot = 'foot: side, below',
}: {
  cap?: string
  foot?: string
}) {
  return (
    <>
      <Words at={[6, 14]} lines={[cap]} tone="quiet" />
      <Words at={[6, 236]} lines={[foot]} tone="quiet" />
    </>
  )
}

function DamperRod() {
  return (
    <>
      <Views />
      <CapSide x={SIDE} y={CAP} />
      <EndView at={[END, CAP - 4]} r={33}>
        <Hex at={[END, CAP - 4]} r={23} />
        <CrossHead at={[END + 12, CAP - 4]} r={4} />
      </EndView>
      <FootSide x={SIDE} y={FOOT}>
        <CrossHead at={[SIDE + 18, FOOT - 18]} r={5} />
      </FootSide>
      <EndView at={[END, FOOT]} r={33}>
        <circle class="outside-hole" cx={END} cy={FOOT} r="16" />
        <Socket at={[END, FOOT]} r={12} />
      </EndView>
      <Label
        y={40}
        to={[END + 12, CAP - 4]}
        lines={['air-bleed screw,', 'off centre: no clicks']}
      />
      <Label y={86} to={[END + 20, CAP + 6]} lines={['cap’s own hexagon']} />
      <Label
        y={142}
        to={[SIDE + 20, FOOT - 18]}
        lines={['drain screw, in the', 'side: lets oil out']}
      />
      <Label
        y={194}
        to={[END + 10, FOOT + 4]}
        lines={['retaining bolt: holds', 'the damper. Leave it.']}
      />
    </>
  )
}

function Cartridge() {
  return (
    <>
      <Views />
      <CapSide x={SIDE} y={CAP}>
        <PreloadSide x={SIDE} y={CAP} />
      </CapSide>
      <EndView at={[END, CAP - 4]} r={33}>
        <Hex at={[END, CAP - 4]} r={24} />
        <Hex at={[END, CAP - 4]} r={15} name="outside-strong" />
        <Slotted at={[END, CAP - 4]} r={6} />
      </EndView>
      <FootSide x={SIDE} y={FOOT}>
        <Wire
          d={`M${SIDE - 26} ${FOOT - 60}V${FOOT + 2}q0 14 12 16`}
          clips={[[SIDE - 26, FOOT - 34]]}
        />
      </FootSide>
      <EndView at={[END, FOOT]} r={33}>
        <Hex at={[END, FOOT]} r={17} />
        <Slotted at={[END, FOOT]} r={7} turn={-20} />
      </EndView>
      <Label y={40} to={[END + 3, CAP - 6]} lines={['rebound screw, in the', 'middle: clicks']} />
      <Label y={86} to={[END + 13, CAP + 2]} lines={['preload: smaller', 'hexagon, rings']} />
      <Label y={156} to={[END + 5, FOOT - 3]} lines={['compression screw,', 'in the foot bolt']} />
      <Label y={228} to={[SIDE - 22, FOOT + 12]} lines={['wheel-speed wire:', 'on the leg only']} />
    </>
  )
}

function OneEach() {
  return (
    <>
      <Words at={[6, 14]} lines={['both caps, above']} tone="quiet" />
      <Words at={[6, 236]} lines={['both feet, below']} tone="quiet" />
      <EndView at={[SIDE, CAP - 4]} r={33}>
        <Hex at={[SIDE, CAP - 4]} r={24} />
        <Hex at={[SIDE, CAP - 4]} r={15} name="outside-strong" />
      </EndView>
      <EndView at={[END, CAP - 4]} r={33}>
        <Hex at={[END, CAP - 4]} r={24} />
        <Slotted at={[END, CAP - 4]} r={8} />
      </EndView>
      <Words at={[SIDE, 122]} anchor="middle" lines={['spring leg']} />
      <Words at={[END + 4, 122]} anchor="middle" lines={['damper leg']} />
      <EndView at={[SIDE, FOOT]} r={33}>
        <circle class="outside-hole" cx={SIDE} cy={FOOT} r="16" />
        <Socket at={[SIDE, FOOT]} r={12} />
      </EndView>
      <EndView at={[END, FOOT]} r={33}>
        <Hex at={[END, FOOT]} r={17} />
        <Slotted at={[END, FOOT]} r={7} turn={-20} />
      </EndView>
      <Label y={40} to={[END + 4, CAP - 6]} lines={['damping screw,', 'in one cap only']} />
      <Label y={86} to={[SIDE + 13, CAP + 4]} lines={['preload hexagon,', 'in the other']} />
      <Label y={160} to={[END + 5, FOOT - 3]} lines={['damping screw']} />
      <Label y={196} to={[SIDE + 10, FOOT + 6]} lines={['retaining bolt', 'alone']} />
    </>
  )
}

function UpsideDown() {
  return (
    <>
      <Views foot="foot: side, below" />
      <CapSide x={SIDE} y={CAP} wide={66}>
        <PreloadSide x={SIDE} y={CAP} />
      </CapSide>
      <path class="outside-part dark" d={`M${SIDE - 42} ${CAP + 12}h84v16h-84z`} />
      <EndView at={[END, CAP - 4]} r={36}>
        <Hex at={[END, CAP - 4]} r={25} />
        <Hex at={[END, CAP - 4]} r={15} name="outside-strong" />
        <Slotted at={[END, CAP - 4]} r={6} />
      </EndView>
      <FootSide x={SIDE} y={FOOT} bright />
      <EndView at={[END, FOOT]} r={33}>
        <Hex at={[END, FOOT]} r={17} />
        <Slotted at={[END, FOOT]} r={7} turn={-20} />
      </EndView>
      <Label y={32} to={[END + 12, CAP - 8]} lines={['same screws as on a', 'right-way-up fork']} />
      <Label y={96} to={[SIDE + 30, CAP + 20]} lines={['thick tube, held', 'in the yokes']} />
      <Label y={150} to={[SIDE + 18, FOOT - 34]} lines={['bright tube, below']} />
      <Label y={190} to={[SIDE + 28, FOOT + 4]} lines={['axle clamp on it']} />
    </>
  )
}

function Gas() {
  return (
    <>
      <Views />
      <CapSide x={SIDE} y={CAP}>
        <path
          class="outside-strong"
          d={`M${SIDE - 7} ${CAP - 34}h14v16h-14zM${SIDE - 7} ${CAP - 26}h14`}
        />
      </CapSide>
      <EndView at={[END, CAP - 4]} r={33}>
        <Hex at={[END, CAP - 4]} r={24} />
        <ValveEnd at={[END, CAP - 4]} r={8} />
      </EndView>
      <FootSide x={SIDE} y={FOOT} />
      <EndView at={[END, FOOT]} r={33}>
        <circle class="outside-hole" cx={END} cy={FOOT} r="16" />
        <Socket at={[END, FOOT]} r={12} />
      </EndView>
      <Label y={32} to={[SIDE + 6, CAP - 30]} lines={['cover, turned off', 'by hand']} />
      <Label y={86} to={[END + 4, CAP - 2]} lines={['valve with a core:', 'pressure under it']} />
      <Label y={172} to={[END + 10, FOOT + 2]} lines={['retaining bolt', 'here too']} />
    </>
  )
}

function WireIntoCap() {
  return (
    <>
      <Views foot="leg: side" />
      <CapSide x={SIDE} y={CAP}>
        <path class="outside-strong" d={`M${SIDE - 11} ${CAP - 32}h22v14h-22z`} />
        <Wire d={`M${SIDE} ${CAP - 32}q0 -8 14 -8h18`} />
      </CapSide>
      <EndView at={[END, CAP - 4]} r={33}>
        <Hex at={[END, CAP - 4]} r={24} />
        <rect class="outside-strong" x={END - 11} y={CAP - 12} width="22" height="16" rx="3" />
        <Wire d={`M${END + 11} ${CAP - 4}q14 0 20 16`} />
      </EndView>
      <FootSide x={SIDE} y={FOOT}>
        <Wire
          d={`M${SIDE - 26} ${FOOT - 60}V${FOOT + 2}q0 14 12 16`}
          clips={[[SIDE - 26, FOOT - 34]]}
        />
      </FootSide>
      <Label y={40} to={[END + 10, CAP - 8]} lines={['wire into the cap:', 'motor or sensor']} />
      <Label
        y={170}
        to={[SIDE - 22, FOOT - 20]}
        lines={['wire on the leg: wheel', 'speed. Not damping.']}
      />
    </>
  )
}

const kinds: readonly {
  name: string
  tells: string
  height?: number
  Drawing: () => ComponentChildren
}[] = [
  {
    name: '1 Damper rods, a spring in each leg',
    tells:
      'Caps alike, often with a preload hexagon. A bolt at the foot of every such leg holds the damper, and it is no adjuster. Drain and bleed screws are small, off centre, and have no clicks.',
    Drawing: DamperRod,
  },
  {
    name: '2 Cartridges, a spring in each leg',
    tells:
      'A screw that clicks, in the middle of the cap or in the middle of the foot bolt. Some cartridges have none.',
    Drawing: Cartridge,
  },
  {
    name: '3 A spring in one leg, the damper in the other',
    tells: 'Caps or feet that differ from left to right.',
    Drawing: OneEach,
  },
  {
    name: '4 Upside-down',
    tells:
      'The thick tube is on top, in the yokes. That says nothing about what is inside: read cap and foot as on the others.',
    Drawing: UpsideDown,
  },
  {
    name: '5 Air or gas',
    tells:
      'A valve under a cover in the cap, or at the foot. Leave the core alone until you have read the manual: it may hold the spring’s air, or a gas charge.',
    Drawing: Gas,
  },
  {
    name: 'A wire: which one?',
    tells:
      'Only a wire into the cap means that a motor or a sensor sits inside. A wire clipped to the leg is the wheel-speed sensor’s.',
    Drawing: WireIntoCap,
  },
]

export default function ForkOutsideKinds() {
  return (
    <div class="outside-kinds">
      {kinds.map(({ name, tells, Drawing }) => (
        <div key={name}>
          <p class="outside-name">{name}</p>
          <Frame height={254} label={`${name}. ${tells}`}>
            <Drawing />
          </Frame>
          <p class="outside-tells">{tells}</p>
        </div>
      ))}
    </div>
  )
}

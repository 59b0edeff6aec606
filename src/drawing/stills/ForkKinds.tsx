import ForkSectionKit from '../ForkSection.tsx'
import type { ForkLeg } from '../forkLayout.ts'
import { LEG } from './legs.ts'
import { Frame, Ring } from './parts.tsx'

const TOP = 58
const SCALE = 0.39e3
/** Widths are enlarged, or a leg would be a sliver. */
const WIDER = 1.35
const base: ForkLeg = { ...LEG, oilDepth: 0.2, spring: { ...LEG.spring!, coils: 24 } }

/** The common kinds: what each leg holds, and what commonly shows of it outside: hints, since some forks of a kind lack its sign. All legs are drawn at one scale. */
const kinds: readonly {
  name: string
  outside: string
  legs: readonly { x: number; leg: ForkLeg; valve?: true }[]
}[] = [
  {
    name: 'Damper rod, a spring in each leg',
    outside:
      'commonly caps alike on both legs, perhaps with a preload nut; the bolt in each foot holds the damper, and a bleed or drain screw is no adjuster',
    legs: [{ x: 30, leg: { ...base, damper: 'rod' } }],
  },
  {
    name: 'Cartridge, a spring in each leg',
    outside:
      'commonly a small damping screw in the middle of both caps or at both feet; some have none',
    legs: [{ x: 88, leg: { ...base, damper: 'cartridge' } }],
  },
  {
    name: 'A spring in one leg, the damper in the other',
    outside: 'commonly caps that differ, a preload nut on one leg and a damping screw on the other',
    legs: [
      { x: 148, leg: { ...base, damper: 'none' } },
      { x: 192, leg: { ...base, spring: null, spacerLength: 0, washers: [], damper: 'cartridge' } },
    ],
  },
  {
    name: 'Upside-down',
    outside:
      'always the thick tube on top, in the yokes, and the bright tube in the axle clamp; this says nothing about the inside',
    legs: [{ x: 256, leg: { ...base, upsideDown: true, damper: 'cartridge' } }],
  },
  {
    name: 'Gas-assisted',
    outside: 'commonly a valve under a small cover in the cap, on one leg or both',
    legs: [
      {
        x: 316,
        leg: { ...base, damper: 'rod' },
        valve: true,
      },
    ],
  },
]

const BOTTOM = TOP + 0.7 * SCALE + 6

export default function ForkKinds() {
  const label = kinds
    .map(({ name, outside }, index) => `${index + 1}, ${name}: ${outside}`)
    .join('. ')
  return (
    <>
      <Frame height={BOTTOM + 12} label={`Fork legs in section, at one scale. ${label}.`}>
        {kinds.map(({ name, legs }, index) => (
          <g key={name}>
            {legs.map(({ x, leg, valve }) => (
              <g key={x}>
                <ForkSectionKit
                  leg={leg}
                  state="now"
                  x={x}
                  top={TOP}
                  scale={SCALE}
                  across={SCALE * WIDER}
                />
                {valve && (
                  <path class="now thick" d={`M${x} ${TOP - 10}v-12M${x - 4} ${TOP - 22}h8`} />
                )}
              </g>
            ))}
            <Ring
              at={[legs.reduce((sum, { x }) => sum + x, 0) / legs.length, 18]}
              number={index + 1}
            />
          </g>
        ))}
      </Frame>
      <ol class="kinds">
        {kinds.map(({ name, outside }) => (
          <li key={name}>
            <b>{name}.</b> From outside: {outside}.
          </li>
        ))}
      </ol>
    </>
  )
}

import { defineStatement } from '../../machine/statement.ts'

const marking = (label: string, standard: string, hint: string) =>
  ({ kind: 'text', label, hint, default: standard, maxLength: 40 }) as const

const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  end: {
    kind: 'choice',
    label: 'Wheel',
    options: { front: 'front', rear: 'rear' },
    default: 'front',
  },
  fitted: marking('Tyre before', '120/70-17', 'The size that the bike’s figures are quoted for.'),
  marking: marking(
    'Tyre now',
    '110/80-17',
    'The size on the sidewall: 120/70-17, 3.00-18, MT90-16.',
  ),
  rider: {
    kind: 'quantity',
    label: 'Rider in riding gear',
    quantity: 'mass',
    unit: 'kg',
    range: [0, 160],
    step: 1,
    default: 80,
    more: true,
  },
  tyreRate: {
    kind: 'quantity',
    label: 'How stiff the tyre is',
    hint: 'Load for each millimetre of squash, at the pressure you ride.',
    quantity: 'rate',
    unit: 'N/mm',
    range: [80, 400],
    step: 5,
    default: 180,
    typical: [140, 220],
    typicalFrom: 'road tyres at road pressure, from memory',
    more: true,
  },
  radiusPlusMinus: {
    kind: 'quantity',
    label: 'A new tyre’s radius is within ±',
    quantity: 'length',
    unit: 'mm',
    range: [0, 15],
    step: 0.5,
    default: 4,
    more: true,
  },
} as const

const outputs = {
  radius: {
    label: 'Free radius (± covers about 95 %)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  loadedRadius: { label: 'Loaded radius (±)', quantity: 'length', unit: 'mm', digits: 1 },
  trail: { label: 'Trail', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 1, changeDigits: 2 },
  diameter: { label: 'Overall diameter', quantity: 'length', unit: 'mm', digits: 0, more: true },
  squash: {
    label: 'Squash under this wheel’s load',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  wheelLoad: {
    label: 'Load on this wheel',
    quantity: 'load',
    unit: 'kg load',
    digits: 1,
    more: true,
  },
} as const

export default defineStatement({
  id: 'tyre-radius',
  order: 120,
  version: 1,
  title: 'Tyre radius from the size',
  question: 'How does it steer?',
  answers: 'How large a tyre is by its marking, and what another size does to height and trail.',
  assumes: [
    'The nominal rim diameter of the code (17 is 432 mm) and the section height that the marking gives: UN Regulation No. 75 and ISO 5751, from memory.',
    'The rest of the bike stays as it is, and the bike stands at rest with its rider. Rake and trail follow from free radii, as they are quoted.',
    'The ± is a limit: the tyre’s true radius lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Growth at speed and wear, several millimetres each.',
    'A rim of another width, which changes the section’s height by a few millimetres.',
  ],
  inputs,
  outputs,
})

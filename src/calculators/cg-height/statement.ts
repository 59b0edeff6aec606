import { lengthInput } from '../../machine/inputs/length.ts'
import { defineStatement } from '../../machine/statement.ts'

const load = (label: string, standard: number, hint: string) =>
  ({
    kind: 'quantity',
    label,
    hint,
    quantity: 'load',
    unit: 'kg load',
    range: [10, 400],
    step: 0.5,
    default: standard,
    procedure: 'weigh-the-bike',
  }) as const
const lengthOf = (label: string, range: readonly [number, number], standard: number) =>
  ({
    ...lengthInput(label, range, standard),
    procedure: 'measure-geometry',
    more: true,
  }) as const

const inputs = {
  frontLevel: load(
    'Front wheel’s load, level',
    100,
    'The scale under the front wheel, bike level.',
  ),
  rearLevel: load('Rear wheel’s load, level', 100, 'The scale under the rear wheel, bike level.'),
  otherWheelRaised: load(
    'Load on the wheel that stays down, bike raised',
    105.5,
    'The scale under the other wheel, with one axle raised.',
  ),
  lift: {
    kind: 'quantity',
    label: 'How far the axle is raised',
    hint: 'From axle to floor, raised, less the same, level.',
    quantity: 'length',
    unit: 'mm',
    range: [100, 800],
    step: 5,
    default: 300,
    procedure: 'weigh-the-bike',
  },
  lifted: {
    kind: 'choice',
    label: 'Axle that is raised',
    options: { rear: 'rear axle', front: 'front axle' },
    default: 'rear',
    more: true,
  },
  wheelbase: lengthOf('Wheelbase', [900, 2000], 1450),
  frontRadius: {
    ...lengthOf('Front tyre’s radius', [180, 420], 300),
    typical: [285, 305],
    typicalFrom: '17-inch road tyres, loaded and free',
  },
  rearRadius: {
    ...lengthOf('Rear tyre’s radius', [180, 420], 312),
    typical: [295, 320],
    typicalFrom: '17-inch road tyres, loaded and free',
  },
  scalePlusMinus: {
    kind: 'quantity',
    label: 'Each load is within ±',
    quantity: 'load',
    unit: 'kg load',
    range: [0, 10],
    step: 0.1,
    default: 0.5,
    more: true,
  },
  lengthPlusMinus: {
    kind: 'quantity',
    label: 'Each length is within ±',
    quantity: 'length',
    unit: 'mm',
    range: [0, 30],
    step: 0.5,
    default: 3,
    more: true,
  },
} as const

const outputs = {
  height: {
    label: 'Height above the ground (± covers about 95 %)',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    lead: true,
  },
  ahead: { label: 'Ahead of the rear axle (±)', quantity: 'length', unit: 'mm', digits: 0 },
  frontShare: { label: 'Front share, level', quantity: 'share', unit: '%', digits: 1 },
  gained: {
    label: 'Load that moved when the axle rose',
    quantity: 'load',
    unit: 'kg load',
    digits: 1,
    signed: true,
  },
  perHalfKilogram: {
    label: 'Height for half a kilogram more on that scale',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    signed: true,
    more: true,
  },
} as const

export default defineStatement({
  id: 'cg-height',
  order: 140,
  version: 1,
  title: 'Height of the centre of gravity',
  question: 'What happens on the brakes?',
  answers:
    'Where the centre of gravity is, from one weighing level and one with an axle raised, and how sure that is.',
  assumes: [
    'Suspension locked at both ends, so that the bike turns as one piece. Wheels free to roll, brakes off.',
    'Both scales level; the loads read with the bike upright and still.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Fuel and oil that run to the low end: 10 kg of fuel that run 100 mm forward add 0.7 kg on that scale, which reads as 24 mm more height. Weigh with a full tank or an empty one.',
    'Tyres that squash more on the low end, 1 or 2 mm of lift.',
  ],
  inputs,
  outputs,
})

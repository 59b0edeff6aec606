import { defineStatement } from '../../machine/statement.ts'
import { luggageMass, passengerMass, riderMass } from '../../machine/inputs/wholeBike.ts'

const seconds = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'time',
    unit: 's',
    range: [0, 2],
    step: 0.05,
    default: standard,
    more: true,
  }) as const
const damping = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    hint: '0 none, 1 no overshoot at all.',
    quantity: 'ratio',
    unit: '',
    range: [0, 1],
    step: 0.05,
    default: standard,
    more: true,
  }) as const

const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  deceleration: {
    kind: 'quantity',
    label: 'Deceleration',
    hint: 'A firm stop is about 0.6 g; a dry road gives 0.9 to 1.',
    quantity: 'acceleration',
    unit: 'g',
    range: [0, 1.2],
    step: 0.05,
    default: 0.6,
  },
  rider: riderMass,
  frontBrakeShare: {
    kind: 'quantity',
    label: 'Front brake’s share',
    quantity: 'share',
    unit: '%',
    range: [0, 100],
    step: 5,
    default: 100,
  },
  passenger: { ...passengerMass, more: true },
  luggage: { ...luggageMass, more: true },
  quickest: seconds('Brake put on in, at the quickest', 0.1),
  slowest: seconds('Brake put on in, at the slowest', 0.2),
  dampingLow: damping('Front’s damping ratio, at the least', 0.3),
  dampingHigh: damping('Front’s damping ratio, at the most', 0.4),
  exponent: {
    kind: 'quantity',
    label: 'Gas exponent',
    hint: '1 squeezed slowly, 1.4 fast, by the ideal gas law. A stroke lies between the two; where, no measured fork is known to this site.',
    quantity: 'ratio',
    unit: '',
    range: [1, 1.4],
    step: 0.05,
    default: 1.4,
    typical: [1, 1.4],
    typicalFrom: 'slow and fast: the ideal gas law’s two ends',
    more: true,
  },
} as const

const outputs = {
  frontTravel: {
    label: 'Front travel used, settled',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  peak: { label: 'Front travel asked for, quick brake', quantity: 'length', unit: 'mm', digits: 0 },
  reserve: {
    label: 'Travel left beyond that',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    lead: true,
    signed: true,
  },
  travelShare: { label: 'Share of travel, settled', quantity: 'share', unit: '%', digits: 0 },
  transferPart: { label: 'Pushed by load transfer', quantity: 'force', unit: 'N', digits: 0 },
  brakePart: {
    label: 'Pushed by the brake along the fork',
    quantity: 'force',
    unit: 'N',
    digits: 0,
  },
  frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1 },
  rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1 },
  trail: { label: 'Trail', quantity: 'length', unit: 'mm', digits: 1 },
  rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 1, changeDigits: 2 },
  liftDeceleration: {
    label: 'Rear wheel carries nothing from',
    quantity: 'acceleration',
    unit: 'g',
    digits: 2,
  },
  rearTravel: { label: 'Rear travel used', quantity: 'length', unit: 'mm', digits: 1, more: true },
  wheelbase: { label: 'Wheelbase', quantity: 'length', unit: 'mm', digits: 1, more: true },
  pitch: {
    label: 'Pitch, nose up',
    quantity: 'angle',
    unit: '°',
    digits: 1,
    changeDigits: 2,
    signed: true,
    more: true,
  },
  frontGrip: {
    label: 'Grip needed at the front, force ÷ load',
    quantity: 'ratio',
    unit: '',
    digits: 2,
    more: true,
  },
} as const

export default defineStatement({
  id: 'braking-dive',
  order: 150,
  version: 1,
  title: 'Dive on the brakes',
  question: 'What happens on the brakes?',
  answers:
    'How much travel the front uses against deceleration, what pushes it, and how much is left.',
  assumes: [
    'Level road, upright, straight ahead, a steady deceleration that the tyres can give.',
    'The settled figures are those of a long even stop. The gas is squeezed fast (exponent 1.4) from where the bike stood.',
    'The band for a quick brake treats the front as one mass on one spring, with a damping ratio and a time that you set.',
  ],
  leavesOut: [
    'Bumps on the brakes, which use travel on top of all this: the reserve is for them.',
    'Bushing friction that grows with the brake, tyre squash (several millimetres more), and air drag, which helps to slow the bike.',
    'The wheels’ own inertia, which turns the bike a little further forward as they slow: about 14 N more on the front tyre at 0.6 g, half a millimetre of travel.',
    'A damper’s own law: a square one passes the settled dive by another amount than this straight one.',
    'A quick brake, a crest or a road downhill: each lifts the rear wheel at less than the deceleration given here.',
  ],
  inputs,
  outputs,
})

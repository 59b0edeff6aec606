import { fullTravel } from './fork.fields.ts'

const tube = (label: string, hint: string, standard: number) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range: [10, 400], step: 0.1, default: standard, procedure: 'measure-front-sag' }) as const
const onScale = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    hint: 'Front wheel on a scale, rear wheel on a block as high as the scale.',
    quantity: 'load',
    unit: 'kg load',
    range: [20, 400],
    step: 0.1,
    default: standard,
    procedure: 'weigh-the-bike',
  }) as const
const gasPart = (label: string, hint: string, range: readonly [number, number], standard: number) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range, step: 0.5, default: standard, more: true, when: { gas: 'sealed' } }) as const

export const inputs = {
  staticReading: tube('Exposed tube, bike alone', 'The mean of the two settled readings.', 131.3),
  riderReading: tube('Exposed tube, with rider', 'The mean of the two settled readings.', 114.9),
  staticLoad: onScale('Front wheel load, bike alone', 100),
  riderLoad: onScale('Front wheel load, with rider', 137.2),
  extended: { ...tube('Exposed tube, wheel hanging', 'Needed for the preload, not for the rate.', 150), more: true },
  unsprungMass: {
    kind: 'quantity',
    label: 'Front unsprung mass',
    hint: 'Wheel, tyre, discs, calipers, sliders, mudguard.',
    quantity: 'mass',
    unit: 'kg',
    range: [5, 60],
    step: 0.5,
    default: 28,
    typical: [20, 35],
    typicalFrom: 'common practice for road bikes, no published source',
    more: true,
  },
  rake: {
    kind: 'quantity',
    label: 'Rake',
    quantity: 'angle',
    unit: '°',
    range: [15, 40],
    step: 0.1,
    default: 25,
    typical: [23, 28],
    typicalFrom: 'common practice for road bikes, no published source',
    more: true,
    procedure: 'measure-geometry',
  },
  readingPlusMinus: { kind: 'quantity', label: 'Each length is within ±', quantity: 'length', unit: 'mm', range: [0, 10], step: 0.1, default: 1, more: true },
  loadPlusMinus: { kind: 'quantity', label: 'Each load is within ±', quantity: 'load', unit: 'kg load', range: [0, 10], step: 0.1, default: 0.5, more: true },
  step: {
    kind: 'quantity',
    label: 'Step between springs on offer, each leg',
    quantity: 'rate',
    unit: 'N/mm',
    range: [0.1, 3],
    step: 0.1,
    default: 0.5,
    more: true,
  },
  gas: { kind: 'choice', label: 'Take the air out', options: { none: 'no', sealed: 'yes, I have its sizes' }, default: 'sealed', more: true },
  airHeight: gasPart('Oil height', 'Top of the tube down to the oil, fork collapsed, spring out.', [60, 250], 130),
  tubeDiameter: gasPart('Tube, outside', 'The tube that slides through the seal.', [25, 65], 43),
  boreDiameter: gasPart('Tube, bore', 'Inside the tube that holds spring and oil.', [20, 60], 38),
  stackVolume: {
    kind: 'quantity',
    label: 'Spring, spacer and cap in the tube',
    quantity: 'volume',
    unit: 'cm³',
    range: [0, 150],
    step: 1,
    default: 56,
    typical: [40, 80],
    typicalFrom: 'reckoned from common wire and spacers, no published source',
    more: true,
    when: { gas: 'sealed' },
  },
  travel: { ...fullTravel, more: true, when: { gas: 'sealed' } },
} as const

export const outputs = {
  rate: { label: 'Fork as it stands, both legs (± about 95 %)', quantity: 'rate', unit: 'N/mm', digits: 1, lead: true },
  perLeg: { label: 'That is, each leg (±)', quantity: 'rate', unit: 'N/mm', digits: 2 },
  within: { label: '± of each leg’s rate', quantity: 'rate', unit: 'N/mm', digits: 2, more: true },
  springPerLeg: { label: 'Spring without the air, each leg (±)', quantity: 'rate', unit: 'N/mm', digits: 2, lead: true },
  preload: { label: 'Preload as it seems (±)', quantity: 'length', unit: 'mm', digits: 0 },
  springPreload: { label: 'Preload without the air', quantity: 'length', unit: 'mm', digits: 0 },
  verdict: { kind: 'text', label: 'Neighbouring springs' },
  staticForce: { label: 'Load along the fork, bike alone', quantity: 'force', unit: 'N', digits: 0, more: true },
  riderForce: { label: 'Load along the fork, with rider', quantity: 'force', unit: 'N', digits: 0, more: true },
  correlation: { label: 'Correlation of rate and preload', quantity: 'ratio', unit: '', digits: 2, more: true },
} as const

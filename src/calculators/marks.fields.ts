import { fullTravelOrTypical, readingWithin } from './fork.fields.ts'

const tube = (label: string, standard: number) =>
  ({ kind: 'quantity', label, quantity: 'length', unit: 'mm', range: [10, 400], step: 0.5, default: standard, procedure: 'record-a-baseline' }) as const

export const inputs = {
  beforeLeft: tube('Exposed tube before, left', 115),
  beforeRight: tube('Exposed tube before, right', 115),
  afterLeft: tube('Exposed tube after, left', 124),
  afterRight: tube('Exposed tube after, right', 124.5),
  frictionBand: {
    kind: 'quantity',
    label: 'Friction band',
    hint: 'How far apart the reading after pushing down and the one after lifting stand.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 60],
    step: 0.5,
    default: 6,
    more: true,
    typical: [3, 8],
    typicalFrom: 'common practice for road forks, no published source',
    procedure: 'measure-front-sag',
  },
  travel: { ...fullTravelOrTypical, more: true },
  readingPlusMinus: readingWithin('A steel rule read with care: about 0.5 mm.', 0.5),
} as const

export const outputs = {
  heightChange: { label: 'Change of height (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  onMark: { kind: 'text', label: 'Against its mark', lead: true },
  share: { label: 'Share of full travel', quantity: 'share', unit: '%', digits: 1, signed: true },
  sideDifference: { label: 'Left less right, after (±)', quantity: 'length', unit: 'mm', digits: 1 },
  sideBefore: { label: 'Left less right, before (±)', quantity: 'length', unit: 'mm', digits: 1, more: true },
  leftChange: { label: 'Change, left leg', quantity: 'length', unit: 'mm', digits: 1, signed: true, more: true },
  rightChange: { label: 'Change, right leg', quantity: 'length', unit: 'mm', digits: 1, signed: true, more: true },
} as const

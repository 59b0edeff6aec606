import { fullTravelOrTypical, readingWithin } from './fork.fields.ts'

const tube = (label: string, hint: string, low: number, standard: number) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range: [low, 400], step: 0.5, default: standard, procedure: 'measure-front-sag' }) as const

export const inputs = {
  extended: tube('Exposed tube, wheel hanging', 'Seal to the edge of the lower yoke, wheel clear of the ground.', 40, 150),
  settledDown: tube('Exposed tube, pushed down and let rise', 'Push down hard, let it come up slowly, read.', 10, 112),
  settledUp: tube('Exposed tube, lifted and let sink', 'Lift, let it sink slowly, read.', 10, 118),
  travel: fullTravelOrTypical,
  windowLow: {
    kind: 'quantity',
    label: 'Window, from',
    hint: 'With rider on a road bike 25 to 33 %, bike alone 10 to 20 %: common practice, no published source.',
    quantity: 'share',
    unit: '%',
    range: [0, 60],
    step: 1,
    default: 25,
    more: true,
  },
  windowHigh: { kind: 'quantity', label: 'Window, to', quantity: 'share', unit: '%', range: [0, 60], step: 1, default: 33, more: true },
  readingPlusMinus: readingWithin('A tape against a sitting rider: about 1 mm.', 1),
} as const

export const outputs = {
  sag: { label: 'Sag (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  rests: { label: 'Friction lets it rest from', quantity: 'length', unit: 'mm', digits: 1 },
  frictionBand: { label: 'Friction band (±)', quantity: 'length', unit: 'mm', digits: 1 },
  share: { label: 'Share of travel (±)', quantity: 'share', unit: '%', digits: 0 },
  window: { kind: 'text', label: 'Against the window' },
} as const

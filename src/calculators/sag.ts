import { defineCalculator } from './define.ts'
import { remarks } from './sag.remarks.ts'
import { compute } from './sag.work.ts'

const tube = (label: string, hint: string, low: number, standard: number) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range: [low, 400], step: 0.5, default: standard, procedure: 'measure-front-sag' }) as const

export const inputs = {
  extended: tube('Exposed tube, wheel hanging', 'Seal to the edge of the lower yoke, wheel clear of the ground.', 40, 150),
  settledDown: tube('Exposed tube, pushed down and let rise', 'Push down hard, let it come up slowly, read.', 10, 112),
  settledUp: tube('Exposed tube, lifted and let sink', 'Lift, let it sink slowly, read.', 10, 118),
  travel: {
    kind: 'quantity',
    label: 'Full travel',
    quantity: 'length',
    unit: 'mm',
    range: [50, 350],
    step: 1,
    default: 120,
    typical: [110, 140],
    typicalFrom: 'common practice for road bikes, no published source',
  },
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
  readingPlusMinus: {
    kind: 'quantity',
    label: 'Each reading is within ±',
    hint: 'A tape against a sitting rider: about 1 mm.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 5],
    step: 0.1,
    default: 1,
    more: true,
  },
} as const

export const outputs = {
  sag: { label: 'Sag (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  rests: { label: 'Friction lets it rest from', quantity: 'length', unit: 'mm', digits: 1 },
  frictionBand: { label: 'Friction band (±)', quantity: 'length', unit: 'mm', digits: 1 },
  share: { label: 'Share of travel (±)', quantity: 'share', unit: '%', digits: 0 },
  window: { kind: 'text', label: 'Against the window' },
} as const

export default defineCalculator({
  id: 'sag',
  version: 1,
  title: 'Sag from three readings',
  question: 'Where does it sit?',
  answers: 'How far the bike sinks from full extension, and how sure the reading is.',
  assumes: [
    'The bike stands upright on level ground, tyres cold at their pressures.',
    'With a rider: in riding gear, both feet on the pegs, in the riding posture, held upright by a helper.',
    'Friction is as large going up as going down. The mean of the two readings then cancels it.',
    'Each ± is a limit: the true length lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre squash: a tyre of 180 N/mm under 1.2 kN sits about 6.7 mm lower, and none of it is sag.',
    'Friction that differs up and down. The true balance is then still between the two readings, but not at their mean.',
  ],
  inputs,
  outputs,
  compute,
  remarks,
})

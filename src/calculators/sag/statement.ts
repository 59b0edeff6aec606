import { defineStatement } from '../../machine/statement.ts'
import { fullTravelOrTypical, readingWithin } from '../../machine/inputs/fork.ts'

const tube = (label: string, hint: string, low: number, standard: number) =>
  ({
    kind: 'quantity',
    label,
    hint,
    quantity: 'length',
    unit: 'mm',
    range: [low, 400],
    step: 0.5,
    default: standard,
    procedure: 'measure-front-sag',
  }) as const

const inputs = {
  extended: tube(
    'Exposed tube, wheel hanging',
    'Seal to the edge of the lower yoke, wheel clear of the ground.',
    40,
    150,
  ),
  settledDown: tube(
    'Exposed tube, pushed down and let rise',
    'Push down hard, let it come up slowly, read.',
    10,
    112,
  ),
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
  windowHigh: {
    kind: 'quantity',
    label: 'Window, to',
    quantity: 'share',
    unit: '%',
    range: [0, 60],
    step: 1,
    default: 33,
    more: true,
  },
  readingPlusMinus: readingWithin('A tape against a sitting rider: about 1 mm.', 1),
} as const

const outputs = {
  sag: {
    label: 'Sag (± covers about 95 %)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  rests: { label: 'Friction lets it rest from', quantity: 'length', unit: 'mm', digits: 1 },
  frictionBand: { label: 'Friction band (±)', quantity: 'length', unit: 'mm', digits: 1 },
  share: { label: 'Share of travel (±)', quantity: 'share', unit: '%', digits: 0 },
  window: {
    kind: 'choice',
    label: 'Against the window',
    options: {
      inside: 'inside the window',
      less: 'less sag than the window',
      more: 'more sag than the window',
      edge: 'at an edge of the window, within the ±',
    },
  },
} as const

export default defineStatement({
  id: 'sag',
  order: 50,
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
})

import { defineStatement } from '../../machine/statement.ts'
import { fullTravel } from '../../machine/inputs/fork.ts'

const load = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'force',
    unit: 'N',
    range: [0, 8000],
    step: 1,
    default: standard,
    procedure: 'weigh-the-bike',
  }) as const

const inputs = {
  groups: {
    kind: 'table',
    label: 'Lengths of coils, each with one pitch',
    hint: 'Rate of that length alone, and how far it squeezes until its coils touch.',
    rows: [1, 4],
    columns: [
      { id: 'rate', label: 'Rate', quantity: 'rate', unit: 'N/mm', range: [1, 200] },
      { id: 'closes', label: 'Touches after', quantity: 'length', unit: 'mm', range: [1, 500] },
    ],
    default: [
      [24, 15],
      [12, 150],
    ],
  },
  preload: {
    kind: 'quantity',
    label: 'Preload',
    quantity: 'length',
    unit: 'mm',
    range: [0, 60],
    step: 1,
    default: 15,
    typical: [5, 25],
    typicalFrom: 'common practice for road forks, no published source',
  },
  riderLoad: load('Load along the fork, with rider', 971),
  staticLoad: { ...load('Load along the fork, bike alone', 640), more: true },
  brakingLoad: {
    ...load('Load along the fork, braking', 2200),
    hint: 'From the braking calculator.',
    more: true,
  },
  travel: { ...fullTravel, more: true },
} as const

const outputs = {
  riderRate: {
    label: 'Slope where it rides, both legs',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 1,
    lead: true,
  },
  riderTravel: {
    label: 'Travel used with rider',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  staticRate: { label: 'Slope with the bike alone', quantity: 'rate', unit: 'N/mm', digits: 1 },
  staticTravel: { label: 'Travel used, bike alone', quantity: 'length', unit: 'mm', digits: 1 },
  brakingRate: { label: 'Slope on the brakes', quantity: 'rate', unit: 'N/mm', digits: 1 },
  brakingTravel: { label: 'Travel used on the brakes', quantity: 'length', unit: 'mm', digits: 1 },
  firstClosing: { label: 'First coils touch at travel', quantity: 'length', unit: 'mm', digits: 1 },
  closingForce: {
    label: 'Force at which they touch, both legs',
    quantity: 'force',
    unit: 'N',
    digits: 0,
  },
  forceAtEnd: { label: 'Force at the end of travel', quantity: 'force', unit: 'N', digits: 0 },
  endsAt: {
    label: 'The fork can go as far as',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  bindAt: {
    label: 'All coils touch at travel',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    more: true,
  },
  sameLinear: {
    label: 'One rate that rides at the same height, each leg',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 2,
    more: true,
  },
  linearAtEnd: {
    label: 'That one at the end of travel, both legs',
    quantity: 'force',
    unit: 'N',
    digits: 0,
    more: true,
  },
  closings: {
    kind: 'table',
    label: 'Where each length closes',
    columns: [
      { id: 'rate', label: 'Rate of it alone', quantity: 'rate', unit: 'N/mm', digits: 1 },
      { id: 'force', label: 'Force, one leg', quantity: 'force', unit: 'N', digits: 0 },
      { id: 'travel', label: 'Travel', quantity: 'length', unit: 'mm', digits: 1 },
      {
        kind: 'choice',
        id: 'when',
        label: 'That is',
        options: {
          preload: 'already by the preload',
          never: 'never: beyond the travel',
          bike: 'under the bike alone',
          rider: 'as the rider sits',
          braking: 'on the brakes',
          deeper: 'deeper than braking',
        },
      },
    ],
  },
} as const

export default defineStatement({
  id: 'progressive-spring',
  order: 90,
  version: 1,
  title: 'Progressive spring',
  question: 'Which spring?',
  answers: 'Where the close coils touch, and which rate works where the bike rides.',
  assumes: [
    'The two legs are alike.',
    'Within one length the coils have one pitch and touch all at once.',
    'A length of coils alone has the rate that its own count gives: fewer coils, stiffer.',
  ],
  leavesOut: [
    'Coils that close one after another, which rounds the corner off: a spring wound with a slowly changing pitch has no sharp corner at all.',
    'Air, which stiffens every sealed fork deep in its travel: see the oil-height calculator.',
    'Friction and damping.',
  ],
  inputs,
  outputs,
})

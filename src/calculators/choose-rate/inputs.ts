import { RATE_OF_ONE_LEG } from '../../machine/inputs/fork.ts'
import type { QuantityInput } from '../../machine/statement.ts'
import { BUMP_ON_BRAKES, ROOM_ENOUGH, STIFF_RIDE } from '../thresholds.ts'

const OWN = { from: 'own' } as const

const length = (
  label: string,
  range: readonly [number, number],
  rest: Pick<QuantityInput, 'hint' | 'procedure' | 'more' | 'when'> & {
    default?: number
    optional?: true
    empty?: string
  },
) => ({ kind: 'quantity', label, quantity: 'length', unit: 'mm', range, step: 1, ...rest }) as const

const sagNow = (label: string, hint: string) =>
  ({
    kind: 'quantity',
    label,
    hint,
    procedure: 'measure-front-sag',
    when: OWN,
    quantity: 'length',
    unit: 'mm',
    range: [1, 150],
    step: 0.5,
    optional: true,
    empty: 'not measured',
  }) as const

const dampingRatio = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    more: true,
    quantity: 'ratio',
    unit: '',
    range: [0.05, 1],
    step: 0.05,
    default: standard,
  }) as const

const share = (label: string, range: readonly [number, number], standard: number) =>
  ({
    kind: 'quantity',
    label,
    more: true,
    quantity: 'share',
    unit: '%',
    range,
    step: 1,
    default: standard,
  }) as const

/** Whose bike it is, and what is known of its front. */
const bikeInputs = {
  from: {
    kind: 'choice',
    label: 'Whose figures',
    options: { invented: 'an invented bike’s', own: 'my own bike’s' },
    default: 'invented',
  },
  bike: {
    kind: 'bike',
    label: 'Bike, or the one most like yours',
    default: 'middleweight-roadster',
  },
  riderMass: {
    kind: 'quantity',
    label: 'Rider in riding gear',
    hint: 'With helmet, leathers, boots and back protector: 8 to 12 kg more than undressed.',
    procedure: 'weigh-the-bike',
    quantity: 'mass',
    unit: 'kg',
    range: [40, 180],
    step: 1,
    default: 80,
  },
  ownMass: {
    kind: 'quantity',
    label: 'Bike alone, tank full',
    procedure: 'weigh-the-bike',
    when: OWN,
    quantity: 'mass',
    unit: 'kg',
    range: [80, 450],
    step: 1,
    default: 200,
    typical: [150, 250],
    typicalFrom: 'road bikes of a middle size; common practice, no published source',
  },
  ownTravel: {
    kind: 'quantity',
    label: 'Full travel of the fork',
    when: OWN,
    quantity: 'length',
    unit: 'mm',
    range: [60, 300],
    step: 1,
    default: 120,
    typical: [110, 140],
    typicalFrom: 'common practice for road bikes, no published source',
  },
  fittedRate: {
    kind: 'quantity',
    label: 'Spring rate fitted, one leg',
    hint: 'As its maker or a test gives it. Leave it empty if nobody knows: both sags then tell it.',
    procedure: 'test-a-spring',
    when: OWN,
    quantity: 'rate',
    unit: 'N/mm',
    range: [3, 20],
    step: 0.1,
    oneLeg: RATE_OF_ONE_LEG,
    optional: true,
    empty: 'not known',
  },
  staticNow: sagNow('Sag, bike alone, as it is now', 'The mean of both ways of reading it.'),
  riderNow: sagNow('Sag with this rider, as it is now', 'The mean of both ways of reading it.'),
  ownFront: {
    kind: 'quantity',
    label: 'Front scale, bike alone',
    procedure: 'weigh-the-bike',
    when: OWN,
    more: true,
    quantity: 'load',
    unit: 'kg load',
    range: [40, 250],
    step: 0.5,
    optional: true,
    empty: 'the share of the bike most like yours',
  },
  readingPlusMinus: {
    kind: 'quantity',
    label: 'Each sag is within ±',
    hint: 'Of the mean of both ways of reading it.',
    when: OWN,
    more: true,
    quantity: 'length',
    unit: 'mm',
    range: [0, 5],
    step: 0.1,
    default: 1,
  },
} as const

/** How hard the fork is used. */
const useInputs = {
  deceleration: {
    kind: 'quantity',
    label: 'What you call hard braking',
    hint: 'A firm stop is about 0.6 g; a dry road gives 0.9 to 1.',
    quantity: 'acceleration',
    unit: 'g',
    range: [0.2, 1.1],
    step: 0.05,
    default: 0.7,
    typical: [0.6, 0.8],
    typicalFrom: 'from a firm stop to a hard one; common practice, no published source',
  },
  deepest: length('Deepest stroke on your road, by a cable tie', [20, 300], {
    hint: 'With this rider and the springs that are fitted. It takes the place of the braking above.',
    more: true,
    optional: true,
    empty: 'not read',
  }),
  standardMass: {
    kind: 'quantity',
    label: 'Rider whom the fitted springs suit',
    more: true,
    quantity: 'mass',
    unit: 'kg',
    range: [40, 180],
    step: 1,
    optional: true,
    empty: 'the rider on the bike’s sheet',
  },
  riderSag: length('Sag with the rider, wanted', [15, 70], {
    procedure: 'measure-front-sag',
    more: true,
    optional: true,
    empty: 'what the fitted springs give the rider whom they suit',
  }),
} as const

/** What is on the shelf, and what a spring is held against. */
const shelfInputs = {
  rates: {
    kind: 'table',
    label: 'Spring rates that you can get, one leg',
    more: true,
    columns: [{ id: 'rate', label: 'Rate', quantity: 'rate', unit: 'N/mm', range: [3, 20] }],
    rows: [1, 40],
    default: [[8], [8.5], [9], [9.5], [10], [10.5], [11], [11.5]],
  },
  riderShare: {
    kind: 'quantity',
    label: 'Share of the rider on the front wheel',
    hint: 'The front scale with the rider, less without, over the rider’s mass.',
    procedure: 'weigh-the-bike',
    more: true,
    quantity: 'share',
    unit: '%',
    range: [20, 70],
    step: 0.5,
    optional: true,
    empty: 'the bike’s own rider position',
    typical: [41, 51],
    typicalFrom:
      'five points either way of an upright seat on a road bike; common practice, no published source',
  },
  staticLow: share('Static sag, window from', [0, 40], 10),
  staticHigh: share('Static sag, window to', [0, 50], 20),
  reserve: length('Floor: travel to keep in hand on hard braking', [0, 40], {
    hint: `0 means that a quick stop just does not reach the end. One bump takes ${BUMP_ON_BRAKES * 1e3} mm or more.`,
    more: true,
    default: 0,
  }),
  unused: length('Ceiling: travel that hard braking may leave unused', [0, 150], {
    hint: `${ROOM_ENOUGH * 1e3} mm is a bump and the friction band together. More is travel that you carry about and never use.`,
    more: true,
    default: ROOM_ENOUGH * 1e3,
  }),
  leastPreload: length('Least preload', [0, 40], {
    hint: 'With less, an adjuster wound out leaves the spring loose in the tube.',
    more: true,
    default: 5,
  }),
  stiffest: {
    kind: 'quantity',
    label: 'Highest ride frequency of the front',
    hint: 'Undamped, rider aboard. Above it small bumps reach the rider as blows; a judgement, no published source.',
    more: true,
    quantity: 'frequency',
    unit: 'Hz',
    range: [1, 20],
    step: 0.1,
    default: STIFF_RIDE,
  },
  dampingLow: dampingRatio('Damping ratio from', 0.3),
  dampingHigh: dampingRatio('Damping ratio to', 0.4),
  stroke: length('Spring travel to touching coils', [60, 400], {
    hint: 'Free length less the length with the coils touching.',
    more: true,
    optional: true,
    empty: 'not known',
  }),
} as const

/** What is asked about choosing fork springs. */
export const inputs = { ...bikeInputs, ...useInputs, ...shelfInputs } as const

import { forkForce, forkLimit, forkRate, forkTravel, springDeflection, springForce, springLimit } from '../core/index.ts'
import type { CoilGroup, Fork } from '../core/index.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import { remarksOf } from './progressive-spring.remarks.ts'

const load = (label: string, standard: number) =>
  ({ kind: 'quantity', label, quantity: 'force', unit: 'N', range: [0, 8000], step: 1, default: standard, procedure: 'weigh-the-bike' }) as const

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
  brakingLoad: { ...load('Load along the fork, braking', 2200), hint: 'From the braking calculator.', more: true },
  travel: { kind: 'quantity', label: 'Full travel', quantity: 'length', unit: 'mm', range: [50, 350], step: 1, default: 120, more: true },
} as const

const outputs = {
  riderRate: { label: 'Slope where it rides, both legs', quantity: 'rate', unit: 'N/mm', digits: 1, lead: true },
  riderTravel: { label: 'Travel used with rider', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  staticRate: { label: 'Slope with the bike alone', quantity: 'rate', unit: 'N/mm', digits: 1 },
  staticTravel: { label: 'Travel used, bike alone', quantity: 'length', unit: 'mm', digits: 1 },
  brakingRate: { label: 'Slope on the brakes', quantity: 'rate', unit: 'N/mm', digits: 1 },
  brakingTravel: { label: 'Travel used on the brakes', quantity: 'length', unit: 'mm', digits: 1 },
  firstClosing: { label: 'First coils touch at travel', quantity: 'length', unit: 'mm', digits: 1 },
  closingForce: { label: 'Force at which they touch, both legs', quantity: 'force', unit: 'N', digits: 0 },
  forceAtEnd: { label: 'Force at the end of travel', quantity: 'force', unit: 'N', digits: 0 },
  bindAt: { label: 'All coils touch at travel', quantity: 'length', unit: 'mm', digits: 0, more: true },
  sameLinear: { label: 'One rate that rides at the same height, each leg', quantity: 'rate', unit: 'N/mm', digits: 2, more: true },
  linearAtEnd: { label: 'That one at the end of travel, both legs', quantity: 'force', unit: 'N', digits: 0, more: true },
  closings: {
    kind: 'table',
    label: 'Where each length closes',
    columns: [
      { id: 'rate', label: 'Rate of it alone', quantity: 'rate', unit: 'N/mm', digits: 1 },
      { id: 'force', label: 'Force, one leg', quantity: 'force', unit: 'N', digits: 0 },
      { id: 'travel', label: 'Travel', quantity: 'length', unit: 'mm', digits: 1 },
      { kind: 'text', id: 'when', label: 'That is' },
    ],
  },
} as const

export type ProgressiveInputs = typeof inputs
export type ProgressiveOutputs = typeof outputs

interface SetUp {
  groups: readonly (readonly number[])[]
  preload: number
  travel: number
  staticLoad: number
  riderLoad: number
  brakingLoad: number
}

const springOf = ({ groups }: Pick<SetUp, 'groups'>): CoilGroup[] => groups.map(([rate, closes]) => ({ rate: rate!, closes: closes! }))

function forkOf(setUp: SetUp): Fork {
  const spring = springOf(setUp)
  if (setUp.preload > (springLimit(spring) ?? Infinity)) throw new InputRefusal('preload', 'Preload must be less than what squeezes every coil shut')
  const leg = { spring, preload: setUp.preload }
  return { travel: setUp.travel, legs: [leg, leg] }
}

interface Closing {
  rate: number
  /** of one leg */
  force: number
  travel: number
}

/** Each length of coils in the order in which they touch: the lowest force first. */
function closingsOf(setUp: SetUp): Closing[] {
  const spring = springOf(setUp)
  return spring
    .map(({ rate, closes }) => ({ rate, force: springForce([{ rate }], closes!) }))
    .sort((a, b) => a.force - b.force)
    .map(({ rate, force }) => ({ rate, force, travel: springDeflection(spring, force) - setUp.preload }))
}

function when({ staticLoad, riderLoad, brakingLoad, travel }: SetUp, closing: Closing): string {
  if (closing.travel <= 0) return 'already by the preload'
  if (closing.travel > travel) return 'never: beyond the travel'
  const pair = 2 * closing.force
  if (pair <= staticLoad) return 'under the bike alone'
  if (pair <= riderLoad) return 'as the rider sits'
  return pair <= brakingLoad ? 'on the brakes' : 'deeper than braking'
}

export default defineCalculator({
  id: 'progressive-spring',
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
  compute(input) {
    const fork = forkOf(input)
    const limit = forkLimit(fork).travel
    const at = (force: number): { travel: number; rate: number } => {
      const travel = forkTravel(fork, force)
      return { travel, rate: forkRate(fork, travel) }
    }
    const [still, rider, braking] = [at(input.staticLoad), at(input.riderLoad), at(input.brakingLoad)]
    const closings = closingsOf(input)
    const first = input.groups.length > 1 ? closings[0] : undefined
    const sameLinear = rider.travel > 0 && rider.travel < limit ? input.riderLoad / 2 / (input.preload + rider.travel) : null
    return {
      riderRate: rider.rate,
      riderTravel: rider.travel,
      staticRate: still.rate,
      staticTravel: still.travel,
      brakingRate: braking.rate,
      brakingTravel: braking.travel,
      firstClosing: first ? first.travel : null,
      closingForce: first ? 2 * first.force : null,
      forceAtEnd: forkForce(fork, limit),
      bindAt: closings.at(-1)!.travel,
      sameLinear,
      linearAtEnd: sameLinear === null ? null : 2 * springForce([{ rate: sameLinear }], input.preload + limit),
      closings: closings.map((closing) => [closing.rate, closing.force, closing.travel, when(input, closing)]),
    }
  },
  picture(input, output) {
    const fork = forkOf(input)
    const limit = forkLimit(fork).travel
    const corners = closingsOf(input)
      .map(({ travel }) => travel)
      .filter((travel) => travel > 0 && travel < limit)
    const even = Array.from({ length: 41 }, (_, step) => (limit * step) / 40)
    // a corner is two rates at one place: the slope is drawn as a step
    const places = [...even, ...corners].sort((a, b) => a - b)
    const sameLinear = output.sameLinear as number | null
    const just = limit * 1e-7
    return {
      // on the top stop the fork carries any load up to its first force, without moving
      force: [[0, 0] as const, ...places.map((x): readonly [number, number] => [x, forkForce(fork, x)])],
      rate: places.flatMap((x): (readonly [number, number])[] =>
        x > just
          ? [
              [x, forkRate(fork, x - just)],
              [x, forkRate(fork, x)],
            ]
          : [[x, forkRate(fork, x)]],
      ),
      corners: corners.map((x): readonly [number, number] => [x, forkForce(fork, x)]),
      linear: sameLinear === null ? [] : places.map((x): readonly [number, number] => [x, 2 * springForce([{ rate: sameLinear }], input.preload + x)]),
    }
  },
  remarks: remarksOf,
})

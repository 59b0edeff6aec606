import { forkForce, forkLimit, forkRate, forkTravel, springDeflection, springForce, springLimit } from '../core/index.ts'
import type { CoilGroup, Fork } from '../core/index.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import { remarksOf } from './progressive-spring.remarks.ts'

const load = (label: string, standard: number) =>
  ({ kind: 'quantity', label, quantity: 'force', unit: 'N', range: [0, 8000], step: 1, default: standard, procedure: 'weigh-the-bike' }) as const

const inputs = {
  groups: {
    kind: 'table', label: 'Lengths of coils, each with one pitch', hint: 'Rate of that length alone, and how far it squeezes until its coils touch.', rows: [1, 4],
    columns: [
      { id: 'rate', label: 'Rate', quantity: 'rate', unit: 'N/mm', range: [1, 200] },
      { id: 'closes', label: 'Touches after', quantity: 'length', unit: 'mm', range: [1, 500] },
    ],
    default: [[24, 15], [12, 150]],
  },
  preload: { kind: 'quantity', label: 'Preload', quantity: 'length', unit: 'mm', range: [0, 60], step: 1, default: 15, typical: [5, 25], typicalFrom: 'common practice for road forks, no published source' },
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
    kind: 'table', label: 'Where each length closes',
    columns: [{ id: 'rate', label: 'Rate of it alone', quantity: 'rate', unit: 'N/mm', digits: 1 }, { id: 'force', label: 'Force, one leg', quantity: 'force', unit: 'N', digits: 0 }, { id: 'travel', label: 'Travel', quantity: 'length', unit: 'mm', digits: 1 }, { kind: 'text', id: 'when', label: 'That is' }],
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
  assumes: ['The two legs are alike.', 'Within one length the coils have one pitch and touch all at once.', 'A length of coils alone has the rate that its own count gives: fewer coils, stiffer.'],
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
    const corners = closingsOf(input).map(({ travel }) => travel).filter((travel) => travel > 0 && travel < limit)
    const even = Array.from({ length: 41 }, (_, step) => (limit * step) / 40)
    // a corner is two rates at one place: the slope is drawn as a step
    const places = [...even, ...corners].sort((a, b) => a - b)
    const sameLinear = output.sameLinear as number | null
    const just = limit * 1e-7
    return {
      force: places.map((x): readonly [number, number] => [x, forkForce(fork, x)]),
      rate: places.flatMap((x): (readonly [number, number])[] => (x > just ? [[x, forkRate(fork, x - just)], [x, forkRate(fork, x)]] : [[x, forkRate(fork, x)]])),
      corners: corners.map((x): readonly [number, number] => [x, forkForce(fork, x)]),
      linear: sameLinear === null ? [] : places.map((x): readonly [number, number] => [x, 2 * springForce([{ rate: sameLinear }], input.preload + x)]),
    }
  },
  remarks: remarksOf,
  checks: [
    {
      title: 'Two lengths of coils, the close ones shut before the rider sits',
      given: { groups: [[24, 18], [12, 150]], preload: 15, staticLoad: 640, riderLoad: 971, brakingLoad: 2200, travel: 120 },
      expect: { staticRate: { value: 16, tolerance: 1e-6 }, staticTravel: { value: 25, tolerance: 1e-6 }, riderRate: { value: 24, tolerance: 1e-6 }, riderTravel: { value: 43.458333333, tolerance: 1e-6 }, firstClosing: { value: 39, tolerance: 1e-6 }, closingForce: { value: 864, tolerance: 1e-6 } },
      working: 'Worked by hand, one leg. Together 1/(1/24 + 1/12) = 8 N/mm. The close coils touch at 24 × 18 = 432 N, after 432/8 = 54 mm, so at 39 mm of travel. Bike alone 320/8 − 15 = 25 mm. With rider 485.5 N: 18 + 485.5/12 − 15 = 43.458 mm, on 12 N/mm each, 24 the pair.',
    },
    {
      title: 'More preload under the same load: the same coils closed, at another height',
      given: { groups: [[24, 18], [12, 150]], preload: 25, staticLoad: 640, riderLoad: 971, brakingLoad: 2200, travel: 120 },
      expect: { riderRate: { value: 24, tolerance: 1e-6 }, riderTravel: { value: 33.458333333, tolerance: 1e-6 }, closingForce: { value: 864, tolerance: 1e-6 }, firstClosing: { value: 29, tolerance: 1e-6 } },
      working: 'Worked by hand. The force decides which coils are shut, and the load has not changed: 432 N each leg as before. All places move up by the 10 mm of preload.',
    },
    {
      title: 'One length only is a spring of one rate',
      given: { groups: [[9, 200]], preload: 15, riderLoad: 971, travel: 120 },
      expect: { riderRate: { value: 18, tolerance: 1e-6 }, riderTravel: { value: 38.944444444, tolerance: 1e-6 }, forceAtEnd: { value: 2430, tolerance: 1e-6 } },
      working: 'Worked by hand. 971/18 − 15 = 38.944 mm; 18 × 135 = 2430 N.',
    },
  ],
})

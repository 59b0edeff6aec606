import { forkForce, forkLimit, forkRate, forkTravel, springForce } from '../core/index.ts'
import type { Fork, Gas } from '../core/index.ts'
import { defineCalculator } from './define.ts'
import type { Interval } from './define.ts'
import { remarksOf } from './preload-versus-rate.remarks.ts'

/** The leg for the trapped air: invented, as in the middleweight roadster. 56 cm³ of spring, spacer and cap stand in the bore. */
const LEG = { tubeDiameter: 0.043, boreDiameter: 0.038, stackVolume: 56e-6 }

/** Air pressed fast, as on the brakes; measured forks lie between this and 1 (pressed slowly). */
const FAST = 1.4

/** A leg that oil fills before its stop only creeps over the last tenth: the air is then ten times as stiff as at the start. */
const LOCKING = 0.9

/** The loads of the table, as shares of the load given. */
const SHARES = [0.5, 1, 1.5, 2]

const inputs = {
  rate: {
    kind: 'quantity',
    label: 'Spring rate, each leg',
    quantity: 'rate',
    unit: 'N/mm',
    range: [3, 20],
    step: 0.1,
    default: 9,
    procedure: 'test-a-spring',
    typical: [7, 10],
    typicalFrom: 'common practice for road forks, no published source',
  },
  preload: {
    kind: 'quantity',
    label: 'Preload',
    hint: 'How far the spring is squeezed at full extension.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 60],
    step: 1,
    default: 25,
    typical: [5, 25],
    typicalFrom: 'common practice for road forks, no published source',
  },
  load: {
    kind: 'quantity',
    label: 'Load along the fork',
    hint: 'What the springs of both legs carry: wheel load less wheel, brakes and sliders, times the cosine of the rake.',
    quantity: 'force',
    unit: 'N',
    range: [0, 6000],
    step: 1,
    default: 971,
    procedure: 'weigh-the-bike',
    typical: [800, 1200],
    typicalFrom: 'road bikes with a rider, from the invented bikes',
  },
  travel: { kind: 'quantity', label: 'Full travel', quantity: 'length', unit: 'mm', range: [50, 350], step: 1, default: 120, more: true },
  gas: { kind: 'choice', label: 'Air above the oil', options: { none: 'left out', sealed: 'sealed in' }, default: 'none', more: true },
  airHeight: {
    kind: 'quantity',
    label: 'Oil height',
    hint: 'Top of the tube down to the oil, fork collapsed, spring out.',
    quantity: 'length',
    unit: 'mm',
    range: [40, 250],
    step: 1,
    default: 130,
    more: true,
    when: { gas: 'sealed' },
    procedure: 'set-oil-height',
  },
  topOut: { kind: 'choice', label: 'Top-out spring', options: { none: 'left out', fitted: 'fitted' }, default: 'none', more: true },
  topOutRate: {
    kind: 'quantity',
    label: 'Top-out rate, both legs',
    quantity: 'rate',
    unit: 'N/mm',
    range: [5, 100],
    step: 1,
    default: 30,
    more: true,
    when: { topOut: 'fitted' },
  },
  topOutLength: {
    kind: 'quantity',
    label: 'Top-out spring works over the last',
    quantity: 'length',
    unit: 'mm',
    range: [1, 40],
    step: 1,
    default: 8,
    more: true,
    when: { topOut: 'fitted' },
  },
} as const

const outputs = {
  travelUsed: { label: 'Travel used under the load', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  springForce: { label: 'Spring force, both legs', quantity: 'force', unit: 'N', digits: 0, lead: true },
  rateHere: { label: 'Slope there, both legs', quantity: 'rate', unit: 'N/mm', digits: 1, lead: true },
  squeeze: { label: 'Spring squeezed by, in all', quantity: 'length', unit: 'mm', digits: 1 },
  forceAtFullTravel: { label: 'Force at full travel', quantity: 'force', unit: 'N', digits: 0 },
  loadToLeaveTopStop: { label: 'Load that leaves the top stop', quantity: 'force', unit: 'N', digits: 0 },
  where: { kind: 'text', label: 'Where it stands' },
  heights: {
    kind: 'table',
    label: 'The same fork under other loads',
    more: true,
    columns: [
      { id: 'load', label: 'Load', quantity: 'force', unit: 'N', digits: 0 },
      { id: 'travel', label: 'Travel used', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'slope', label: 'Slope', quantity: 'rate', unit: 'N/mm', digits: 1 },
    ],
  },
} as const

export type PreloadInputs = typeof inputs
export type PreloadOutputs = typeof outputs
interface SetUp {
  rate: number
  preload: number
  travel: number
  gas: string
  airHeight: number
  topOut: string
  topOutRate: number
  topOutLength: number
}

function forkOf(setUp: SetUp): Fork {
  const gas: Gas | undefined = setUp.gas === 'sealed' ? { ...LEG, airHeight: setUp.airHeight } : undefined
  const leg = { spring: [{ rate: setUp.rate }], preload: setUp.preload, ...(gas ? { gas } : {}) }
  const topOut = setUp.topOut === 'fitted' ? { rate: setUp.topOutRate, length: Math.min(setUp.topOutLength, setUp.travel) } : undefined
  return { travel: setUp.travel, legs: [leg, leg], ...(topOut ? { topOut } : {}) }
}

/** Without air one number; with it from slow to fast squeezing. Null where oil fills the leg before the stop. */
function atFullTravel(fork: Fork, from: number, sealed: boolean): number | Interval | null {
  if (forkLimit(fork).cause === 'locked') return null
  const slow = forkForce(fork, fork.travel)
  return sealed ? { low: slow, high: forkForce(fork, fork.travel, { exponent: FAST, from }) } : slow
}

function stands(setUp: SetUp, load: number, used: number, topStop: number, limit: { travel: number; cause: string }): string {
  if (load <= topStop) return 'on its top stop'
  if (limit.cause === 'locked' && used > LOCKING * limit.travel) return 'stopped by oil: hardly any air is left'
  if (used >= limit.travel * (1 - 1e-9)) return 'at full travel'
  return setUp.topOut === 'fitted' && used < setUp.topOutLength ? 'the top-out spring still pushes' : 'between its stops'
}

export default defineCalculator({
  id: 'preload-versus-rate',
  version: 1,
  title: 'Preload against rate',
  question: 'Which spring?',
  answers: 'What a change of preload, and a change of rate, does to height, to force and to the slope.',
  assumes: [
    'Both legs are alike, their springs have one rate, and their coils stay apart.',
    'The load stays the same. On a bike it changes by about 1 N for a millimetre of height.',
    'Sealed air is that of the invented middleweight roadster: tube 43 mm, bore 38 mm, 56 cm³ of spring, spacer and cap in each leg, closed at full extension. At rest it is squeezed slowly.',
  ],
  leavesOut: [
    'Friction: about 60 N each way, 3 mm at 18 N/mm.',
    'Damping, which holds up nothing at rest.',
    'The rear, which follows when the front moves: see the whole-bike calculator.',
  ],
  inputs,
  outputs,
  baseline: () => ({ rate: 9, preload: 15 }),
  compute(input) {
    const fork = forkOf(input)
    const limit = forkLimit(fork)
    const used = forkTravel(fork, input.load)
    const topStop = Math.max(0, forkForce(fork, 0))
    return {
      travelUsed: used,
      springForce: 2 * springForce(fork.legs[0]!.spring, input.preload + used),
      rateHere: forkRate(fork, used),
      squeeze: input.preload + used,
      forceAtFullTravel: atFullTravel(fork, used, input.gas === 'sealed'),
      loadToLeaveTopStop: topStop,
      where: stands(input, input.load, used, topStop, limit),
      heights: SHARES.map((share) => {
        const there = forkTravel(fork, share * input.load)
        return [share * input.load, there, forkRate(fork, there)]
      }),
    }
  },
  picture(input, output) {
    const fork = forkOf(input)
    // a locked leg's force grows without end: stop the curve a hundredth short
    const { travel, cause } = forkLimit(fork)
    const last = cause === 'locked' ? travel * 0.99 : travel
    const places = Array.from({ length: 61 }, (_, step) => (last * step) / 60)
    const curve = places.map((x): readonly [number, number] => [x, forkForce(fork, x)])
    // on the top stop the fork carries any load up to its first force, without moving
    const stop: readonly [number, number][] = curve[0]![1] > 0 ? [[0, 0]] : []
    return {
      curve: [...stop, ...curve],
      heights: output.heights as readonly (readonly [number, number, number])[],
    }
  },
  remarks: remarksOf,
})

import { coverageFactor, fitLine, fitProgressive, springForce } from '../core/index.ts'
import type { CoilGroup } from '../core/index.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { Interval } from './define.ts'
import { COVERAGE, expanded, standardFromLimit } from './measured.ts'
import { remarksOf } from './spring-test.remarks.ts'

/** The choice of one rate or two needs this many readings: three are used up by the two-rate spring. */
const FEWEST_FOR_TWO = 5

const inputs = {
  rows: {
    kind: 'table',
    label: 'Readings',
    hint: 'Type them, or paste two columns: length, then force.',
    procedure: 'test-a-spring',
    rows: [2, 60],
    columns: [
      { id: 'length', label: 'Length', quantity: 'length', unit: 'mm', range: [5, 700] },
      { id: 'force', label: 'Force', quantity: 'force', unit: 'N', range: [0, 20000] },
    ],
    default: [
      [330, 172],
      [310, 357],
      [290, 533],
      [270, 716],
      [250, 893],
      [230, 1080],
    ],
  },
  fit: { kind: 'choice', label: 'Look for', options: { line: 'one rate', two: 'two rates' }, default: 'line' },
  freeLength: {
    kind: 'quantity',
    label: 'Free length',
    hint: 'Standing free. Two rates need it; one rate finds it for itself.',
    quantity: 'length',
    unit: 'mm',
    range: [10, 700],
    step: 0.5,
    default: 350,
    when: { fit: 'two' },
  },
  lengthPlusMinus: { kind: 'quantity', label: 'Each length is within ±', quantity: 'length', unit: 'mm', range: [0, 5], step: 0.1, default: 0.5, more: true },
  forcePlusMinus: { kind: 'quantity', label: 'Each force is within ±', quantity: 'force', unit: 'N', range: [0, 200], step: 1, default: 5, more: true },
} as const

const outputs = {
  rate: { label: 'Rate (± covers about 95 %)', quantity: 'rate', unit: 'N/mm', digits: 2, lead: true },
  within: { label: 'Its ± as a share', quantity: 'share', unit: '%', digits: 1 },
  secondRate: { label: 'Rate once the close coils touch', quantity: 'rate', unit: 'N/mm', digits: 2 },
  closesAt: { label: 'Close coils touch after', quantity: 'length', unit: 'mm', digits: 0 },
  kind: { kind: 'text', label: 'What the readings show', lead: true },
  rateError: { label: 'Standard error of the rate', quantity: 'rate', unit: 'N/mm', digits: 3 },
  scatter: { label: 'Scatter of a reading about the fit', quantity: 'force', unit: 'N', digits: 1 },
  worst: { label: 'Largest miss', quantity: 'force', unit: 'N', digits: 1, signed: true, more: true },
  foundLength: { label: 'Length at which the line reaches no force', quantity: 'length', unit: 'mm', digits: 1, more: true },
  rSquared: { label: 'r²', quantity: 'ratio', unit: '', digits: 5, more: true },
  misses: {
    kind: 'table',
    label: 'Each reading against the fit',
    columns: [
      { id: 'length', label: 'Length', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'force', label: 'Force', quantity: 'force', unit: 'N', digits: 0 },
      { id: 'miss', label: 'Misses the fit by', quantity: 'force', unit: 'N', digits: 1 },
    ],
  },
} as const

export type SpringTestInputs = typeof inputs
export type SpringTestOutputs = typeof outputs

interface Tested {
  rows: readonly (readonly number[])[]
  fit: 'line' | 'two'
  freeLength: number
  lengthPlusMinus: number
  forcePlusMinus: number
}

type Point = readonly [length: number, force: number]
const pointsOf = ({ rows }: Tested): Point[] => rows.map(([length, force]): Point => [length!, force!])

interface Fit {
  kind: string
  rate: number | Interval
  secondRate: number | null
  closesAt: number | null
  rateError: number | null
  scatter: number | null
  foundLength: number | null
  rSquared: number | null
  force(length: number): number
  /** half the width of the 95 % band of the fit [N]; null where the readings say nothing of it */
  half(length: number): number | null
}

function refuseUseless(input: Tested): void {
  const lengths = input.rows.map(([length]) => length!)
  if (Math.max(...lengths) === Math.min(...lengths)) throw new InputRefusal('rows', 'Readings need at least two different lengths')
  if (input.fit === 'two' && Math.max(...lengths) > input.freeLength)
    throw new InputRefusal('freeLength', 'Free length must be at least the longest length read')
}

/** Standard error of the slope that the ± of the readings alone would give at these lengths. */
function errorOfReadings(points: readonly Point[], slope: number, input: Tested): number {
  const mean = points.reduce((sum, [length]) => sum + length, 0) / points.length
  const spread = Math.sqrt(points.reduce((sum, [length]) => sum + (length - mean) ** 2, 0))
  return Math.hypot(standardFromLimit(input.forcePlusMinus), slope * standardFromLimit(input.lengthPlusMinus)) / spread
}

function oneRate(input: Tested): Fit {
  const points = pointsOf(input)
  // force against length falls: the rate is the slope with its sign turned
  const line = fitLine(points)
  const rate = -line.slope
  if (!(rate > 0)) throw new InputRefusal('rows', 'The force must rise as the spring gets shorter. Check whether the columns are length, then force')
  const student = points.length > 2 ? coverageFactor({ degreesOfFreedom: points.length - 2, probability: COVERAGE }) : null
  const half = Math.max(expanded(errorOfReadings(points, rate, input)), student === null ? 0 : student * line.slopeError!)
  return {
    kind: points.length < 3 ? 'one slope, and no word on its error' : 'one rate',
    rate: { value: rate, low: rate - half, high: rate + half },
    secondRate: null,
    closesAt: null,
    rateError: line.slopeError,
    scatter: line.residualDeviation,
    foundLength: line.intercept / rate,
    rSquared: line.rSquared,
    force: (length) => line.predict(length).value,
    half: (length) => (student === null ? null : student * line.predict(length).error!),
  }
}

function twoRates(input: Tested): Fit {
  const points = pointsOf(input)
  const { spring, kink, residualDeviation } = fitProgressive(points.map(([length, force]) => [input.freeLength - length, force] as const))
  const rates = slopesOf(spring)
  return {
    kind: kink !== null ? 'two rates' : points.length < FEWEST_FOR_TWO ? 'too few readings to look for two rates' : 'no reason for two rates',
    rate: rates[0]!,
    secondRate: rates[1] ?? null,
    closesAt: kink,
    rateError: null,
    scatter: residualDeviation,
    foundLength: null,
    rSquared: null,
    force: (length) => springForce(spring, Math.max(0, input.freeLength - length)),
    half: () => null,
  }
}

/** The slope at first, and once the softer group has closed. */
function slopesOf(spring: readonly CoilGroup[]): number[] {
  if (spring.length === 1) return [spring[0]!.rate]
  const small = 1e-9
  return [springForce(spring, small) / small, spring.at(-1)!.rate]
}

const fitOf = (input: Tested): Fit => {
  refuseUseless(input)
  return input.fit === 'two' ? twoRates(input) : oneRate(input)
}

export default defineCalculator({
  id: 'spring-test',
  version: 1,
  title: 'Spring test',
  question: 'Which spring?',
  answers: 'What rate a set of force readings gives, how sure it is, and whether the spring has one rate or two.',
  assumes: [
    'The spring stands straight between flat plates, and the first stretch that seats its ends was left out.',
    'The readings were taken going one way.',
    'One rate: a straight line by least squares. Its ± is Student’s factor times the standard error, and never less than what the ± of the readings allows (JCGM 100).',
    'Two rates: each force starts from no force at the free length, and the second rate is kept only where an F test at 5 % asks for it.',
  ],
  leavesOut: [
    'Rubbing on the guide rod, which reads as force one way and as less of it the other.',
    'A scale that is wrong throughout by the same share: the rate is wrong by that share, and no scatter shows it.',
  ],
  inputs,
  outputs,
  compute(input) {
    const fit = fitOf(input)
    const misses = pointsOf(input).map(([length, force]): [number, number, number] => [length, force, force - fit.force(length)])
    const worst = misses.reduce((most, [, , miss]) => (Math.abs(miss) > Math.abs(most) ? miss : most), 0)
    const { rate, secondRate, closesAt, kind, rateError, scatter, foundLength, rSquared } = fit
    return {
      rate,
      within: typeof rate === 'number' ? null : (rate.high - rate.low) / 2 / (rate.value ?? rate.high),
      secondRate,
      closesAt,
      kind,
      rateError,
      scatter,
      worst,
      foundLength,
      rSquared,
      misses,
    }
  },
  picture(input) {
    const fit = fitOf(input)
    const lengths = input.rows.map(([length]) => length!)
    const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)]
    const places = Array.from({ length: 49 }, (_, step) => longest - ((longest - shortest) * step) / 48)
    return { line: places.map((length): Point => [length, fit.force(length)]), half: places.map((length) => fit.half(length)) }
  },
  remarks: remarksOf,
})

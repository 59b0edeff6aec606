import { coverageFactor, fitLine, fitProgressive, sample, springForce } from '../../core/index.ts'
import type { CoilGroup } from '../../core/index.ts'
import type { CodeOf, InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import { COVERAGE, expanded, standardFromLimit } from '../../machine/measured.ts'
import type statement from './statement.ts'

type Input = InputOf<typeof statement>

/** The choice of one rate or two needs this many readings: three are used up by the two-rate spring. */
const FEWEST_FOR_TWO = 5

type Point = readonly [length: number, force: number]
const pointsOf = ({ rows }: Input): Point[] =>
  rows.map(([length, force]): Point => [length!, force!])

interface Fit {
  kind: CodeOf<typeof statement, 'kind'>
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

function refuseUseless(input: Input): void {
  const lengths = input.rows.map(([length]) => length!)
  if (Math.max(...lengths) === Math.min(...lengths))
    throw new InputRefusal(
      'rows',
      'At least two different lengths are needed for a slope. Read the force at another length',
    )
  if (input.fit === 'two' && Math.max(...lengths) > input.freeLength)
    throw new InputRefusal(
      'freeLength',
      'The free length cannot be shorter than the longest length read. Check both',
    )
}

/** Standard error of the slope that the ± of the readings alone would give at these lengths. */
function errorOfReadings(points: readonly Point[], slope: number, input: Input): number {
  const mean = points.reduce((sum, [length]) => sum + length, 0) / points.length
  const spread = Math.sqrt(points.reduce((sum, [length]) => sum + (length - mean) ** 2, 0))
  return (
    Math.hypot(
      standardFromLimit(input.forcePlusMinus),
      slope * standardFromLimit(input.lengthPlusMinus),
    ) / spread
  )
}

function oneRate(input: Input): Fit {
  const points = pointsOf(input)
  // force against length falls: the rate is the slope with its sign turned
  const line = fitLine(points)
  const rate = -line.slope
  if (!(rate > 0))
    throw new InputRefusal(
      'rows',
      'The force must rise as the spring gets shorter. Check whether the columns are length, then force',
    )
  const student =
    points.length > 2
      ? coverageFactor({ degreesOfFreedom: points.length - 2, probability: COVERAGE })
      : null
  const half = Math.max(
    expanded(errorOfReadings(points, rate, input)),
    student === null ? 0 : student * line.slopeError!,
  )
  return {
    kind: points.length < 3 ? 'one-slope' : 'one-rate',
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

function twoRates(input: Input): Fit {
  const points = pointsOf(input)
  const { spring, kink, residualDeviation } = fitProgressive(
    points.map(([length, force]) => [input.freeLength - length, force] as const),
  )
  const rates = slopesOf(spring)
  return {
    kind: kink !== null ? 'two-rates' : points.length < FEWEST_FOR_TWO ? 'too-few' : 'no-reason',
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

const fitOf = (input: Input): Fit => {
  refuseUseless(input)
  return input.fit === 'two' ? twoRates(input) : oneRate(input)
}

/** SI in, SI out. */
function compute(input: Input): OutputOf<typeof statement> {
  const fit = fitOf(input)
  const misses = pointsOf(input).map(([length, force]): [number, number, number] => [
    length,
    force,
    force - fit.force(length),
  ])
  const worst = misses.reduce(
    (most, [, , miss]) => (Math.abs(miss) > Math.abs(most) ? miss : most),
    0,
  )
  const { rate, secondRate, closesAt, kind, rateError, scatter, foundLength, rSquared } = fit
  return {
    rate,
    within:
      typeof rate === 'number' ? null : (rate.high - rate.low) / 2 / (rate.value ?? rate.high),
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
}

/** The fit over the lengths read [m, N], and half the width of its 95 % band [N]. */
function picture(input: Input) {
  const fit = fitOf(input)
  const lengths = input.rows.map(([length]) => length!)
  const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)]
  const places = sample(longest, shortest, 48)
  return {
    line: places.map((length): Point => [length, fit.force(length)]),
    half: places.map((length) => fit.half(length)),
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input) }
  },
})

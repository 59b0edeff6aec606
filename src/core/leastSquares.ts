import { inverseOf } from './covariance.ts'
import { DomainError } from './domain.ts'
import { backSolve, columnLength, type Matrix } from './qr.ts'
import { clipped, gain, linearise, type Search } from './search.ts'
import { type LeftOver, slopeFinder } from './slopes.ts'
import { scaledLength, trustStep } from './trustStep.ts'

/** A sum of squares to make least: what is left over at given parameters, where to start, and how far each parameter may go. */
export interface LeastSquares {
  leftOver: (parameters: readonly number[]) => ArrayLike<number>
  start: readonly number[]
  /** of what size each parameter is (absent: as it starts, or 1) */
  sizes?: readonly number[]
  lower?: readonly number[]
  upper?: readonly number[]
  /** how far the first step may reach, as a share of the start, each parameter counted by what it does */
  firstReach?: number
  /** whether slopes are worth four points each (absent: they are) */
  fine?: boolean
  /** after how many rounds to give up */
  rounds?: number
  /** what is no gain in the sum of squares, as a share of it, and no last step, in what it does to what is left over (absent: rounding) */
  enough?: { gain: number; step: number }
}

/** Where the sum of squares is least, what is left over there, its slopes, and the inverse of their triangle (null: some parameters cannot be told apart). */
export interface LeastSquaresFit {
  parameters: number[]
  leftOver: ArrayLike<number>
  slopes: Matrix
  inverse: Matrix | null
  iterations: number
  converged: boolean
}

const ROUNDS = 2000
// What one more step would gain, as a share: below it sums of squares differ by rounding alone.
const NO_GAIN = 1e-13
// A step as a share of the parameters.
const NO_STEP = 1e-13

/**
 * Least squares by the method of Levenberg and Marquardt in Moré's form: a step within a reach that grows and shrinks with what the steps are worth,
 * by reflections on scaled slopes. Parameters at the end of their range that want to go further are held. Ends with whole steps for the last digits.
 * Source: Levenberg, Quarterly of Applied Mathematics 2 (1944) 164–168; Marquardt, SIAM Journal 11 (1963) 431–441; Moré 1978 (all from memory).
 */
export function leastSquares(problem: LeastSquares): LeastSquaresFit {
  const search = begin(problem)
  const enough = problem.enough ?? { gain: NO_GAIN, step: 0 }
  let settled = false
  while (!settled && search.iterations < (problem.rounds ?? ROUNDS)) {
    search.iterations++
    settled = improve(search, enough.gain)
  }
  const inverse = finish(search, enough.step)
  const { parameters, leftOver, slopes, iterations } = search
  return {
    parameters,
    leftOver,
    slopes,
    inverse,
    iterations,
    converged: settled && inverse !== null,
  }
}

function begin({
  leftOver,
  start,
  sizes: given,
  fine,
  lower,
  upper,
  firstReach = 1,
}: LeastSquares): Search {
  const attempt = attempted(leftOver)
  const here = leftOver(start)
  if (attempt(start) === null)
    throw new DomainError('start', start, 'must be parameters that give finite values')
  const slopesAt = slopeFinder(attempt, given ?? start.map((value) => Math.abs(value) || 1), fine)
  const slopes = slopesAt(start, here)
  if (slopes === null) throw new DomainError('start', start, 'must have finite values beside it')
  const sizes = start.map((_, j) => columnLength(slopes, j) || 1)
  return {
    attempt,
    slopesAt,
    lower: lower ?? start.map(() => -Infinity),
    upper: upper ?? start.map(() => Infinity),
    parameters: [...start],
    leftOver: here,
    slopes,
    sizes,
    reach: firstReach * (scaledLength(start, sizes) || 1),
    damping: 0,
    iterations: 0,
    idle: 0,
  }
}

// Parameters that a step tries out may make no sense: the step is then too long. At the start a refusal is the caller's to see.
export function attempted(leftOver: LeastSquares['leftOver']): LeftOver {
  return (parameters) => {
    try {
      const left = leftOver(parameters)
      return Number.isFinite(sumOfSquares(left)) ? left : null
    } catch (error) {
      if (error instanceof DomainError) return null
      throw error
    }
  }
}

/** Sum of the squares of a list of numbers. */
export function sumOfSquares(values: ArrayLike<number>): number {
  let sum = 0
  for (let i = 0; i < values.length; i++) sum += values[i]! * values[i]!
  return sum
}

// Each try reaches at most half as far: after so many nothing is left of a step.
const TRIES = 200
// On a corner steps promise more than they give; after so many rounds that gain nothing, there is nothing to gain.
const IDLE = 3

/** One round: shorter and shorter steps until one is worth taking. True where nothing more is to be gained. */
function improve(search: Search, noGain: number): boolean {
  const { slopes, sizes } = search
  search.sizes = sizes.map((size, j) => Math.max(size, columnLength(slopes, j)))
  const at = linearise(search)
  const sum = sumOfSquares(search.leftOver)
  if (at.size === 0 || sum === 0) return true
  for (let tries = 0; tries < TRIES; tries++) {
    const { step, damping } = trustStep(at, search.reach, search.damping)
    const next = clipped(search, at, step)
    const expected = gain(at, next.step) / sum
    const length = scaledLength(next.step, at.sizes)
    const left = search.attempt(next.parameters)
    const gained = left === null ? -Infinity : 1 - sumOfSquares(left) / sum
    judge(search, { expected, gained, length, damping })
    const still = expected <= noGain && gained <= noGain
    const worth =
      left !== null && gained > 0 && gained > 1e-4 * expected && take(search, next.parameters, left)
    if (still || search.reach <= NO_STEP * scaledLength(search.parameters, search.sizes))
      return true
    if (!worth) continue
    search.idle = gained <= noGain ? search.idle + 1 : 0
    return search.idle === IDLE
  }
  return true
}

/** Moves to other parameters, if slopes can be found there. */
function take(search: Search, parameters: number[], leftOver: ArrayLike<number>): boolean {
  const slopes = search.slopesAt(parameters, leftOver)
  if (slopes === null) {
    search.reach /= 10
    return false
  }
  Object.assign(search, { parameters, leftOver, slopes })
  return true
}

/** Lets the next step reach further, or less far, by what this one gained of what it should have. */
function judge(
  search: Search,
  {
    expected,
    gained,
    length,
    damping,
  }: { expected: number; gained: number; length: number; damping: number },
): void {
  search.damping = damping
  if (search.iterations === 1) search.reach = Math.min(search.reach, length)
  const ratio = expected > 0 ? gained / expected : -1
  if (ratio <= 0.25) {
    const shorter =
      gained < -1 ? 0.1 : gained >= 0 ? 0.5 : Math.max(0.1, expected / (2 * (expected - gained)))
    search.reach = shorter * Math.min(search.reach, 10 * length)
    search.damping = damping / shorter
  } else if (damping === 0 || ratio >= 0.75) {
    search.reach = 2 * length
    search.damping = damping / 2
  }
}

const LAST_STEPS = 30

/** Whole steps for as long as each is clearly shorter than the one before; then the inverse of the triangle of all slopes. */
function finish(search: Search, shortest: number): Matrix | null {
  let before = Infinity
  for (let round = 0; round < LAST_STEPS; round++) {
    const at = linearise(search)
    const whole = backSolve(at.triangle, at.size, at.size)
    const length = whole === null ? Infinity : scaledLength(whole, at.sizes)
    if (whole === null || !(length < 0.7 * before)) break
    const next = clipped(search, at, whole)
    const left = search.attempt(next.parameters)
    if (left === null || sumOfSquares(left) > sumOfSquares(search.leftOver) * (1 + 1e-9)) break
    if (!take(search, next.parameters, left) || length <= shortest) break
    before = length
  }
  return inverseOf(search.slopes)
}

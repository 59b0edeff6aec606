import { covarianceOf } from './covariance.ts'
import { DomainError, finite, list, positive, record, representable } from './domain.ts'
import { leastSquares, type LeastSquaresFit, sumOfSquares } from './leastSquares.ts'

/** A curve through readings: the model, what was set and read, and where its parameters start; units are the caller's. */
export interface CurveToFit<X> {
  /** what should be read where `x` is set */
  model: (parameters: readonly number[], x: X) => number
  points: readonly (readonly [x: X, y: number])[]
  start: readonly number[]
  /** standard uncertainty of each reading; absent: alike and unknown, found from the scatter */
  uncertainties?: readonly number[]
  /** ends of each parameter's range (absent: none) */
  lower?: readonly number[]
  upper?: readonly number[]
}

/** A fitted curve. Errors are standard deviations; null where the readings cannot tell them. */
export interface NonlinearFit {
  parameters: number[]
  errors: number[] | null
  covariance: number[][] | null
  /** read less fitted, in the unit of the readings */
  residuals: number[]
  /** of the residuals, each divided by its uncertainty where that is given */
  residualSumOfSquares: number
  residualDeviation: number | null
  degreesOfFreedom: number
  iterations: number
  /** false: no least sum of squares was reached, or some parameters cannot be told apart; the figures are then no result */
  converged: boolean
}

// A library would serve, but the core imports nothing, and the kept ones of npm that were looked at give the values without their covariance.
// Most curves are reached with first steps as long as the start; one that flings a parameter out of sight needs shorter ones, a slow one longer.
const FIRST_REACHES = [1, 0.1, 100]

/**
 * Fits a curve that is not straight in its parameters by weighted least squares, with covariance to first order; slopes are found by differences. With
 * `uncertainties` the covariance is theirs alone, without them it is scaled by the scatter about the curve. Refuses fewer points than parameters, lists of
 * unequal length, an uncertainty not above 0, a start outside its range, and a start at which the model gives no finite values.
 * Source: Moré 1978 for the steps (from memory); JCGM 100:2008, 5.2, and NIST StRD, nonlinear regression, for what it has to give.
 */
export function fitNonlinear<X>(curve: CurveToFit<X>): NonlinearFit {
  const { model, points, start } = record('curve', curve)
  const weights = weightsOf(curve)
  const leftOver = (parameters: readonly number[]): Float64Array =>
    Float64Array.from(points, ([x, y], i) => (model(parameters, x) - y) * weights[i]!)
  let best: LeastSquaresFit | null = null
  for (const firstReach of FIRST_REACHES) {
    const fit = leastSquares({ leftOver, start, ...ranges(curve), firstReach })
    if (best === null || sumOfSquares(fit.leftOver) < sumOfSquares(best.leftOver)) best = fit
    if (fit.converged) break
  }
  return told(curve, best!)
}

function weightsOf<X>({ points, start, uncertainties }: CurveToFit<X>): number[] {
  list('start', start, 1).forEach((value) => finite('start', value))
  for (const point of list('points', points, start.length))
    finite('points', list('points', point as readonly unknown[], 2)[1])
  if (uncertainties == null) return points.map(() => 1)
  if (list('uncertainties', uncertainties).length !== points.length) {
    throw new DomainError('uncertainties', uncertainties, 'must hold one entry for each point')
  }
  return uncertainties.map((uncertainty) => 1 / positive('uncertainties', uncertainty))
}

function ranges<X>({ start, lower, upper }: CurveToFit<X>): { lower: number[]; upper: number[] } {
  const ends = (name: string, given: readonly number[] | undefined, absent: number): number[] => {
    if (given != null && list(name, given).length !== start.length)
      throw new DomainError(name, given, 'must hold one entry for each parameter')
    return start.map((_, j) => given?.[j] ?? absent)
  }
  const low = ends('lower', lower, -Infinity)
  const high = ends('upper', upper, Infinity)
  start.forEach((value, j) => {
    if (!(value >= low[j]! && value <= high[j]!))
      throw new DomainError('start', value, `must lie from ${low[j]} to ${high[j]}`)
  })
  return { lower: low, upper: high }
}

function told<X>(
  { points, start, uncertainties }: CurveToFit<X>,
  { parameters, leftOver, inverse, iterations, converged }: LeastSquaresFit,
): NonlinearFit {
  const degreesOfFreedom = points.length - start.length
  const residualSumOfSquares = sumOfSquares(leftOver)
  const variance = degreesOfFreedom > 0 ? residualSumOfSquares / degreesOfFreedom : null
  const scale = uncertainties == null ? variance : 1
  const covariance = inverse === null || scale === null ? null : covarianceOf(inverse, scale)
  return {
    parameters,
    errors: covariance?.map((row, j) => Math.sqrt(row[j]!)) ?? null,
    covariance,
    residuals: Array.from(leftOver, (left, i) => -left * (uncertainties?.[i] ?? 1)),
    residualSumOfSquares: representable('residualSumOfSquares', residualSumOfSquares),
    residualDeviation: variance === null ? null : Math.sqrt(variance),
    degreesOfFreedom,
    iterations,
    converged,
  }
}

import type { Bike, PointMass } from './bike.ts'
import { contradicted } from './bikeContradictions.ts'
import {
  type BikeProblem,
  bikeProblem,
  predictedAt,
  type Prior,
  riddenAt,
  valuesAt,
} from './bikeProblem.ts'
import { slopesOffStops, solveBike } from './bikeSolve.ts'
import { product, standsOut } from './contradictions.ts'
import { covarianceOf, inverseOf } from './covariance.ts'
import { DomainError, positive, record } from './domain.ts'
import { type LeastSquaresFit, sumOfSquares } from './leastSquares.ts'
import type { Observation } from './observation.ts'
import type { Estimate } from './plusMinus.ts'
import type { Matrix } from './qr.ts'

/**
 * A fitted figure with its standard uncertainty; what was known beforehand (null: nothing), and the share of that uncertainty which remains with the
 * readings [1].
 */
export interface FittedValue extends Estimate {
  prior: Estimate | null
  remaining: number | null
}

/**
 * A reading and what the fitted bike gives in its place [m or N]. `normalised`: read less fitted, in the standard deviation of that difference [1]; 0
 * where nothing else speaks of what was read.
 */
export interface Residual {
  name: string
  read: number
  fitted: number
  normalised: number
}

/** A bike fitted to its readings: plain data, that can go to a worker and back. */
export interface BikeFit {
  bike: Bike
  /** who rides it, fitted with it; null if the prior has nobody */
  rider: PointMass | null
  /** names of the fitted figures, in the order of the covariance */
  parameters: string[]
  /** in SI, by name */
  values: Record<string, FittedValue>
  covariance: number[][]
  /** in the order of the readings */
  residuals: Residual[]
  /** pairs of readings, or of a reading and a figure whose prior it contradicts, that contradict each other; the plainest first */
  contradictions: [string, string][]
  /** those of the contradictions that exchanging the two values would mend */
  exchanged: [string, string][]
  /** figures that the readings did not narrow */
  untouched: string[]
  /** sum of the squares of everything left over, each in its uncertainty: of the size of the number of readings where all is well */
  chiSquared: number
  iterations: number
  converged: boolean
}

const STANDS_OUT = 2.5
// Readings that leave more than this share of an uncertainty have not touched it.
const UNTOUCHED = 0.95

/**
 * Fits a bike to what was read on it, by least squares weighted with the uncertainties; what was known beforehand counts as observations of its own, so
 * that few readings move few figures, and no readings give the prior back. Every stance is `solveStance`, friction by `settle`; a hanging wheel hangs on its
 * top-out spring; an axle raised on scales stands as on a larger wheel. Lengths at full extension and free lengths of springs are found along with the bike.
 * Uncertainties are to first order and take the readings as independent of each other. A reading that stands out by more than `threshold` (2.5) of its own
 * standard deviations is named with the one that it contradicts most; by chance alone, 20 good readings bring a pair in about one fit of four, so a pair is
 * a reason to read again, not a fault found.
 * Refuses readings and ranges without meaning, two of one name, ranges of parts that the bike lacks, a rider who is not given, and figures that cannot stand.
 * Source: weighted least squares with prior observations, JCGM 100:2008, 4.3.7 and 5.2, and JCGM 102:2011 for several figures with one covariance (both
 * from memory); `fitNonlinear` for the steps.
 */
export function fitBike(
  observations: readonly Observation[],
  prior: Prior,
  options: { threshold?: number } = {},
): BikeFit {
  const threshold = positive(
    'options.threshold',
    record('options', options).threshold ?? STANDS_OUT,
  )
  const problem = bikeProblem(observations, prior)
  const fit = solveBike(problem)
  const values = valuesAt(problem, fit.parameters)
  const fitted = predictedAt(problem, values)
  const inverse = inverseOf(slopesOffStops(problem, fit))
  if (fit.inverse === null || inverse === null)
    throw new DomainError(
      'observations',
      observations,
      'must be enough to tell all lengths at full extension and free lengths',
    )
  const out = outBy(fit)
  return {
    ...figuresOf(problem, values, inverse),
    residuals: observations.map(({ name, value }) => {
      const row = problem.observations.findIndex((one) => one.name === name)
      return { name, read: value, fitted: fitted[row]!, normalised: out[row]! }
    }),
    ...contradicted(problem, fit, out, threshold),
    chiSquared: sumOfSquares(fit.leftOver),
    iterations: fit.iterations,
    converged: fit.converged,
  }
}

type Figures = Pick<
  BikeFit,
  'bike' | 'rider' | 'parameters' | 'values' | 'covariance' | 'untouched'
>

function figuresOf(problem: BikeProblem, values: readonly number[], inverse: Matrix): Figures {
  const { unknowns } = problem
  const covariance = covarianceOf(inverse).map((row, i) =>
    row.map((one, j) => one * unknowns[i]!.unit * unknowns[j]!.unit),
  )
  const entries = unknowns.map(({ name, prior }, j): [string, FittedValue] => {
    const uncertainty = Math.sqrt(covariance[j]![j]!)
    return [
      name,
      {
        value: values[j]!,
        uncertainty,
        prior,
        remaining: prior && uncertainty / prior.uncertainty,
      },
    ]
  })
  return {
    ...riddenAt(problem, values),
    parameters: unknowns.map(({ name }) => name),
    values: Object.fromEntries(entries),
    covariance,
    untouched: entries.flatMap(([name, { remaining }]) =>
      remaining !== null && remaining > UNTOUCHED ? [name] : [],
    ),
  }
}

/** How far each row stands out of the fit, read less fitted. */
function outBy({ leftOver, slopes, inverse }: LeastSquaresFit): number[] {
  const { columns, entries } = product(slopes, inverse!)
  return Array.from(leftOver, (left, i) => {
    const share = sumOfSquares(entries.subarray(i * columns, (i + 1) * columns))
    return -Math.sign(left) * standsOut(left, 1 - share)
  })
}

import { type BikeProblem, leftOverAt, predictedAt, valuesAt } from './bikeProblem.ts'
import { leastSquares, type LeastSquaresFit, sumOfSquares } from './leastSquares.ts'
import type { At } from './observation.ts'
import type { Matrix } from './qr.ts'

/** How far each unknown can go, counted in its unit from its start. */
export function endsOf({ unknowns }: BikeProblem): { lower: number[]; upper: number[] } {
  return {
    lower: unknowns.map(({ least, start, unit }) => (least - start) / unit),
    upper: unknowns.map(({ most, start, unit }) => (most - start) / unit),
  }
}

// The first steps may cross the whole prior.
const FIRST_REACH = 100
// A bike is found in about ten rounds; one that takes more than this lies on a corner between two stops.
const ROUNDS = 100
// A millionth of a sum of squares near the number of readings is less than a hundredth of an uncertainty; whole steps then add the other digits.
const ENOUGH = { gain: 1e-6, step: 1e-6 }

/** The unknowns, counted from their starts, that make the sum of squares of what is left over least: the nearest such place to where the search begins. */
export function solveFrom(
  problem: BikeProblem,
  leftOver: (counted: readonly number[]) => Float64Array,
  start: readonly number[],
): LeastSquaresFit {
  const sizes = start.map(() => 1)
  return leastSquares({
    leftOver,
    start,
    sizes,
    fine: false,
    ...endsOf(problem),
    firstReach: FIRST_REACH,
    rounds: ROUNDS,
    enough: ENOUGH,
  })
}

/**
 * The fit of a bike. An end that stands on its stop says nothing of how hard it is pressed there, so the sum of squares can have a second least place
 * beyond that corner: it is looked for from where the readings lead if those near a stop are taken to stand on it.
 */
export function solveBike(problem: BikeProblem): LeastSquaresFit {
  const leftOver = (counted: readonly number[]): Float64Array => leftOverAt(problem, counted)
  const start = problem.unknowns.map(() => 0)
  const first = solveFrom(problem, leftOver, start)
  const onStops = longestOf(problem, readingsOnStops(problem, first, NEAR_THE_END, true))
  if (!onStops.includes(true)) return first
  const taken = (counted: readonly number[]): Float64Array => leftOnStops(problem, counted, onStops)
  const second = solveFrom(problem, leftOver, solveFrom(problem, taken, start).parameters)
  return sumOfSquares(second.leftOver) < sumOfSquares(first.leftOver) ? second : first
}

// A bike alone and a bike with its rider do not stand on one stop: of the lengths at an end only the longest may, and those as long as it.
function longestOf(
  { observations, uncertainties }: BikeProblem,
  near: readonly boolean[],
): boolean[] {
  const lengths = (at: At): number[] =>
    observations.flatMap((one, i) =>
      near[i] && one.kind === 'length' && one.at === at ? [one.value] : [],
    )
  const longest = { front: Math.max(...lengths('front')), rear: Math.max(...lengths('rear')) }
  return observations.map(
    (one, i) =>
      near[i]! &&
      one.kind !== 'deepest' &&
      (one.kind !== 'length' || longest[one.at] - one.value <= AT_THE_END * uncertainties[i]!),
  )
}

/** What is left over if some of the readings stand on their stops: a length is then that at full extension, and the others say nothing. */
function leftOnStops(
  problem: BikeProblem,
  counted: readonly number[],
  onStops: readonly boolean[],
): Float64Array {
  const { observations, uncertainties, unknowns } = problem
  const values = valuesAt(problem, counted)
  return leftOverAt(problem, counted).map((left, i) => {
    const observation = observations[i]
    if (!observation || !onStops[i]) return left
    if (observation.kind !== 'length') return 0
    return (
      (values[unknowns.findIndex(({ name }) => name === `${observation.at}Extended`)]! -
        observation.value) /
      uncertainties[i]!
    )
  })
}

// A travel nearer to its end than this many uncertainties of the reading may stand on it.
const AT_THE_END = 3
// From further away, counted in the uncertainty of the whole distance, a fit can still be led astray by the corner.
const NEAR_THE_END = 6

/** Which readings are of an end that may stand on its stop: nearer to it than `near` of their uncertainties, of the length at full extension or not. */
function readingsOnStops(
  problem: BikeProblem,
  fit: LeastSquaresFit,
  near: number,
  whole: boolean,
): boolean[] {
  const { observations, uncertainties, unknowns, ridden } = problem
  const values = valuesAt(problem, fit.parameters)
  return predictedAt(problem, values).map((fitted, i) => {
    const observation = observations[i]!
    if (observation.kind === 'deepest')
      return ridden.bike.fork.travel - fitted <= near * uncertainties[i]!
    if (observation.kind === 'travel') return fitted <= near * uncertainties[i]!
    if (observation.kind !== 'length' || observation.settled === 'hanging') return false
    const extended = unknowns.findIndex(({ name }) => name === `${observation.at}Extended`)
    const more = whole ? unknowns[extended]!.unit * deviationOf(fit, extended) : 0
    return values[extended]! - fitted <= near * Math.hypot(uncertainties[i]!, more)
  })
}

/** Standard deviation of an unknown, counted in its unit. */
function deviationOf({ inverse }: LeastSquaresFit, j: number): number {
  return inverse === null
    ? 0
    : Math.sqrt(
        sumOfSquares(inverse.entries.subarray(j * inverse.columns, (j + 1) * inverse.columns)),
      )
}

/**
 * Slopes for the covariance: a reading of an end that may stand on its stop bounds the bike from one side, so it guides the fit but makes no figure of the
 * bike narrower.
 */
export function slopesOffStops(problem: BikeProblem, fit: LeastSquaresFit): Matrix {
  const { slopes } = fit
  const off: Matrix = { ...slopes, entries: slopes.entries.slice() }
  readingsOnStops(problem, fit, AT_THE_END, false).forEach((onStop, i) => {
    if (!onStop) return
    problem.unknowns.forEach(({ name }, j) => {
      if (!name.endsWith('Extended')) off.entries[i * off.columns + j] = 0
    })
  })
  return off
}

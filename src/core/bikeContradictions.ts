import { type BikeProblem, leftOverAt } from './bikeProblem.ts'
import { endsOf, solveFrom } from './bikeSolve.ts'
import { type Contradiction, contradictions, type Exchange, type Fitted } from './contradictions.ts'
import { inverseOf } from './covariance.ts'
import { attempted, type LeastSquaresFit } from './leastSquares.ts'
import { slopeFinder } from './slopes.ts'

/** Pairs of names that contradict each other: two readings, or a reading and the figure whose prior it contradicts. */
export interface Contradicted {
  contradictions: [string, string][]
  /** those of them that exchanging the two values would mend */
  exchanged: [string, string][]
}

// A reading further out than this drags the whole fit with it.
const DRAGGED = 6

/** The pairs of a fit that contradict each other, from how far each row stands out, where one stands out by more than `threshold`. */
export function contradicted(
  problem: BikeProblem,
  fit: LeastSquaresFit,
  out: readonly number[],
  threshold: number,
): Contradicted {
  const furthest = Math.max(0, ...out.map(Math.abs))
  if (furthest <= threshold || fit.inverse === null) return { contradictions: [], exchanged: [] }
  const exchanges = exchangesOf(problem)
  const plain: Fitted = {
    ...fit,
    inverse: fit.inverse,
    ...endsOf(problem),
    readings: problem.observations.length,
  }
  const sober = furthest > DRAGGED ? soberly(problem) : null
  const clear = sober ? contradictions(sober, exchanges, threshold) : []
  const pairs = clear.length > 0 ? clear : contradictions(plain, exchanges, threshold)
  const told = ({ rows }: Contradiction): [string, string] => namesOf(problem, rows)
  return {
    contradictions: pairs.map(told),
    exchanged: pairs.filter(({ exchanged }) => exchanged).map(told),
  }
}

/** Readings by name before a figure, so that the order in which they were given changes nothing. */
function namesOf(
  { observations, known, unknowns }: BikeProblem,
  rows: readonly number[],
): [string, string] {
  const readings = rows.flatMap((row) => observations[row]?.name ?? []).sort()
  const figures = rows.flatMap(
    (row) => unknowns[known[row - observations.length] ?? -1]?.name ?? [],
  )
  const [one, other] = [...readings, ...figures]
  return [one!, other!]
}

// Beyond this many uncertainties a reading counts less and less.
const SOBER = 2
const sobered = (one: number): number =>
  Math.sign(one) * SOBER * Math.sqrt(Math.log1p((one / SOBER) ** 2))

/**
 * The fit as straight lines about a place that no single reading can drag along: readings far out count little there.
 * Source: Cauchy weights, as Huber and Ronchetti, Robust Statistics, have them (from memory).
 */
function soberly(problem: BikeProblem): Fitted | null {
  const leftOver = (counted: readonly number[]): Float64Array => leftOverAt(problem, counted)
  const sober = solveFrom(
    problem,
    (counted) => leftOver(counted).map(sobered),
    problem.unknowns.map(() => 0),
  )
  const here = leftOver(sober.parameters)
  const slopes = slopeFinder(
    attempted(leftOver),
    sober.parameters.map(() => 1),
    false,
  )(sober.parameters, here)
  const inverse = slopes && inverseOf(slopes)
  if (slopes === null || inverse === null) return null
  return {
    leftOver: here,
    slopes,
    inverse,
    parameters: sober.parameters,
    ...endsOf(problem),
    readings: problem.observations.length,
  }
}

/** Readings that could have been written in each other's place: of one kind, at one end, or two scales. */
function exchangesOf({ observations, uncertainties }: BikeProblem): Exchange[] {
  return observations.flatMap((one, i) =>
    observations.slice(0, i).flatMap((other, j): Exchange[] => {
      if (
        one.kind !== other.kind ||
        (one.kind !== 'load' && 'at' in one && 'at' in other && one.at !== other.at)
      )
        return []
      const change = one.value - other.value
      return [{ rows: [j, i], changes: [-change / uncertainties[j]!, change / uncertainties[i]!] }]
    }),
  )
}

import { blankMatrix, type Matrix } from './qr.ts'

/** A fit as straight lines: what is left over of each row in its own uncertainty, the rows' slopes, the inverse of their triangle, and what may be. */
export interface Fitted {
  leftOver: ArrayLike<number>
  slopes: Matrix
  inverse: Matrix
  parameters: readonly number[]
  lower: readonly number[]
  upper: readonly number[]
  /** how many of the rows, the first ones, are readings; the others are priors */
  readings: number
}

/** Two rows that read the same thing, and by how much each would change if their values were exchanged, in its own uncertainty. */
export interface Exchange {
  rows: [number, number]
  changes: [number, number]
}

/** Two rows that contradict each other; whether exchanging their values would mend it. */
export interface Contradiction {
  rows: [number, number]
  exchanged: boolean
}

/** What is left over once the fit has taken its share, and how the rest hangs together: covariances of the left-over values. */
interface Rest {
  left: Float64Array
  covariance: Matrix
  dropped: Set<number>
  /** the parameters, and how they change with a change of each row */
  parameters: Float64Array
  effects: Matrix
  deviations: Float64Array
}

// Below this share of its variance a row is the only one that speaks of a parameter: nothing can contradict it.
const ALONE = 1e-6
// A parameter this many of its standard deviations beyond what can be is no explanation.
const BEYOND = 2
const MOST = 5
// An exchange loses no reading, so it may leave this much more over than going without one.
const NOTHING_LOST = 4

/**
 * Pairs of rows that contradict each other: for as long as some row stands out by more than `threshold` of its own standard deviations, looks for the row
 * without which (or the exchange after which) none does and every parameter can be; its partner is the row without which it stands out least.
 * Source: data snooping after Baarda, Publications on Geodesy 2 (5), 1968; both from memory.
 */
export function contradictions(
  fitted: Fitted,
  exchanges: readonly Exchange[],
  threshold: number,
): Contradiction[] {
  let rest = restOf(fitted)
  const found: Contradiction[] = []
  while (found.length < MOST) {
    if (worst(rest) <= threshold && canBe(rest, fitted)) break
    const single = bestSingle(rest, fitted, threshold)
    const exchange = bestExchange(rest, fitted, exchanges, threshold)
    if (exchange && (!single?.cures || exchange.sum < single.sum + NOTHING_LOST)) {
      found.push({ rows: exchange.rows, exchanged: true })
      break
    }
    if (single === null) break
    found.push({
      rows: [single.row, partnerOf(rest, single.row, fitted.readings)],
      exchanged: false,
    })
    rest = without(rest, single.row)
  }
  return found
}

/** How far a row stands out: what is left over of it, in the standard deviation of that (0 where nothing else speaks of it). */
export function standsOut(left: number, variance: number): number {
  return variance > ALONE ? Math.abs(left) / Math.sqrt(variance) : 0
}

function restOf({ leftOver, slopes, inverse, parameters }: Fitted): Rest {
  const basis = product(slopes, inverse)
  const covariance = residualCovariance(basis)
  const effects = blankMatrix(inverse.rows, slopes.rows)
  for (let p = 0; p < inverse.rows; p++) {
    for (let i = 0; i < slopes.rows; i++) {
      let sum = 0
      for (let k = p; k < inverse.columns; k++)
        sum += inverse.entries[p * inverse.columns + k]! * basis.entries[i * basis.columns + k]!
      effects.entries[p * slopes.rows + i] = sum
    }
  }
  const all = Float64Array.from(leftOver)
  return {
    left: times(covariance, all),
    covariance,
    dropped: new Set(),
    parameters: times(effects, all).map((change, p) => parameters[p]! - change),
    effects,
    deviations: Float64Array.from(parameters, (_, p) =>
      Math.hypot(...inverse.entries.subarray(p * inverse.columns, (p + 1) * inverse.columns)),
    ),
  }
}

/** Covariances of what is left over, from slopes turned into directions at right angles. */
export function residualCovariance(basis: Matrix): Matrix {
  const { rows, columns, entries } = basis
  const covariance = blankMatrix(rows, rows)
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j <= i; j++) {
      let along = i === j ? 1 : 0
      for (let k = 0; k < columns; k++)
        along -= entries[i * columns + k]! * entries[j * columns + k]!
      covariance.entries[i * rows + j] = covariance.entries[j * rows + i] = along
    }
  }
  return covariance
}

/** A matrix times another. */
export function product(a: Matrix, b: Matrix): Matrix {
  const out = blankMatrix(a.rows, b.columns)
  for (let i = 0; i < a.rows; i++) {
    for (let k = 0; k < a.columns; k++) {
      const one = a.entries[i * a.columns + k]!
      for (let j = 0; j < b.columns; j++)
        out.entries[i * b.columns + j]! += one * b.entries[k * b.columns + j]!
    }
  }
  return out
}

function times({ rows, columns, entries }: Matrix, vector: ArrayLike<number>): Float64Array {
  const out = new Float64Array(rows)
  for (let i = 0; i < rows; i++)
    for (let k = 0; k < columns; k++) out[i]! += entries[i * columns + k]! * vector[k]!
  return out
}

const varianceOf = ({ covariance: { entries, columns } }: Rest, row: number): number =>
  entries[row * columns + row]!

const outBy = (rest: Rest, row: number): number =>
  rest.dropped.has(row) ? 0 : standsOut(rest.left[row]!, varianceOf(rest, row))

const worst = (rest: Rest): number =>
  rest.left.reduce((most, _, row) => Math.max(most, outBy(rest, row)), 0)

const misfit = (rest: Rest): number =>
  rest.left.reduce((sum, left, row) => (rest.dropped.has(row) ? sum : sum + left * left), 0)

function canBe({ parameters, deviations }: Rest, { lower, upper }: Fitted): boolean {
  return parameters.every(
    (value, p) =>
      value >= lower[p]! - BEYOND * deviations[p]! && value <= upper[p]! + BEYOND * deviations[p]!,
  )
}

/** The rest as it would be without a row. */
function without(rest: Rest, row: number): Rest {
  const variance = varianceOf(rest, row)
  const { covariance, effects } = rest
  const { rows, entries } = covariance
  const shift = rest.left[row]! / variance
  const leaner = blankMatrix(rows, rows)
  for (let i = 0; i < rows; i++) {
    const tie = entries[i * rows + row]! / variance
    for (let j = 0; j < rows; j++)
      leaner.entries[i * rows + j] = entries[i * rows + j]! - tie * entries[row * rows + j]!
  }
  const freed = blankMatrix(effects.rows, rows)
  for (let p = 0; p < effects.rows; p++) {
    const own = effects.entries[p * rows + row]! / variance
    for (let i = 0; i < rows; i++)
      freed.entries[p * rows + i] = effects.entries[p * rows + i]! - own * entries[row * rows + i]!
  }
  return {
    left: rest.left.map((left, i) => left - shift * entries[i * rows + row]!),
    covariance: leaner,
    dropped: new Set([...rest.dropped, row]),
    parameters: rest.parameters.map((value, p) => value + shift * effects.entries[p * rows + row]!),
    effects: freed,
    deviations: rest.deviations.map((deviation, p) =>
      Math.hypot(deviation, effects.entries[p * rows + row]! / Math.sqrt(variance)),
    ),
  }
}

interface Single {
  row: number
  sum: number
  cures: boolean
}

/** The row without which the rest agrees best, those first without which it is good. */
function bestSingle(rest: Rest, fitted: Fitted, threshold: number): Single | null {
  let best: Single | null = null
  for (let row = 0; row < rest.left.length; row++) {
    if (rest.dropped.has(row) || !(varianceOf(rest, row) > ALONE)) continue
    const after = without(rest, row)
    const cures = worst(after) <= threshold && canBe(after, fitted)
    const one = { row, sum: misfit(after), cures }
    if (
      best === null ||
      (cures && !best.cures) ||
      (cures === best.cures && one.sum < best.sum * (1 - 1e-9))
    )
      best = one
  }
  return best
}

function bestExchange(
  rest: Rest,
  fitted: Fitted,
  exchanges: readonly Exchange[],
  threshold: number,
): { rows: [number, number]; sum: number } | null {
  let best: { rows: [number, number]; sum: number } | null = null
  for (const { rows, changes } of exchanges) {
    if (rows.some((row) => rest.dropped.has(row))) continue
    const after = shifted(rest, rows, changes)
    const sum = misfit(after)
    if (worst(after) <= threshold && canBe(after, fitted) && (best === null || sum < best.sum))
      best = { rows, sum }
  }
  return best
}

function shifted(rest: Rest, rows: readonly number[], changes: readonly number[]): Rest {
  const move = (matrix: Matrix, i: number): number =>
    rows.reduce((sum, row, k) => sum + matrix.entries[i * matrix.columns + row]! * changes[k]!, 0)
  return {
    ...rest,
    left: rest.left.map((left, i) => left + move(rest.covariance, i)),
    parameters: rest.parameters.map((value, p) => value - move(rest.effects, p)),
  }
}

/** The row without which another stands out least: what contradicts it. */
function partnerOf(rest: Rest, row: number, readings: number): number {
  let partner = row
  let least = Infinity
  // Two priors cannot contradict each other: they speak of different things.
  const among = row < readings ? rest.left.length : readings
  for (let other = 0; other < among; other++) {
    if (other === row || rest.dropped.has(other) || !(varianceOf(rest, other) > ALONE)) continue
    const out = outBy(without(rest, other), row)
    // Without its only witness a row stands out no more, whatever it reads.
    if (out < least) [partner, least] = [other, out]
  }
  return partner
}

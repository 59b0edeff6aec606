import { backSolve, blankMatrix, type Matrix, triangularise } from './qr.ts'

/** Least squares at one place: the triangle of the slopes with what is left over carried along as its last column, and a size for each parameter. */
export interface Linearised {
  triangle: Matrix
  size: number
  sizes: readonly number[]
}

/** A step and the damping that made it so short. */
export interface Step {
  step: Float64Array
  damping: number
}

// The length is found to a tenth: what the trust in a step is worth.
const SLACK = 0.1
const ROUNDS = 12

/** Length of a step with each parameter counted in its size. */
export function scaledLength(step: ArrayLike<number>, sizes: readonly number[]): number {
  return Math.hypot(...sizes.map((size, j) => size * step[j]!))
}

/**
 * The step that lowers the linearised sum of squares most among those no longer than `reach`, counted in the parameters' sizes: the whole step where it
 * is short enough, else a damped one, its damping searched from a first guess.
 * Source: Moré, The Levenberg-Marquardt algorithm, Lecture Notes in Mathematics 630 (1978) 105–116 (from memory).
 */
export function trustStep(at: Linearised, reach: number, guess: number): Step {
  const whole = usable(backSolve(at.triangle, at.size, at.size))
  const length = whole ? scaledLength(whole, at.sizes) : Infinity
  if (whole && length <= (1 + SLACK) * reach) return { step: whole, damping: 0 }
  let low = whole ? lowest(at, whole, length, reach) : 0
  let high = Math.max(steepest(at) / reach, Number.MIN_VALUE)
  let damping = Math.min(Math.max(guess, low), high)
  if (damping === 0) damping = high / 1000
  let found: Step = { step: new Float64Array(at.size), damping: high }
  for (let round = 0; round < ROUNDS; round++) {
    const { step, triangle } = damped(at, damping)
    if (step === null) {
      damping = Math.sqrt(Math.max(damping, Number.MIN_VALUE) * high)
      continue
    }
    found = { step, damping }
    const long = scaledLength(step, at.sizes)
    const over = long - reach
    if (Math.abs(over) <= SLACK * reach) break
    if (over > 0) low = damping
    else high = damping
    const next = damping + over / reach / shortening(triangle, at, step, long)
    damping =
      next > low && next < high ? next : Math.max(low, Math.sqrt(Math.max(low, high / 1000) * high))
  }
  return found
}

function usable(step: Float64Array | null): Float64Array | null {
  return step?.every(Number.isFinite) ? step : null
}

// The length falls and bends upward with damping, so the tangent at no damping ends short of the wanted one.
function lowest(at: Linearised, whole: Float64Array, length: number, reach: number): number {
  const low = (length - reach) / (reach * shortening(at.triangle, at, whole, length))
  return Number.isFinite(low) ? low : 0
}

/** Length of the downhill direction, each parameter counted in its size. */
function steepest({ triangle, size, sizes }: Linearised): number {
  const { columns, entries } = triangle
  return Math.hypot(
    ...sizes.map((own, j) => {
      let along = 0
      for (let i = 0; i <= j; i++) along += entries[i * columns + j]! * entries[i * columns + size]!
      return along / own
    }),
  )
}

function damped(
  { triangle, size, sizes }: Linearised,
  damping: number,
): { step: Float64Array | null; triangle: Matrix } {
  const taller = blankMatrix(2 * size, size + 1)
  const { columns } = taller
  for (let i = 0; i < size; i++) {
    for (let j = i; j < columns; j++)
      taller.entries[i * columns + j] = triangle.entries[i * columns + j]!
    taller.entries[(size + i) * columns + i] = Math.sqrt(damping) * sizes[i]!
  }
  triangularise(taller, size)
  return { step: usable(backSolve(taller, size, size)), triangle: taller }
}

/** By what share a step shortens for each unit of damping. */
function shortening(
  { columns, entries }: Matrix,
  { size, sizes }: Linearised,
  step: Float64Array,
  length: number,
): number {
  const q = new Float64Array(size)
  let sum = 0
  for (let i = 0; i < size; i++) {
    let left = (sizes[i]! ** 2 * step[i]!) / length
    for (let k = 0; k < i; k++) left -= entries[k * columns + i]! * q[k]!
    q[i] = left / entries[i * columns + i]!
    sum += q[i]! ** 2
  }
  return sum
}

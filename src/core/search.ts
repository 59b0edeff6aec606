import { blankMatrix, type Matrix, triangularise } from './qr.ts'
import type { LeftOver } from './slopes.ts'
import type { Linearised } from './trustStep.ts'

/** A search for the least sum of squares: where it stands, what is left over there, and how far it trusts its next step. */
export interface Search {
  attempt: LeftOver
  slopesAt: (at: readonly number[], here: ArrayLike<number>) => Matrix | null
  lower: readonly number[]
  upper: readonly number[]
  parameters: number[]
  leftOver: ArrayLike<number>
  slopes: Matrix
  sizes: number[]
  reach: number
  damping: number
  iterations: number
  /** rounds since one gained anything */
  idle: number
}

/** The parameters that are free to move, and least squares in them alone. */
export interface Free extends Linearised {
  free: number[]
}

/** Least squares in the free parameters as straight lines; a parameter at the end of its range that would go on is not free. */
export function linearise(search: Search): Free {
  const free = search.parameters.map((_, j) => j).filter((j) => !isHeld(search, j))
  const { slopes, leftOver } = search
  const triangle = blankMatrix(Math.max(slopes.rows, free.length), free.length + 1)
  for (let i = 0; i < slopes.rows; i++) {
    free.forEach(
      (j, k) =>
        (triangle.entries[i * triangle.columns + k] = slopes.entries[i * slopes.columns + j]!),
    )
    triangle.entries[i * triangle.columns + free.length] = -leftOver[i]!
  }
  triangularise(triangle, free.length)
  return { triangle, size: free.length, sizes: free.map((j) => search.sizes[j]!), free }
}

function isHeld({ parameters, lower, upper, slopes, leftOver }: Search, j: number): boolean {
  const atLow = parameters[j]! <= lower[j]!
  if (!atLow && parameters[j]! < upper[j]!) return false
  let uphill = 0
  for (let i = 0; i < slopes.rows; i++)
    uphill += slopes.entries[i * slopes.columns + j]! * leftOver[i]!
  return atLow ? uphill >= 0 : uphill <= 0
}

/** A step cut off where parameters may go no further. */
export function clipped(
  { parameters, lower, upper }: Search,
  { free }: Free,
  step: Float64Array,
): { parameters: number[]; step: number[] } {
  const next = [...parameters]
  free.forEach(
    (j, k) => (next[j] = Math.min(Math.max(parameters[j]! + step[k]!, lower[j]!), upper[j]!)),
  )
  return {
    parameters: next,
    step: free.map((j, k) =>
      next[j] === parameters[j]! + step[k]! ? step[k]! : next[j]! - parameters[j]!,
    ),
  }
}

/** By how much a step lowers the linearised sum of squares. */
export function gain({ triangle, size }: Free, step: readonly number[]): number {
  const { columns, entries } = triangle
  let sum = 0
  for (let i = 0; i < size; i++) {
    let change = 0
    for (let j = i; j < size; j++) change += entries[i * columns + j]! * step[j]!
    sum += change * (2 * entries[i * columns + size]! - change)
  }
  return sum
}

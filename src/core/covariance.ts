import { blankMatrix, columnLength, inverseTriangle, type Matrix, triangularise } from './qr.ts'

// With columns of length 1 the largest entry of the inverse says how nearly they lie in one plane; beyond this only rounding tells them apart.
const IN_ONE_PLANE = 1e12

/** The inverse of the triangle of slopes, or null where rounding alone tells two parameters apart. */
export function inverseOf(slopes: Matrix): Matrix | null {
  const { rows, columns, entries } = slopes
  const lengths = Array.from({ length: columns }, (_, j) => columnLength(slopes, j))
  if (rows < columns || lengths.some((length) => length === 0)) return null
  const triangle = blankMatrix(rows, columns)
  for (let k = 0; k < entries.length; k++) triangle.entries[k] = entries[k]! / lengths[k % columns]!
  triangularise(triangle, columns)
  const inverse = inverseTriangle(triangle, columns)
  if (inverse === null || !(Math.max(...inverse.entries.map(Math.abs)) < IN_ONE_PLANE)) return null
  for (let k = 0; k < inverse.entries.length; k++)
    inverse.entries[k]! /= lengths[Math.floor(k / columns)]!
  return inverse
}

/** Covariance from the inverse of the triangle of slopes: the inverse times its transpose, times the variance of a row. */
export function covarianceOf(inverse: Matrix, variance = 1): number[][] {
  const { columns, entries } = inverse
  const row = (i: number): Float64Array => entries.subarray(i * columns, (i + 1) * columns)
  return Array.from({ length: columns }, (_, i) =>
    Array.from(
      { length: columns },
      (__, j) => variance * row(i).reduce((sum, value, k) => sum + value * row(j)[k]!, 0),
    ),
  )
}

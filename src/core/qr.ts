/** A matrix row after row in one block of numbers. */
export interface Matrix {
  rows: number
  columns: number
  entries: Float64Array
}

/** A matrix of zeros to write into. */
export function blankMatrix(rows: number, columns: number): Matrix {
  return { rows, columns, entries: new Float64Array(rows * columns) }
}

/**
 * Turns the first `pivots` columns of a matrix into an upper triangle by reflections and carries the columns after them along; what lies below the
 * triangle is left as 0. Sums of squares of every column stay as they were: no normal equations, so no digits are lost twice.
 * Source: Householder, Journal of the ACM 5 (1958) 339–342 (from memory).
 */
export function triangularise(matrix: Matrix, pivots: number): void {
  const { rows, columns, entries } = matrix
  for (let k = 0; k < Math.min(pivots, rows); k++) {
    const length = columnLength(matrix, k, k)
    if (length === 0) continue
    const diagonal = k * columns + k
    // The sign that adds: nothing cancels.
    const end = entries[diagonal]! > 0 ? -length : length
    const first = entries[diagonal]! - end
    for (let j = k + 1; j < columns; j++) {
      let along = first * entries[k * columns + j]!
      for (let i = k + 1; i < rows; i++)
        along += entries[i * columns + k]! * entries[i * columns + j]!
      const back = along / (first * end)
      entries[k * columns + j]! += back * first
      for (let i = k + 1; i < rows; i++)
        entries[i * columns + j]! += back * entries[i * columns + k]!
    }
    entries[diagonal] = end
    for (let i = k + 1; i < rows; i++) entries[i * columns + k] = 0
  }
}

/** Length of a column from a row downwards. */
export function columnLength({ rows, columns, entries }: Matrix, column: number, from = 0): number {
  // Scaled by the largest entry, so that squares neither outgrow a number nor vanish.
  let largest = 0
  for (let i = from; i < rows; i++)
    largest = Math.max(largest, Math.abs(entries[i * columns + column]!))
  if (largest === 0) return 0
  let sum = 0
  for (let i = from; i < rows; i++) sum += (entries[i * columns + column]! / largest) ** 2
  return largest * Math.sqrt(sum)
}

/** Solves the upper triangle of the first `size` columns against a later column; null where the triangle has a 0 on its diagonal. */
export function backSolve(
  { columns, entries }: Matrix,
  size: number,
  column: number,
): Float64Array | null {
  const solution = new Float64Array(size)
  for (let i = size - 1; i >= 0; i--) {
    let left = entries[i * columns + column]!
    for (let j = i + 1; j < size; j++) left -= entries[i * columns + j]! * solution[j]!
    if (entries[i * columns + i] === 0) return null
    solution[i] = left / entries[i * columns + i]!
  }
  return solution
}

/** The inverse of the upper triangle of the first `size` columns; null where it has a 0 on its diagonal. */
export function inverseTriangle(matrix: Matrix, size: number): Matrix | null {
  const wide = blankMatrix(size, 2 * size)
  for (let i = 0; i < size; i++) {
    for (let j = i; j < size; j++)
      wide.entries[i * 2 * size + j] = matrix.entries[i * matrix.columns + j]!
    wide.entries[i * 2 * size + size + i] = 1
  }
  const inverse = blankMatrix(size, size)
  for (let j = 0; j < size; j++) {
    const column = backSolve(wide, size, size + j)
    if (column === null) return null
    for (let i = 0; i <= j; i++) inverse.entries[i * size + j] = column[i]!
  }
  return inverse
}

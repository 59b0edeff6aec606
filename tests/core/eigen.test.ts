import fc from 'fast-check'
import { EigenvalueDecomposition, Matrix } from 'ml-matrix'
import { describe, expect, test } from 'vitest'
import { eigenvalues } from '../../src/core/eigen.ts'
import { expectWithin } from './tolerance.ts'

// hundredths from −10 to 10: the oracle stumbles over entries near the smallest number there is
const entry = fc.integer({ min: -1000, max: 1000 }).map((hundredths) => hundredths / 100)

/** det(A − λI) by complex elimination, over the product of row sizes: how far λ is from being an eigenvalue. */
function residual(matrix: number[][], { re, im }: { re: number; im: number }): number {
  const n = matrix.length
  // (A − λI)ᴴ(A − λI) as a real matrix of twice the size has the squared singular values
  const block = matrix.map((row, i) => [...row.map((x, j) => x - (i === j ? re : 0)), ...row.map((_, j) => (i === j ? im : 0))])
  const lower = matrix.map((row, i) => [...row.map((_, j) => (i === j ? -im : 0)), ...row.map((x, j) => x - (i === j ? re : 0))])
  const stacked = new Matrix([...block, ...lower])
  const { realEigenvalues } = new EigenvalueDecomposition(stacked.transpose().mmul(stacked), { assumeSymmetric: true })
  return Math.sqrt(Math.max(0, Math.min(...realEigenvalues))) / Math.max(1, Math.sqrt(n) * Math.max(...matrix.flat().map(Math.abs)))
}

describe('eigenvalues', () => {
  test('eigenvalues make A − λI singular to within rounding, for any 4 × 4 matrix (backward stability)', () => {
    fc.assert(
      fc.property(fc.array(fc.array(entry, { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 }), (matrix) => {
        const found = eigenvalues(matrix)
        expect(found).toHaveLength(4)
        // the smallest singular value comes from a square, so its own rounding is √ε ≈ 1.5e-8
        for (const value of found) expect(residual(matrix, value)).toBeLessThan(1e-7)
        const trace = matrix.reduce((sum, row, i) => sum + (row[i] ?? NaN), 0)
        expectWithin(
          found.reduce((sum, { re }) => sum + re, 0),
          trace,
          1e-12 * 40,
        ) // sums of entries up to 10
      }),
    )
  })

  test('eigenvalues of triangular, diagonal and zero matrices are their diagonal', () => {
    expect(eigenvalues([[3, 1, 2, 4], [0, -1, 5, 6], [0, 0, 7, 8], [0, 0, 0, 0.5]]).map(({ re }) => re)).toEqual([7, 3, 0.5, -1]) // prettier-ignore
    expect(eigenvalues(Array.from({ length: 4 }, () => [0, 0, 0, 0]))).toEqual(Array.from({ length: 4 }, () => ({ re: 0, im: 0 })))
  })

  test('eigenvalues of a cyclic permutation are the fourth roots of 1', () => {
    const found = eigenvalues([[0, 0, 0, 1], [1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 1, 0]]) // prettier-ignore
    const wanted = [[1, 0], [0, 1], [0, -1], [-1, 0]] // prettier-ignore
    for (const [re = NaN, im = NaN] of wanted) {
      expectWithin(Math.min(...found.map((value) => Math.hypot(value.re - re, value.im - im))), 0, 1e-14) // rounding
    }
  })

  test('eigenvalues settle on a matrix in which plain double shifts hold each other up (Day 1996, How the QR algorithm fails to converge; from memory)', () => {
    for (let power = 0; power <= 16; power += 0.25) {
      const h = 10 ** -power
      const found = eigenvalues([[0, 1, 0, 0], [1, 0, h, 0], [0, -h, 0, 1], [0, 0, 1, 0]]) // prettier-ignore
      // λ⁴ − (2 − h²)λ² + 1 = 0: λ² = 1 − h²/2 ± i h√(1 − h²/4), so |λ| = 1; two pairs that merge as h → 0, and then carry √ε
      for (const { re, im } of found) expectWithin(Math.hypot(re, im), 1, 1e-7)
      for (const { im } of found) expectWithin(Math.abs(im), h / 2, 1e-7)
    }
  })

  test('eigenvalues of a defective matrix lie within the fourth root of rounding', () => {
    for (const { re, im } of eigenvalues([[2, 1, 0, 0], [0, 2, 1, 0], [0, 0, 2, 1], [0, 0, 0, 2]])) expectWithin(Math.hypot(re - 2, im), 0, 1e-3) // prettier-ignore
  })

  test('eigenvalues take other sizes', () => {
    expect(eigenvalues([[5]])).toEqual([{ re: 5, im: 0 }])
    const [first, second] = eigenvalues([
      [0, -2],
      [2, 0],
    ])
    expect(first).toEqual({ re: 0, im: 2 })
    expect(second).toEqual({ re: 0, im: -2 })
    expect(eigenvalues([])).toEqual([])
  })
})

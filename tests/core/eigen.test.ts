import fc from 'fast-check'
import { EigenvalueDecomposition, Matrix } from 'ml-matrix'
import { describe, expect, test } from 'vitest'
import { eigenvalues, shifts, sweep } from '../../src/core/eigen.ts'
import { expectWithin } from './tolerance.ts'

// hundredths from −10 to 10: the oracle stumbles over entries near the smallest number there is
const entry = fc.integer({ min: -1000, max: 1000 }).map((hundredths) => hundredths / 100)

/** det(A − λI) by complex elimination, over the product of row sizes: how far λ is from being an eigenvalue. */
function residual(matrix: number[][], { re, im }: { re: number; im: number }): number {
  const n = matrix.length
  // (A − λI)ᴴ(A − λI) as a real matrix of twice the size has the squared singular values
  const block = matrix.map((row, i) => [
    ...row.map((x, j) => x - (i === j ? re : 0)),
    ...row.map((_, j) => (i === j ? im : 0)),
  ])
  const lower = matrix.map((row, i) => [
    ...row.map((_, j) => (i === j ? -im : 0)),
    ...row.map((x, j) => x - (i === j ? re : 0)),
  ])
  const stacked = new Matrix([...block, ...lower])
  const { realEigenvalues } = new EigenvalueDecomposition(stacked.transpose().mmul(stacked), {
    assumeSymmetric: true,
  })
  return (
    Math.sqrt(Math.max(0, Math.min(...realEigenvalues))) /
    Math.max(1, Math.sqrt(n) * Math.max(...matrix.flat().map(Math.abs)))
  )
}

describe('eigenvalues', () => {
  test('eigenvalues make A − λI singular to within rounding, for any 4 × 4 matrix (backward stability)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(entry, { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 }),
        (matrix) => {
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
        },
      ),
    )
  })

  test('eigenvalues of triangular, diagonal and zero matrices are their diagonal', () => {
    expect(eigenvalues([[3, 1, 2, 4], [0, -1, 5, 6], [0, 0, 7, 8], [0, 0, 0, 0.5]]).map(({ re }) => re)).toEqual([7, 3, 0.5, -1]) // prettier-ignore
    expect(eigenvalues(Array.from({ length: 4 }, () => [0, 0, 0, 0]))).toEqual(
      Array.from({ length: 4 }, () => ({ re: 0, im: 0 })),
    )
  })

  test('eigenvalues of a cyclic permutation are the fourth roots of 1', () => {
    const found = eigenvalues([[0, 0, 0, 1], [1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 1, 0]]) // prettier-ignore
    const wanted = [[1, 0], [0, 1], [0, -1], [-1, 0]] // prettier-ignore
    for (const [re = NaN, im = NaN] of wanted) {
      expectWithin(
        Math.min(...found.map((value) => Math.hypot(value.re - re, value.im - im))),
        0,
        1e-14,
      ) // rounding
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

  test('eigenvalues make A − λI singular to within rounding for matrices of any size, full of zeros, and add up to trace and trace of the square', () => {
    const sparse = fc.oneof(
      { weight: 2, arbitrary: fc.constant(0) },
      { weight: 1, arbitrary: fc.integer({ min: -9, max: 9 }) },
    )
    const square = fc
      .integer({ min: 1, max: 7 })
      .chain((n) =>
        fc.array(fc.array(sparse, { minLength: n, maxLength: n }), { minLength: n, maxLength: n }),
      )
    fc.assert(
      fc.property(square, (matrix) => {
        const found = eigenvalues(matrix)
        expect(found).toHaveLength(matrix.length)
        for (const value of found) expect(residual(matrix, value)).toBeLessThan(1e-7)
        const trace = matrix.reduce((sum, row, i) => sum + row[i]!, 0)
        const traceOfSquare = matrix.reduce(
          (sum, row, i) => sum + row.reduce((part, x, j) => part + x * matrix[j]![i]!, 0),
          0,
        )
        // 7 eigenvalues of at most 63 with rounding of some ten operations each, and their squares
        const sum = (of: (value: { re: number; im: number }) => number): number =>
          found.reduce((total, value) => total + of(value), 0)
        expectWithin(
          sum(({ re }) => re),
          trace,
          1e-11,
        )
        expectWithin(
          sum(({ re, im }) => re * re - im * im),
          traceOfSquare,
          1e-9,
        )
        found.slice(1).forEach(({ re }, i) => expect(re).toBeLessThanOrEqual(found[i]!.re))
      }),
      { numRuns: 300 },
    )
  })

  test('eigenvalues settle where neighbours of 0 would hold a sweep up for ever: a pair of ±0.001 i beside a block that is nothing but rounding', () => {
    // prettier-ignore
    const hollow = [[0, 2e-8, 0, 0, 0, 0], [0, 0, -0.2, 0, 0, 0], [0, 0, 0, -2e-16, 0, 0], [0, 0, 0, 0, 2e-9, 0], [0, 0, 0, -1e-17, 0, -0.001], [0, 0, 0, 0, 0.001, 0]]
    const found = eigenvalues(hollow)
    const sizes = found.map(({ re, im }) => Math.hypot(re, im)).sort((a, b) => b - a)
    for (const [i, size] of sizes.entries())
      expectWithin(size, i < 2 ? 1e-3 : 0, i < 2 ? 1e-12 : 1e-6) // a defective block carries a root of rounding
    expectWithin(Math.max(...found.map(({ im }) => im)), 1e-3, 1e-12)
  })

  test('eigenvalues of a small block beside a large one keep their own digits', () => {
    // [[1, 1], [2, 1]] has 1 ± √2
    const found = eigenvalues([[1, 0, 0], [0, 1e-20, 1e-20], [0, 2e-20, 1e-20]]).map(({ re }) => re) // prettier-ignore
    for (const [i, wanted] of [1, 1e-20 * (1 + Math.SQRT2), 1e-20 * (1 - Math.SQRT2)].entries())
      expectWithin(found[i]!, wanted, 1e-12 * Math.abs(wanted))
  })

  test('eigenvalues with one real part come largest imaginary part first', () => {
    expect(eigenvalues([[0, -2, 0, 0], [2, 0, 0, 0], [0, 0, 0, -1], [0, 0, 1, 0]]).map(({ im }) => im)).toEqual([2, 1, -1, -2]) // prettier-ignore
    expect(eigenvalues([[0, -1, 0, 0], [1, 0, 0, 0], [0, 0, 0, -2], [0, 0, 2, 0]]).map(({ im }) => im)).toEqual([2, 1, -1, -2]) // prettier-ignore
  })

  test('eigenvalues that coincide in a block of two are real', () => {
    const double = [[1, 1], [-1, 3]] // prettier-ignore
    expect(eigenvalues(double)).toEqual([
      { re: 2, im: 0 },
      { re: 2, im: 0 },
    ])
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

// A search with poor shifts still settles, only later: what they are has to be asked of them directly.
describe('shifts', () => {
  const ends = (a: number, b: number, c: number, d: number, above = 0): number[][] => [[7, 1, 1], [1, a, b], [above, c, d]] // prettier-ignore

  test('shifts of a corner that swings are its pair: mean and squared imaginary part', () => {
    // [[1, −5], [2, 3]]: λ² − 4λ + 13 = 0, so 2 ± 3i
    const [mean, square] = shifts(ends(1, -5, 2, 3), 2, 1)
    expectWithin(mean, 2, 1e-15)
    expectWithin(square, 9, 1e-14)
  })

  test('shifts of a corner with real eigenvalues are the one nearer to the last entry, twice', () => {
    // [[1, 2], [3, 2]]: 4 and −1; [[2, 2], [3, 1]] the same; 4 is nearer to 2, −1 to 1
    for (const [corner, wanted] of [
      [ends(1, 2, 3, 2), 4],
      [ends(2, 2, 3, 1), -1],
    ] as const) {
      // prettier-ignore
      const [mean, square] = shifts(corner, 2, 3)
      expectWithin(mean, wanted, 1e-15)
      expect(square).toBe(0)
    }
  })

  test('shifts at every tenth try are those of dlahqr: last entry + 3/4 s, with −0.4375 s² off the diagonal, s the sum of the last two below it', () => {
    const h = [[1, 2, 3, 4], [5, 6, 7, 8], [0, -2, 9, 1], [0, 0, 3, 10]] // prettier-ignore
    for (const tries of [10, 20, 300])
      expect(shifts(h, 3, tries)).toEqual([10 + 0.75 * 5, 0.4375 * 25])
    expect(shifts(h, 3, 11)).not.toEqual(shifts(h, 3, 10))
  })
})

describe('sweep', () => {
  test('sweep with a pair of eigenvalues for shifts splits that pair off at once (Golub and Van Loan, 7.5: exact shifts deflate)', () => {
    const h = [[4, 1, -2, 3, 1], [2, 3, 1, -1, 2], [0, 1, -2, 2, 1], [0, 0, 3, 1, -4], [0, 0, 0, 2, 2]] // prettier-ignore
    for (const { re, im } of eigenvalues(h).filter((value) => value.im > 0)) {
      const swept = h.map((row) => [...row])
      sweep(swept, 0, 4, re, im * im)
      expectWithin(swept[3]![2]!, 0, 1e-12) // rounding, a few times the entries
      expectWithin(swept[3]![3]! + swept[4]![4]!, 2 * re, 1e-12)
      // and it stays of Hessenberg form
      for (let i = 2; i < 5; i++)
        for (let j = 0; j < i - 1; j++) expectWithin(swept[i]![j]!, 0, 1e-14)
    }
  })

  test('sweep leaves what is outside its rows alone but for the turning', () => {
    const h = [[5, 1, 1, 1, 1], [0, 4, 1, -2, 3], [0, 2, 3, 1, -1], [0, 0, 1, -2, 2], [0, 0, 0, 0, 6]] // prettier-ignore
    const swept = h.map((row) => [...row])
    sweep(swept, 1, 3, 0.5, 2)
    expect([swept[0]![0], swept[4]![4]]).toEqual([5, 6])
    expectWithin(Math.hypot(...swept[0]!.slice(1, 4)), Math.sqrt(3), 1e-14)
    expectWithin(swept[1]![1]! + swept[2]![2]! + swept[3]![3]!, 5, 1e-14)
  })
})

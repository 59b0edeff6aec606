import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bracketedRoot } from '../../src/core/index.ts'
import { near } from './near.ts'

test('bracketedRoot(…) finds the root of smooth, flat and broken functions', () => {
  near(
    bracketedRoot((x) => x * x - 2, 0, 2),
    Math.SQRT2,
    1e-15,
  )
  near(
    bracketedRoot((x) => (x - 1) ** 9, 0, 3),
    1,
    1e-12,
  )
  near(
    bracketedRoot((x) => (x < 0.3 ? -1 : 1), 0, 1),
    0.3,
    1e-15,
  )
  near(
    bracketedRoot((x) => 1 / (1 - x) - 1e9, 0, 1 - 1e-12),
    1 - 1e-9,
    1e-15,
  )
})

test('bracketedRoot(…) works upside down, and stops at an end that is a root', () => {
  near(
    bracketedRoot((x) => 2 - x * x, 0, 2),
    Math.SQRT2,
    1e-15,
  )
  expect(bracketedRoot((x) => x, 0, 1)).toBe(0)
  expect(bracketedRoot((x) => x - 1, 0, 1)).toBe(1)
})

test('bracketedRoot(…) needs no more than 120 evaluations of a bent line', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      fc.double({ min: 0.01, max: 1000, noNaN: true }),
      (root, bend) => {
        let evaluations = 0
        const law = (x: number): number => {
          evaluations++
          return x < root ? x - root : bend * (x - root)
        }
        near(bracketedRoot(law, 0, 1), root, 1e-14)
        expect(evaluations).toBeLessThan(120)
      },
    ),
  )
})

// A search with a wrong step still comes home, for it halves: how soon is what sets it apart. Halving alone would take 53 and more.
test.each<[string, (x: number) => number, number, number, number, number]>([
  ['x² − 2', (x) => x * x - 2, 0, 2, Math.SQRT2, 9],
  ['x³ − 2x − 5, Wallis’s', (x) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265, 9],
  ['cos x − x', (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607, 8],
  ['eˣ − 10', (x) => Math.exp(x) - 10, 0, 5, Math.LN10, 11],
  ['1 − 1/x²', (x) => 1 - 1 / (x * x), 0.5, 1.51, 1, 9],
  ['x³ + x, whose root is 0', (x) => x ** 3 + x, -1, 1.5, 0, 12],
  ['tanh 10(x − 0.7), flat at both ends', (x) => Math.tanh(10 * (x - 0.7)), 0, 1, 0.7, 11],
  ['√x − 0.9', (x) => Math.sqrt(x) - 0.9, 0, 1, 0.81, 6],
  ['ln x', (x) => Math.log(x), 0.01, 60, 1, 13],
  ['(x − 3)³, three roots in one', (x) => (x - 3) ** 3, 0, 5, 3, 53],
  ['1/(1 − x) − 10⁹, next to a pole', (x) => 1 / (1 - x) - 1e9, 0, 1 - 1e-12, 1 - 1e-9, 38],
])(
  'bracketedRoot(…) of %s takes few evaluations: inverse quadratic steps where they are safe',
  (_name, f, low, high, root, most) => {
    let evaluations = 0
    const found = bracketedRoot(
      (x) => {
        evaluations++
        return f(x)
      },
      low,
      high,
    )
    near(found, root, 5e-16 * Math.max(1, Math.abs(root)))
    expect(evaluations).toBeLessThanOrEqual(most)
  },
)

test('bracketedRoot(…) returns that side of a jump on which the function is nearer to 0', () => {
  expect(bracketedRoot((x) => (x < 0.3 ? -1 : 5), 0, 1)).toBeLessThan(0.3)
  expect(bracketedRoot((x) => (x < 0.3 ? -5 : 1), 0, 1)).toBeGreaterThanOrEqual(0.3)
  expect(bracketedRoot((x) => (x < 0.3 ? 5 : -1), 0, 1)).toBeGreaterThanOrEqual(0.3)
})

test('bracketedRoot(…) asks nothing more where an end that is told is a root', () => {
  const never = (): number => {
    throw new Error('asked')
  }
  expect(bracketedRoot(never, 2, 3, 0, 1)).toBe(2)
  expect(bracketedRoot(never, 2, 3, -1, 0)).toBe(3)
})

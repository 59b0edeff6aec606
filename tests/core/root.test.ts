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
    fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), fc.double({ min: 0.01, max: 1000, noNaN: true }), (root, bend) => {
      let evaluations = 0
      const law = (x: number): number => {
        evaluations++
        return x < root ? x - root : bend * (x - root)
      }
      near(bracketedRoot(law, 0, 1), root, 1e-14)
      expect(evaluations).toBeLessThan(120)
    }),
  )
})

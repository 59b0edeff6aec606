import { expect } from 'vitest'

/** Expects two numbers no further apart than a tolerance in their own unit. */
export function near(actual: number | null | undefined, expected: number, tolerance: number): void {
  expect(actual, 'a finite number').toSatisfy(Number.isFinite)
  expect(Math.abs(actual! - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(
    tolerance,
  )
}

/** Expects two numbers equal to within rounding: a share of the larger one. */
export function same(actual: number | null | undefined, expected: number, share = 1e-12): void {
  near(actual, expected, share * Math.max(Math.abs(expected), Math.abs(actual ?? 0)) + 1e-300)
}

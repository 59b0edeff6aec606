import { expect } from 'vitest'
import { DomainError } from '../../src/core/domain.ts'

/** Fails unless the value lies within an absolute tolerance of the wanted one; every use says beside it why the tolerance is that wide. */
export function expectWithin(actual: number, wanted: number, tolerance: number): void {
  const off = Math.abs(actual - wanted)
  expect(off <= tolerance, `${actual} is ${off} from ${wanted}, more than ${tolerance}`).toBe(true)
}

/** Fails unless the call is refused with a DomainError that names the parameter. */
export function expectRefusal(call: () => unknown, parameter: string): void {
  let refusal: unknown = null
  try {
    call()
  } catch (error) {
    refusal = error
  }
  expect(refusal).toBeInstanceOf(DomainError)
  expect(refusal).toHaveProperty('parameter', parameter)
}

/** Rounding of a few operations on numbers of this size. */
export const rounding = (size: number): number => 16 * Number.EPSILON * Math.abs(size)

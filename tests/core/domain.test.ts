import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  between,
  DomainError,
  finite,
  list,
  nonNegative,
  oneOf,
  positive,
  record,
  representable,
  wholeNumber,
  within,
} from '../../src/core/index.ts'

describe('DomainError', () => {
  test('new DomainError(…) is a RangeError that names parameter, value and reason', () => {
    const error = new DomainError('rate', -1, 'must be above 0')
    expect(error).toBeInstanceOf(RangeError)
    expect(error).toMatchObject({
      name: 'DomainError',
      parameter: 'rate',
      value: -1,
      reason: 'must be above 0',
      message: 'rate must be above 0; got -1',
    })
  })

  test('new DomainError(…) shows a text in quotes and names lists and objects without printing them', () => {
    expect(new DomainError('a', 'x', 'r').message).toBe("a r; got 'x'")
    expect(new DomainError('a', [1], 'r').message).toBe('a r; got a list')
    expect(new DomainError('a', {}, 'r').message).toBe('a r; got an object')
    expect(new DomainError('a', undefined, 'r').message).toBe('a r; got undefined')
    expect(new DomainError('a', null, 'r').message).toBe('a r; got null')
  })
})

describe('guards', () => {
  test.each([NaN, Infinity, -Infinity, undefined, null, '3', [3], {}])(
    'finite(…) refuses %s, and so do the guards built on it',
    (value) => {
      for (const guard of [finite, positive, nonNegative, wholeNumber])
        expect(() => guard('x', value)).toThrow(DomainError)
      expect(() => within('x', value, 0, 9)).toThrow(DomainError)
      expect(() => between('x', value, 0, 9)).toThrow(DomainError)
    },
  )

  test('each guard hands a good value back, and refuses the next one below it', () => {
    expect(finite('x', -3)).toBe(-3)
    expect(positive('x', 1e-300)).toBe(1e-300)
    expect(() => positive('x', 0)).toThrow('x must be above 0; got 0')
    expect(nonNegative('x', 0)).toBe(0)
    expect(() => nonNegative('x', -1e-300)).toThrow(DomainError)
    expect(within('x', 1, 1, 2)).toBe(1)
    expect(within('x', 2, 1, 2)).toBe(2)
    expect(() => within('x', 2.1, 1, 2)).toThrow('must lie from 1 to 2')
    expect(() => within('x', 0.9, 1, 2)).toThrow('must lie from 1 to 2')
    for (const outside of [0.9, 1, 2, 2.1])
      expect(() => between('x', outside, 1, 2)).toThrow(DomainError)
    expect(between('x', 1.5, 1, 2)).toBe(1.5)
    expect(wholeNumber('x', 2, 1)).toBe(2)
    expect(() => wholeNumber('x', 1.5)).toThrow(DomainError)
    expect(() => wholeNumber('x', 0, 1)).toThrow(DomainError)
    expect(oneOf('x', 'a', ['a', 'b'])).toBe('a')
    expect(() => oneOf('x', 'c', ['a', 'b'])).toThrow('must be one of a, b')
    expect(list('x', [1], 1)).toEqual([1])
    expect(() => list('x', [], 1)).toThrow(DomainError)
    expect(() => list('x', 'abc' as never)).toThrow(DomainError)
    expect(record('x', { a: 1 })).toEqual({ a: 1 })
    expect(() => record('x', undefined as never)).toThrow(DomainError)
    expect(() => record('x', [] as never)).toThrow(DomainError)
    expect(() => record('x', 'text' as never)).toThrow(DomainError)
    expect(() => record('x', null as never)).toThrow(DomainError)
    expect(representable('x', 3)).toBe(3)
    expect(() => representable('x', Infinity)).toThrow(DomainError)
  })

  test('each guard hands back any number on its side of the line, and refuses any on the other', () => {
    const passes = (guard: () => number, value: number): boolean => {
      try {
        return Object.is(guard(), value)
      } catch (error) {
        if (error instanceof DomainError) return false
        throw error
      }
    }
    fc.assert(
      fc.property(fc.double(), fc.integer(), (value, whole) => {
        const isNumber = Number.isFinite(value)
        expect(passes(() => finite('x', value), value)).toBe(isNumber)
        expect(passes(() => positive('x', value), value)).toBe(isNumber && value > 0)
        expect(passes(() => nonNegative('x', value), value)).toBe(isNumber && value >= 0)
        expect(passes(() => within('x', value, -2, 3), value)).toBe(value >= -2 && value <= 3)
        expect(passes(() => between('x', value, -2, 3), value)).toBe(value > -2 && value < 3)
        expect(passes(() => representable('x', value), value)).toBe(isNumber)
        expect(passes(() => wholeNumber('x', whole, 2), whole)).toBe(whole >= 2)
        expect(record('x', { value })).toEqual({ value })
      }),
    )
  })
})

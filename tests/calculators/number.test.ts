import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readNumber } from '../../src/units/number.ts'
import { formatNumber } from '../../src/units/say.ts'

describe('readNumber', () => {
  test.each([
    ['7.5', 7.5],
    ['7,5', 7.5],
    [' 12 ', 12],
    ['−3,25', -3.25],
    ['+4', 4],
    ['.5', 0.5],
    ['0,125', 0.125],
    ['1234', 1234],
    ['1,23', 1.23],
    ['12,3456', 12.3456],
  ])('readNumber(%j) reads %d', (text, value) => {
    expect(readNumber(text)).toEqual({ value })
  })

  test.each(['1,234', '12,345', '1.234,5', '1,234.5', '1.234.567'])(
    'readNumber(%j) refuses what can be read two ways',
    (text) => {
      expect(readNumber(text)).toEqual({ problem: 'ambiguous' })
    },
  )

  test.each(['abc', '7,5,2', '1e3', 'NaN', 'Infinity', '7.5 mm', '--4', '0x10', '½', '٣'])(
    'readNumber(%j) refuses what is no number',
    (text) => {
      expect(readNumber(text)).toEqual({ problem: 'nonsense' })
    },
  )

  test('readNumber of nothing says that it is empty', () => {
    expect(readNumber('  ')).toEqual({ problem: 'empty' })
  })

  test('readNumber reads back every number written with a point or a comma', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -99999, max: 99999 }),
        fc.constantFrom(1, 10, 100),
        fc.constantFrom('.', ','),
        (whole, parts, mark) => {
          const value = whole / parts
          expect(readNumber(String(value).replace('.', mark))).toEqual({ value })
        },
      ),
    )
  })
})

describe('formatNumber', () => {
  test('formatNumber writes a true minus and never "−0"', () => {
    expect(formatNumber(-2.46, 1)).toBe('−2.5')
    expect(formatNumber(-0.04, 1)).toBe('0.0')
  })
})

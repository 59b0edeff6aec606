import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError, sample } from '../../src/core/index.ts'

const length = fc.double({ min: -1e6, max: 1e6, noNaN: true })
const steps = fc.integer({ min: 1, max: 500 })

describe('sample', () => {
  test('sample gives n + 1 places, a quarter apart', () => {
    expect(sample(0, 1, 4)).toEqual([0, 0.25, 0.5, 0.75, 1])
    expect(sample(2, -2, 2)).toEqual([2, 0, -2])
    expect(sample(3, 3, 2)).toEqual([3, 3, 3])
  })

  test('sample ends at its ends to the last digit and stays between them, in order', () => {
    fc.assert(
      fc.property(length, length, steps, (from, to, n) => {
        const places = sample(from, to, n)
        expect(places).toHaveLength(n + 1)
        expect(places[0]).toBe(from)
        expect(places[n]).toBe(to)
        const up = from <= to ? places : [...places].reverse()
        for (const [index, place] of up.slice(1).entries())
          expect(place).toBeGreaterThanOrEqual(up[index]!)
      }),
      { numRuns: 2000 },
    )
  })

  test('sample ends at every whole millimetre to the last digit, where multiplying first overshoots', () => {
    // 0.135 · 60 / 60 is 0.13500000000000004: by one rounding past the end of a fork's travel
    const past = (to: number, n: number): boolean => (to * n) / n > to
    const travels = Array.from({ length: 350 }, (_, index) => (index + 1) * 1e-3)
    expect(travels.some((to) => past(to, 60))).toBe(true)
    for (const to of travels)
      for (const n of [24, 40, 60]) expect(Math.max(...sample(0, to, n))).toBe(to)
  })

  test('sample refuses ends that are no numbers, and fewer than one step', () => {
    for (const [from, to, n] of [
      [NaN, 1, 2],
      [0, Infinity, 2],
      [-1.7e308, 1.7e308, 2],
      [0, 1, 0],
      [0, 1, 1.5],
    ] as const)
      expect(() => sample(from, to, n)).toThrow(DomainError)
  })
})

import fc from 'fast-check'
import jstat from 'jstat'
import { mean, sampleStandardDeviation } from 'simple-statistics'
import { expect, test } from 'vitest'
import {
  farValue,
  largestMean,
  normalStream,
  randomStream,
  varianceRatioLimit,
  varianceRatioTail,
  wideVariance,
} from '../../src/core/index.ts'
import { near } from './near.ts'

const degrees = fc.integer({ min: 1, max: 60 })

test('varianceRatioTail(…) agrees with jstat’s F for any degrees of freedom', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 30, noNaN: true }),
      degrees,
      degrees,
      (ratio, above, below) => {
        // jstat's fraction stops at 3e-7 of a step
        near(
          varianceRatioTail({ ratio, above, below }),
          1 - jstat.centralF.cdf(ratio, above, below),
          2e-6,
        )
      },
    ),
  )
})

test('varianceRatioLimit(…) is what varianceRatioTail(…) turns back', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 0.5, noNaN: true }),
      degrees,
      degrees,
      (tail, above, below) => {
        const ratio = varianceRatioLimit({ tail, above, below })
        // the root is found to rounding; the tail is flat where the ratio is large
        near(varianceRatioTail({ ratio, above, below }), tail, 1e-9)
      },
    ),
  )
})

// Abramowitz and Stegun, table 26.9 (from memory): F at 5 %.
test.each([
  [4, 10, 3.48],
  [2, 20, 3.49],
  [10, 10, 2.98],
])(
  'varianceRatioLimit(…) at 5 %% for %d and %d degrees is the tabulated %d',
  (above, below, expected) => {
    near(varianceRatioLimit({ tail: 0.05, above, below }), expected, 0.005) // half the last printed digit
  },
)

// Grubbs' table, two-sided 5 % (from memory): the largest deviation over the standard deviation of all eight.
test('farValue(…) starts to name a value where Grubbs’ table does', () => {
  const at = (away: number): number[] => [-1, 1, -1, 1, -1, 1, 0, away]
  const grubbs = (values: number[]): number =>
    (values[7]! - mean(values)) / sampleStandardDeviation(values)
  const named = (away: number): boolean => farValue({ values: at(away), chance: 0.05 }) === 7
  const limit = Array.from({ length: 4000 }, (_, k) => 1 + k / 1000).find(named)!
  // the table's 2.126 for eight values, half of its last digit and the step of the search
  near(grubbs(at(limit)), 2.126, 0.002)
})

const classOf = (seed: number, count: number): number[] => {
  const next = normalStream(randomStream(seed))
  return Array.from({ length: count }, next)
}

test('farValue(…) and wideVariance(…) name one of values that are alike about as often as they may', () => {
  const runs = 2000
  const wrong = Array.from({ length: runs }, (_, seed) =>
    farValue({ values: classOf(seed, 12), chance: 0.05 }),
  )
  // five per cent of 2000 is 100, four standard deviations are 39; the tests are a little careful by design
  near(wrong.filter((each) => each !== null).length, 100, 39)
  const wide = Array.from({ length: runs }, (_, seed) => {
    const drawn = classOf(seed, 36)
    const variances = Array.from(
      { length: 12 },
      (__, k) => sampleStandardDeviation(drawn.slice(3 * k, 3 * k + 3)) ** 2,
    )
    return wideVariance({ variances, degreesOfFreedom: 2, chance: 0.05 })
  })
  near(wide.filter((each) => each !== null).length, 100, 39)
})

test('farValue(…) and wideVariance(…) name the one that is far, by any scale and shift', () => {
  fc.assert(
    fc.property(fc.nat(9), fc.double({ min: 0.01, max: 100, noNaN: true }), (index, scale) => {
      const values = Array.from({ length: 10 }, (_, k) => (k === index ? 30 : k % 3) * scale - 7)
      expect(farValue({ values, chance: 0.01 })).toBe(index)
      const variances = Array.from(
        { length: 10 },
        (_, k) => (k === index ? 30 : 1 + (k % 3) / 10) * scale,
      )
      expect(wideVariance({ variances, degreesOfFreedom: 4, chance: 0.01 })).toBe(index)
    }),
  )
})

test('farValue(…) refuses two values, and wideVariance(…) finds none among repeats to the last digit', () => {
  expect(() => farValue({ values: [1, 2], chance: 0.05 })).toThrow(/at least three/)
  expect(wideVariance({ variances: [0, 0, 0], degreesOfFreedom: 2, chance: 0.05 })).toBeNull()
})

test('largestMean(…) names the group that lies above all others, by any shift, and none where two are alike', () => {
  fc.assert(
    fc.property(fc.nat(3), fc.double({ min: -50, max: 50, noNaN: true }), (index, shift) => {
      const groups = Array.from({ length: 4 }, (_, k) =>
        [0, 1, 2].map((value) => value + shift + (k === index ? 20 : 0)),
      )
      expect(largestMean({ groups, chance: 0.05 })).toBe(index)
      expect(largestMean({ groups: [...groups, groups[index]!], chance: 0.05 })).toBeNull()
    }),
  )
  expect(() => largestMean({ groups: [[1, 2]], chance: 0.05 })).toThrow(/two groups/)
})

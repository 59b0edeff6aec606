import fc from 'fast-check'
import { expect, test } from 'vitest'
import { randomStream } from '../../src/core/index.ts'
import { near } from './near.ts'

const DRAWS = 4000

test('randomStream(…) gives the same numbers for the same seed, from 0 up to 1, and others for another seed', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 999_999 }), (seed) => {
      const [one, again, other] = [randomStream(seed), randomStream(seed), randomStream(seed + 1)]
      const drawn = Array.from({ length: 20 }, one)
      expect(drawn).toEqual(Array.from({ length: 20 }, again))
      expect(drawn).not.toEqual(Array.from({ length: 20 }, other))
      expect(drawn.every((value) => value >= 0 && value < 1)).toBe(true)
    }),
  )
})

test('randomStream(…) is even: each tenth gets a tenth of the draws', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 999_999 }), (seed) => {
      const next = randomStream(seed)
      const tenths = Array.from({ length: 10 }, () => 0)
      for (let draw = 0; draw < DRAWS; draw++) tenths[Math.floor(next() * 10)]! += 1
      // six standard deviations of a count: √(4000 × 0.1 × 0.9) is 19
      for (const count of tenths) near(count, DRAWS / 10, 6 * 19)
    }),
    { numRuns: 20 },
  )
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { findChange } from '../../src/core/index.ts'
import { stream } from './bikes.ts'
import { faultsOf } from './changeBrute.ts'
import { randomSearch, readAlone } from './changeCases.ts'

/** Shuffles a list by a stream of numbers. */
const shuffled = <T>(all: readonly T[], next: () => number): T[] =>
  all
    .map((one) => ({ one, at: next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one)

describe('findChange', () => {
  test('findChange finds what trying every place of a small grid finds, on 60 random bikes', () => {
    let withChange = 0
    for (let seed = 1001; seed <= 1060; seed++) {
      const search = randomSearch(seed)
      const found = findChange(search)
      expect(faultsOf(search, found), `bike ${seed}`).toEqual([])
      if (found.meets && !found.alreadyThere) withChange++
    }
    // most are bikes that have to be changed: otherwise this would show little
    expect(withChange).toBeGreaterThan(30)
  })

  test('findChange gives ways whose bike, solved alone, reads what they say to a hundredth of a millimetre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const search = randomSearch(seed)
        const ids = search.aims.map(({ id }) => id)
        for (const { change, readings, misses } of findChange(search).ways) {
          const alone = readAlone(search.bike, search.cases, change, ids)
          for (const { id, low, high } of search.aims) {
            expect(Math.abs(alone.readings[id] - readings[id]!)).toBeLessThan(1e-5)
            const by =
              Math.min(0, alone.readings[id] - low) + Math.max(0, alone.readings[id] - high)
            const told = misses.find(({ aim }) => aim === id)?.by ?? 0
            expect(Math.abs(told - by)).toBeLessThan(1e-5)
          }
          if (misses.length === 0) expect(alone.sound).toBe(true)
        }
      }),
      { numRuns: 40 },
    )
  })

  test('findChange does not care in which order aims and means are given', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const search = randomSearch(seed)
        const next = stream(seed + 1)
        const other = {
          ...search,
          aims: shuffled(search.aims, next),
          means: shuffled(search.means, next).map((mean) =>
            mean.rates ? { ...mean, rates: shuffled(mean.rates, next) } : mean,
          ),
        }
        expect(findChange(other)).toEqual(findChange(search))
      }),
      { numRuns: 30 },
    )
  })

  test('findChange never takes more work when an aim is widened', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.nat(2),
        fc.double({ min: 0, max: 0.004, noNaN: true }),
        (seed, which, by) => {
          const search = randomSearch(seed)
          const aims = search.aims.map((aim, i) =>
            i === which % search.aims.length
              ? { ...aim, low: aim.low - by, high: aim.high + by }
              : aim,
          )
          const [narrow, wide] = [findChange(search), findChange({ ...search, aims })]
          if (!narrow.meets) return
          expect(wide.meets).toBe(true)
          const [a, b] = [narrow.ways[0]!, wide.ways[0]!]
          expect(b.work).toBeLessThanOrEqual(a.work)
          const changes = (way: typeof a): number => Object.keys(way.change).length
          if (b.work === a.work) expect(changes(b)).toBeLessThanOrEqual(changes(a))
          if (b.work === a.work && changes(b) === changes(a))
            expect(b.size).toBeLessThanOrEqual(a.size + 1e-12)
        },
      ),
      { numRuns: 40 },
    )
  })
})

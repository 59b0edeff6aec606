import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { changeLooks, findChange } from '../../src/core/index.ts'
import { faultsOf } from './changeBrute.ts'
import { randomSearch, readAlone } from './changeCases.ts'
import { orderFaults, wideningFaults } from './changeClaims.ts'
import { between } from './draws.ts'

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
        expect(orderFaults(randomSearch(seed), seed + 1)).toEqual([])
      }),
      { numRuns: 30 },
    )
  })

  test('findChange never takes more work when an aim is widened', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.nat(2),
        between(0, 0.004),
        (seed, which, by) => {
          expect(wideningFaults(randomSearch(seed), which, by)).toEqual([])
        },
      ),
      { numRuns: 40 },
    )
  })

  test('changeLooks finds the same wherever it rests, and what it tells on the way it keeps', () => {
    let rests = 0
    for (let seed = 1; seed <= 20; seed++) {
      const { bike, cases, ...task } = randomSearch(seed)
      const whole = findChange({ bike, cases, ...task })
      const look = changeLooks(bike, cases)(task)
      let told = look.found()
      while (!look.work(() => true)) {
        const now = look.found()
        rests++
        // ways come with more and more work, so that the first one stays the least work, and none that meets is taken back
        if (told.meets) {
          expect(now.ways.length).toBeGreaterThanOrEqual(told.ways.length)
          expect(now.ways[0]!.work).toBe(told.ways[0]!.work)
        }
        told = now
      }
      expect(look.found()).toEqual(whole)
    }
    expect(rests).toBeGreaterThan(100)
  })

  test('findChange makes what is changed in any case, and looks for the rest', () => {
    const { bike, cases, aims, means } = randomSearch(3)
    const base = { forkRate: 9900 }
    const others = means.filter(({ id }) => id !== 'forkRate')
    const { ways } = findChange({ bike, cases, aims, means: others, base, baseWork: 50 })
    expect(ways.length).toBeGreaterThan(0)
    const ids = aims.map(({ id }) => id)
    for (const { change, readings, work } of ways) {
      expect(change.forkRate).toBe(9900)
      expect(work).toBeGreaterThanOrEqual(50)
      const alone = readAlone(bike, cases, change, ids)
      // a hundredth of a millimetre
      for (const id of ids) expect(Math.abs(alone.readings[id] - readings[id]!)).toBeLessThan(1e-5)
    }
  })
})

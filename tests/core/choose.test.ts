import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Bike } from '../../src/core/bike.ts'
import { type Choice, chooseRate, type RateRow } from '../../src/core/choose.ts'
import { forkLimit } from '../../src/core/fork.ts'
import { rampOvershoot } from '../../src/core/overshoot.ts'
import { solveStance } from '../../src/core/stance.ts'
import {
  gassyBike as bike,
  gassyChoice as choice,
  gassyLeg as leg,
  gassyPayload as payload,
} from './bikes.ts'
import { expectRefusal, expectWithin } from './tolerance.ts'
import { between } from './draws.ts'

const one = (change: Partial<Choice>): RateRow => {
  const [row] = chooseRate({ ...choice, ...change })
  if (!row) throw new Error('no row')
  return row
}
/** The bike with a spring of this rate and preload in each leg. */
const fitted = (rate: number, preload: number): Bike => ({
  ...bike,
  fork: {
    ...bike.fork,
    legs: [0, 1].map(() => ({ ...leg, spring: [{ rate, closes: 0.17 }], preload })),
  },
})
/** The bike with springs that close at these deflections, one for each leg, or one for both. */
const closing = (left: number, right = left): Bike => ({
  ...bike,
  fork: {
    ...bike.fork,
    legs: [left, right].map((closes) => ({ ...leg, spring: [{ rate: 9000, closes }] })),
  },
})
// stances balance to 1e-6 N, on rates of 10 kN/m and more
const SAG = 1e-9

describe('chooseRate', () => {
  test('chooseRate gives a row per rate, in the order asked for', () => {
    const rates = [9500, 8000, 11000]
    expect(chooseRate({ ...choice, rates }).map((row) => row.rate)).toEqual(rates)
    expect(chooseRate({ ...choice, rates: [] })).toEqual([])
  })

  test('chooseRate finds the preload with which solveStance gives the rider sag, and its other travels too', () => {
    for (const row of chooseRate(choice)) {
      if (row.preload === null) continue
      const changed = fitted(row.rate, row.preload)
      expectWithin(solveStance(changed, choice.cases.rider).frontTravel, 0.036, SAG)
      expectWithin(row.riderSag, 0.036, SAG)
      expectWithin(row.staticSag, solveStance(changed, choice.cases.static).frontTravel, SAG)
      expectWithin(row.brakingTravel, solveStance(changed, choice.cases.braking).frontTravel, SAG)
      expectWithin(row.coilBindMargin ?? NaN, 0.17 - row.preload - 0.12, SAG)
    }
  })

  test('chooseRate adds up: braking travel, overshoot and reserve make the whole travel', () => {
    for (const { brakingTravel, overshoot, reserve } of chooseRate(choice)) {
      const limit =
        brakingTravel >= 0.12 - 1e-12
          ? 0.12
          : Math.min(0.12, brakingTravel + overshoot[0] + reserve[1])
      expectWithin(brakingTravel + overshoot[0] + reserve[1], limit, SAG)
      expectWithin(brakingTravel + overshoot[1] + reserve[0], limit, SAG)
      expect(overshoot[0]).toBeLessThanOrEqual(overshoot[1])
      expect(reserve[0]).toBeLessThanOrEqual(reserve[1])
    }
  })

  test('chooseRate at equal rider sag: a softer spring needs more preload, shows less static sag and dives deeper', () => {
    const rows = chooseRate(choice).filter(
      (row) => row.preload !== null && row.brakingTravel < 0.11,
    )
    expect(rows.length).toBeGreaterThan(5)
    rows.slice(1).forEach((row, i) => {
      const softer = rows[i]
      expect(row.preload).toBeLessThan(softer?.preload ?? NaN)
      expect(row.staticSag).toBeGreaterThan(softer?.staticSag ?? NaN)
      expect(row.brakingTravel).toBeLessThan(softer?.brakingTravel ?? NaN)
    })
  })

  test('chooseRate takes 17 to 34 % of the change under braking as overshoot, brakes put on in 0.1 to 0.2 s, at 0.3 to 0.4 of critical damping', () => {
    const { brakingTravel, riderSag, overshoot } = one({ rates: [9000] })
    const change = brakingTravel - riderSag
    // the front's frequency lies between 12 and 18 rad/s, so its overshoot lies between those two's
    const share = (dampingRatio: number, naturalFrequency: number, rampTime: number) =>
      rampOvershoot({ dampingRatio, naturalFrequency, rampTime })
    expect(overshoot[0] / change).toBeGreaterThan(share(0.4, 18, 0.2))
    expect(overshoot[0] / change).toBeLessThan(share(0.4, 12, 0.2))
    expect(overshoot[1] / change).toBeGreaterThan(share(0.3, 18, 0.1))
    expect(overshoot[1] / change).toBeLessThan(share(0.3, 12, 0.1))
  })

  test('chooseRate without other values takes damping ratios of 0.3 and 0.4, in either order, and none overshoot from 1 on', () => {
    expect(chooseRate({ ...choice, dampingRatios: [0.4, 0.3] })).toEqual(chooseRate(choice))
    expect(one({ rates: [9000], dampingRatios: [1, 2] }).overshoot).toEqual([0, 0])
    const row = one({ rates: [9000], dampingRatios: [0.35], rampTimes: [0] })
    expect(row.overshoot[0]).toBe(row.overshoot[1])
  })

  test('chooseRate gives null where even without preload the spring is too stiff, and says so', () => {
    const row = one({ rates: [30000] })
    expect(row.preload).toBeNull()
    expect(row.misses[0]).toBe('no preload gives the rider sag')
    expectWithin(row.riderSag, solveStance(fitted(30000, 0), choice.cases.rider).frontTravel, SAG)
    expect(row.riderSag).toBeLessThan(0.036)
  })

  test('chooseRate gives null where the spring binds before the rider sag, and still finite figures', () => {
    const row = one({ rates: [1000] })
    expect(row.preload).toBeNull()
    expect(row.misses).toContain('coil bind before full travel')
    expect(row.misses).toContain('bottoms under braking')
    for (const value of Object.values(row).flat())
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true)
  })

  test('chooseRate names each miss where its own figure says so, and none where all are met', () => {
    const { target } = choice
    for (const row of chooseRate(choice)) {
      expect(row.misses.includes('no preload gives the rider sag')).toBe(row.preload === null)
      expect(row.misses.includes('static sag below the window')).toBe(
        row.staticSag < target.staticSag[0],
      )
      expect(row.misses.includes('static sag above the window')).toBe(
        row.staticSag > target.staticSag[1],
      )
      expect(row.misses.includes('reserve below the target')).toBe(row.reserve[0] < target.reserve)
      expect(row.misses.includes('bottoms under braking')).toBe(
        row.brakingTravel >= 0.12 || (row.coilBindMargin ?? 1) < 0,
      )
      expect(row.misses.includes('coil bind before full travel')).toBe(
        (row.coilBindMargin ?? 1) < 0,
      )
    }
    expect(chooseRate(choice).filter((row) => row.misses.length === 0).map((row) => row.rate)).toEqual([10500]) // prettier-ignore
  })

  test('chooseRate leaves a leg without a spring without one, and needs twice the rate in the other', () => {
    const single: Bike = { ...bike, fork: { ...bike.fork, legs: [leg, { ...leg, spring: [] }] } }
    const both = one({ rates: [9000] })
    const alone = one({ bike: single, rates: [18000] })
    expectWithin(alone.preload ?? NaN, both.preload ?? NaN, SAG)
    expectWithin(alone.brakingTravel, both.brakingTravel, SAG)
  })

  test('chooseRate has no coil-bind margin where the fitted spring never closes', () => {
    const open: Bike = {
      ...bike,
      fork: { ...bike.fork, legs: [0, 1].map(() => ({ ...leg, spring: [{ rate: 9000 }] })) },
    }
    const row = one({ bike: open, rates: [9000] })
    expect(row.coilBindMargin).toBeNull()
    expectWithin(row.preload ?? NaN, one({ rates: [9000] }).preload ?? NaN, SAG)
  })

  test('chooseRate counts coil bind from the leg that binds first', () => {
    const [row] = chooseRate({ ...choice, bike: closing(0.17, 0.15), rates: [9000] })
    expectWithin(row?.coilBindMargin ?? NaN, 0.15 - (row?.preload ?? NaN) - 0.12, SAG)
  })

  test('chooseRate meets the rider sag with coils that touch right there, and not with coils that touch half way', () => {
    const { preload } = one({ rates: [9000] })
    // a picometre of room for the rounding of the search
    expectWithin(
      one({ rates: [9000], bike: closing(preload! + 0.036 + 1e-12) }).preload ?? NaN,
      preload!,
      SAG,
    )
    const early = one({ rates: [9000], bike: closing(preload! + 0.018) })
    expect(early.preload).toBeNull()
    expect(early.misses[0]).toBe('no preload gives the rider sag')
  })

  test('chooseRate meets the rider sag with no preload at all where the rate is so chosen', () => {
    const { preload } = one({ rates: [9000] })
    const unwound = (9000 * (preload! + 0.036)) / 0.036
    // the quotient rounds to a preload of 0 for one of these neighbours at least
    const rates = Array.from({ length: 41 }, (_, i) => unwound * (1 + (i - 20) * Number.EPSILON))
    expect(
      chooseRate({ ...choice, rates }).some(
        (row) => row.preload === 0 && !row.misses.includes('no preload gives the rider sag'),
      ),
    ).toBe(true)
  })

  test('chooseRate counts as met what is met exactly: the window’s ends, the reserve, coils that touch at full travel', () => {
    const { preload, staticSag, reserve } = one({ rates: [10500] })
    const target = {
      ...choice.target,
      staticSag: [staticSag, staticSag] as const,
      reserve: reserve[0],
    }
    expect(one({ rates: [10500], target, bike: closing(preload! + 0.12) }).misses).toEqual([])
  })

  test('chooseRate gives null where the gas locks at the wanted sag or before it: no spring is needed there', () => {
    const area = (Math.PI / 4) * 0.038 ** 2
    for (const lock of [0.03, 0.05]) {
      const flooded = {
        ...leg,
        gas: { ...leg.gas, airHeight: 0, stackVolume: area * (0.12 - lock) },
      }
      const locked: Bike = { ...bike, fork: { ...bike.fork, legs: [flooded, flooded] } }
      const cases = { ...choice.cases, braking: { payload, deceleration: 6 } }
      // its own lock, to the last digit
      const riderSag = lock === 0.03 ? 0.036 : forkLimit(locked.fork).travel
      const row = one({
        bike: locked,
        cases,
        rates: [9000],
        target: { ...choice.target, riderSag },
      })
      expect(row.preload).toBeNull()
      expect(row.riderSag).toBeLessThan(riderSag)
    }
  })

  test('chooseRate does not depend on what is fitted now, but for where it closes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4000, max: 20000, noNaN: true }),
        between(0, 0.04),
        (rate, preload) => {
          const other: Bike = {
            ...bike,
            fork: {
              ...bike.fork,
              legs: [0, 1].map(() => ({ ...leg, spring: [{ rate, closes: 0.17 }], preload })),
            },
          }
          const [wanted, found] = [one({ rates: [9500] }), one({ rates: [9500], bike: other })]
          expectWithin(found.preload ?? NaN, wanted.preload ?? NaN, SAG)
          expectWithin(found.reserve[0], wanted.reserve[0], SAG)
        },
      ),
      { numRuns: 40 },
    )
  })

  test('chooseRate meets any rider sag within the travel, or says that it cannot', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.1, noNaN: true }),
        fc.double({ min: 3000, max: 20000, noNaN: true }),
        (riderSag, rate) => {
          const row = one({ rates: [rate], target: { ...choice.target, riderSag } })
          if (row.preload !== null) expectWithin(row.riderSag, riderSag, SAG)
          else expect(row.misses[0]).toBe('no preload gives the rider sag')
          for (const value of Object.values(row).flat())
            if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true)
        },
      ),
      { numRuns: 60 },
    )
  })

  test('chooseRate refuses a sag outside the travel, a window upside down, a rate of 0, no spring, and what is no number', () => {
    const target = choice.target
    expectRefusal(() => one({ target: { ...target, riderSag: 0.12 } }), 'target.riderSag')
    expectRefusal(() => one({ target: { ...target, riderSag: 0 } }), 'target.riderSag')
    expectRefusal(() => one({ target: { ...target, staticSag: [0.03, 0.02] } }), 'target.staticSag')
    expectRefusal(
      () => one({ target: { ...target, staticSag: [-0.01, 0.02] } }),
      'target.staticSag',
    )
    expectRefusal(() => one({ target: { ...target, reserve: -0.01 } }), 'target.reserve')
    expectRefusal(() => one({ rates: [0] }), 'rates')
    expectRefusal(() => one({ rates: [NaN] }), 'rates')
    expectRefusal(() => one({ dampingRatios: [-0.1] }), 'dampingRatio')
    expectRefusal(() => one({ dampingRatios: [] }), 'dampingRatios')
    expectRefusal(() => one({ rampTimes: [-0.1] }), 'rampTimes')
    expectRefusal(
      () => one({ bike: { ...bike, fork: { ...bike.fork, legs: [{ ...leg, spring: [] }] } } }),
      'bike.fork.legs',
    )
    expectRefusal(
      () => one({ cases: { static: {}, rider: {} } as unknown as Choice['cases'] }),
      'cases.braking',
    )
    expectRefusal(() => one({ cases: undefined }), 'cases')
    expectRefusal(() => chooseRate(undefined as unknown as Choice), 'choice')
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  chooseRate,
  forkForce,
  forkLimit,
  oilRiseLeaving,
  rateLeaving,
  solveStance,
  springForceAt,
  springFromSags,
  squeezedFrom,
  STANDARD_GRAVITY,
  WARM_OIL,
  withOilRaised,
  withSprings,
} from '../../src/core/index.ts'
import type { ChoiceOfBike } from '../../src/core/index.ts'
import { GAS, sealedBike as roadster } from './bikes.ts'
import { between } from './draws.ts'
import { near } from './near.ts'

const aboard = (mass: number) => ({ payload: [{ mass, x: 0.674, z: 0.99 }] })
const SAG = 0.036

function choice(mass: number, bike = roadster()): ChoiceOfBike {
  const rider = aboard(mass)
  return {
    bike,
    cases: {
      static: {},
      rider,
      braking: {
        ...rider,
        deceleration: 0.7 * STANDARD_GRAVITY,
        gasState: squeezedFrom(SAG),
      },
    },
    target: { riderSag: SAG, staticSag: [0, 0.1], reserve: 0 },
  }
}
const least = (one: ChoiceOfBike, rate: number): number =>
  chooseRate({ ...one, rates: [rate] })[0]!.reserve[0]

/** Riders for whom springs of these rates can be wound to the sag [kg, N/m]. */
const [anyone, anySpring] = [between(60, 110), between(7000, 9500)]

describe('rateLeaving', () => {
  test('rateLeaving undoes chooseRate: from what a rate leaves it finds the rate', () => {
    fc.assert(
      fc.property(anyone, anySpring, (mass, rate) => {
        const [row] = chooseRate({ ...choice(mass), rates: [rate] })
        const found = rateLeaving(choice(mass), row!.reserve[0])
        // a hundredth of a micrometre of travel in hand is a few thousandths of a newton per metre
        near(found?.rate, rate, 0.1)
        near(found?.preload, row!.preload!, 1e-6)
      }),
      { numRuns: 15 },
    )
  })

  test('rateLeaving gives the rate whose row leaves so much, and a stiffer one to a heavier rider', () => {
    const wanted = least(choice(80), 9000)
    near(rateLeaving(choice(80), wanted)!.rate, 9000, 0.1)
    const rates = [60, 80, 100, 120].map((mass) => {
      const found = rateLeaving(choice(mass), wanted)!
      // a search ends within a hundredth of a micrometre
      near(found.reserve[0], wanted, 1e-8)
      return found.rate
    })
    expect(rates).toEqual([...rates].sort((a, b) => a - b))
  })

  test('rateLeaving is null where no rate leaves so much, or only one without preload', () => {
    expect(rateLeaving(choice(80), 0.11)).toBeNull()
    // 13 N/mm hold this rider less deep than the sag wanted even without preload
    expect(rateLeaving(choice(80), least(choice(80), 14_000))).toBeNull()
  })

  test('rateLeaving refuses what is no length', () =>
    expect(() => rateLeaving(choice(80), Number.NaN)).toThrow(/wanted must be a finite number/))
})

describe('withOilRaised', () => {
  test('withOilRaised there and back is the bike as it was, and more oil is never softer', () => {
    fc.assert(
      fc.property(between(0, 0.06), between(0, 0.11), (rise, travel) => {
        const raised = withOilRaised(roadster(), rise)
        const back = withOilRaised(raised, -rise)
        const [now, more, again] = [roadster(), raised, back].map(({ fork }) =>
          forkForce(fork, travel),
        ) as [number, number, number]
        near(again, now, 1e-9)
        expect(more).toBeGreaterThanOrEqual(now)
        expect({ ...raised, fork: null }).toEqual({ ...roadster(), fork: null })
      }),
    )
  })
})

describe('oilRiseLeaving', () => {
  test('oilRiseLeaving finds the rise back from what it leaves, unless warm oil locks the fork there', () => {
    const bike = roadster()
    const legs = bike.fork.legs.map((leg) => ({ ...leg, gas: { ...GAS, oilVolume: 5e-4 } }))
    const oily = { ...bike, fork: { ...bike.fork, legs } }
    let locked = 0
    fc.assert(
      fc.property(anyone, anySpring, between(-0.02, 0.075), (mass, rate, rise) => {
        const raised = withOilRaised(oily, rise)
        const found = oilRiseLeaving(choice(mass, oily), rate, least(choice(mass, raised), rate))
        const locks = forkLimit(raised.fork, { temperature: WARM_OIL }).cause === 'locked'
        if (locks) locked++
        // a hundredth of a micrometre in hand is less than a micrometre of oil
        if (locks) expect(found).toBeNull()
        else near(found, rise, 1e-6)
      }),
      { numRuns: 15, examples: [[80, 9000, 0.07]] },
    )
    // oil that is 60 K warmer takes 18 mm more of a leg that has 80 mm of air left
    expect(locked).toBeGreaterThan(0)
  })

  test('oilRiseLeaving gives the rise that leaves so much with the springs kept', () => {
    const wanted = least(choice(80), 9000)
    const rise = oilRiseLeaving(choice(100), 9000, wanted)!
    expect(rise).toBeGreaterThan(0.01)
    near(least(choice(100, withOilRaised(roadster(), rise)), 9000), wanted, 1e-8)
    near(oilRiseLeaving(choice(80), 9000, wanted), 0, 1e-6)
    expect(oilRiseLeaving(choice(60), 9000, wanted)).toBeLessThan(0)
  })

  test('oilRiseLeaving stops where warm oil would lock the fork before its end', () => {
    expect(oilRiseLeaving(choice(180), 9000, 0.1)).toBeNull()
    const rise = oilRiseLeaving(choice(120), 9000, least(choice(80), 9000))!
    const { cause } = forkLimit(withOilRaised(roadster(), rise).fork, { temperature: WARM_OIL })
    expect(cause).toBe('bottomed')
  })

  test('oilRiseLeaving is null for a fork without air', () => {
    const bike = roadster()
    const legs = bike.fork.legs.map(({ spring, preload }) => ({ spring, preload }))
    expect(
      oilRiseLeaving(choice(100, { ...bike, fork: { ...bike.fork, legs } }), 9000, 0),
    ).toBeNull()
  })
})

describe('springFromSags', () => {
  test('springFromSags gives back the springs that made both sags', () => {
    for (const [rate, preload] of [
      [7000, 0.022],
      [9000, 0.015],
      [12_000, 0.004],
    ] as const) {
      const bike = withSprings(roadster(), rate, preload)
      const cases = { static: {}, rider: aboard(80) }
      const found = springFromSags({
        // the bike that is asked may hold any springs: only its pose and its air are used
        bike: roadster(),
        cases,
        staticSag: solveStance(bike, {}).frontTravel,
        riderSag: solveStance(bike, cases.rider).frontTravel,
      })
      // forces of a kilonewton balance to 1e-6 N, over 15 mm
      near(found.rate, rate, 1e-3)
      near(found.preload, preload, 1e-8)
    }
  })

  test('springFromSags gives back any spring, withSprings fitted, that two sags tell', () => {
    fc.assert(
      fc.property(anyone, between(6000, 12_000), between(0, 0.02), (mass, rate, preload) => {
        const bike = withSprings(roadster(), rate, preload)
        const cases = { static: {}, rider: aboard(mass) }
        const [alone, ridden] = [solveStance(bike, {}), solveStance(bike, cases.rider)]
        fc.pre(alone.frontStop === 'none' && ridden.frontStop === 'none')
        const [staticSag, riderSag] = [alone.frontTravel, ridden.frontTravel]
        const found = springFromSags({ bike: roadster(), cases, staticSag, riderSag })
        // forces balance to 1e-6 N, over 8 mm and more
        near(found.rate, rate, 1e-3)
        near(found.preload, preload, 1e-8)
        const given = springForceAt(roadster(), cases.rider, riderSag)
        near(given, rate * (preload + riderSag), 1e-5)
      }),
      { numRuns: 30 },
    )
  })

  test('springFromSags refuses sags the wrong way round', () =>
    expect(() =>
      springFromSags({
        bike: roadster(),
        cases: { static: {}, rider: aboard(80) },
        staticSag: 0.03,
        riderSag: 0.03,
      }),
    ).toThrow(/must be deeper than the static sag/))

  test('springForceAt is what one leg’s spring gives there', () => {
    const bike = roadster()
    const { frontTravel } = solveStance(bike, aboard(80))
    // 9 N/mm pressed by 15 mm of preload and the sag
    near(springForceAt(bike, aboard(80), frontTravel), 9000 * (0.015 + frontTravel), 1e-5)
  })
})

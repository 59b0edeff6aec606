import { describe, expect, test } from 'vitest'
import {
  chooseRate,
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
import { sealedBike as roadster } from './bikes.ts'
import { near as expectNear } from './near.ts'

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

describe('rateLeaving', () => {
  test('rateLeaving gives the rate whose row leaves so much, and a stiffer one to a heavier rider', () => {
    const wanted = least(choice(80), 9000)
    expectNear(rateLeaving(choice(80), wanted)!.rate, 9000, 0.1)
    const rates = [60, 80, 100, 120].map((mass) => {
      const found = rateLeaving(choice(mass), wanted)!
      // a search ends within a hundredth of a micrometre
      expectNear(found.reserve[0], wanted, 1e-8)
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

describe('oilRiseLeaving', () => {
  test('oilRiseLeaving gives the rise that leaves so much with the springs kept', () => {
    const wanted = least(choice(80), 9000)
    const rise = oilRiseLeaving(choice(100), 9000, wanted)!
    expect(rise).toBeGreaterThan(0.01)
    expectNear(least(choice(100, withOilRaised(roadster(), rise)), 9000), wanted, 1e-8)
    expectNear(oilRiseLeaving(choice(80), 9000, wanted), 0, 1e-6)
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
      expectNear(found.rate, rate, 1e-3)
      expectNear(found.preload, preload, 1e-8)
    }
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
    expectNear(springForceAt(bike, aboard(80), frontTravel), 9000 * (0.015 + frontTravel), 1e-5)
  })
})

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { forceNeeded } from '../../src/core/forceNeeded.ts'
import { type Bike, type LoadCase, solveStance } from '../../src/core/index.ts'
import { plainBike, RIDER, sealedBike } from './bikes.ts'
import { between } from './draws.ts'
import { near } from './near.ts'

const loads: [string, LoadCase][] = [
  ['without a rider', {}],
  ['with a rider', { payload: [RIDER] }],
  ['braking', { payload: [RIDER], deceleration: 6 }],
  ['leaning', { payload: [RIDER], lean: 0.7 }],
]

test.each(loads)(
  'forceNeeded(…) %s is the force of any spring on which the fork stands there',
  (_name, loadCase) => {
    for (const travel of [0.005, 0.03, 0.06, 0.11]) {
      const force = forceNeeded(plainBike(), loadCase, travel)
      for (const rate of [6000, 20000]) {
        const leg = { spring: [{ rate }], preload: force / rate - travel }
        const stance = solveStance(
          { ...plainBike(), fork: { travel: 0.12, legs: [leg] } },
          loadCase,
        )
        near(stance.frontTravel, travel, 1e-11) // a stance balances to 1e-9 N or so, on 6 N/mm and more
      }
    }
  },
)

test('forceNeeded(…) does not depend on what is fitted: spring, gas, or nothing', () => {
  const bare: Bike = { ...plainBike(), fork: { travel: 0.12, legs: [{ spring: [], preload: 0 }] } }
  for (const [, loadCase] of loads) {
    const wanted = forceNeeded(plainBike(), loadCase, 0.04)
    for (const bike of [sealedBike(), bare]) near(forceNeeded(bike, loadCase, 0.04), wanted, 1e-7) // of 1 kN: two searches, each to 1e-10 of it
  }
})

test('forceNeeded(…) is the force of any spring, at any travel and under any rider and brake', () => {
  fc.assert(
    fc.property(
      between(0.002, 0.115),
      between(6000, 30_000),
      between(30, 150),
      between(0, 7),
      (travel, rate, mass, deceleration) => {
        const loadCase = { payload: [{ ...RIDER, mass }], deceleration }
        const force = forceNeeded(sealedBike(), loadCase, travel)
        const leg = { spring: [{ rate }], preload: force / rate - travel }
        const fork = { travel: 0.12, legs: [leg] }
        const stance = solveStance({ ...plainBike(), fork }, loadCase)
        // a stance balances to 1e-9 N or so, on 6 N/mm and more
        near(stance.frontTravel, travel, 1e-11)
        near(stance.forkForce, force, 1e-6)
      },
    ),
    { numRuns: 40 },
  )
})

test('forceNeeded(…) is what the hanging wheel pulls where nothing presses the fork', () => {
  const loadCase = { payload: [{ mass: 300, x: -0.5, z: 1 }] }
  const { forkForce, frontStopForce } = solveStance(plainBike(), loadCase)
  expect(forceNeeded(plainBike(), loadCase, 0.04)).toBe(forkForce + frontStopForce)
  expect(forkForce + frontStopForce).toBeLessThan(0)
})

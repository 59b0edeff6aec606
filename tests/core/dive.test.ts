import fc from 'fast-check'
import { expect, test } from 'vitest'
import { diveParts, solveStance, STANDARD_GRAVITY } from '../../src/core/index.ts'
import { plainBike, RIDER } from './bikes.ts'
import { near, same } from './near.ts'

const bike = plainBike()
const ridden = { payload: [RIDER] }
const decelerations = fc.double({ min: 0.1, max: 9, noNaN: true })

test('diveParts(…) add up to what the fork carries more than the rest load would press on it in the braking pose', () => {
  fc.assert(
    fc.property(decelerations, (deceleration) => {
      const rest = solveStance(bike, ridden)
      const braking = solveStance(bike, { ...ridden, deceleration })
      const { transfer, brake, transferShare } = diveParts(bike, rest, braking)
      const atRest =
        (rest.frontLoad - bike.frontUnsprungMass * STANDARD_GRAVITY) * Math.cos(braking.rake)
      same(transfer + brake, braking.forkForce + braking.frontStopForce - atRest, 1e-9)
      expect(transferShare).toBeGreaterThan(0)
      expect(transferShare).toBeLessThan(1)
    }),
  )
})

test('diveParts(…) gives the brake (F − m a) sin rake: the balance of the wheel along the axis, by hand', () => {
  const deceleration = 6
  const braking = solveStance(bike, { ...ridden, deceleration })
  const { brake } = diveParts(bike, solveStance(bike, ridden), braking)
  const mass = bike.sprung.mass + RIDER.mass + bike.frontUnsprungMass + bike.rearUnsprungMass
  near(brake, (mass - bike.frontUnsprungMass) * deceleration * Math.sin(braking.rake), 1e-6)
})

test('diveParts(…) has nothing to share at rest', () => {
  const rest = solveStance(bike, ridden)
  const { transfer, brake, transferShare } = diveParts(bike, rest, rest)
  near(transfer + brake, 0, 1e-6)
  if (transfer + brake <= 0) expect(transferShare).toBeNull()
})

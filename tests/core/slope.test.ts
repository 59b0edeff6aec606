import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  liftDeceleration,
  solveStance,
  STANDARD_GRAVITY,
  wheelLoads,
} from '../../src/core/index.ts'
import { plainBike, RIDER } from './bikes.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'
import { between } from './draws.ts'

const bike = plainBike()
const ridden = { payload: [RIDER] }
const degrees = (angle: number): number => (angle * Math.PI) / 180
const slopes = between(0, 0.5)
const slowing = between(0, 6)

test('wheelLoads(…) down a slope of 10° lifts the rear wheel at 0.510 g: Meriam and Kraige, problem 6/3 (its figure from memory)', () => {
  const inch = 0.0254
  const { rear, front } = wheelLoads({
    masses: [{ mass: 100, x: 20 * inch, z: 36 * inch }],
    wheelbase: 45 * inch,
    slope: degrees(10),
    deceleration: 0.510246 * STANDARD_GRAVITY,
  })
  near(rear / (front + rear), 0, 1e-6) // six digits of the deceleration, which the printed three round to
})

test('solveStance(…) on a slope carries what the turned weight puts on each wheel, about the centre of gravity it found', () => {
  fc.assert(
    fc.property(slopes, slowing, (slope, deceleration) => {
      const stance = solveStance(bike, { ...ridden, slope, deceleration })
      const mass = bike.sprung.mass + RIDER.mass + bike.frontUnsprungMass + bike.rearUnsprungMass
      const { x, z } = stance.centreOfGravity
      const [along, square] = [Math.sin(slope), Math.cos(slope)].map(
        (part) => part * STANDARD_GRAVITY,
      )
      // moments about the rear contact: weight as one vector at the centre, and the inertia of slowing
      const front = (mass * (square! * x + (along! + deceleration) * z)) / stance.wheelbase
      same(stance.frontLoad, front, 1e-9)
      same(stance.frontLoad + stance.rearLoad, mass * square!, 1e-12)
      same(stance.neededGrip.front, (mass * (along! + deceleration)) / front, 1e-9)
    }),
  )
})

test('liftDeceleration(…) down a slope is that on the level turned with it, (g × ahead ÷ height) cos − g sin, in the pose of that moment', () => {
  fc.assert(
    fc.property(slopes, (slope) => {
      const deceleration = liftDeceleration(bike, { ...ridden, slope })!
      const { centreOfGravity, wheelbase } = solveStance(bike, { ...ridden, slope, deceleration })
      const level = (wheelbase - centreOfGravity.x) / centreOfGravity.z
      const expected = STANDARD_GRAVITY * (level * Math.cos(slope) - Math.sin(slope))
      near(deceleration, expected, 1e-8)
      expect(deceleration).toBeLessThanOrEqual(liftDeceleration(bike, ridden)!)
    }),
    { numRuns: 40 },
  )
})

test('solveStance(…) uphill takes a braking that outweighs the slope, and refuses what the chain would have to pull', () => {
  expect(
    solveStance(bike, { ...ridden, slope: -0.1, deceleration: 1 }).neededGrip.front,
  ).toBeGreaterThan(0)
  expectRefusal(() => solveStance(bike, { ...ridden, slope: -0.1 }), 'slope')
  expectRefusal(() => solveStance(bike, { ...ridden, slope: 1.6 }), 'slope')
  expectRefusal(
    () => wheelLoads({ masses: [{ mass: 1, x: 1, z: 1 }], wheelbase: 2, slope: 2 }),
    'slope',
  )
})

test('solveStance(…) with wheel inertia moves 14 N forward at 0.6 g: worked by hand from 0.45 and 0.6 kg m²', () => {
  // 5.884 × (0.45 ÷ 0.3 + 0.6 ÷ 0.31) ÷ wheelbase: 20.21 N m over about 1.41 m
  const loadCase = { ...ridden, deceleration: 0.6 * STANDARD_GRAVITY }
  const turning = { ...bike, wheelInertia: { front: 0.45, rear: 0.6 } }
  const [without, with_] = [bike, turning].map((of) => solveStance(of, loadCase))
  const moment = 0.6 * STANDARD_GRAVITY * (0.45 / 0.3 + 0.6 / 0.31)
  // the fork sinks a little further for it, which moves the centre of gravity: within a tenth
  near(with_!.frontLoad - without!.frontLoad, moment / without!.wheelbase, 1.5)
  near(moment / without!.wheelbase, 14, 0.5)
})

test('solveStance(…) with wheel inertia balances both bodies: moments about the rear contact and about the pivot, written out anew', () => {
  fc.assert(
    fc.property(slowing, between(0, 1), between(0, 1.5), (a, frontBrakeShare, rear) => {
      const turning = { ...bike, wheelInertia: { front: 0.5, rear } }
      const stance = solveStance(turning, { ...ridden, deceleration: a, frontBrakeShare })
      const { frontRadius, rearRadius } = bike.geometry
      const mass = bike.sprung.mass + RIDER.mass + bike.frontUnsprungMass + bike.rearUnsprungMass
      const { x, z } = stance.centreOfGravity
      const spin = a * (0.5 / frontRadius + rear / rearRadius)
      const front = (mass * (STANDARD_GRAVITY * x + a * z) + spin) / stance.wheelbase
      same(stance.frontLoad, front, 1e-9)
      const { x: ahead, z: up } = stance.pivot
      const brake = (1 - frontBrakeShare) * mass * a
      const held =
        ahead * (stance.rearLoad - bike.rearUnsprungMass * STANDARD_GRAVITY) +
        up * brake -
        bike.rearUnsprungMass * a * (up - rearRadius) +
        (rear * a) / rearRadius
      const height = rearRadius + stance.rearTravel - bike.geometry.pivot.z
      const arm = Math.sqrt(0.55 ** 2 + (rearRadius - 0.4) ** 2 - height ** 2)
      near(held / arm, stance.rearForce + stance.rearStopForce, 1e-6)
    }),
  )
})

test('solveStance(…) takes no notice of wheel inertia at rest, on a slope too, and refuses one below 0', () => {
  const turning = { ...bike, wheelInertia: { front: 0.5, rear: 0.7 } }
  for (const slope of [0, 0.1])
    expect(solveStance(turning, { ...ridden, slope }).frontLoad).toBe(
      solveStance(bike, { ...ridden, slope }).frontLoad,
    )
  expectRefusal(
    () => solveStance({ ...bike, wheelInertia: { front: -0.1 } }, ridden),
    'wheelInertia.front',
  )
})

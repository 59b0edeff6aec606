import { test } from 'vitest'
import { STANDARD_GRAVITY } from '../../src/core/constants.ts'
import { setScene } from '../../src/core/scene.ts'
import { plainBike, RIDER } from './bikes.ts'
import { near } from './near.ts'
import { expectRefusal } from './tolerance.ts'

test('setScene(…) takes rider and sprung mass together, and shares the brake force out', () => {
  const scene = setScene(
    plainBike(),
    { payload: [RIDER], deceleration: 5, frontBrakeShare: 0.7 },
    0,
  )
  near(scene.carried.mass, 235, 1e-12)
  near(scene.carried.x, (155 * 0.72 + 80 * 0.6) / 235, 1e-15)
  near(scene.carried.z, (155 * 0.58 + 80) / 235, 1e-15)
  near(scene.total, 274, 1e-12)
  near(scene.frontBrake, 0.7 * 274 * 5, 1e-9)
  near(scene.rearBrake, 0.3 * 274 * 5, 1e-9)
  // each wheel's own inertia is met by its own brake
  near(scene.frontDrag + scene.rearDrag, 235 * 5, 1e-9)
  near(scene.gravity, STANDARD_GRAVITY, 0)
})

test('setScene(…) refuses a lean of a right angle and beyond, either way', () => {
  for (const lean of [Math.PI / 2, -Math.PI / 2, 2, -2])
    expectRefusal(() => setScene(plainBike(), { lean }, 0), 'lean')
  near(setScene(plainBike(), { lean: -Math.PI / 3 }, 0).gravity, 2 * STANDARD_GRAVITY, 1e-12)
})

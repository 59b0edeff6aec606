import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type DrivenRear, runningRadii, squat } from '../../src/core/index.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'

const sprockets = { pitch: 0.015875, frontTeeth: 16, rearTeeth: 44 }
const driven: DrivenRear = {
  rearAxle: { x: 0, z: 0.31 },
  pivot: { x: 0.57, z: 0.38 },
  frontSprocket: { x: 0.645, z: 0.385 },
  sprockets,
  wheelbase: 1.42,
  centreOfGravityHeight: 0.62,
}
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const drivens = fc.record({
  rearAxle: fc.record({ x: fc.constant(0), z: between(0.28, 0.34) }),
  pivot: fc.record({ x: between(0.5, 0.65), z: between(0.3, 0.48) }),
  frontSprocket: fc.record({ x: between(0.6, 0.75), z: between(0.3, 0.48) }),
  sprockets: fc.constant(sprockets),
  wheelbase: between(1.3, 1.6),
  centreOfGravityHeight: between(0.5, 0.75),
})

test('squat(…) draws the line to where chain and arm cross, worked by hand', () => {
  // Level arm 0.3 m up, equal sprockets of 0.1 m on centres that rise 0.1 m in 1 m: the upper run starts 0.1 m square above the axle.
  // Its height over the axle at x is (x + 0.1 sin β)·tan β + 0.1 cos β with tan β = 0.1; it is 0 at x = −0.1·(cos β/tan β + sin β) = −0.1/sin β = −1.00499 m.
  const radius = 0.1
  const { crossing, squatLineAngle, chainAngle, armAngle, squatRatio } = squat({
    rearAxle: { x: 0, z: 0.3 },
    pivot: { x: 0.5, z: 0.3 },
    frontSprocket: { x: 1, z: 0.4 },
    sprockets: { pitch: (2 * Math.PI * radius) / 20, frontTeeth: 20, rearTeeth: 20 },
    wheelbase: 1.5,
    centreOfGravityHeight: 0.6,
  })
  same(Math.tan(chainAngle), 0.1)
  same(armAngle, 0)
  near(crossing!.x, -1.004988, 1e-6) // half a unit of the last digit worked
  near(Math.tan(squatLineAngle), 0.3 / -1.004988, 1e-6)
  near(squatRatio, 0.4 / (0.3 / -1.004988), 1e-5)
})

test('squat(…) with chain and arm parallel takes the arm’s own slope: worked by hand, a rise of 1 in 10', () => {
  const parallel = squat({
    ...driven,
    rearAxle: { x: 0, z: 0.3 },
    pivot: { x: 0.5, z: 0.35 },
    frontSprocket: { x: 0.6, z: 0.36 },
    sprockets: { pitch: 0.0127, frontTeeth: 20, rearTeeth: 20 },
  })
  expect(parallel.crossing).toBeNull()
  same(Math.tan(parallel.squatLineAngle), 0.1, 1e-9)
  same(parallel.antiSquat, 0.1 / (0.62 / 1.42), 1e-9)
})

test('squat(…) is neutral when the force at the contact needs nothing from the spring: moments about the pivot, a second method', () => {
  fc.assert(
    fc.property(drivens, (it) => {
      const { squatLineAngle, chainAngle, antiSquat, transferAngle } = squat(it)
      const { rear } = runningRadii(it.sprockets)
      const { rearAxle: axle, pivot } = it
      // one newton drives; the chain pulls with the wheel's radius over the sprocket's, at the point where it leaves the sprocket
      const pull = axle.z / rear
      const touch = {
        x: axle.x - rear * Math.sin(chainAngle),
        z: axle.z + rear * Math.cos(chainAngle),
      }
      const chainMoment =
        pull *
        ((touch.z - pivot.z) * Math.cos(chainAngle) - (touch.x - pivot.x) * Math.sin(chainAngle))
      // driving force forwards and load upwards at the contact, about the pivot: −z·1 + x·load + chain = 0
      const load = (pivot.z - chainMoment) / pivot.x
      near(Math.tan(squatLineAngle), load, 1e-9)
      near(antiSquat, load / Math.tan(transferAngle), 1e-9)
    }),
  )
})

test('squat(…) of a common bike lies near neutral, and a higher pivot lessens squat', () => {
  const { squatRatio, antiSquat } = squat(driven)
  expect(squatRatio).toBeGreaterThan(0.5)
  expect(squatRatio).toBeLessThan(1.5)
  expect(squat({ ...driven, pivot: { x: 0.57, z: 0.39 } }).antiSquat).toBeGreaterThan(antiSquat)
})

test('squat(…) has no squat ratio where the line is level', () => {
  const level = squat({
    ...driven,
    rearAxle: { x: 0, z: 0.3 },
    pivot: { x: 0.5, z: 0.3 },
    frontSprocket: { x: 0.6, z: 0.3 },
    sprockets: { pitch: 0.0127, frontTeeth: 20, rearTeeth: 20 },
  })
  expect([level.antiSquat, level.squatRatio]).toEqual([0, null])
})

test('squat(…) refuses what cannot be built', () => {
  expectRefusal(() => squat({ ...driven, pivot: { x: -0.1, z: 0.3 } }), 'pivot.x')
  expectRefusal(() => squat({ ...driven, frontSprocket: { x: 0.05, z: 0.31 } }), 'frontSprocket')
  expectRefusal(() => squat({ ...driven, wheelbase: 0 }), 'wheelbase')
  expectRefusal(() => squat({ ...driven, centreOfGravityHeight: -1 }), 'centreOfGravityHeight')
})

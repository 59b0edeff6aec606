import { expect, test } from 'vitest'
import { liftDeceleration, solveStance, STANDARD_GRAVITY } from '../../src/core/index.ts'
import { plainBike, RIDER, sealedBike } from './bikes.ts'
import { near, same } from './near.ts'

const bike = plainBike()
const ridden = { payload: [RIDER] }

test('liftDeceleration(…) is where solveStance(…) finds no load at the rear', () => {
  for (const loadCase of [
    ridden,
    {},
    { ...ridden, frontBrakeShare: 0.7 },
    { ...ridden, lean: 0.3 },
  ]) {
    const deceleration = liftDeceleration(sealedBike(), loadCase)!
    near(solveStance(sealedBike(), { ...loadCase, deceleration }).rearLoad, 0, 1e-6)
    expect(
      solveStance(sealedBike(), { ...loadCase, deceleration: deceleration + 0.1 }).rearWheelLifts,
    ).toBe(true)
  }
})

test('liftDeceleration(…) is g × (wheelbase − x)/height of the centre of gravity in the pose at that moment', () => {
  const deceleration = liftDeceleration(bike, ridden)!
  const { centreOfGravity, wheelbase } = solveStance(bike, { ...ridden, deceleration })
  same(deceleration, (STANDARD_GRAVITY * (wheelbase - centreOfGravity.x)) / centreOfGravity.z, 1e-9)
})

test('liftDeceleration(…) does not care what deceleration the load case carries', () => {
  expect(liftDeceleration(bike, { ...ridden, deceleration: 3 })).toBe(
    liftDeceleration(bike, ridden),
  )
})

test('liftDeceleration(…) is null for a bike so low and long that 20 m/s² does not lift it', () => {
  const low = {
    ...bike,
    sprung: { ...bike.sprung, x: 0.4, z: 0.3 },
    geometry: { ...bike.geometry, wheelbase: 1.9 },
  }
  expect(liftDeceleration(low)).toBeNull()
})

test('liftDeceleration(…) is null just where 20 m/s² leaves load on the rear wheel, and finds lifts up to there', () => {
  const found: number[] = []
  for (let z = 0.3; z < 0.5; z += 0.004) {
    const lower = { ...bike, sprung: { ...bike.sprung, z } }
    const deceleration = liftDeceleration(lower)
    expect(deceleration === null).toBe(solveStance(lower, { deceleration: 20 }).rearLoad > 0)
    if (deceleration !== null) found.push(deceleration)
  }
  expect(found.some((deceleration) => deceleration > 19 && deceleration <= 20)).toBe(true)
})

test('liftDeceleration(…) is 0 for a load that already hangs the rear wheel at rest', () => {
  expect(liftDeceleration(bike, { payload: [{ mass: 300, x: 2.2, z: 1 }] })).toBe(0)
})

test('liftDeceleration(…) refuses what solveStance(…) refuses', () => {
  expect(() => liftDeceleration(undefined as never)).toThrow(
    expect.objectContaining({ name: 'DomainError' }),
  )
  expect(() => liftDeceleration(bike, { lean: 2 })).toThrow(
    expect.objectContaining({ parameter: 'lean' }),
  )
})

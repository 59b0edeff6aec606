import { describe, expect, test } from 'vitest'
import {
  decelerationReaching,
  inHand,
  rampOvershoot,
  solveStance,
  squeezedFrom,
  STANDARD_GRAVITY,
} from '../../src/core/index.ts'
import { sealedBike as roadster } from './bikes.ts'
import { near as expectNear } from './near.ts'

const RIDER = { payload: [{ mass: 80, x: 0.674, z: 0.99 }] }
const hard = (g: number) => ({ ...RIDER, deceleration: g * STANDARD_GRAVITY })
const question = (g: number) => ({ bike: roadster(), rider: RIDER, braking: hard(g) })

describe('inHand', () => {
  test('inHand is the travel that the settled stop and the overshoot leave', () => {
    const found = inHand(question(0.7))
    const rest = solveStance(roadster(), RIDER)
    const settled = solveStance(roadster(), {
      ...hard(0.7),
      gasState: squeezedFrom(rest.frontTravel),
    })
    expect(found.riderSag).toBe(rest.frontTravel)
    expect(found.brakingTravel).toBe(settled.frontTravel)
    const left = settled.frontLimit.travel - settled.frontTravel
    expectNear(found.reserve[0], left - found.overshoot[1], 1e-15)
    expectNear(found.reserve[1], left - found.overshoot[0], 1e-15)
    // the overshoot is a share of the change, between the least and the most of its ratios and times
    const change = settled.frontTravel - rest.frontTravel
    const most = rampOvershoot({
      dampingRatio: 0.3,
      naturalFrequency: found.rideFrequency!,
      rampTime: 0.1,
    })
    // the front is a little stiffer over the dive than where it stands, since the air is squeezed
    expectNear(found.overshoot[1] / change, most, 0.02)
  })

  test('inHand leaves less the harder the brake, and nothing past the stop', () => {
    const least = [0.3, 0.5, 0.7, 0.9].map((g) => inHand(question(g)).reserve[0])
    expect(least).toEqual([...least].sort((a, b) => b - a))
    expect(inHand(question(1.4)).stop).toBe('bottomed')
    expect(inHand(question(1.4)).reserve[0]).toBeLessThan(0)
  })

  test('inHand has the ride frequency of the whole slope on the mass that the fork carries', () => {
    const { rideFrequency } = inHand(question(0.7))
    // by hand: 2 × 9 N/mm and about 2 N/mm of air, over cos² 24.6°, on 974 N ÷ cos 24.6° ÷ 9.81 = 109 kg: 14.9 rad/s
    expectNear(rideFrequency, 14.9, 0.5)
  })
})

describe('decelerationReaching', () => {
  test('decelerationReaching is the inverse of the deepest quick brake', () => {
    for (const g of [0.3, 0.6, 0.75]) {
      const { brakingTravel, overshoot } = inHand(question(g))
      const found = decelerationReaching(question(0), brakingTravel + overshoot[1])
      // a hundredth of a micrometre of stroke is a few millionths of a metre per second squared
      expectNear(found! / STANDARD_GRAVITY, g, 1e-6)
    }
  })

  test('decelerationReaching is null for a stroke that rest passes, or that no stop reaches, and refuses one below 0', () => {
    expect(decelerationReaching(question(0), 0.02)).toBeNull()
    expect(decelerationReaching(question(0), 0.4)).toBeNull()
    expect(() => decelerationReaching(question(0), -1)).toThrow(/stroke must not be below 0/)
  })
})

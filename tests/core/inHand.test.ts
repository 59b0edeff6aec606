import fc from 'fast-check'
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
import { between } from './draws.ts'
import { near } from './near.ts'

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
    near(found.reserve[0], left - found.overshoot[1], 1e-15)
    near(found.reserve[1], left - found.overshoot[0], 1e-15)
    // the overshoot is a share of the change, between the least and the most of its ratios and times
    const change = settled.frontTravel - rest.frontTravel
    const most = rampOvershoot({
      dampingRatio: 0.3,
      naturalFrequency: found.rideFrequency!,
      rampTime: 0.1,
    })
    // the front is a little stiffer over the dive than where it stands, since the air is squeezed
    near(found.overshoot[1] / change, most, 0.02)
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
    near(rideFrequency, 14.9, 0.5)
  })
})

/** Any rider on any brake that does not reach the stop. */
const anyone = [between(45, 110), between(0.02, 0.65)] as const
const asked = (mass: number, g: number) => {
  const rider = { payload: [{ ...RIDER.payload[0]!, mass }] }
  const braking = { ...rider, deceleration: g * STANDARD_GRAVITY }
  return { bike: roadster(), rider, braking }
}

describe('inHand, whoever rides and however hard the brake', () => {
  test('inHand leaves what braking travel and overshoot leave of the travel, and less to a harder brake', () => {
    fc.assert(
      fc.property(...anyone, between(0.001, 0.1), (mass, g, more) => {
        const [easy, hard] = [inHand(asked(mass, g)), inHand(asked(mass, g + more))]
        for (const each of [0, 1] as const) {
          const used = easy.brakingTravel + easy.overshoot[each]
          near(used + easy.reserve[each === 0 ? 1 : 0], 0.12, 1e-15)
          expect(hard.reserve[each]).toBeLessThan(easy.reserve[each])
        }
        expect(easy.overshoot[0]).toBeLessThanOrEqual(easy.overshoot[1])
      }),
      { numRuns: 30 },
    )
  })

  test('inHand squeezes the gas fast from where the bike stood, unless it is told another state', () => {
    fc.assert(
      fc.property(...anyone, (mass, g) => {
        const question = asked(mass, g)
        const found = inHand(question)
        // air that keeps its heat
        const gasState = { exponent: 1.4, from: found.riderSag }
        expect(squeezedFrom(found.riderSag)).toEqual(gasState)
        expect(inHand({ ...question, braking: { ...question.braking, gasState } })).toEqual(found)
        // slow gas pushes back less
        const slow = { ...question.braking, gasState: {} }
        expect(inHand({ ...question, braking: slow }).brakingTravel).toBeGreaterThan(
          found.brakingTravel,
        )
      }),
      { numRuns: 30 },
    )
  })
})

describe('decelerationReaching', () => {
  test('decelerationReaching put back into the dive gives the stroke, whoever rides', () => {
    fc.assert(
      fc.property(between(45, 110), between(0.05, 0.11), (mass, stroke) => {
        const found = decelerationReaching(asked(mass, 0), stroke)!
        const { brakingTravel, overshoot } = inHand(asked(mass, found / STANDARD_GRAVITY))
        // a search ends within a hundredth of a micrometre
        near(brakingTravel + overshoot[1], stroke, 1e-8)
      }),
      { numRuns: 20 },
    )
  })

  test('decelerationReaching is the inverse of the deepest quick brake', () => {
    for (const g of [0.3, 0.6, 0.75]) {
      const { brakingTravel, overshoot } = inHand(question(g))
      const found = decelerationReaching(question(0), brakingTravel + overshoot[1])
      // a hundredth of a micrometre of stroke is a few millionths of a metre per second squared
      near(found! / STANDARD_GRAVITY, g, 1e-6)
    }
  })

  test('decelerationReaching is null for a stroke that rest passes, or that no stop reaches, and refuses one below 0', () => {
    expect(decelerationReaching(question(0), 0.02)).toBeNull()
    expect(decelerationReaching(question(0), 0.4)).toBeNull()
    expect(() => decelerationReaching(question(0), -1)).toThrow(/stroke must not be below 0/)
  })
})

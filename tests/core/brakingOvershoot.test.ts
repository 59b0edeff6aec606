import { describe, expect, test } from 'vitest'
import { brakingOvershoot } from '../../src/core/brakingOvershoot.ts'
import { STANDARD_GRAVITY } from '../../src/core/constants.ts'
import { stepOvershoot } from '../../src/core/damping.ts'
import type { Fork } from '../../src/core/fork.ts'
import { rampOvershoot } from '../../src/core/overshoot.ts'
import type { Stance } from '../../src/core/stance.ts'
import { expectWithin, rounding } from './tolerance.ts'

const fork: Fork = {
  travel: 0.12,
  legs: [0, 1].map(() => ({ spring: [{ rate: 9000 }], preload: 0.015 })),
}
const rake = 0.45
const at = (frontTravel: number): Stance =>
  ({ frontTravel, rake, forkForce: 18000 * (0.015 + frontTravel) }) as Stance
const spread = { dampingRatios: [0.3, 0.4], rampTimes: [0.1, 0.2] }

describe('brakingOvershoot', () => {
  test('brakingOvershoot is the change times the overshoot of the front’s mass on the fork taken upright', () => {
    const mass = (18000 * 0.051) / (STANDARD_GRAVITY * Math.cos(rake))
    const naturalFrequency = Math.sqrt(18000 / Math.cos(rake) ** 2 / mass)
    const [low, high] = brakingOvershoot(fork, at(0.036), at(0.086), undefined, spread)
    expectWithin(
      low,
      0.05 * rampOvershoot({ dampingRatio: 0.4, naturalFrequency, rampTime: 0.2 }),
      rounding(0.1),
    )
    expectWithin(
      high,
      0.05 * rampOvershoot({ dampingRatio: 0.3, naturalFrequency, rampTime: 0.1 }),
      rounding(0.1),
    )
  })

  test('brakingOvershoot is 0 where braking does not press the fork further', () => {
    expect(brakingOvershoot(fork, at(0.05), at(0.05), undefined, spread)).toEqual([0, 0])
    expect(brakingOvershoot(fork, at(0.05), at(0.04), undefined, spread)).toEqual([0, 0])
  })

  test('brakingOvershoot is that of a step where the front carries nothing', () => {
    const [, high] = brakingOvershoot(fork, { ...at(0), forkForce: 0 }, at(0.05), undefined, {
      dampingRatios: [0.3],
      rampTimes: [0.5],
    })
    expectWithin(
      high,
      0.05 * rampOvershoot({ dampingRatio: 0.3, naturalFrequency: 1, rampTime: 0 }),
      rounding(0.1),
    )
  })

  test('brakingOvershoot is that of a step on a fork without slope: gas alone, at constant pressure', () => {
    const air: Fork = {
      travel: 0.12,
      legs: [
        {
          spring: [],
          preload: 0,
          gas: { tubeDiameter: 0.04, boreDiameter: 0.04, airHeight: 0.1, gaugePressure: 4e5 },
        },
      ],
    }
    const rider = { ...at(0.03), forkForce: 500 }
    const [, high] = brakingOvershoot(
      air,
      rider,
      at(0.08),
      { exponent: 0 },
      { dampingRatios: [0.3], rampTimes: [0.5] },
    )
    expectWithin(high, 0.05 * stepOvershoot(0.3), rounding(0.1))
  })

  test('brakingOvershoot takes a fork that stiffens on the way at its mean slope: 9 and 18 N/mm, half the way each, are 13.5', () => {
    // 18 and 18 N/mm in series are 9; the first group closes at 0.06 m of deflection
    const stiffening: Fork = {
      travel: 0.12,
      legs: [{ spring: [{ rate: 18000, closes: 0.03 }, { rate: 18000 }], preload: 0 }],
    }
    const rider = { ...at(0.04), forkForce: 360 }
    const mass = 360 / (STANDARD_GRAVITY * Math.cos(rake))
    const naturalFrequency = Math.sqrt(13500 / Math.cos(rake) ** 2 / mass)
    const [, high] = brakingOvershoot(stiffening, rider, at(0.08), undefined, spread)
    expectWithin(
      high,
      0.04 * rampOvershoot({ dampingRatio: 0.3, naturalFrequency, rampTime: 0.1 }),
      rounding(1),
    )
  })
})

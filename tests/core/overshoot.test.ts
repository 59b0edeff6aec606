import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dampedFree, stepOvershoot } from '../../src/core/damping.ts'
import { rampOvershoot } from '../../src/core/overshoot.ts'
import { expectRefusal, expectWithin, rounding } from './tolerance.ts'

const some = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** The oracle: the ramp's response as an average of step responses by Simpson's rule, its highest point by search and refinement. */
function byQuadrature(dampingRatio: number, naturalFrequency: number, rampTime: number): number {
  const system = {
    mass: 1,
    stiffness: naturalFrequency ** 2,
    damping: 2 * dampingRatio * naturalFrequency,
    displacement: -1,
    velocity: 0,
  }
  const step = (t: number) => (t <= 0 ? -1 : dampedFree(system, t))
  const after = (t: number) => {
    const n = 400
    let sum = 0
    for (let i = 0; i <= n; i++)
      sum += (i === 0 || i === n ? 1 : i % 2 ? 4 : 2) * step(t - (rampTime * i) / n)
    return sum / (3 * n)
  }
  const period = (2 * Math.PI) / naturalFrequency
  let [centre, width] = [rampTime + period / 2, period / 2]
  for (let round = 0; round < 14; round++) {
    const points = Array.from({ length: 21 }, (_, i) =>
      Math.max(rampTime, centre + width * (i / 10 - 1)),
    )
    centre = points.reduce((best, t) => (after(t) > after(best) ? t : best))
    width /= 5
  }
  return after(centre)
}

describe('rampOvershoot', () => {
  test('rampOvershoot agrees with the step response averaged over the ramp by quadrature', () => {
    for (const zeta of [0, 0.3, 0.8]) {
      for (const rampTime of [0.03, 0.2]) {
        const wanted = byQuadrature(zeta, 14, rampTime)
        // Simpson's rule over a ramp of up to 7 rad in 400 parts: 1e-9
        expectWithin(
          rampOvershoot({ dampingRatio: zeta, naturalFrequency: 14, rampTime }),
          Math.max(0, wanted),
          1e-8,
        )
      }
    }
  })

  test('rampOvershoot without damping is |sin(ωT/2)|/(ωT/2) (Rao, Mechanical Vibrations, ch. 4)', () => {
    for (const half of [0.1, 1, 2, 3, 4, 5, 10]) {
      expectWithin(
        rampOvershoot({ dampingRatio: 0, naturalFrequency: 2, rampTime: half }),
        Math.abs(Math.sin(half)) / half,
        rounding(1),
      )
    }
  })

  test('rampOvershoot at 0 s is stepOvershoot, and tends to it as the ramp shortens', () => {
    fc.assert(
      fc.property(
        some(0, 1.5),
        some(0.1, 100),
        some(1e-12, 1e-6),
        (dampingRatio, naturalFrequency, rampTime) => {
          const wanted = stepOvershoot(dampingRatio)
          expectWithin(rampOvershoot({ dampingRatio, naturalFrequency, rampTime: 0 }), wanted, 0)
          // the difference grows with the square of ωT
          expectWithin(
            rampOvershoot({ dampingRatio, naturalFrequency, rampTime }),
            wanted,
            1e-13 + (naturalFrequency * rampTime) ** 2,
          )
        },
      ),
    )
  })

  test('rampOvershoot never exceeds stepOvershoot and never falls below 0', () => {
    fc.assert(
      fc.property(
        some(0, 2),
        some(0.1, 100),
        some(0, 5),
        (dampingRatio, naturalFrequency, rampTime) => {
          const share = rampOvershoot({ dampingRatio, naturalFrequency, rampTime })
          expect(share).toBeGreaterThanOrEqual(0)
          expect(share).toBeLessThanOrEqual(stepOvershoot(dampingRatio) + rounding(1))
        },
      ),
    )
  })

  test('rampOvershoot is 15 to 35 % for brakes put on in 0.1 to 0.2 s at a damping ratio of 0.3 to 0.4 and 13 to 16 rad/s', () => {
    for (const naturalFrequency of [13, 14, 15, 16])
      for (const dampingRatio of [0.3, 0.4])
        for (const rampTime of [0.1, 0.2]) {
          const share = rampOvershoot({ dampingRatio, naturalFrequency, rampTime })
          expect(share).toBeGreaterThan(0.15)
          expect(share).toBeLessThan(0.35)
        }
  })

  test('rampOvershoot is 0 from a damping ratio of 1 on, and finite at extremes', () => {
    expect(rampOvershoot({ dampingRatio: 1, naturalFrequency: 10, rampTime: 0.1 })).toBe(0)
    expect(rampOvershoot({ dampingRatio: 5, naturalFrequency: 10, rampTime: 0 })).toBe(0)
    expect(rampOvershoot({ dampingRatio: 0.3, naturalFrequency: 1e300, rampTime: 1e300 })).toBe(0)
    expectWithin(
      rampOvershoot({ dampingRatio: 0.3, naturalFrequency: 1e-300, rampTime: 1 }),
      stepOvershoot(0.3),
      0,
    )
    expect(rampOvershoot({ dampingRatio: 0.9999999999, naturalFrequency: 10, rampTime: 0.1 })).toBe(
      0,
    )
  })

  test('rampOvershoot refuses a negative ratio or time and a frequency of 0', () => {
    expectRefusal(() => rampOvershoot(undefined as never), 'ramp')
    expectRefusal(
      () => rampOvershoot({ dampingRatio: -0.1, naturalFrequency: 10, rampTime: 0.1 }),
      'dampingRatio',
    )
    expectRefusal(
      () => rampOvershoot({ dampingRatio: 0.3, naturalFrequency: 0, rampTime: 0.1 }),
      'naturalFrequency',
    )
    expectRefusal(
      () => rampOvershoot({ dampingRatio: 0.3, naturalFrequency: 10, rampTime: -0.1 }),
      'rampTime',
    )
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  DomainError,
  type MotionRatio,
  type Rear,
  rearLimit,
  rearTravel,
  rearWheelForce,
  rearWheelRate,
} from '../../src/core/index.ts'
import { plainBike, randomCase, stream } from './bikes.ts'
import { near, same } from './near.ts'

const plain: Rear = plainBike().rear
const seeds = fc.integer({ min: 0, max: 2 ** 31 })
const part = fc.double({ min: 0.01, max: 0.99, noNaN: true })
const withRatio = (motionRatio: MotionRatio): Rear => ({ ...plain, motionRatio })

describe('a constant motion ratio', () => {
  const rear: Rear = {
    travel: 0.12,
    spring: [{ rate: 90000 }],
    preload: 0.01,
    motionRatio: { initial: 1 / 2.3 },
  }

  test('rearWheelRate(…) divides by leverage squared: 90 N/mm at 2.3:1 is 17.0 N/mm', () =>
    near(rearWheelRate(rear, 0.05), 17013, 1))

  test('rearTravel(…) moves about 2.3 mm at the wheel for 1 mm of preload', () => {
    near(rearTravel(rear, 1200) - rearTravel({ ...rear, preload: 0.011 }, 1200), 0.0023, 1e-12)
  })

  test('rearWheelForce(…) counts the gas force per shock, twice with two shocks', () => {
    const gassed = { ...rear, gasForce: 185 }
    same(rearWheelForce(gassed, 0.05) - rearWheelForce(rear, 0.05), 185 / 2.3)
    same(rearWheelForce({ ...gassed, shocks: 2 }, 0.05), 2 * rearWheelForce(gassed, 0.05))
    near(1.2e6 * (Math.PI / 4) * 0.014 ** 2, 185, 0.5) // 1.2 MPa on a 14 mm rod
  })

  test('rearWheelForce(…) loses what the top-out spring pulls', () => {
    const topOut = { rate: 8000, length: 0.01 }
    same(rearWheelForce({ ...rear, topOut }, 0.004), rearWheelForce(rear, 0.004) - 48)
    expect(rearWheelForce({ ...rear, topOut }, 0.01)).toBe(rearWheelForce(rear, 0.01))
    near(rearWheelRate({ ...rear, topOut }, 0.009), 17013 + 8000, 1)
    expect(rearWheelRate({ ...rear, topOut }, 0.01)).toBe(rearWheelRate(rear, 0.01))
  })
})

describe('a changing motion ratio', () => {
  test('rearWheelForce(…) uses the integral of initial + slope·x for the stroke', () => {
    const rear = withRatio({ initial: 0.4, slope: 0.8 })
    const x = 0.06
    same(rearWheelForce(rear, x), 95000 * (0.012 + 0.4 * x + 0.4 * x * x) * (0.4 + 0.8 * x))
  })

  test('rearWheelForce(…) with two points of a table is the straight line through them', () => {
    const line = withRatio({ initial: 0.4, slope: 0.8 })
    const table = withRatio({
      table: [
        [0, 0.4],
        [0.13, 0.4 + 0.8 * 0.13],
      ],
    })
    for (const x of [0, 0.03, 0.13]) same(rearWheelForce(table, x), rearWheelForce(line, x))
    for (const x of [0, 0.03, 0.129]) same(rearWheelRate(table, x), rearWheelRate(line, x))
  })

  test('rearWheelForce(…) counts the stroke from full extension when a table begins before it', () => {
    const early = withRatio({
      table: [
        [-0.05, 0.36],
        [0.13, 0.4 + 0.8 * 0.13],
      ],
    })
    same(rearWheelForce(early, 0.05), rearWheelForce(withRatio({ initial: 0.4, slope: 0.8 }), 0.05))
  })

  test('rearWheelForce(…) refuses a table that does not cover the travel: outside its points nothing is known', () => {
    expect(() =>
      rearWheelForce(
        withRatio({
          table: [
            [0.01, 0.4],
            [0.13, 0.5],
          ],
        }),
        0.05,
      ),
    ).toThrow('must reach from 0 to the full travel')
    expect(() =>
      rearWheelForce(
        withRatio({
          table: [
            [0, 0.4],
            [0.12, 0.5],
          ],
        }),
        0.05,
      ),
    ).toThrow(expect.objectContaining({ parameter: 'motionRatio.table' }))
  })

  test('rearWheelRate(…) is the slope of rearWheelForce(…), the term from the ratio included', () => {
    fc.assert(
      fc.property(seeds, part, (seed, share) => {
        const { rear } = randomCase(stream(seed)).bike
        const x = share * rearLimit(rear).travel
        const step = 1e-7
        const right = (rearWheelForce(rear, x + step) - rearWheelForce(rear, x)) / step
        const left = (rearWheelForce(rear, x) - rearWheelForce(rear, x - step)) / step
        if (Math.abs(right - left) < 1e-3 * Math.abs(right))
          near(rearWheelRate(rear, x), right, 1e-3 * Math.abs(right) + 0.1)
      }),
    )
  })

  test('rearTravel(rearWheelForce(x)) carries the same force', () => {
    fc.assert(
      fc.property(seeds, part, (seed, share) => {
        const { rear } = randomCase(stream(seed)).bike
        const force = rearWheelForce(rear, share * rearLimit(rear).travel)
        near(rearWheelForce(rear, rearTravel(rear, force)), force, 1e-6)
      }),
    )
  })
})

describe('rearLimit', () => {
  test('rearLimit(…) is the stop, or where the shock’s spring is solid', () => {
    expect(rearLimit(plain)).toEqual({ travel: 0.13, cause: 'bottomed' })
    const limit = rearLimit({
      ...plain,
      spring: [{ rate: 95000, closes: 0.05 }],
      motionRatio: { initial: 0.4, slope: 0.8 },
    })
    expect(limit.cause).toBe('coilBound')
    same(0.4 * limit.travel + 0.4 * limit.travel ** 2, 0.05 - 0.012)
  })

  test('rearLimit(…) is the stop where the spring closes just there', () => {
    // exact in binary: a stroke of 62.5 mm beyond a preload of 62.5
    const rear: Rear = {
      travel: 0.125,
      spring: [{ rate: 95000, closes: 0.125 }],
      preload: 0.0625,
      motionRatio: { initial: 0.5 },
    }
    expect(rearLimit(rear)).toEqual({ travel: 0.125, cause: 'bottomed' })
  })

  test('rearLimit(…) finds coil bind in the piece of a table that holds it', () => {
    const spring = [{ rate: 95000, closes: 0.05 }]
    const { travel } = rearLimit({
      ...plain,
      spring,
      motionRatio: {
        table: [
          [0, 0.4],
          [0.05, 0.5],
          [0.13, 0.5],
        ],
      },
    })
    same(0.0225 + 0.5 * (travel - 0.05), 0.038)
    expect(
      rearWheelForce(
        {
          ...plain,
          spring,
          motionRatio: {
            table: [
              [0, 0.4],
              [0.05, 0.5],
              [0.13, 0.5],
            ],
          },
        },
        travel,
      ),
    ).toBeGreaterThan(0)
  })

  test('rearTravel(…) is held to 0 and to the limit', () => {
    expect(rearTravel(plain, -100)).toBe(0)
    expect(rearTravel(plain, 1e7)).toBe(0.13)
  })
})

describe('a wheel force that falls has no unique balance', () => {
  test('rearWheelForce(…) refuses a ratio that falls faster than the spring stiffens', () => {
    expect(() =>
      rearWheelForce(
        {
          ...plain,
          spring: [{ rate: 1000 }],
          preload: 0.1,
          motionRatio: { initial: 0.6, slope: -2 },
        },
        0,
      ),
    ).toThrow('must not make the wheel force fall')
  })

  test('rearWheelForce(…) refuses a fall that begins where the top-out spring ends', () => {
    const falling: Rear = {
      ...plain,
      spring: [{ rate: 1000 }],
      preload: 0.1,
      motionRatio: { initial: 0.6, slope: -2 },
    }
    expect(() => rearWheelForce({ ...falling, topOut: { rate: 1e5, length: 0.1 } }, 0)).toThrow(
      'must not make the wheel force fall',
    )
    expect(rearWheelForce({ ...falling, topOut: { rate: 1e5, length: 0.13 } }, 0)).toBeLessThan(0)
  })

  test('rearWheelForce(…) allows a fall that coil bind keeps out of reach, and one that is rounding', () => {
    const table: [number, number][] = [[0, 0.5], [0.08, 0.6], [0.13, 0.1]] // prettier-ignore
    const far: Rear = { ...plain, spring: [{ rate: 9000 }], motionRatio: { table } }
    expect(() => rearLimit(far)).toThrow('must not make the wheel force fall')
    expect(rearLimit({ ...far, spring: [{ rate: 9000, closes: 0.03 }] }).cause).toBe('coilBound')
    const level = (slope: number): Rear => ({
      ...plain,
      spring: [],
      preload: 0,
      gasForce: 185,
      motionRatio: { initial: 0.45, slope },
    })
    near(rearWheelForce(level(-1e-11), 0.1), 185 * 0.45, 1e-9)
    expect(() => rearLimit(level(-1e-6))).toThrow('must not make the wheel force fall')
  })

  test('rearWheelForce(…) allows a force that is level: gas alone, or nothing at all', () => {
    const bare: Rear = { ...plain, spring: [], preload: 0 }
    expect(rearWheelForce(bare, 0.05)).toBe(0)
    same(rearWheelForce({ ...bare, gasForce: 185 }, 0.05), 185 * 0.45)
    expect(rearWheelRate({ ...bare, gasForce: 185 }, 0.05)).toBe(0)
  })

  test('rearWheelForce(…) allows a falling ratio while the force still rises', () => {
    const gentle = withRatio({ initial: 0.5, slope: -0.3 })
    expect(rearWheelForce(gentle, 0.1)).toBeGreaterThan(rearWheelForce(gentle, 0.09))
  })

  test('rearWheelForce(…) refuses a fall in one piece of a table only, and agrees with a scan of the whole travel', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.3, max: 0.8, noNaN: true }), { minLength: 2, maxLength: 5 }),
        fc.integer({ min: -10, max: 20 }).map((millimetres) => millimetres / 1000),
        (ratios, preload) => {
          const table = ratios.map((ratio, i): [number, number] => [
            (i * 0.13) / (ratios.length - 1),
            ratio,
          ])
          const rear: Rear = {
            travel: 0.13,
            spring: [{ rate: 60000, closes: 0.03 }, { rate: 90000 }],
            preload,
            gasForce: 100,
            motionRatio: { table },
          }
          let refused = false
          try {
            rearLimit(rear)
          } catch (error) {
            expect(error).toMatchObject({ name: 'DomainError', parameter: 'motionRatio' })
            refused = true
          }
          if (refused) expect(falls(rear, table)).toBe(true)
          else
            for (let x = 0; x < 0.129; x += 0.001)
              expect(rearWheelForce(rear, x + 0.001)).toBeGreaterThanOrEqual(
                rearWheelForce(rear, x) - 1e-9,
              )
        },
      ),
    )
  })
})

/** Whether the wheel force falls anywhere, found by stepping through the travel with the law written out anew. */
function falls(rear: Rear, table: [number, number][]): boolean {
  const ratio = (x: number): number => {
    const i = Math.min(
      table.findLastIndex(([at]) => at <= x),
      table.length - 2,
    )
    const [[x0, m0], [x1, m1]] = [table[i]!, table[i + 1]!]
    return m0 + ((m1 - m0) * (x - x0)) / (x1 - x0)
  }
  const step = 0.13 / 20000
  let stroke = rear.preload
  let before = -Infinity
  for (let i = 0; i <= 20000; i++) {
    const x = i * step
    const d = Math.max(0, stroke)
    const spring = d < 0.03 * (1 + 60000 / 90000) ? 36000 * d : 90000 * (d - 0.03)
    const force = (spring + 100) * ratio(x)
    if (force < before) return true
    before = force
    stroke += ratio(x + step / 2) * step
  }
  return false
}

test('rearWheelForce(…) and its kin refuse what makes no sense', () => {
  const bad: [Partial<Rear>, string][] = [
    [{ travel: 0 }, 'travel'],
    [{ shocks: 0 }, 'shocks'],
    [{ shocks: 1.5 }, 'shocks'],
    [{ preload: NaN }, 'preload'],
    [{ gasForce: -1 }, 'gasForce'],
    [{ friction: -1 }, 'friction'],
    [{ motionRatio: { initial: 0 } }, 'motionRatio.initial'],
    [{ motionRatio: { initial: 0.1, slope: -1 } }, 'motionRatio.slope'],
    [{ motionRatio: { table: [[0, 0.5]] } }, 'motionRatio.table'],
    [
      {
        motionRatio: {
          table: [
            [0, 0.5],
            [0, 0.5],
            [0.13, 0.5],
          ],
        },
      },
      'motionRatio.table',
    ],
    [
      {
        motionRatio: {
          table: [
            [0, 0.5],
            [0.13, -0.5],
          ],
        },
      },
      'motionRatio.table',
    ],
    [{ motionRatio: undefined }, 'motionRatio'],
    [{ spring: [{ rate: -1 }] }, 'rate'],
    [{ spring: [{ rate: 1e5, closes: 0.01 }] }, 'preload'],
  ]
  for (const [change, parameter] of bad) {
    expect(() => rearWheelForce({ ...plain, ...change }, 0)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  }
  for (const x of [-1e-6, 0.1301, NaN])
    expect(() => rearWheelForce(plain, x)).toThrow(expect.objectContaining({ parameter: 'x' }))
  const bound: Rear = { ...plain, spring: [{ rate: 95000, closes: 0.03 }] }
  for (const of of [rearWheelForce, rearWheelRate])
    expect(() => of(bound, 0.12)).toThrow(expect.objectContaining({ parameter: 'x' }))
  expect(() => rearTravel(plain, Infinity)).toThrow(DomainError)
})

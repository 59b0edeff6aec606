import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  DomainError,
  type Fork,
  forkCurve,
  forkCurveForce,
  forkCurveFrom,
  forkEnergy,
  forkForce,
  forkLimit,
  forkRate,
  forkTravel,
  gasForce,
  lastTravel,
} from '../../src/core/index.ts'
import { GAS, plainBike, randomCase, sealedBike, stream } from './bikes.ts'
import { between } from './draws.ts'
import { near, same } from './near.ts'

const LEG = { spring: [{ rate: 9000 }], preload: 0.015 }
const open: Fork = plainBike().fork
const sealed: Fork = sealedBike().fork
const seeds = fc.integer({ min: 0, max: 2 ** 31 })

/** A random fork that makes sense, or the plain one. */
function randomFork(seed: number): Fork {
  const { fork } = randomCase(stream(seed)).bike
  try {
    forkLimit(fork)
    return fork
  } catch {
    return open
  }
}

const lastOf = (fork: Fork): number =>
  forkLimit(fork).travel * (forkLimit(fork).cause === 'locked' ? 0.95 : 1)

describe('a linear fork: 9.0 N/mm a leg, preload 15 mm, 971 N with rider and 640 N without', () => {
  const preloaded = (preload: number, rate = 9000): Fork => ({
    travel: 0.12,
    legs: [
      { spring: [{ rate }], preload },
      { spring: [{ rate }], preload },
    ],
  })

  test('forkTravel(…) is 38.9 mm, and 28.9 mm with 10 mm more preload', () => {
    near(forkTravel(preloaded(0.015), 971), 0.0389, 5e-5)
    near(forkTravel(preloaded(0.025), 971), 0.0289, 5e-5) // worked by hand to 0.1 mm
  })

  test('forkRate(…) is 18 N/mm at any preload: the next 10 mm cost 180 N', () => {
    for (const preload of [0, 0.015, 0.025]) {
      expect(forkRate(preloaded(preload), 0.04)).toBe(18000)
      near(forkForce(preloaded(preload), 0.05) - forkForce(preloaded(preload), 0.04), 180, 1e-9)
    }
  })

  test('forkForce(…) at full travel grows from 2430 to 2610 N with 10 mm of preload', () => {
    same(forkForce(preloaded(0.015), 0.12), 2430)
    same(forkForce(preloaded(0.025), 0.12), 2610)
  })

  test('forkTravel(…) plus preload is load ÷ rate whatever the preload: the spring carries the load', () => {
    for (const preload of [0.005, 0.015, 0.025])
      same(forkTravel(preloaded(preload), 971) + preload, 971 / 18000)
  })

  test('forkTravel(…) is the same for 15 N/mm with 25.8 mm of preload, and the force at full travel 10 % less', () => {
    near(forkTravel(preloaded(0.0258, 7500), 971), 0.0389, 5e-5)
    near(forkForce(preloaded(0.0258, 7500), 0.12), 2187, 0.5)
  })

  test('forkTravel(…) without rider: at equal rider sag the softer spring has less free sag', () => {
    near(forkTravel(preloaded(0.015), 640), 0.0206, 5e-5)
    near(forkTravel(preloaded(0.0258, 7500), 640), 0.0169, 5e-5)
    near(forkTravel(preloaded(0.0096, 10000), 640), 0.0224, 5e-5)
  })
})

describe('a sealed fork, the same with 130 mm of gas above the oil', () => {
  test('forkTravel(…) falls from 38.9 to 35.1 mm with rider and to 18.7 mm without', () => {
    near(forkTravel(sealed, 971), 0.0351, 5e-5)
    near(forkTravel(sealed, 640), 0.0187, 5e-5)
  })

  test('forkRate(…) at n = 1.3 is 21.6 N/mm at 39 mm and 35.3 N/mm at 110 mm', () => {
    near(forkRate(sealed, 0.039, { exponent: 1.3 }), 21600, 50)
    near(forkRate(sealed, 0.11, { exponent: 1.3 }), 35300, 50)
  })

  test('forkForce(…) is both springs and both gases', () => {
    same(forkForce(sealed, 0.05), 2 * (9000 * 0.065 + gasForce(GAS, 0.12, 0.05)))
  })
})

describe('legs', () => {
  test('forkForce(…) takes one leg with the spring and another with the gas', () => {
    const split: Fork = {
      travel: 0.12,
      legs: [
        { spring: [{ rate: 18000 }], preload: 0.015 },
        { spring: [], preload: 0, gas: GAS },
      ],
    }
    same(forkForce(split, 0.05), 18000 * 0.065 + gasForce(GAS, 0.12, 0.05))
    same(
      forkRate(split, 0.119),
      forkRate({ travel: 0.12, legs: [LEG, { ...LEG, gas: GAS }] }, 0.119),
    )
  })

  test('forkForce(…) of a fork with empty legs is 0, and forkTravel(…) then 0 or the stop', () => {
    const empty: Fork = { travel: 0.12, legs: [{ spring: [], preload: 0 }] }
    expect(forkForce(empty, 0.05)).toBe(0)
    expect(forkTravel(empty, 0)).toBe(0)
    expect(forkTravel(empty, 1)).toBe(0.12)
  })

  test('forkForce(…) does not depend on the order of the legs', () => {
    fc.assert(
      fc.property(seeds, between(0, 1), (seed, part) => {
        const fork = randomFork(seed)
        const turned = { ...fork, legs: [...fork.legs].reverse() }
        const x = part * lastOf(fork)
        near(forkForce(turned, x), forkForce(fork, x), 1e-9 * Math.abs(forkForce(fork, x)) + 1e-9)
        expect(forkLimit(turned)).toEqual(forkLimit(fork))
      }),
    )
  })

  test('forkForce(…) with a loose spring, preload below 0, starts after the gap', () => {
    const loose: Fork = { travel: 0.12, legs: [{ spring: [{ rate: 9000 }], preload: -0.01 }] }
    expect(forkForce(loose, 0.01)).toBe(0)
    expect(forkRate(loose, 0.005)).toBe(0)
    same(forkForce(loose, 0.03), 180)
  })
})

describe('top-out spring', () => {
  const fork: Fork = { ...open, topOut: { rate: 5000, length: 0.02 } }

  test('forkForce(…) loses rate × what is left of its length, and nothing beyond', () => {
    same(forkForce(fork, 0.005), forkForce(open, 0.005) - 75)
    expect(forkForce(fork, 0.02)).toBe(forkForce(open, 0.02))
  })

  test('forkRate(…) carries it to the left of its length and not to the right', () => {
    expect(forkRate(fork, 0.019)).toBe(23000)
    expect(forkRate(fork, 0.02)).toBe(18000)
  })

  test('forkForce(…) may be below 0 at full extension', () => {
    expect(forkForce({ ...fork, topOut: { rate: 40000, length: 0.02 } }, 0)).toBeLessThan(0)
  })
})

describe('forkLimit', () => {
  test('forkLimit(…) is the stop when nothing comes first', () =>
    expect(forkLimit(sealed)).toEqual({ travel: 0.12, cause: 'bottomed' }))

  test('forkLimit(…) is coil bind when every group of a leg is closed before the stop', () => {
    const leg = {
      spring: [
        { rate: 9000, closes: 0.05 },
        { rate: 2e4, closes: 0.06 },
      ],
      preload: 0.015,
    }
    const limit = forkLimit({ travel: 0.12, legs: [LEG, leg] })
    expect(limit.cause).toBe('coilBound')
    near(limit.travel, 0.095, 1e-15)
    const { travel } = limit
    expect(() => forkForce({ travel: 0.12, legs: [LEG, leg] }, travel + 1e-6)).toThrow(DomainError)
    expect(forkForce({ travel: 0.12, legs: [LEG, leg] }, travel)).toBeGreaterThan(0)
  })

  test('forkLimit(…) is 0 for a spring coil-bound at full extension, and more preload than that is refused', () => {
    const bound = (preload: number): Fork => ({
      travel: 0.12,
      legs: [{ spring: [{ rate: 9000, closes: 0.05 }], preload }],
    })
    expect(forkLimit(bound(0.05))).toEqual({ travel: 0, cause: 'coilBound' })
    expect(forkTravel(bound(0.05), 1e4)).toBe(0)
    expect(() => forkLimit(bound(0.051))).toThrow(expect.objectContaining({ parameter: 'preload' }))
  })

  test('forkLimit(…) is the stop where a spring closes just there, and a lock where the gas is gone just there', () => {
    // exact in binary
    const fork = (leg: object): Fork => ({
      travel: 0.125,
      legs: [{ spring: [], preload: 0, ...leg }],
    })
    expect(forkLimit(fork({ spring: [{ rate: 9000, closes: 0.25 }], preload: 0.125 }))).toEqual({
      travel: 0.125,
      cause: 'bottomed',
    })
    const { travel, cause } = forkLimit(
      fork({ gas: { tubeDiameter: 0.0625, boreDiameter: 0.0625, airHeight: 0 } }),
    )
    near(travel, 0.125, 1e-16)
    expect(cause).toBe('locked')
  })

  const oily: Fork = { ...open, legs: [LEG, { ...LEG, gas: { ...GAS, airHeight: 0.03 } }] }

  test('forkLimit(…) is hydraulic lock where the gas volume is gone', () => {
    const limit = forkLimit(oily)
    expect(limit.cause).toBe('locked')
    const area = (Math.PI / 4) * 0.043 ** 2
    near(limit.travel, 0.12 - (56e-6 - (Math.PI / 4) * 0.038 ** 2 * 0.03) / area, 1e-12)
  })

  test('forkTravel(…) approaches a lock under any force and never reaches it', () => {
    const { travel } = forkLimit(oily)
    for (const force of [1e4, 1e6, 1e9]) {
      const x = forkTravel(oily, force)
      expect(x).toBeLessThan(travel)
      same(forkForce(oily, x), force, 1e-3) // one step of rounding in x is a part in a thousand at 1e9 N
    }
    expect(forkTravel(oily, 1e15)).toBeLessThan(travel)
    for (const x of [travel, travel + 0.001])
      expect(() => forkForce(oily, x)).toThrow(expect.objectContaining({ parameter: 'x' }))
    expect(lastTravel({ travel: 0.1, cause: 'locked' })).toBeLessThan(0.1)
    near(lastTravel({ travel: 0.1, cause: 'locked' }), 0.1, 1e-12)
    for (const cause of ['bottomed', 'coilBound'] as const)
      expect(lastTravel({ travel: 0.1, cause })).toBe(0.1)
  })

  test('forkLimit(…) comes sooner in a hot fork, whose oil has grown', () => {
    const full = { ...oily, legs: [{ ...LEG, gas: { ...GAS, airHeight: 0.03, oilVolume: 4e-4 } }] }
    expect(forkLimit(full, { temperature: 340 }).travel).toBeLessThan(
      forkLimit(full).travel - 0.005,
    )
  })
})

describe('forkTravel', () => {
  test('forkTravel(…) is held to 0 and to the limit', () => {
    expect(forkTravel(open, -500)).toBe(0)
    expect(forkTravel(open, 100)).toBe(0)
    expect(forkTravel(open, 1e6)).toBe(0.12)
  })

  test('forkTravel(forkForce(x)) is x wherever the force rises', () => {
    fc.assert(
      fc.property(seeds, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (seed, part) => {
        const fork = randomFork(seed)
        const x = part * lastOf(fork)
        // Across a loose spring force is flat, and any travel is an answer: the force then agrees.
        const force = forkForce(fork, x)
        near(forkForce(fork, forkTravel(fork, force)), force, 1e-6)
        if (forkRate(fork, Math.max(0, x - 1e-9)) > 100) near(forkTravel(fork, force), x, 1e-9)
      }),
    )
  })
})

test('forkRate(…) is the slope of forkForce(…), and never below 0', () => {
  fc.assert(
    fc.property(seeds, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (seed, part) => {
      const fork = randomFork(seed)
      const x = part * lastOf(fork)
      const rate = forkRate(fork, x)
      expect(rate).toBeGreaterThanOrEqual(0)
      const step = 1e-7
      const slope = (forkForce(fork, x + step) - forkForce(fork, x)) / step
      const left = (forkForce(fork, x) - forkForce(fork, x - step)) / step
      // A corner of the law inside the step would make the two sides differ.
      if (Math.abs(slope - left) < 1e-3 * Math.abs(slope))
        near(rate, slope, 1e-3 * Math.abs(slope) + 0.1)
    }),
  )
})

test('forkCurveFrom(…) is the fork whose gas came slowly to there and moves fast from there', () => {
  const part = between(0, 0.95)
  fc.assert(
    fc.property(seeds, between(1, 1.4), part, part, part, (seed, exponent, before, from, at) => {
      const fork = randomFork(seed)
      const end = lastOf(fork)
      const curve = forkCurve(fork, { exponent, from: before * end })
      const wanted = forkForce(fork, at * end, { exponent, from: from * end })
      // sums of kilonewtons, and powers of the volumes
      const moved = forkCurveForce(forkCurveFrom(curve, from * end), at * end)
      near(moved, wanted, 1e-10 * (Math.abs(wanted) + 1e3))
    }),
  )
})

test('forkEnergy(…) is the integral of forkForce(…)', () => {
  fc.assert(
    fc.property(seeds, between(0, 1), between(0, 1), (seed, a, b) => {
      const fork = randomFork(seed)
      const [x0, x1] = [a * lastOf(fork), b * lastOf(fork)]
      const steps = 2000
      let sum = 0
      let size = 0
      for (let i = 0; i < steps; i++) {
        const part = (forkForce(fork, x0 + ((i + 0.5) / steps) * (x1 - x0)) * (x1 - x0)) / steps
        sum += part
        size += Math.abs(part)
      }
      near(forkEnergy(fork, x0, x1), sum, 1e-4 * size + 1e-9) // the midpoint rule across corners
    }),
    { numRuns: 30 },
  )
})

test('forkForce(…) and its kin refuse what makes no sense', () => {
  for (const x of [-1e-6, 0.1201, NaN, Infinity])
    expect(() => forkForce(open, x)).toThrow(expect.objectContaining({ parameter: 'x' }))
  expect(() => forkForce({ ...open, travel: 0 }, 0)).toThrow(
    expect.objectContaining({ parameter: 'travel' }),
  )
  expect(() => forkForce({ ...open, legs: [] }, 0)).toThrow(
    expect.objectContaining({ parameter: 'legs' }),
  )
  expect(() => forkForce({ ...open, friction: -1 }, 0)).toThrow(
    expect.objectContaining({ parameter: 'friction' }),
  )
  expect(() => forkForce({ ...open, topOut: { rate: -1, length: 0 } }, 0)).toThrow(
    expect.objectContaining({ parameter: 'topOut.rate' }),
  )
  expect(() => forkForce({ ...open, legs: [{ spring: [], preload: NaN }] }, 0)).toThrow(
    expect.objectContaining({ parameter: 'preload' }),
  )
  expect(() => forkForce({ ...open, topOut: { rate: 1, length: -1 } }, 0)).toThrow(
    expect.objectContaining({ parameter: 'topOut.length' }),
  )
  const bound: Fork = {
    travel: 0.12,
    legs: [LEG, { spring: [{ rate: 9000, closes: 0.05 }], preload: 0.015 }],
  }
  for (const call of [
    () => forkForce(bound, 0.06),
    () => forkRate(bound, 0.06),
    () => forkEnergy(bound, 0, 0.06),
    () => forkEnergy(bound, 0.06, 0),
  ]) {
    expect(call).toThrow(expect.objectContaining({ parameter: 'x' }))
  }
  expect(() => forkTravel(open, NaN)).toThrow(expect.objectContaining({ parameter: 'force' }))
  expect(() => forkLimit(undefined as never)).toThrow(DomainError)
})

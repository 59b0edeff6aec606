import fc from 'fast-check'
import { expect, test } from 'vitest'
import { estimateSpring, forkTravel, propagate, type SpringReadings } from '../../src/core/index.ts'
import { plainBike, sealedBike } from './bikes.ts'
import { near, same } from './near.ts'

const readings: SpringReadings = {
  extended: 0.15,
  staticReading: 0.15 - 0.0206,
  riderReading: 0.15 - 0.0389,
  staticForce: 640,
  riderForce: 971,
  uncertainty: { reading: 0.001, force: 10 },
}

test('estimateSpring(…) gives rate and preload from two sags: the force added over the extra sag', () => {
  const { rate, preload } = estimateSpring(readings)
  same(rate, 331 / 0.0183, 1e-12)
  same(preload, 640 / rate - 0.0206, 1e-12)
  near(rate, 18000, 100) // 0.1 mm of rounding in each sag is 1 % of 18.3 mm at most
})

test('estimateSpring(…) finds the spring of a fork that was read without error', () => {
  const sag = (force: number): number => forkTravel(plainBike().fork, force)
  const { rate, preload } = estimateSpring({
    ...readings,
    staticReading: 0.15 - sag(640),
    riderReading: 0.15 - sag(971),
  })
  same(rate, 18000, 1e-9)
  near(preload, 0.015, 1e-9)
})

test('estimateSpring(…) reads 20.2 N/mm on a sealed fork of 18, and 18 again with the gas taken out', () => {
  const { fork } = sealedBike()
  const sealed = {
    ...readings,
    staticReading: 0.15 - forkTravel(fork, 640),
    riderReading: 0.15 - forkTravel(fork, 971),
  }
  const { rate, springRate, springPreload } = estimateSpring({ ...sealed, fork })
  near(rate / 1000, 20.2, 0.05)
  same(springRate, 18000, 1e-9)
  near(springPreload, 0.015, 1e-9)
  expect(estimateSpring(sealed)).not.toHaveProperty('springRate')
})

test('estimateSpring(…) has no preload for a spring that the gas leaves nothing to do', () => {
  const { fork } = sealedBike()
  const gassy = {
    ...fork,
    legs: fork.legs.map((leg) => ({ ...leg, gas: { ...leg.gas!, airHeight: 0.07 } })),
  }
  const { springRate, springPreload } = estimateSpring({
    ...readings,
    staticReading: 0.06,
    riderReading: 0.04,
    riderForce: 660,
    fork: gassy,
  })
  expect(springRate).toBeLessThan(0)
  expect(springPreload).toBeNull()
})

test('estimateSpring(…) propagates five independent readings, the extended one shared: as propagate(…) does with numeric slopes', () => {
  const measure =
    (which: 'rate' | 'preload') =>
    (values: number[]): number => {
      const [extended, staticReading, riderReading, staticForce, riderForce] = values as [
        number,
        number,
        number,
        number,
        number,
      ]
      return estimateSpring({
        ...readings,
        extended,
        staticReading,
        riderReading,
        staticForce,
        riderForce,
      })[which]
    }
  fc.assert(
    fc.property(
      fc.double({ min: 1e-4, max: 3e-3, noNaN: true }),
      fc.double({ min: 0.1, max: 40, noNaN: true }),
      (reading, force) => {
        const values = [0.15, readings.staticReading, readings.riderReading, 640, 971]
        const errors = [reading, reading, reading, force, force]
        const result = estimateSpring({ ...readings, uncertainty: { reading, force } })
        // The numeric slope over a hundredth of an uncertainty carries the next order: a few parts in 10⁵.
        same(result.rateUncertainty, propagate(measure('rate'), values, errors).uncertainty, 1e-4)
        same(
          result.preloadUncertainty,
          propagate(measure('preload'), values, errors).uncertainty,
          1e-4,
        )
        // The correlation, from the variance of a sum of both: u²(a + b) = u²(a) + u²(b) + 2 r u(a) u(b).
        const both = propagate(
          (v) => measure('rate')(v) / 18000 + measure('preload')(v) / 0.015,
          values,
          errors,
        ).uncertainty
        const [a, b] = [result.rateUncertainty / 18000, result.preloadUncertainty / 0.015]
        near(result.correlation, (both ** 2 - a ** 2 - b ** 2) / (2 * a * b), 1e-2)
        expect(result.correlation).toBeLessThan(0)
      },
    ),
  )
})

test('estimateSpring(…) is conclusive when twice the uncertainty is at most the wanted share of the rate', () => {
  expect(estimateSpring(readings).conclusive).toBe(false)
  expect(estimateSpring({ ...readings, wanted: 0.5 }).conclusive).toBe(true)
  const exact = estimateSpring({ ...readings, uncertainty: { reading: 0, force: 0 } })
  expect([
    exact.conclusive,
    exact.rateUncertainty,
    exact.preloadUncertainty,
    exact.correlation,
  ]).toEqual([true, 0, 0, null])
  const { rate, rateUncertainty } = estimateSpring(readings)
  expect(
    estimateSpring({ ...readings, wanted: (2 * rateUncertainty) / rate + 1e-12 }).conclusive,
  ).toBe(true)
})

test('estimateSpring(…) is conclusive with exactly twice the uncertainty, in figures that are exact in binary', () => {
  const exact = {
    extended: 1,
    staticReading: 0.75,
    riderReading: 0.25,
    staticForce: 512,
    riderForce: 1536,
    uncertainty: { reading: 0, force: 3 },
  }
  const { rate, rateUncertainty } = estimateSpring(exact)
  expect(rate).toBe(2048)
  expect(estimateSpring({ ...exact, wanted: (2 * rateUncertainty) / 2048 }).conclusive).toBe(true)
})

test('estimateSpring(…) takes a fork that does not sag under the bike alone', () => {
  same(
    estimateSpring({ ...readings, extended: readings.staticReading }).preload,
    640 / (331 / 0.0183),
    1e-9,
  )
})

test('estimateSpring(…) refuses readings or forces in the wrong order', () => {
  const bad: [object, string][] = [
    [{ riderReading: 0.13 }, 'staticReading'],
    [{ riderReading: readings.staticReading }, 'staticReading'],
    [{ staticReading: 0.16 }, 'extended'],
    [{ fork: { travel: 0.12, legs: [] } }, 'legs'],
    [{ riderForce: 640 }, 'riderForce'],
    [{ staticForce: -1 }, 'staticForce'],
    [{ riderReading: -0.01 }, 'riderReading'],
    [{ extended: NaN }, 'extended'],
    [{ uncertainty: { reading: -1, force: 0 } }, 'uncertainty.reading'],
    [{ uncertainty: { reading: 0, force: NaN } }, 'uncertainty.force'],
    [{ uncertainty: undefined }, 'uncertainty'],
    [{ wanted: 0 }, 'wanted'],
    [{ fork: { ...sealedBike().fork, travel: 0.03 } }, 'x'],
  ]
  for (const [change, parameter] of bad) {
    expect(() => estimateSpring({ ...readings, ...change }), parameter).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  }
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  coilRate,
  coilShearStress,
  DomainError,
  leastGaps,
  solidLength,
} from '../../src/core/index.ts'
import { near, same } from './near.ts'

const INCH = 0.0254
const POUND_FORCE = 0.45359237 * 9.80665
const PSI = POUND_FORCE / INCH ** 2

describe('Budynas and Nisbett, Shigley’s Mechanical Engineering Design, 10th ed., example 10-1', () => {
  const wireDiameter = 0.037 * INCH
  const meanDiameter = 0.4 * INCH

  test('coilRate(…) gives the printed 4.13 lbf/in', () => {
    const rate = coilRate({
      wireDiameter,
      meanDiameter,
      activeCoils: 10.5,
      shearModulus: 11.85e6 * PSI,
    })
    near(rate / (POUND_FORCE / INCH), 4.13, 0.005) // half the last printed digit
  })

  test('coilShearStress(…) with the Bergsträsser factor gives the printed 146 kpsi at 6.46 lbf', () => {
    const stress = coilShearStress({
      force: 6.46 * POUND_FORCE,
      wireDiameter,
      meanDiameter,
      correction: 'bergstrasser',
    })
    near(stress / PSI / 1000, 146, 0.5) // half the last printed digit
  })

  test('solidLength(…) of closed ends gives the printed 0.5 in', () => {
    near(solidLength({ wireDiameter, totalCoils: 12.5, ends: 'closed' }) / INCH, 0.5, 0.001) // the book rounds 0.4995
  })
})

test('coilRate(…) gives the force of 35 lbf at 0.5 in: Wentzell, Machine Design, example 8.2', () => {
  // The active coils follow from the printed total of 12.79, two of them dead.
  const rate = coilRate({
    wireDiameter: 0.105 * INCH,
    meanDiameter: 0.62 * INCH,
    activeCoils: 10.79,
    shearModulus: 11.85e6 * PSI,
  })
  near(rate / (POUND_FORCE / INCH), 70, 0.04) // half a unit in the last digit of 12.79 coils
})

describe('Bhandari, Design of Machine Elements, example 10.19', () => {
  test('coilRate(…) shares 1000 N between two springs, and coilShearStress(…) with the Wahl factor gives the printed stresses', () => {
    const shearModulus = 81370e6
    const outer = { wireDiameter: 0.006, meanDiameter: 0.036 }
    const inner = { wireDiameter: 0.005, meanDiameter: 0.03 }
    const k1 = coilRate({ ...outer, activeCoils: 10, shearModulus })
    const k2 = coilRate({ ...inner, activeCoils: 8, shearModulus })
    const second = (1000 - k1 * 0.015) / (k1 + k2)
    near(k1 * (second + 0.015), 706.021471, 1e-6) // all printed digits
    near(k2 * second, 293.978529, 1e-6)
    near(
      coilShearStress({ force: 706.021471, ...outer, correction: 'wahl' }) / 1e6,
      375.305136,
      2e-6,
    )
    near(
      coilShearStress({ force: 293.978529, ...inner, correction: 'wahl' }) / 1e6,
      225.032219,
      2e-6,
    )
  })
})

test('coilRate(…) stacked gives 6.67 in under 10 lbf: Levinson, Statics and Strength of Materials, example 10.10', () => {
  const k = coilRate({
    wireDiameter: 0.2 * INCH,
    meanDiameter: 4 * INCH,
    activeCoils: 10,
    shearModulus: 12e6 * PSI,
  })
  const deflection = 10 * POUND_FORCE * (1 / (2 * k) + 2 / k)
  near(deflection / INCH, 6.67, 0.005) // half the last printed digit
})

test('coilRate(…) rises by 40/36 when four of forty coils are lost', () => {
  const coil = { wireDiameter: 0.0045, meanDiameter: 0.03, shearModulus: 78.5e9 }
  same(coilRate({ ...coil, activeCoils: 36 }) / coilRate({ ...coil, activeCoils: 40 }), 40 / 36)
})

test('coilRate(…) rises by 8 % when 4.5 mm wire becomes 4.59 mm', () => {
  const coil = { meanDiameter: 0.03, activeCoils: 40, shearModulus: 78.5e9 }
  near(
    coilRate({ ...coil, wireDiameter: 0.00459 }) / coilRate({ ...coil, wireDiameter: 0.0045 }),
    1.08,
    0.005,
  ) // 1.02⁴ = 1.0824
})

test('coilShearStress(…) grows by the correction: none 1, Bergsträsser (w + 0.5)/(w − 0.75) as EN 13906-1 writes it', () => {
  const load = { force: 1000, wireDiameter: 0.005, meanDiameter: 0.04 }
  const plain = coilShearStress({ ...load, correction: 'none' })
  same(plain, (8 * 1000 * 0.04) / (Math.PI * 0.005 ** 3))
  same(coilShearStress({ ...load, correction: 'bergstrasser' }) / plain, 8.5 / 7.25)
  same(coilShearStress({ ...load, correction: 'wahl' }) / plain, 31 / 28 + 0.615 / 8)
  expect(coilShearStress({ ...load, force: 0, correction: 'wahl' })).toBe(0)
})

test('solidLength(…) adds one wire unless the ends are closed and ground', () => {
  const coil = { wireDiameter: 0.004, totalCoils: 10 }
  same(solidLength({ ...coil, ends: 'plain' }), 0.044)
  same(solidLength({ ...coil, ends: 'closed' }), 0.044)
  same(solidLength({ ...coil, ends: 'closedGround' }), 0.04)
})

test('coilRate(…), coilShearStress(…) and solidLength(…) refuse what cannot be wound', () => {
  const coil = { wireDiameter: 0.004, meanDiameter: 0.03, activeCoils: 10, shearModulus: 8e10 }
  for (const key of Object.keys(coil)) {
    for (const value of [0, -1, NaN, Infinity]) {
      expect(() => coilRate({ ...coil, [key]: value })).toThrow(
        expect.objectContaining({ name: 'DomainError', parameter: key }),
      )
    }
  }
  expect(() => coilRate({ ...coil, meanDiameter: 0.004 })).toThrow(DomainError)
  expect(() => coilRate({ ...coil, wireDiameter: 1e100, meanDiameter: 1e101 })).toThrow(DomainError)
  expect(() => coilRate(undefined as never)).toThrow(DomainError)
  expect(() => coilShearStress({ ...coil, force: -1, correction: 'none' })).toThrow(DomainError)
  expect(() => coilShearStress({ ...coil, force: 1, correction: 'other' as never })).toThrow(
    'none, wahl, bergstrasser',
  )
  expect(() => solidLength({ wireDiameter: 0.004, totalCoils: 10, ends: 'open' as never })).toThrow(
    DomainError,
  )
})

describe('leastGaps', () => {
  const size = fc.double({ min: 1e-3, max: 0.02, noNaN: true })
  const index = fc.double({ min: 1.5, max: 20, noNaN: true })
  const coils = fc.double({ min: 1, max: 60, noNaN: true })

  test('leastGaps grows as the spring does, and with each coil alike', () => {
    fc.assert(
      fc.property(
        size,
        index,
        coils,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (wireDiameter, ratio, activeCoils, scale) => {
          const coil = { wireDiameter, meanDiameter: ratio * wireDiameter, activeCoils }
          const one = leastGaps(coil)
          const scaled = {
            ...coil,
            wireDiameter: scale * coil.wireDiameter,
            meanDiameter: scale * coil.meanDiameter,
          }
          // rounding of a few products
          expect(Math.abs(leastGaps(scaled) / one - scale) / scale).toBeLessThan(1e-12)
          expect(
            Math.abs(leastGaps({ ...coil, activeCoils: 2 * activeCoils }) / one - 2),
          ).toBeLessThan(1e-12)
        },
      ),
    )
  })

  test('leastGaps of 38 coils of 4.5 mm wire on 23 mm is 23.8 mm', () => {
    // EN 13906-1, from memory: 38 · (0.0015 · 23²/4.5 + 0.1 · 4.5) = 23.80 mm, worked by hand to its last digit
    expect(
      Math.abs(leastGaps({ wireDiameter: 4.5e-3, meanDiameter: 23e-3, activeCoils: 38 }) - 23.8e-3),
    ).toBeLessThan(5e-6)
    expect(() => leastGaps({ wireDiameter: 4.5e-3, meanDiameter: 4e-3, activeCoils: 38 })).toThrow(
      DomainError,
    )
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  blendViscosity,
  isoViscosityClass,
  viscosityAt,
  type ViscosityReading,
} from '../../src/core/oil.ts'
import { expectRefusal, expectWithin } from './tolerance.ts'

const mm2 = (value: number): number => value * 1e-6
const celsius = (value: number): number => value + 273.15
const some = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const oil32: [ViscosityReading, ViscosityReading] = [
  { temperature: celsius(40), viscosity: mm2(32) },
  { temperature: celsius(100), viscosity: mm2(5.36) },
]
// the double logarithm and its inverse multiply rounding by up to ν ln ν·ln 10
const SCALE_ROUNDING = 1e-12

describe('viscosityAt', () => {
  test('viscosityAt gives 163 mm²/s at 10 °C for an oil of 32 at 40 and 5.36 at 100 °C (ASTM D341, worked apart from this code)', () => {
    // by hand: lg lg 32.7 = 0.180283, lg lg 6.06 = −0.106531; over lg(373.15/313.15) a slope of −3.76737; at 283.15 K ν = 162.74 mm²/s
    expectWithin(viscosityAt(celsius(10), oil32), mm2(162.74), mm2(0.01)) // worked to five digits
  })

  test('viscosityAt gives its two readings back', () => {
    for (const { temperature, viscosity } of oil32)
      expectWithin(viscosityAt(temperature, oil32), viscosity, viscosity * SCALE_ROUNDING)
  })

  test('viscosityAt does not mind the order of the readings', () => {
    for (const t of [-10, 25, 70, 130]) {
      const wanted = viscosityAt(celsius(t), oil32)
      expectWithin(viscosityAt(celsius(t), [oil32[1], oil32[0]]), wanted, wanted * SCALE_ROUNDING)
    }
  })

  test('viscosityAt falls as temperature rises', () => {
    fc.assert(
      fc.property(
        some(-20, 150),
        some(0.1, 50),
        (t, more) => viscosityAt(celsius(t + more), oil32) < viscosityAt(celsius(t), oil32),
      ),
    )
  })

  test('viscosityAt lies on a straight line of lg lg(ν + 0.7) over lg T, so any two of its values give the third', () => {
    fc.assert(
      fc.property(some(-10, 120), (t) => {
        const [a, b] = [celsius(0), celsius(60)]
        const others: [ViscosityReading, ViscosityReading] = [
          { temperature: a, viscosity: viscosityAt(a, oil32) },
          { temperature: b, viscosity: viscosityAt(b, oil32) },
        ]
        const wanted = viscosityAt(celsius(t), oil32)
        expectWithin(viscosityAt(celsius(t), others), wanted, wanted * 1e-11) // two more turns through the scale
      }),
    )
  })

  test('viscosityAt takes an oil that temperature leaves alone', () => {
    const [cold, warm] = oil32
    expectWithin(
      viscosityAt(celsius(70), [cold, { ...warm, viscosity: cold.viscosity }]),
      mm2(32),
      mm2(32) * SCALE_ROUNDING,
    )
  })

  test('viscosityAt refuses equal temperatures, an oil that thickens as it warms, 0.3 mm²/s and below, and what is no temperature', () => {
    const [cold, warm] = oil32
    expectRefusal(() => viscosityAt(300, [cold, cold]), 'readings')
    expectRefusal(() => viscosityAt(300, [cold, { ...warm, viscosity: mm2(40) }]), 'readings')
    expectRefusal(
      () => viscosityAt(300, [cold, { ...warm, viscosity: mm2(0.3) }]),
      'readings[1].viscosity',
    )
    expectRefusal(() => viscosityAt(0, oil32), 'temperature')
    expectRefusal(() => viscosityAt(NaN, oil32), 'temperature')
    expectRefusal(() => viscosityAt(1, oil32), 'temperature')
    expectRefusal(
      () => viscosityAt(300, [{ ...cold, temperature: -1 }, warm]),
      'readings[0].temperature',
    )
    expectRefusal(() => viscosityAt(300, [cold] as unknown as typeof oil32), 'readings')
    expectRefusal(() => viscosityAt(300, [...oil32, cold] as unknown as typeof oil32), 'readings')
  })
})

describe('blendViscosity', () => {
  test('blendViscosity of equal oils changes nothing', () => {
    fc.assert(
      fc.property(some(0.5, 1000), some(0, 1), (viscosity, share) => {
        const parts = [share, 1 - share].map((part) => ({ share: part, viscosity: mm2(viscosity) }))
        expectWithin(blendViscosity(parts), mm2(viscosity), mm2(viscosity) * SCALE_ROUNDING)
      }),
    )
  })

  test('blendViscosity lies between its oils, nearer the thin one than the mean', () => {
    fc.assert(
      fc.property(some(2, 50), some(1.1, 10), some(0.05, 0.95), (thin, times, share) => {
        const blend = blendViscosity([
          { share, viscosity: mm2(thin) },
          { share: 1 - share, viscosity: mm2(thin * times) },
        ])
        expect(blend).toBeGreaterThan(mm2(thin))
        expect(blend).toBeLessThan(mm2(thin * (share + (1 - share) * times)))
      }),
    )
  })

  test('blendViscosity of half 15 and half 46 mm²/s is 25.177 mm²/s (lg lg worked by hand)', () => {
    // lg lg 15.7 = 0.0776947, lg lg 46.7 = 0.2225388, mean 0.1501168; 10^10^0.1501168 − 0.7 = 25.177
    const blend = blendViscosity([
      { share: 0.5, viscosity: mm2(15) },
      { share: 0.5, viscosity: mm2(46) },
    ])
    expectWithin(blend, mm2(25.177), mm2(0.001)) // worked to five digits
  })

  test('blendViscosity takes a single oil and a share of 0', () => {
    expectWithin(
      blendViscosity([{ share: 1, viscosity: mm2(15) }]),
      mm2(15),
      mm2(15) * SCALE_ROUNDING,
    )
    const parts = [
      { share: 1, viscosity: mm2(15) },
      { share: 0, viscosity: mm2(460) },
    ]
    expectWithin(blendViscosity(parts), mm2(15), mm2(15) * SCALE_ROUNDING)
  })

  test('blendViscosity refuses no oils, shares that do not add up to 1, negative shares, and 0.3 mm²/s and below', () => {
    expectRefusal(() => blendViscosity([]), 'parts')
    for (const share of [0.9, 1.1, 1 - 2e-6, 1 + 2e-6])
      expectRefusal(() => blendViscosity([{ share, viscosity: mm2(15) }]), 'share')
    for (const share of [1 - 5e-7, 1 + 5e-7])
      expectWithin(
        blendViscosity([{ share, viscosity: mm2(15) }]),
        mm2(15),
        mm2(15) * SCALE_ROUNDING,
      )
    expectRefusal(
      () =>
        blendViscosity([
          { share: 1.5, viscosity: mm2(15) },
          { share: -0.5, viscosity: mm2(15) },
        ]),
      'share',
    )
    expectRefusal(() => blendViscosity([{ share: 1, viscosity: mm2(0.3) }]), 'viscosity')
    expectRefusal(() => blendViscosity([{ share: 1, viscosity: 0 }]), 'viscosity')
  })
})

describe('isoViscosityClass', () => {
  // ISO 3448, limits in mm²/s at 40 °C
  const limits = [
    [2, 1.98, 2.42],
    [3, 2.88, 3.52],
    [5, 4.14, 5.06],
    [7, 6.12, 7.48],
    [10, 9, 11],
    [15, 13.5, 16.5],
    [22, 19.8, 24.2],
    [32, 28.8, 35.2],
    [46, 41.4, 50.6],
    [68, 61.2, 74.8],
    [100, 90, 110],
    [150, 135, 165],
    [220, 198, 242],
    [320, 288, 352],
    [460, 414, 506],
    [680, 612, 748],
    [1000, 900, 1100],
    [1500, 1350, 1650],
  ] as const

  test('isoViscosityClass holds both limits of each class and nothing beyond them (ISO 3448)', () => {
    for (const [grade, low, high] of limits) {
      expect(isoViscosityClass(mm2(low)), `${grade} low`).toBe(grade)
      expect(isoViscosityClass(low / 1e6), `${grade} low`).toBe(grade)
      expect(isoViscosityClass(mm2(high)), `${grade} high`).toBe(grade)
      expect(isoViscosityClass(mm2((low + high) / 2)), `${grade} middle`).toBe(grade)
      expect(isoViscosityClass(mm2(low * (1 - 1e-9)))).toBeNull()
      expect(isoViscosityClass(mm2(high * (1 + 1e-9)))).toBeNull()
    }
  })

  test('isoViscosityClass is null between classes and beyond them, and refuses 0 and below', () => {
    expect(isoViscosityClass(mm2(38))).toBeNull()
    expect(isoViscosityClass(mm2(1))).toBeNull()
    expect(isoViscosityClass(mm2(1e5))).toBeNull()
    expectRefusal(() => isoViscosityClass(0), 'viscosityAt40')
    expectRefusal(() => isoViscosityClass(-1e-6), 'viscosityAt40')
  })
})

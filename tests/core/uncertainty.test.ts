import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { coverageFactor, propagate } from '../../src/core/index.ts'
import { near, same } from './near.ts'

describe('JCGM 100:2008, H.1, an end gauge', () => {
  // In nanometres: standard, difference, expansion, temperature, and the two differences.
  const values = [50000623, 215, 11.5e-6, -0.1, 0, 0]
  const uncertainties = [25, 9.7, 1.2e-6, 0.41, 0.58e-6, 0.029]
  const length = (v: number[]): number => v[0]! + v[1]! - v[0]! * (v[4]! * v[3]! + v[2]! * v[5]!)
  const result = propagate(length, values, uncertainties)

  test('propagate(…) gives the printed 50.000838 mm with a standard uncertainty of 32 nm', () => {
    near(result.value / 1e6, 50.000838, 5e-7)
    near(result.uncertainty, 32, 0.5)
  })

  test('propagate(…) gives the printed budget: 16.6 nm and 2.9 nm from the differences, 25 and 9.7 from the lengths', () => {
    near(result.contributions[5], 16.6, 0.1)
    near(result.contributions[4], 2.9, 0.05)
    near(result.contributions[0], 25, 1e-4)
    near(result.contributions[1], 9.7, 1e-4)
    near(result.contributions[2], 0, 1e-6)
  })

  test('coverageFactor(…) widens it to the printed 93 nm: 16 effective degrees, 99 %', () => {
    const dof = [18, 25.6, 50, 2]
    const parts = [0, 1, 4, 5].map((i) => result.contributions[i]!)
    const effective =
      result.uncertainty ** 4 / parts.reduce((sum, part, i) => sum + part ** 4 / dof[i]!, 0)
    expect(Math.floor(effective)).toBe(16)
    const k = coverageFactor({ degreesOfFreedom: 16, probability: 0.99 })
    near(k, 2.92, 0.005)
    near(k * result.uncertainty, 93, 0.5)
  })
})

test('propagate(…) of a sum adds squares, and of a product adds relative squares', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 2, maxLength: 5 }),
      (values) => {
        const errors = values.map((value) => 0.01 * value)
        same(
          propagate((v) => v.reduce((a, b) => a + b), values, errors).uncertainty,
          Math.hypot(...errors),
          1e-8,
        )
        const product = propagate((v) => v.reduce((a, b) => a * b), values, errors)
        same(product.uncertainty / product.value, 0.01 * Math.sqrt(values.length), 1e-6)
      },
    ),
  )
})

test('propagate(…) takes an input without uncertainty for exact, and none of them for an exact result', () => {
  expect(propagate(([a, b]) => a! * b!, [2, 3], [0, 0.1]).contributions[0]).toBe(0)
  expect(propagate(([a]) => a! ** 2, [3], [0])).toEqual({
    value: 9,
    uncertainty: 0,
    contributions: [0],
  })
  expect(propagate(() => 5, [], [])).toEqual({ value: 5, uncertainty: 0, contributions: [] })
})

test('propagate(…) finds the slope under an uncertainty that the rounding of its value would swallow', () => {
  // numbers near 10⁹ lie 10⁻⁷ apart
  same(propagate(([a]) => 3 * a!, [1e9], [1e-9]).uncertainty, 3e-9, 1e-6)
  same(propagate(([a]) => 3 * a!, [-1e9], [1e-9]).uncertainty, 3e-9, 1e-6)
})

test('propagate(…) keeps to first order on a cube: its step is small against uncertainty and value alike', () => {
  // the central difference of a³ over h is 3a² + h²
  same(propagate(([a]) => a! ** 3, [1], [1e-3]).uncertainty, 3e-3, 1e-9)
  same(propagate(([a]) => a! ** 3, [1e-6], [1e-8]).uncertainty, 3e-20, 1e-6)
})

test('propagate(…) refuses lists that do not match and functions that give nothing', () => {
  expect(() => propagate(([a]) => a!, [1, 2], [1])).toThrow(
    expect.objectContaining({ parameter: 'standardUncertainties' }),
  )
  expect(() => propagate(([a]) => a!, [1], [-1])).toThrow(
    expect.objectContaining({ parameter: 'standardUncertainties' }),
  )
  expect(() => propagate(([a]) => a!, [NaN], [1])).toThrow(
    expect.objectContaining({ parameter: 'values' }),
  )
  expect(() => propagate(([a]) => 1 / a!, [0], [0])).toThrow(
    expect.objectContaining({ parameter: 'measure' }),
  )
})

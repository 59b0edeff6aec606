import { describe, expect, test } from 'vitest'
import CoilRateFigure from '../../components/figures/CoilRate.tsx'
import coilRate from '../../src/calculators/coil-rate.ts'
import { ADJUSTER_REACH } from '../../src/calculators/coil-rate.remarks.ts'
import type { Interval } from '../../src/calculators/define.ts'
import { evaluate } from '../../src/calculators/evaluate.ts'
import { places } from './drawn.ts'
import { asDefinition, drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'

const INCH = 25.4
const problemOf = (given: Record<string, number>) => Object.keys(evaluate(asDefinition(coilRate), given, { bikes: {} }).problems)

describe('coil-rate', () => {
  test('coil-rate gives 35 lbf at 0.5 in: Wentzell, Machine Design, example 8.2', () => {
    // wire 0.105 in, mean coil 0.62 in, 12.79 coils of which 2 are dead; the book's modulus of 11.85 Mpsi is 81.703 GPa, drawn wire here is 81.5
    const given = { wireDiameter: 0.105 * INCH, outerDiameter: 0.725 * INCH, totalCoils: 12.79, deadCoils: 2, material: 'drawn', freeLength: 60, deflection: 5 }
    const poundsPerInch = (result(coilRate, given, 'rate') * INCH) / 4.4482216
    expectNear(poundsPerInch * (81.703 / 81.5), 70, 0.04) // half a unit in the last digit of 12.79 coils
  })

  test('coil-rate keeps 0.05 mm of 4.5 mm wire at 4.4 % of the rate', () => {
    // d⁴: 4 · 0.05/4.5 = 4.444 %; a numeric slope, so to a thousandth
    expectNear(result(coilRate, {}, 'wireShare'), 4.4444, 1e-3)
  })

  test('coil-rate widens the ± of the rate for an unknown steel', () => {
    const half = (material: string) => {
      const { low, high } = shown(coilRate, { material }).now.output.rate as Interval
      return (high - low) / 2 / ((high + low) / 2)
    }
    // Worked by hand, drawn wire, limits over √3: wire as read on the outside 4 + 3·4.5/23 = 4.587 times 1.111 % = 5.097 %; outside 3 · 0.1/23 = 1.304 %;
    // count 0.25/38 = 0.658 %; modulus 0.982 %. Root of squares 5.392 %, /√3 · 1.96 = 6.10 %.
    expectNear(half('drawn'), 0.061, 5e-4)
    expect(half('unknown')).toBeGreaterThan(half('drawn'))
  })

  test('coil-rate tells a fork spring that goes solid, and one with less left than an adjuster takes', () => {
    // solid at 180 mm of 350: 170 mm are there to squeeze
    expect(remarksOf(coilRate, { deflection: 171 })).toMatch(/coils touch 1 mm before the travel ends/)
    expect(remarksOf(coilRate, { deflection: 170 - ADJUSTER_REACH * 1000 + 1 })).toMatch(/An adjuster wound in can take 8 mm of it/)
    expect(remarksOf(coilRate, { deflection: 170 - ADJUSTER_REACH * 1000 - 1 })).not.toMatch(/adjuster wound in/)
  })

  test('coil-rate calls fewer coils stiffer, with the caution on cut springs', () => {
    const { now } = shown(coilRate, { totalCoils: 36 }, { totalCoils: 40 })
    // 38 working coils become 34: 38/34 is 11.8 % more
    expect(now.remarks.map(({ text }) => text).join()).toMatch(/stiffer, not softer: 12\s%/)
    expect(now.remarks.some(({ caution }) => caution === 'cut-springs')).toBe(true)
  })

  test('coil-rate sends a reader whose calliper is too coarse to the press', () => {
    expect(remarksOf(coilRate, { wirePlusMinus: 0.05 })).toMatch(/Test it on a press/)
    // 0.02 mm: 1.8 % times 1.13 is under half of the 5 % step
    expect(remarksOf(coilRate, { wirePlusMinus: 0.02 })).not.toMatch(/Test it on a press/)
  })

  test('coil-rate names the size that makes no coil', () => {
    expect(problemOf({ outerDiameter: 10, wireDiameter: 5 })).toEqual(['outerDiameter'])
    expect(problemOf({ totalCoils: 3, deadCoils: 3 })).toEqual(['totalCoils'])
  })

  test('CoilRateFigure draws free, squeezed and solid lengths to one scale', () => {
    const markup = drawn(coilRate, CoilRateFigure, {}, { outerDiameter: 30 })
    expectSound(markup)
    const heights = places(markup, /rect class="before"/, 'height')
    // 350, 350 − 135 and 180 mm; the markup rounds to a hundredth of a unit
    expectNear(heights[1]! / heights[0]!, 215 / 350, 1e-4)
    expectNear(heights[2]! / heights[0]!, 180 / 350, 1e-4)
  })
})

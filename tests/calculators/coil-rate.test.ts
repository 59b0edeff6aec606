import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import CoilRateFigure from '../../src/calculators/coil-rate/Figure.tsx'
import { ADJUSTER_REACH } from '../../src/calculators/coil-rate/remarks.ts'
import type { Given } from '../../src/machine/given.ts'
import type { Interval } from '../../src/units/interval.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { places } from './drawn.ts'
import {
  asDefinition,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  shown,
} from './evaluated.ts'

const coilRate = loadCalculator('coil-rate')

const INCH = 25.4
const problemOf = (given: Record<string, number>) =>
  Object.keys(evaluate(asDefinition(coilRate), given, { bikes: {} }).problems)

describe('coil-rate', () => {
  test('coil-rate gives 35 lbf at 0.5 in: Wentzell, Machine Design, example 8.2', () => {
    // wire 0.105 in, mean coil 0.62 in, 12.79 coils of which 2 are dead; the book's modulus of 11.85 Mpsi is 81.703 GPa, drawn wire here is 81.5
    const given = {
      wireDiameter: 0.105 * INCH,
      outerDiameter: 0.725 * INCH,
      totalCoils: 12.79,
      deadCoils: 2,
      material: 'drawn',
      freeLength: 60,
      deflection: 5,
    }
    const poundsPerInch = (result(coilRate, given, 'rate') * INCH) / 4.4482216
    expectNear(poundsPerInch * (81.703 / 81.5), 70, 0.04) // half a unit in the last digit of 12.79 coils
  })

  test('coil-rate tells what the wire’s ± makes of the rate with the outside diameter held: 5.1 %', () => {
    // d⁴/(D_o − d)³: (4 + 3 · 4.5/23) · 0.05/4.5 = 5.097 %, worked by hand; a numeric slope, so to a thousandth
    expectNear(result(coilRate, {}, 'wireShare'), 5.0966, 1e-3)
  })

  test('coil-rate’s parts of the ± add up to the ± beside them', () => {
    const states: Given[] = [
      {},
      { wireDiameter: 6, outerDiameter: 22, totalCoils: 12, material: 'drawn' },
      { coilsPlusMinus: 1, outerPlusMinus: 1 },
    ]
    for (const given of states) {
      const { output } = shown(coilRate, given).now
      const { low, high } = output.rate as Interval
      // the modulus is the one part that is not listed: 0.8 of 81.5 GPa drawn, 1.5 of 80 GPa unknown
      const modulus = 'material' in given ? 0.8 / 81.5 : 1.5 / 80
      const whole = Math.hypot(
        Number(output.wireShare),
        Number(output.outerShare),
        Number(output.coilsShare),
        modulus,
      )
      // 1.95996/√3 turns a limit into half of a 95 % interval
      expectNear((high - low) / (high + low), (1.95996 / Math.sqrt(3)) * whole, 1e-5)
    }
  })

  test('coil-rate squeezes no further than the coils let it', () => {
    // solid at 40 · 4.5 = 180 mm of 350, so 170 mm; 8.8693 N/mm with 80 GPa and 38 coils make 1507.8 N, worked by hand
    expectNear(result(coilRate, { deflection: 200 }, 'force'), 1507.8, 0.3)
    expectNear(
      result(coilRate, { deflection: 170 }, 'force'),
      result(coilRate, { deflection: 200 }, 'force'),
      1e-6,
    )
  })

  test('coil-rate asks for the sum of gaps that EN 13906-1 asks for', () => {
    // n (0.0015 D²/d + 0.1 d), from memory: 38 · (0.0015 · 23²/4.5 + 0.45) = 23.80 mm, worked by hand
    expectNear(result(coilRate, {}, 'leastGap'), 23.8, 0.01)
    // 170 mm can be squeezed: 20 mm are left of 150
    expect(remarksOf(coilRate, { deflection: 150 })).toMatch(
      /20 mm are left before the coils touch. EN 13906-1 asks for 24 mm/,
    )
    expect(remarksOf(coilRate, { deflection: 135 })).not.toMatch(/EN 13906-1 asks/)
  })

  test('coil-rate tells no force and no stress where no wire bears them, and refuses coils longer than the spring', () => {
    const tight = { wireDiameter: 8, outerDiameter: 22, totalCoils: 10 }
    const { output } = shown(coilRate, tight).now
    expect([output.stress, output.force]).toEqual([null, null])
    expect(remarksOf(coilRate, tight)).toMatch(/No spring wire bears a squeeze of 135 mm/)
    expect(remarksOf(coilRate, tight)).toMatch(/hardly wider than its wire/)
    // 40 coils of 9 mm are 360 mm, more than the 350 mm of the spring
    expect(problemOf({ wireDiameter: 9, outerDiameter: 40 })).toEqual(['freeLength'])
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
    expect(remarksOf(coilRate, { deflection: 171 })).toMatch(
      /coils touch 1 mm before the travel ends/,
    )
    expect(remarksOf(coilRate, { deflection: 170 - ADJUSTER_REACH * 1000 + 1 })).toMatch(
      /An adjuster wound in can take 8 mm of it/,
    )
    expect(remarksOf(coilRate, { deflection: 170 - ADJUSTER_REACH * 1000 - 1 })).not.toMatch(
      /An adjuster wound in can take/,
    )
  })

  test('coil-rate calls fewer coils stiffer, with the caution on cut springs', () => {
    const { now } = shown(coilRate, { totalCoils: 36 }, { totalCoils: 40 })
    // 38 working coils become 34: 38/34 is 11.8 % more
    expect(now.remarks.map(({ text }) => text).join()).toMatch(/stiffer, not softer: 12\s%/)
    expect(now.remarks.some(({ caution }) => caution === 'cut-springs')).toBe(true)
  })

  test('coil-rate sends a reader whose calliper is too coarse to the press', () => {
    expect(remarksOf(coilRate, { wirePlusMinus: 0.05 })).toMatch(/Test it on a press/)
    // with a micrometer, a sure count and drawn wire: 1.13 · √(1.02² + 0.65² + 0.98²) = 1.8 %, under half of the 5 % step
    const fine = { wirePlusMinus: 0.01, outerPlusMinus: 0.05, coilsPlusMinus: 0, material: 'drawn' }
    expect(remarksOf(coilRate, fine)).not.toMatch(/Test it on a press/)
    // the same micrometer leaves too much where the count is not known: half a coil of 38 more
    expect(remarksOf(coilRate, { ...fine, deadCoils: 'unknown' })).toMatch(/Test it on a press/)
  })

  test('coil-rate names the size that makes no coil', () => {
    expect(problemOf({ outerDiameter: 10, wireDiameter: 5 })).toEqual(['outerDiameter'])
    expect(problemOf({ totalCoils: 3, deadCoils: 3 })).toEqual(['totalCoils'])
  })

  test('CoilRateFigure draws free, squeezed and solid lengths to one scale', () => {
    const markup = drawn(coilRate, CoilRateFigure, {}, { outerDiameter: 30 })
    expectSound(markup)
    const heights = places(markup, 'rect[class="before"]', 'height')
    // 350, 350 − 135 and 180 mm; the markup rounds to a hundredth of a unit
    expectNear(heights[1]! / heights[0]!, 215 / 350, 1e-4)
    expectNear(heights[2]! / heights[0]!, 180 / 350, 1e-4)
  })
})

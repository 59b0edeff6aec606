import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import OilViscosityFigure from '../../src/calculators/oil-viscosity/Figure.tsx'
import { evaluate } from '../../src/machine/evaluate.ts'
import { ends } from '../../src/units/interval.ts'
import { COLD_IS_ANOTHER_FORK } from '../../src/calculators/oil-viscosity/remarks.ts'
import {
  asDefinition,
  bikes,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  ROUNDING,
  shown,
} from './evaluated.ts'

const oilViscosity = loadCalculator('oil-viscosity')

const problemsOf = (given: Record<string, number | string>): Readonly<Record<string, string>> =>
  evaluate(asDefinition(oilViscosity), given, { bikes }).problems

describe('oil-viscosity', () => {
  test.each([
    // worked examples of ASTM D2270 and ISO 2909, printed rounded to whole numbers
    [73.3, 8.86, 92],
    [22.83, 5.05, 156],
    [53.47, 7.8, 111],
  ])('oil-viscosity gives %d and %d mm²/s an index of %d', (at40, at100, index) =>
    expectNear(
      result(oilViscosity, { known: 'at100', at40, at100, share: 0 }, 'index'),
      index,
      0.5,
    ),
  )

  test('oil-viscosity turns an index back into the viscosity at 100 °C', () => {
    // the same example of ASTM D2270: 156.42 belongs to 5.05; 0.005 is half the last printed digit
    expectNear(
      result(oilViscosity, { known: 'index', at40: 22.83, index: 156.42, share: 0 }, 'mixAt100'),
      5.05,
      0.005,
    )
  })

  test.each([
    // limits of ISO 3448
    [28.8, 'vg32'],
    [35.2, 'vg32'],
    [36, 'between'],
    [41.4, 'vg46'],
    [16.5, 'vg15'],
  ])('oil-viscosity sorts %d mm²/s at 40 °C as %s', (at40, name) => {
    expect(
      shown(oilViscosity, { known: 'at100', at40, at100: Math.sqrt(at40), share: 0 }).now.output
        .isoClass,
    ).toBe(name)
  })

  test('oil-viscosity leaves each oil as it is at shares of 0 and 100 %', () => {
    for (const [share, name] of [
      [0, 'one'],
      [100, 'two'],
    ] as const) {
      expectNear(
        result(oilViscosity, { share }, 'viscosity'),
        result(oilViscosity, { share }, name),
        ROUNDING,
      )
    }
  })

  test('oil-viscosity mixes to less than the mean', () => {
    expect(result(oilViscosity, { share: 50 }, 'mixAt40')).toBeLessThan((32 + 15) / 2)
  })

  test('oil-viscosity tells of a cold start from three times as thick on', () => {
    expectNear(COLD_IS_ANOTHER_FORK, 3, 0)
    // by the same law this mix is 2.5 times as thick at 19 °C as at 40 °C, and 4.0 times at 10 °C
    expect(remarksOf(oilViscosity, { cold: 19 })).not.toMatch(/Judge the damping/)
    expect(remarksOf(oilViscosity, { cold: 10 })).toMatch(/4\.0 times as thick/)
  })

  test('oil-viscosity gives a range where the index is not known', () => {
    const range = ends(
      shown(oilViscosity, { known: 'index', index: 'unknown', share: 0, temperature: 10 }).now
        .output.viscosity,
    )!
    // an index of 100 to 200 at 32 mm²/s: 163 to about 110 mm²/s at 10 °C
    expectNear(range[1] * 1e6, 163, 1)
    expectNear(range[0] * 1e6, 110, 1)
  })

  test('oil-viscosity refuses an oil that thickens with heat, or thins beyond any, at the field of that oil', () => {
    expect(problemsOf({ known: 'at100', at40: 10, at100: 12 }).at100).toMatch(
      /must be thinner at 100 °C/,
    )
    expect(problemsOf({ known: 'at100', otherAt40: 10, otherAt100: 12 }).otherAt100).toMatch(
      /must be thinner at 100 °C/,
    )
    expect(problemsOf({ known: 'at100', at40: 200, at100: 2 }).at100).toMatch(
      /no oil thins so much/,
    )
    // the thinnest oil and the lowest index of the ranges go together: 7.1 mm²/s at an index of 60 has 2.0 at 100 °C
    expect(problemsOf({ otherAt40: 7.1, otherIndex: 60 })).toEqual({})
  })
})

describe('OilViscosityFigure', () => {
  test('OilViscosityFigure marks four data-sheet readings and the fork before and now', () => {
    const markup = drawn(oilViscosity, OilViscosityFigure)
    expectSound(markup)
    expect(markup.match(/chart-point plain/g)).toHaveLength(4)
    expect(markup.match(/chart-point now/g)).toHaveLength(1)
    expect(markup.match(/chart-point before/g)).toHaveLength(1)
    expect(markup).toContain('32.0\u00a0mm²/s at 40\u00a0°C')
  })

  test('OilViscosityFigure draws the ends of the ranges in either unit', () => {
    expectSound(
      drawn(
        oilViscosity,
        OilViscosityFigure,
        { at40: 200, index: 60, otherAt40: 7.1, otherIndex: 400, temperature: -15 },
        null,
        true,
      ),
    )
  })
})

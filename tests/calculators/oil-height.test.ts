import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import OilHeightFigure from '../../src/calculators/oil-height/Figure.tsx'
import { evaluate } from '../../src/machine/evaluate.ts'
import { ends } from '../../src/units/interval.ts'
import { LOCK_CLEARANCE, UNFELT } from '../../src/calculators/oil-height/remarks.ts'
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

const oilHeight = loadCalculator('oil-height')

describe('oil-height', () => {
  test('oil-height follows Boyle where the stroke is slow', () => {
    // p V constant: 101325 Pa × (265.70/91.43 − 1) × 14.522 cm² × 2 legs = 560.9 N, worked by hand; 0.5 N for the rounded volumes
    const low = ends(shown(oilHeight, { airHeight: 130 }).now.output.gasAtFull)?.[0]
    expectNear(low, 560.9, 0.5)
  })

  test('oil-height adds little where the bike sits and much at full travel', () => {
    const { now, before } = shown(oilHeight, { airHeight: 120 })
    // worked elsewhere for this bike with one exponent of 1.3 from full extension: +4 N at 30 mm and +144 N at full travel; here the
    // stroke starts from the settled bike at 1.2, which is lower: 90 to 150 N
    const settled = Number(now.output.gasSettled) - Number(before?.output.gasSettled)
    expect(settled).toBeGreaterThan(2)
    expect(settled).toBeLessThan(6)
    const gain =
      result(oilHeight, { airHeight: 120 }, 'gasAtFull') -
      result(oilHeight, { airHeight: 130 }, 'gasAtFull')
    expect(gain).toBeGreaterThan(90)
    expect(gain).toBeLessThan(150)
  })

  test('oil-height carries the same bike on less travel at altitude, where less air pushes back', () => {
    // standard atmosphere, ISO 2533: 79,495 Pa at 2,000 m. 21,830 Pa less on 2 × 14.522 cm² is 63.4 N more at any travel
    const [low, high] = [
      result(oilHeight, { altitude: 0 }, 'settled'),
      result(oilHeight, { altitude: 2000 }, 'settled'),
    ]
    expect(low - high).toBeGreaterThan(2.5)
    expect(low - high).toBeLessThan(3.6)
  })

  test('oil-height has no force at full travel where the oil locks first, and says so', () => {
    const { now } = shown(oilHeight, { airHeight: 45 })
    expect(now.output.gasAtFull).toBeNull()
    expect(Number(now.output.lockMargin)).toBeLessThan(0)
    expect(remarksOf(oilHeight, { airHeight: 45 })).toMatch(/air is gone \d+ mm before the stop/)
    expect(now.remarks.some((remark) => remark.caution === 'overfilled-fork-locks')).toBe(true)
  })

  test('oil-height warns by the warm fork: by how much a fork with 2 mm to spare cold locks early', () => {
    // by hand: (11.341 cm² · 5.2 cm − 56 cm³) = 2.97 cm³ ÷ 14.522 cm² = 2.0 mm cold; at 80 °C 21 cm³ of oil more: (2.97 − 21) ÷ 14.522 = −12.4 mm
    expectNear(result(oilHeight, { airHeight: 52 }, 'lockMargin'), 2.05, 0.05)
    expectNear(result(oilHeight, { airHeight: 52 }, 'lockMarginWarm'), -12.41, 0.05)
    expect(remarksOf(oilHeight, { airHeight: 52 })).toMatch(
      /2 mm of travel lie between .* At 80 °C the oil has grown, and this fork locks 12 mm before its stop/,
    )
    // warm, 5 mm are left where (1.134 h − 56 − 21) ÷ 14.522 = 0.5: h = 74.3 mm
    expectNear(LOCK_CLEARANCE, 0.005, ROUNDING)
    expect(remarksOf(oilHeight, { airHeight: 75 })).not.toMatch(/lock/)
    expect(remarksOf(oilHeight, { airHeight: 74 })).toMatch(/At 80 °C only 5 mm are left/)
    // a fork that is warmer already stays so
    expectNear(
      result(oilHeight, { temperature: 90 }, 'lockMarginWarm'),
      result(oilHeight, { temperature: 90 }, 'lockMargin'),
      ROUNDING,
    )
  })

  test('oil-height squeezes the air fast from where the bike has settled, not from full extension', () => {
    // by hand: settled 35.2 mm down the air has 214.6 of 265.7 cm³, slowly to 125.5 kPa; fast from there to 91.43 cm³: 125.5 · (214.6/91.43)^1.4 = 414.3 kPa,
    // which is 312.9 kPa on 2 × 14.522 cm². From full extension at once it would be 1016 N.
    const high = ends(shown(oilHeight, { airHeight: 130 }).now.output.gasAtFull)?.[1]
    expectNear(high, 909, 3) // a tenth of a millimetre of settled travel is 1 N
  })

  test('oil-height gives no force where the air is next to a lock', () => {
    const { now } = shown(oilHeight, { airHeight: 49.4 })
    expect([now.output.gasAtFull, now.output.forceAtFull]).toEqual([null, null])
    expect(Number(now.output.lockMargin)).toBeGreaterThan(0)
    expect(remarksOf(oilHeight, { airHeight: 49.4 })).toMatch(
      /At full travel it is no spring any more/,
    )
  })

  test('oil-height calls a change below 40 N where the bike sits less than friction', () => {
    expectNear(UNFELT, 40, 0)
    expect(remarksOf(oilHeight, { airHeight: 120 })).toMatch(/which friction hides/)
    expect(remarksOf(oilHeight, { airHeight: 120, temperature: 80 })).toMatch(
      /enough to move the bike/,
    )
  })

  test('oil-height refuses oil that would overflow the collapsed tube, at that field', () => {
    expect(
      evaluate(asDefinition(oilHeight), { airHeight: 40, oilAdded: 60 }, { bikes }).problems
        .oilAdded,
    ).toMatch(/overflow/)
  })

  test('oil-height gives an interval for an oil quantity that is not known', () => {
    const range = ends(
      shown(oilHeight, { temperature: 80, oilVolume: 'unknown' }).now.output.lockMargin,
    )!
    // 350 to 700 cm³ by 0.0007 per K and 60 K: 14.7 to 29.4 cm³, which is 10.1 mm of a 43 mm tube
    expectNear(range[1] - range[0], 0.01012, 5e-5)
  })
})

describe('OilHeightFigure', () => {
  test('OilHeightFigure draws the air columns in proportion to the air', () => {
    const { columns } = shown(oilHeight, { airHeight: 130 }).now.picture as {
      columns: Record<string, number>
    }
    // 91.43 cm³ and 265.70 cm³ over 14.522 cm²
    expectNear(columns.full, 0.06296, 1e-5)
    expectNear(columns.extended, 0.18296, 1e-5)
  })

  test('OilHeightFigure draws every bike, locked or not, in either unit', () => {
    for (const bike of Object.keys(bikes)) {
      for (const airHeight of [45, 120, 300])
        expectSound(drawn(oilHeight, OilHeightFigure, { bike, airHeight }, null, airHeight === 120))
    }
    expectSound(
      drawn(oilHeight, OilHeightFigure, { gaugePressure: 3, temperature: -20, altitude: 4000 }),
    )
  })

  test('OilHeightFigure writes both heights', () => {
    const markup = drawn(oilHeight, OilHeightFigure)
    for (const text of ['120.0\u00a0mm', '130.0\u00a0mm', 'as you read it'])
      expect(markup).toContain(text)
  })
})

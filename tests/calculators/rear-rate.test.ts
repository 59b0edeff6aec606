import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import RearRateFigure from '../../src/calculators/rear-rate/Figure.tsx'
import { evaluate } from '../../src/machine/evaluate.ts'
import { ends } from '../../src/units/interval.ts'
import {
  PROGRESSIVE,
  RIDER_SAG_WINDOW,
  TELLS_NOTHING,
} from '../../src/calculators/rear-rate/remarks.ts'
import {
  asDefinition,
  bikes,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  shown,
} from './evaluated.ts'

const rearRate = loadCalculator('rear-rate')

const problemsOf = (given: Record<string, number | string>): Readonly<Record<string, string>> =>
  evaluate(asDefinition(rearRate), given, { bikes }).problems
const halfWidth = (given: Record<string, number | string>, output: string): number => {
  const [low, high] = ends(shown(rearRate, given).now.output[output])!
  return (high - low) / 2
}
const EXACT = { ratePlusMinus: 0, ratioPlusMinus: 0, readingPlusMinus: 0, loadPlusMinus: 0 }

describe('rear-rate', () => {
  test('rear-rate takes the ratio either way round', () => {
    const motion = { ratioAs: 'motion', motionRatio: 0.5 }
    const leverage = { ratioAs: 'leverage', leverage: 2 }
    for (const output of ['wheelRate', 'riderSag', 'heightPerTurn'])
      expectNear(result(rearRate, motion, output), result(rearRate, leverage, output), 1e-6)
    const line = [
      result(rearRate, { ...motion, linkage: 'line', endRatio: 0.625 }, 'rateFull'),
      result(rearRate, { ...leverage, linkage: 'line', endLeverage: 1.6 }, 'rateFull'),
    ]
    expectNear(line[0], line[1]!, 1e-6)
  })

  test('rear-rate takes a table that is a straight line for that line', () => {
    const line = { linkage: 'line', motionRatio: 0.4, endRatio: 0.5, travel: 100 }
    const evaluated = evaluate(
      asDefinition(rearRate),
      {
        linkage: 'table',
        travel: 100,
        ratios: [
          [100, 0.5],
          [0, 0.4],
          [50, 0.45],
        ],
      },
      { bikes },
    )
    expectNear(
      Number(evaluated.now?.output.rateFull) / 1e3,
      result(rearRate, line, 'rateFull'),
      1e-9,
    )
  })

  test('rear-rate adds the spring’s force on a rising ratio to the rate', () => {
    // by hand at full extension: 90 × 0.4² = 14.4 N/mm, and (90 × 11 + 185) N on a ratio that rises by 0.001 per mm adds 1.175 N/mm
    expectNear(
      result(
        rearRate,
        { linkage: 'line', motionRatio: 0.4, endRatio: 0.5, travel: 100, turns: 0 },
        'rateExtended',
      ),
      15.575,
      1e-6,
    )
  })

  test('rear-rate raises the axle’s end by two turns as by twice one, on a constant ratio', () => {
    const rise =
      result(rearRate, { turns: 0 }, 'riderSag') - result(rearRate, { turns: 2 }, 'riderSag')
    expectNear(rise, 2 * result(rearRate, { turns: 0 }, 'heightPerTurn'), 1e-6)
  })

  test('rear-rate tells the height for a turn under the rider, not under the bike alone', () => {
    // on a ratio that rises, a turn lifts the less the deeper the bike sits
    const rising = { linkage: 'line', motionRatio: 0.4, endRatio: 0.6, pitch: 1 }
    const byTurning = (sag: string): number =>
      result(rearRate, { ...rising, turns: 0 }, sag) -
      result(rearRate, { ...rising, turns: 1 }, sag)
    expectNear(
      result(rearRate, { ...rising, turns: 0 }, 'heightPerTurn'),
      byTurning('riderSag'),
      1e-9,
    )
    expect(byTurning('staticSag') - byTurning('riderSag')).toBeGreaterThan(0.1)
  })

  test('rear-rate tells a back on its stop, with a ± that the stop does not hide', () => {
    // by hand, no gas, turn 0: 38 · 0.435² = 7.19 N/mm at the wheel and 38 · 11 · 0.435 = 181.8 N at full extension; 1167 N, so 137 mm of 130
    const soft = { springRate: 38, turns: 0, gasForce: 0 }
    expect(shown(rearRate, soft).now.output.stands).toBe('bottomed')
    expect(remarksOf(rearRate, soft)).toMatch(/the back is on its stop, with all its travel used/)
    // 3 % of rate and 2 % of ratio leave some millimetres of doubt, which end at the stop
    const [low, high] = ends(shown(rearRate, soft).now.output.riderSag)!
    expectNear(high, 0.13, 1e-12)
    expectNear(low, 0.137 - 0.0085, 0.001)
    // 41 N/mm: 1167 less 196.2 N on 7.758 N/mm is 125.1 mm, closer to the stop than the ±
    const near = { ...soft, springRate: 41 }
    expect(shown(rearRate, near).now.output.stands).toBe('may-bottom')
    expect(remarksOf(rearRate, near)).toMatch(/may be on its stop/)
    expect(remarksOf(rearRate, {})).not.toMatch(/on its stop/)
  })

  test('rear-rate is sure of a back on its stop whose load is far beyond what the stop meets', () => {
    // a falling ratio that makes the slope at the stop nearly nothing: 3 kN stand against the 0.94 kN that the wheel meets there, within a sixth
    const flat = { springRate: 23, motionRatio: 0.35, linkage: 'line', endRatio: 0.25 }
    const wound = { preload: 30.5, turns: 18.5, pitch: 2.5, gasForce: 165, travel: 266 }
    const heavy = { staticLoad: 276.5, riderLoad: 308.5, unsprungMass: 17 }
    const doubts = {
      ratePlusMinus: 9.5,
      ratioPlusMinus: 15,
      readingPlusMinus: 0,
      loadPlusMinus: 1.3,
    }
    const { output } = shown(rearRate, {
      ...{ shocks: 'one', ratioAs: 'motion', ...flat },
      ...{ ...wound, ...heavy, ...doubts },
    }).now
    expect(output.stands).toBe('bottomed')
    expectNear(output.riderSag, 0.266, 1e-12)
    expectNear(output.staticSag, 0.266, 1e-12)
  })

  test('rear-rate still has a ± on its top stop, and tells one that is sure', () => {
    const wound = { preload: 60, turns: 10 }
    expect(shown(rearRate, wound).now.output.stands).toBe('topped-out')
    expect(remarksOf(rearRate, wound)).toMatch(/no droop left/)
    // a loose spring has no slope at full extension: the ± is still a number
    expect(
      shown(rearRate, { preload: 0, turns: -10, gasForce: 600, riderLoad: 45, staticLoad: 45 }).now
        .output.stands,
    ).toMatch(/topped-out/)
  })

  test('rear-rate has no ± where every reading is exact', () => {
    expectNear(halfWidth(EXACT, 'wheelRate'), 0, 1e-9)
    expectNear(halfWidth(EXACT, 'riderSag'), 0, 1e-9)
  })

  test('rear-rate carries ±2 % of the ratio as ±4 % of the rate, by first-order propagation', () => {
    // JCGM 100, 4.3.7 and 5.1.2: a limit of 2 % is 2/√3 % standard, doubled by the square, times 1.96: 4.53 % of 17.03 N/mm
    expectNear(halfWidth({ ...EXACT, ratioPlusMinus: 2 }, 'wheelRate') / 1e3, 0.7711, 0.001)
  })

  test('rear-rate says when its ± is wider than the window that the sag is held against', () => {
    const wide = /more than a tenth of the travel/
    expect(remarksOf(rearRate)).not.toMatch(wide)
    const doubtful = { ratioPlusMinus: 15, ratePlusMinus: 15 }
    expect(halfWidth(doubtful, 'riderSag')).toBeGreaterThan(
      TELLS_NOTHING * Number(shown(rearRate, doubtful).now.input['travel']),
    )
    expect(remarksOf(rearRate, doubtful)).toMatch(wide)
  })

  test('rear-rate adds independent errors in squares', () => {
    const [rate, ratio, both] = [
      { ratePlusMinus: 3 },
      { ratioPlusMinus: 2 },
      { ratePlusMinus: 3, ratioPlusMinus: 2 },
    ].map((given) => halfWidth({ ...EXACT, ...given }, 'wheelRate')) as [number, number, number]
    // numeric derivatives: six digits are ample
    expectNear(both / Math.hypot(rate, ratio), 1, 1e-6)
  })

  test('rear-rate gives a range where the ratio is not known', () => {
    const [low, high] = ends(
      shown(rearRate, { motionRatio: 'unknown', ...EXACT }).now.output.wheelRate,
    )!
    // 90 × 0.4² and 90 × 0.5²
    expectNear(low / 1e3, 14.4, 1e-6)
    expectNear(high / 1e3, 22.5, 1e-6)
  })

  test('rear-rate reads the sag against the window of common practice', () => {
    expect(RIDER_SAG_WINDOW).toEqual([0.25, 0.33])
    // 38.5 mm without turns: of 154.4 mm it is 24.9 %, of 130 mm 29.6 %, of 116 mm 33.2 %
    expect(remarksOf(rearRate, { turns: 0, travel: 155 })).toMatch(/less than the 25 to 33 %/)
    expect(remarksOf(rearRate, { turns: 0, travel: 130 })).toMatch(/within the 25 to 33 %/)
    expect(remarksOf(rearRate, { turns: 0, travel: 116 })).toMatch(/more than the 25 to 33 %/)
  })

  test('rear-rate says that the collar sets height and not rate', () =>
    expect(remarksOf(rearRate)).toMatch(/same: the collar sets height/))

  test('rear-rate calls a linkage progressive from 1.15 times on', () => {
    expectNear(PROGRESSIVE, 1.15, 0)
    expect(remarksOf(rearRate, { linkage: 'constant' })).not.toMatch(/grows/)
    expect(remarksOf(rearRate, { linkage: 'line', endRatio: 0.48 })).toMatch(/grows 1\.\d\d times/)
  })

  test('rear-rate tells a spring that hangs loose, and a back on its top stop', () => {
    expect(remarksOf(rearRate, { preload: 2, turns: -3 })).toMatch(/hangs loose/)
    expect(remarksOf(rearRate, { springRate: 50, preload: 32, turns: 0 })).toMatch(/top stop/)
  })

  test('rear-rate refuses at the field that can be put right', () => {
    expect(problemsOf({ riderLoad: 80 }).riderLoad).toMatch(
      /cannot read less than with the bike alone/,
    )
    expect(problemsOf({ staticLoad: 40, unsprungMass: 45 }).unsprungMass).toMatch(/must weigh less/)
    expect(problemsOf({ linkage: 'table', travel: 200 }).ratios).toMatch(/Add the missing row/)
    expect(problemsOf({ linkage: 'line', endRatio: 0.25, preload: 40 }).endRatio).toMatch(
      /could not settle/,
    )
  })
})

describe('RearRateFigure', () => {
  test('RearRateFigure marks both loads before and now', () => {
    const markup = drawn(rearRate, RearRateFigure)
    expectSound(markup)
    expect(markup.match(/chart-point now/g)).toHaveLength(2)
    expect(markup.match(/chart-point before/g)).toHaveLength(2)
  })

  test('RearRateFigure writes the ratio the way round it was given', () => {
    expect(drawn(rearRate, RearRateFigure)).toContain('motion ratio: stroke ÷ travel')
    const markup = drawn(
      rearRate,
      RearRateFigure,
      { ratioAs: 'leverage', linkage: 'line' },
      null,
      true,
    )
    expectSound(markup)
    expect(markup).toContain('leverage: travel ÷ stroke')
  })
})

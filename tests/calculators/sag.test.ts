import type { ChoiceOutput } from '../../src/machine/statement.ts'
import { codesOf } from '../../src/machine/cells.ts'
import type { Cell } from '../../src/machine/cells.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import SagFigure from '../../src/calculators/sag/Figure.tsx'
import type { Interval } from '../../src/units/interval.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { STICKY_BAND } from '../../src/calculators/sag/remarks.ts'
import { places } from './drawn.ts'
import {
  asDefinition,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  ROUNDING,
  shown,
} from './evaluated.ts'

const sag = loadCalculator('sag')

const problemOf = (given: Record<string, number>) =>
  Object.keys(evaluate(asDefinition(sag), given, { bikes: {} }).problems)

describe('sag', () => {
  test('sag carries the ± of three readings: within ±1 mm each, ±1.39 mm', () => {
    // JCGM 100, 4.3.7 and 5.1.2: 1/√3 · √(1 + ¼ + ¼) = 0.7071 mm, times 1.95996 is 1.3859 mm
    const { low, high } = shown(sag, { readingPlusMinus: 1 }).now.output.sag as Interval
    expectNear((high - low) / 2, 0.0013859, 5e-8) // half the last digit worked
  })

  test('sag tells the friction band of 60 N each way at 18 N/mm: 6.7 mm', () => {
    // 2 · 60/18 = 6.67 mm, worked by hand
    expectNear(
      result(sag, { extended: 150, settledDown: 112, settledUp: 112 + 120 / 18 }, 'frictionBand'),
      6.6667,
      1e-3,
    )
  })

  test('sag judges the window with its ±: inside, at an edge, outside', () => {
    const at = (settled: number) =>
      shown(sag, { settledDown: settled - 3, settledUp: settled + 3 }).now.output.window
    // window 25 to 33 % of 120 mm: 30 to 39.6 mm of sag, the ± is 1.39 mm
    expect(at(150 - 35)).toBe('inside')
    expect(at(150 - 30.5)).toBe('edge')
    expect(at(150 - 28)).toBe('less')
    expect(at(150 - 42)).toBe('more')
  })

  test('sag becomes a range of shares when the travel is not known', () => {
    const share = shown(sag, { travel: 'unknown', readingPlusMinus: 0 }).now.output
      .share as Interval
    // 35 mm of 140 and of 110 mm
    expectNear(share.low, 0.25, ROUNDING)
    expectNear(share.high, 35 / 110, ROUNDING)
  })

  test('sag carries the ± of the readings to the share of travel', () => {
    // ±1.386 mm, worked above, of 120 mm of travel about 35 mm
    const share = shown(sag, { readingPlusMinus: 1 }).now.output.share as Interval
    expectNear(share.low, (35 - 1.3859) / 120, 5e-7)
    expectNear(share.high, (35 + 1.3859) / 120, 5e-7)
  })

  test('sag with a travel that is not known tells each side of the window that it may be on, and no middle', () => {
    // 39 mm of 110 to 140 mm is 27.9 to 35.5 %, with the ±1.4 mm 27 to 37 %: the window ends at 33
    const given = { settledDown: 108, settledUp: 114, travel: 'unknown' }
    expect(codesOf(shown(sag, given).now.output.window as Cell)).toEqual(['more', 'edge', 'inside'])
    const { more, inside } = (sag.outputs['window'] as ChoiceOutput).options
    expect(remarksOf(sag, given)).toContain(
      `that can be 27 to 37 % of it: ${more}, or ${inside}, which runs from 25 to 33 %`,
    )
    expect(remarksOf(sag, given)).not.toMatch(/31 %/)
    // far outside, every travel gives one verdict
    expect(remarksOf(sag, { settledDown: 90, settledUp: 96, travel: 'unknown' })).toMatch(
      /somewhere from 40 to 53 % of its travel: more than the window/,
    )
  })

  test('sag names the reading that is out of order', () => {
    expect(problemOf({ settledDown: 118, settledUp: 112 })).toEqual(['settledUp'])
    expect(problemOf({ extended: 100 })).toEqual(['extended'])
    expect(problemOf({ extended: 300 })).toEqual(['travel'])
    expect(problemOf({ windowLow: 40 })).toEqual(['windowHigh'])
  })

  test('sag calls the softer spring no cure for friction, past the band that is sticky', () => {
    const wide = (band: number) => remarksOf(sag, { settledDown: 112, settledUp: 112 + band })
    expect(wide(STICKY_BAND * 1000)).not.toMatch(/softer spring does not cure friction/)
    expect(wide(STICKY_BAND * 1000 + 0.5)).toMatch(/softer spring does not cure friction/)
  })

  test('SagFigure drops the mark by the sag, to the scale of the tube, and shades the band', () => {
    const markup = drawn(sag, SagFigure)
    expectSound(markup)
    const marks = places(markup, 'line[class="mark"]', 'y1')
    const seal = places(markup, 'rect[class="now solid"]', 'y')[0]!
    const scale = (seal - marks[0]!) / 150 // units for a millimetre, from the hanging leg
    // the markup rounds to a hundredth of a unit, a hundredth of a millimetre here
    expectNear((marks[1]! - marks[0]!) / scale, 35, 0.02)
    expectNear(places(markup, 'rect[class="friction"]', 'height')[0]! / scale, 6, 0.02)
    expect(markup).toContain('Sag 35.0\u00a0mm of 120\u00a0mm travel')
  })

  test('SagFigure shows the state before dashed and in inches where asked', () => {
    const markup = drawn(sag, SagFigure, {}, { settledDown: 100, settledUp: 108 }, true)
    expectSound(markup)
    expect(markup).toContain('class="mark before"')
    expect(markup).toMatch(/1\.378\s?in/)
  })
})

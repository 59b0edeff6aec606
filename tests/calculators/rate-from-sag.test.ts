import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import RateFromSagFigure from '../../src/calculators/rate-from-sag/Figure.tsx'
import type { Given } from '../../src/machine/given.ts'
import type { Interval } from '../../src/units/interval.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { decodeLink } from '../../src/machine/link.ts'
import { forkTravel } from '../../src/core/index.ts'
import { dots, valueAt } from './drawn.ts'
import {
  asDefinition,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  shown,
} from './evaluated.ts'

const rateFromSag = loadCalculator('rate-from-sag')

const problemOf = (given: Record<string, number | string>) =>
  Object.keys(evaluate(asDefinition(rateFromSag), given, { bikes: {} }).problems)

describe('rate-from-sag', () => {
  test('rate-from-sag gives back the spring of a fork with air that the core has put under both loads', () => {
    const leg = {
      spring: [{ rate: 9000 }],
      preload: 0.015,
      gas: { tubeDiameter: 0.043, boreDiameter: 0.038, airHeight: 0.13, stackVolume: 56e-6 },
    }
    const fork = { travel: 0.12, legs: [leg, leg] }
    const along = (kilograms: number): number =>
      (kilograms - 28) * 9.80665 * Math.cos((25 * Math.PI) / 180)
    const given = {
      extended: 150,
      staticReading: 150 - 1000 * forkTravel(fork, along(100)),
      riderReading: 150 - 1000 * forkTravel(fork, along(137.2)),
      staticLoad: 100,
      riderLoad: 137.2,
      gas: 'sealed',
    }
    // the balance is found to about 1e-9 of the load
    expectNear(result(rateFromSag, given, 'springPerLeg'), 9, 1e-6)
    expectNear(result(rateFromSag, given, 'springPreload'), 15, 1e-5)
    // with the air left in, 18 N/mm reads about 20
    expect(result(rateFromSag, given, 'rate')).toBeGreaterThan(20)
  })

  test('rate-from-sag carries its readings’ ± to the rate: 9.0 % of it', () => {
    // worked in the definition's check: 4.46 % and 1.10 % make 4.60 %, times 1.96 is 9.0 %
    const { low, high } = shown(rateFromSag, {
      staticReading: 129.4,
      riderReading: 111.1,
      gas: 'none',
      readingPlusMinus: 1,
      loadPlusMinus: 0.5,
    }).now.output.rate as Interval
    expectNear((high - low) / (high + low), 0.0901, 2e-4) // rounding of the two parts worked by hand
  })

  test('rate-from-sag tells springs apart where the ± is no more than half the step, and not else', () => {
    const verdict = (readingPlusMinus: number, more: Given = {}) =>
      shown(rateFromSag, { gas: 'sealed', readingPlusMinus, loadPlusMinus: 0.2, ...more }).now
        .output.verdict
    // within 0.2 mm and 0.2 kg a leg is known to ±0.21 N/mm, within 0.3 mm to ±0.31: the step is 0.5
    expect(verdict(0.2)).toBe('apart')
    expect(verdict(0.3)).toBe('not-apart')
    expect(verdict(0.3, { step: 0.7 })).toBe('apart')
    expect(verdict(0.2, { gas: 'none' })).toBe('air-first')
    expect(remarksOf(rateFromSag)).toMatch(/more than one spring of the shelf fits/)
    expect(
      remarksOf(rateFromSag, { gas: 'sealed', readingPlusMinus: 0.2, loadPlusMinus: 0.2 }),
    ).toMatch(/tell neighbouring springs apart/)
  })

  test('rate-from-sag’s difference that would do makes the ± half the step', () => {
    const exact = { gas: 'none', loadPlusMinus: 0, readingPlusMinus: 0.5 }
    const [, needed] = /: (\d+) mm of difference would do/.exec(remarksOf(rateFromSag, exact)) ?? []
    // the same slope over that difference: rider reading lower, load higher by as much
    const grown = Number(needed) / 16.4
    const within = result(
      rateFromSag,
      { ...exact, riderReading: 131.3 - Number(needed), riderLoad: 100 + 37.2 * grown },
      'within',
    )
    // the difference is told to a whole millimetre of some thirty
    expectNear(within, 0.25, 0.006)
  })

  test('rate-from-sag gives the spring without air the same ± as the fork with it', () => {
    const { perLeg, springPerLeg } = shown(rateFromSag, { gas: 'sealed' }).now.output
    const half = ({ low, high }: Interval): number => (high - low) / 2
    expectNear(half(springPerLeg as Interval), half(perLeg as Interval), 1e-6)
  })

  test('rate-from-sag cannot name a spring by what is not known, however good the readings', () => {
    const given = {
      gas: 'sealed',
      unsprungMass: 'unknown',
      rake: 'unknown',
      stackVolume: 'unknown',
      readingPlusMinus: 0.2,
      loadPlusMinus: 0.2,
    }
    const { low, high } = shown(rateFromSag, given).now.output.springPerLeg as Interval
    expect(high - low).toBeGreaterThan(500) // wider than the step
    expect(shown(rateFromSag, given).now.output.verdict).toBe('not-apart')
    expect(remarksOf(rateFromSag, given)).not.toMatch(/tell neighbouring springs apart/)
  })

  test('rate-from-sag takes no invented air off a stranger’s fork, and says whose sizes it takes', () => {
    expect(shown(rateFromSag).now.output.springPerLeg).toBeNull()
    expect(remarksOf(rateFromSag, { gas: 'sealed' })).toMatch(
      /The air taken out is the invented roadster’s/,
    )
    expect(remarksOf(rateFromSag, { gas: 'sealed', airHeight: 128 })).not.toMatch(
      /invented roadster/,
    )
    // an upside-down fork's air can stand in the wider outer tube
    expect(remarksOf(rateFromSag, { gas: 'sealed', boreDiameter: 46 })).toMatch(
      /right only on an upside-down fork/,
    )
  })

  test('a link to rate-from-sag from before opens with the air taken out, as it was', () => {
    const old = decodeLink(rateFromSag, 'v=1&staticReading=131.3&riderReading=114.9', [])
    expect(old.given.gas).toBe('sealed')
    expect(old.problems).toEqual([])
    expect(decodeLink(rateFromSag, 'v=2&staticReading=131.3', []).given.gas).toBe('none')
  })

  test('rate-from-sag refuses readings that leave no spring once the air is out', () => {
    expect(problemOf({ gas: 'sealed', riderLoad: 104, airHeight: 80 })).toEqual(['airHeight'])
  })

  test('rate-from-sag without the sizes of the air warns that air is in the figure', () => {
    expect(shown(rateFromSag, { gas: 'none' }).now.output.springPerLeg).toBeNull()
    expect(remarksOf(rateFromSag, { gas: 'none' })).toMatch(/Trapped air is in that figure/)
  })

  test('rate-from-sag calls a preload below none suspect', () => {
    expect(remarksOf(rateFromSag, { extended: 180, gas: 'none' })).toMatch(
      /spring loose at full extension/,
    )
    expect(remarksOf(rateFromSag)).not.toMatch(/loose/)
  })

  test('rate-from-sag names the reading that is out of order, and sizes without room for air', () => {
    expect(problemOf({ riderReading: 135 })).toEqual(['riderReading'])
    expect(problemOf({ extended: 120 })).toEqual(['extended'])
    expect(problemOf({ riderLoad: 90 })).toEqual(['riderLoad'])
    expect(problemOf({ unsprungMass: 60, staticLoad: 40 })).toEqual(['unsprungMass'])
    expect(
      problemOf({
        gas: 'sealed',
        airHeight: 60,
        stackVolume: 150,
        boreDiameter: 30,
        tubeDiameter: 31,
        travel: 60,
      }),
    ).toEqual(['airHeight'])
  })

  test('RateFromSagFigure places both readings and their error bars', () => {
    const markup = drawn(rateFromSag, RateFromSagFigure)
    expectSound(markup)
    const chart = markup.slice(markup.indexOf('class="chart"'))
    const [alone, rider] = dots(chart, 'now')
    // a hundredth of a unit is 0.002 mm and 0.06 N
    expectNear(valueAt(chart, 'x', alone![0]), 18.7, 0.02)
    expectNear(valueAt(chart, 'y', alone![1]), 639.92, 0.5)
    expectNear(valueAt(chart, 'x', rider![0]), 35.1, 0.02)
    expect(chart.match(/chart-error now/g)).toHaveLength(2)
  })

  test('RateFromSagFigure shows the spring without air as a second bar', () => {
    expect(drawn(rateFromSag, RateFromSagFigure, { gas: 'sealed' })).toContain(
      'spring, air taken out',
    )
    expect(drawn(rateFromSag, RateFromSagFigure)).not.toContain('spring, air taken out')
  })
})

import { describe, expect, test } from 'vitest'
import RateFromSagFigure from '../../components/figures/RateFromSag.tsx'
import type { Interval } from '../../src/calculators/define.ts'
import { evaluate } from '../../src/calculators/evaluate.ts'
import rateFromSag from '../../src/calculators/rate-from-sag.ts'
import { forkTravel } from '../../src/core/index.ts'
import { dots, valueAt } from './drawn.ts'
import { asDefinition, drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'

const problemOf = (given: Record<string, number | string>) => Object.keys(evaluate(asDefinition(rateFromSag), given, { bikes: {} }).problems)

describe('rate-from-sag', () => {
  test('rate-from-sag gives back the spring of a fork with air that the core has put under both loads', () => {
    const leg = { spring: [{ rate: 9000 }], preload: 0.015, gas: { tubeDiameter: 0.043, boreDiameter: 0.038, airHeight: 0.13, stackVolume: 56e-6 } }
    const fork = { travel: 0.12, legs: [leg, leg] }
    const along = (kilograms: number): number => (kilograms - 28) * 9.80665 * Math.cos((25 * Math.PI) / 180)
    const given = {
      extended: 150,
      staticReading: 150 - 1000 * forkTravel(fork, along(100)),
      riderReading: 150 - 1000 * forkTravel(fork, along(137.2)),
      staticLoad: 100,
      riderLoad: 137.2,
    }
    // the balance is found to about 1e-9 of the load
    expectNear(result(rateFromSag, given, 'springPerLeg'), 9, 1e-6)
    expectNear(result(rateFromSag, given, 'springPreload'), 15, 1e-5)
    // with the air left in, 18 N/mm reads about 20
    expect(result(rateFromSag, given, 'rate')).toBeGreaterThan(20)
  })

  test('rate-from-sag carries its readings’ ± to the rate: 9.0 % of it', () => {
    // worked in the definition's check: 4.46 % and 1.10 % make 4.60 %, times 1.96 is 9.0 %
    const { low, high } = shown(rateFromSag, { staticReading: 129.4, riderReading: 111.1, gas: 'none', readingPlusMinus: 1, loadPlusMinus: 0.5 }).now.output
      .rate as Interval
    expectNear((high - low) / (high + low), 0.0901, 2e-4) // rounding of the two parts worked by hand
  })

  test('rate-from-sag tells springs apart where the ± is no wider than the step, and not else', () => {
    const verdict = (readingPlusMinus: number) => shown(rateFromSag, { readingPlusMinus, loadPlusMinus: 0.2 }).now.output.verdict
    expect(verdict(0.3)).toBe('these readings tell them apart')
    expect(verdict(1)).toBe('these readings cannot tell them apart')
    expect(remarksOf(rateFromSag)).toMatch(/a tape cannot name your spring/)
    expect(remarksOf(rateFromSag, { readingPlusMinus: 0.3, loadPlusMinus: 0.2 })).toMatch(/tell neighbouring springs apart/)
  })

  test('rate-from-sag without the sizes of the air warns that air is in the figure', () => {
    expect(shown(rateFromSag, { gas: 'none' }).now.output.springPerLeg).toBeNull()
    expect(remarksOf(rateFromSag, { gas: 'none' })).toMatch(/Trapped air is in that figure/)
  })

  test('rate-from-sag calls a preload below none suspect', () => {
    expect(remarksOf(rateFromSag, { extended: 180, gas: 'none' })).toMatch(/spring loose at full extension/)
    expect(remarksOf(rateFromSag)).not.toMatch(/loose/)
  })

  test('rate-from-sag names the reading that is out of order, and sizes without room for air', () => {
    expect(problemOf({ riderReading: 135 })).toEqual(['riderReading'])
    expect(problemOf({ extended: 120 })).toEqual(['extended'])
    expect(problemOf({ riderLoad: 90 })).toEqual(['riderLoad'])
    expect(problemOf({ boreDiameter: 43 })).toEqual(['boreDiameter'])
    expect(problemOf({ unsprungMass: 60, staticLoad: 40 })).toEqual(['unsprungMass'])
    expect(problemOf({ airHeight: 60, stackVolume: 150, boreDiameter: 30, tubeDiameter: 31, travel: 60 })).toEqual(['airHeight'])
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
    expect(drawn(rateFromSag, RateFromSagFigure)).toContain('spring, air taken out')
    expect(drawn(rateFromSag, RateFromSagFigure, { gas: 'none' })).not.toContain('spring, air taken out')
  })
})

import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { defaultsOf, evaluate, isAsked } from '../../src/machine/evaluate.ts'
import { decidingRemark } from '../../src/machine/decidingRemark.ts'
import type { Given } from '../../src/machine/given.ts'
import { METRIC } from '../../src/units/choice.ts'
import { createSay } from '../../src/units/say.ts'
import { bikes } from './bikes.ts'

const say = createSay(METRIC)

function told(id: string, values: Given): string | undefined {
  const calculator = loadCalculator(id)
  const given = { ...defaultsOf(calculator), ...values }
  const { now } = evaluate(calculator, given, { bikes })
  return decidingRemark(calculator, given, now!.output, { bikes }, say)?.text
}

describe('decidingRemark', () => {
  test('decidingRemark names the one unknown and that the range closes', () => {
    expect(told('fork-stack', { rate: 'unknown' })).toMatch(
      /^“Fork used, bike alone” hangs most on “Spring rate, one leg”: [\d.]+ to [\d.]+\u00a0mm by that alone\. Measure it, and the range closes\.$/,
    )
  })

  test('decidingRemark names, of several, the one to measure first and what that leaves', () => {
    expect(told('rear-rate', { motionRatio: 'unknown', axleRate: 'unknown' })).toMatch(
      /hangs most on “Motion ratio at full extension”: .* by that alone\./,
    )
  })

  test('decidingRemark passes over a result that is a range by itself', () => {
    // 35 mm of 110 to 140 mm: 25.0 to 31.8 %, with ±1.39 mm 24.0 to 33.1
    expect(told('sag', { travel: 'unknown' })).toMatch(
      /^“Share of travel” hangs most on “Full travel”: 24 to 33\u00a0% by that alone\. Measure it/,
    )
  })

  test('decidingRemark says nothing while everything is known', () => {
    for (const id of calculatorIds) expect(told(id, {})).toBeUndefined()
  })

  test.each(calculatorIds)(
    'decidingRemark of %s never promises more than a narrower range',
    (id) => {
      const calculator = loadCalculator(id)
      const usual = defaultsOf(calculator)
      const unknowable = Object.entries(calculator.inputs)
        .filter(([, input]) => input.kind === 'quantity' && input.typical && isAsked(input, usual))
        .map(([input]) => input)
        .slice(0, 3)
      for (let count = 1; count <= unknowable.length; count++) {
        const hidden = unknowable.slice(0, count).map((input) => [input, 'unknown'])
        const text = told(id, Object.fromEntries(hidden) as Given)
        if (text === undefined) continue
        expect(text).not.toMatch(/NaN|undefined|Infinity|null/)
        // one name of a result and one of a field, neither with its brackets
        expect(text.match(/“[^”()]+”/g)).toHaveLength(2)
      }
    },
  )
})

import { isNumber } from '../../src/machine/statement.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import type { InputOf, OutputOf } from '../../src/machine/values.ts'
import { describe, expect, test } from 'vitest'
import type { Given } from '../../src/machine/given.ts'
import type { Exercise } from '../../src/machine/question.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { middle } from '../../src/units/interval.ts'
import { toSI } from '../../src/units/units.ts'
import { METRIC } from '../../src/units/choice.ts'
import { writerFor } from '../../src/worksheet/bench.ts'
import { bikes } from './bikes.ts'

const write = writerFor(METRIC)

const loaded = await Promise.all(
  calculatorIds.map(async (id) => {
    const module = (await import(`../../src/calculators/${id}/questions.ts`)) as {
      default: readonly Exercise[]
    }
    return [id, loadCalculator(id), module.default] as const
  }),
)

/** Every combination of the values that a sheet may draw, at most a few hundred. */
function draws({ draw, fixed = {} }: Exercise): Given[] {
  return Object.entries(draw).reduce<Given[]>(
    (all, [id, values]) =>
      all.flatMap((given) => values!.map((value) => ({ ...given, [id]: value }))),
    [fixed],
  )
}

describe.each(loaded)('questions of %s', (_id, definition, exercises) => {
  test('are at least two, with ids of their own', () => {
    expect(exercises.length).toBeGreaterThanOrEqual(2)
    expect(new Set(exercises.map(({ id }) => id)).size).toBe(exercises.length)
  })

  test.each(exercises.map((exercise) => [exercise.id, exercise] as const))(
    '%s has an answer for every draw, and wrong answers that differ from it',
    (_name, exercise) => {
      const output = definition.outputs[exercise.asks]!
      expect(output, exercise.asks).toBeDefined()
      if (!isNumber(output)) throw new Error(`${exercise.asks} is no number`)
      // half a unit of the last place shown: closer than that, right and wrong would read alike
      const alike =
        Math.abs(toSI(1, output.unit) - toSI(0, output.unit)) * 0.5 * 10 ** -output.digits
      const same = new Map<string, number>()
      const all = draws(exercise)
      for (const given of all) {
        const { now, problems, refusal } = evaluate(definition, given, { bikes })
        expect({ problems, refusal }, JSON.stringify(given)).toEqual({
          problems: {},
          refusal: null,
        })
        const right = middle(now!.output[exercise.asks])
        expect(right, JSON.stringify(given)).not.toBeNull()
        expect(exercise.question(given, write)).toContain('?')
        expect(exercise.question(given, write)).not.toMatch(/undefined|NaN|null/)
        for (const { idea, answer } of exercise.wrong) {
          const wrong = answer(
            now!.input as InputOf<CardStatement>,
            now!.output as OutputOf<CardStatement>,
          )
          expect(Number.isFinite(wrong), `${idea}: ${JSON.stringify(given)}`).toBe(true)
          if (Math.abs(wrong - right!) < alike) same.set(idea, (same.get(idea) ?? 0) + 1)
        }
      }
      expect(exercise.wrong.length).toBeGreaterThanOrEqual(2)
      const because =
        typeof exercise.because === 'string' ? exercise.because : exercise.because(write)
      expect(because.length).toBeGreaterThan(20)
      expect([...same].filter(([, count]) => count === all.length)).toEqual([])
    },
  )
})

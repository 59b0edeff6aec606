import { expect, test } from 'vitest'
import answer from '../../src/calculators/find-change/answer.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { lastAlone } from '../../src/machine/away.ts'
import type { Answer, Question } from '../../src/machine/away.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import { METRIC } from '../../src/units/choice.ts'
import { bikes } from './bikes.ts'

const findChange = loadCalculator('find-change')
const question = (number: number, rider: number): Question => ({
  number,
  given: { ...defaultsOf(findChange), rider },
  held: null,
  bikes,
  choice: METRIC,
})

test('an answer from beside the page is plain data, and what the calculator computes', () => {
  const { number, evaluation } = answer(question(3, 100))
  expect(number).toBe(3)
  const { now } = evaluate(findChange, { rider: 100 }, { bikes })
  expect(structuredClone(evaluation).now).toEqual({ ...now!, remarks: [] })
})

test('lastAlone answers the last of the questions that wait, and the next when it comes', () => {
  const [told, calls]: [number[], (() => void)[]] = [[], []]
  const answerer = ({ number }: Question): Answer => ({ number }) as Answer
  const ask = lastAlone(
    answerer,
    ({ number }) => told.push(number),
    (call) => calls.push(call),
  )
  for (const number of [1, 2, 3]) ask(question(number, 80))
  expect(calls).toHaveLength(1)
  calls.shift()!()
  expect(told).toEqual([3])
  ask(question(4, 80))
  calls.shift()!()
  expect(told).toEqual([3, 4])
})

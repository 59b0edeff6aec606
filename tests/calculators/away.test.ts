import { expect, test } from 'vitest'
import answer from '../../src/calculators/find-change/answer.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { answererOf, lastAlone } from '../../src/machine/away.ts'
import type { Answer, Question } from '../../src/machine/away.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import type { Given } from '../../src/machine/given.ts'
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

/** All that is told of a question, one after the other. */
const answersTo = (asked: Question): Answer[] =>
  [...answer(asked)].filter((told): told is Answer => told !== null)

test('the last answer from beside the page is plain data, and what the calculator computes', () => {
  const states: Given[] = [{ rider: 100 }, { rider: 100, allowed: 'parts' }, { frontRiderHigh: 5 }]
  for (const given of states) {
    const told = answersTo({ ...question(3, 100), given: { ...defaultsOf(findChange), ...given } })
    expect(told.every(({ number }) => number === 3)).toBe(true)
    expect(told.slice(0, -1).every(({ more }) => more)).toBe(true)
    const { evaluation, more } = told.at(-1)!
    expect(more).toBeUndefined()
    const { now, problems } = evaluate(findChange, given, { bikes })
    expect(evaluation.problems).toEqual(problems)
    expect(structuredClone(evaluation).now).toEqual(now && { ...now, remarks: [] })
  }
})

test('an answer is asked for again until all is done, and only what is new is told', () => {
  const came = ['nothing', 'some', 'nothing', 'all'] as const
  let calls = 0
  const parts = { begin: () => undefined, allow: () => undefined, cameTo: () => came[calls++]! }
  const told = [...answererOf(findChange, parts)(question(5, 90))]
  expect(told.map((one) => one && [one.number, one.more])).toEqual([
    null,
    [5, true],
    null,
    [5, undefined],
  ])
})

/** Answers that come to each question, told in steps. */
const inSteps =
  (count: number) =>
  ({ number }: Question): Answer[] =>
    Array.from({ length: count }, (_, step) => ({
      number,
      evaluation: { step } as unknown as Answer['evaluation'],
      ...(step < count - 1 ? { more: true } : {}),
    }))

function asker(count: number) {
  const [told, calls]: [number[], (() => void)[]] = [[], []]
  const ask = lastAlone(
    inSteps(count),
    ({ number }) => told.push(number),
    (call) => calls.push(call),
  )
  return { told, calls, ask: (number: number) => ask(question(number, 80)) }
}

test('lastAlone answers the last of the questions that wait, and the next when it comes', () => {
  const { told, calls, ask } = asker(1)
  for (const number of [1, 2, 3]) ask(number)
  expect(calls).toHaveLength(1)
  calls.shift()!()
  expect(told).toEqual([3])
  expect(calls).toEqual([])
  ask(4)
  calls.shift()!()
  expect(told).toEqual([3, 4])
})

test('lastAlone drops the work on a question as soon as the next one comes', () => {
  const { told, calls, ask } = asker(3)
  ask(1)
  calls.shift()!()
  calls.shift()!()
  expect(told).toEqual([1, 1])
  ask(2)
  // the call that waits goes on with the new question, and no other is left
  expect(calls).toHaveLength(1)
  while (calls.length > 0) calls.shift()!()
  expect(told).toEqual([1, 1, 2, 2, 2])
})

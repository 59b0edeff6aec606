import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { differences, readKept, tell } from './kept.ts'

/* Sees a change of any result. Where it is meant, `npm run keep-outputs` prints all that changed and renews the record; the laws and the published values say whether it is right. */

const kept = readKept()

test('a record is kept of every calculator, and of no other', () => {
  expect(Object.keys(kept).sort()).toEqual([...calculatorIds].sort())
})

describe.each(calculatorIds.map((id) => [id] as const))('%s', (id) => {
  test('evaluate(…) gives the results of the record, or the change is meant: npm run keep-outputs', () => {
    const found = differences(loadCalculator(id), kept[id] ?? [])
    expect(found.map(tell).join('\n')).toBe('')
  })

  test('its record holds every output, and more than one value of most', () => {
    const { outputs } = loadCalculator(id)
    const values = (name: string): unknown[] => (kept[id] ?? []).map((one) => one.outputs[name])
    for (const name of Object.keys(outputs)) expect(values(name), name).not.toContain(undefined)
    const varied = Object.keys(outputs).filter(
      (name) => new Set(values(name).map((value) => JSON.stringify(value))).size > 1,
    )
    expect(2 * varied.length).toBeGreaterThan(Object.keys(outputs).length)
  })
})

import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { everyStop, faultOf, randomStates } from './stops.ts'

const definitions = calculatorIds.map(loadCalculator)

/** So many random states; fewer where a state takes a millisecond or more: a ride is integrated, or up to 257 whole bikes. */
const STATES: Readonly<Record<string, number>> = {
  damping: 300,
  stance: 1000,
  'find-change': 1000,
}

describe.each(definitions.map((definition) => [definition.id, definition] as const))(
  '%s',
  (id, definition) => {
    test('gives results, or a refusal worded for one of its fields, at every stop of every slider, and under every choice', () => {
      let states = 0
      for (const given of everyStop(definition)) {
        states++
        const fault = faultOf(definition, given)
        if (fault !== null) expect.fail(`${fault}: ${JSON.stringify(given)}`)
      }
      expect(states).toBeGreaterThan(20)
    })

    test('gives results, or a refusal worded for one of its fields, at random states on the stops', () => {
      for (const given of randomStates(definition, STATES[id] ?? 2500, 20260)) {
        const fault = faultOf(definition, given)
        if (fault !== null) expect.fail(`${fault}: ${JSON.stringify(given)}`)
      }
    })
  },
)

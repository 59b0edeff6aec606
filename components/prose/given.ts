import type { Definition, Given } from '../../src/calculators/define.ts'
import { checkValue } from '../../src/calculators/fields.ts'

/** What is wrong with values that a page gives a calculator: unknown inputs and values that the fields would refuse. */
export function givenProblems(definition: Definition, given: Given, bikes: Readonly<Record<string, unknown>>): string[] {
  return Object.entries(given).flatMap(([id, value]) => {
    const input = definition.inputs[id]
    if (input === undefined) return [`${definition.id} has no input “${id}”`]
    const reading = checkValue(input, value, Object.keys(bikes))
    return 'problem' in reading ? [reading.problem] : []
  })
}

import type { WholeCalculator } from '../../machine/calculator.ts'
import type { Given } from '../../machine/given.ts'
import { checkValue } from '../../machine/fields.ts'

/** What is wrong with values that a page gives a calculator: unknown inputs and values that the fields would refuse. */
export function givenProblems(
  definition: WholeCalculator,
  given: Given,
  bikes: Readonly<Record<string, unknown>>,
): string[] {
  return Object.entries(given).flatMap(([id, value]) => {
    const input = definition.inputs[id]
    if (input === undefined) return [`${definition.id} has no input “${id}”`]
    const reading = checkValue(input, value, Object.keys(bikes))
    return 'problem' in reading ? [reading.problem] : []
  })
}

import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import type { Output } from '../../src/machine/statement.ts'
import { bikes } from './bikes.ts'
import { randomStates } from './stops.ts'

/* Code compares codes and never the words shown for them: with every verdict in other words the numbers, the codes and the choice of remarks stay. */

const nonsense = (options: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.keys(options).map((code, place) => [code, `zib ${place} qux`]))

function reworded<O extends Output>(output: O): O {
  if ('options' in output) return { ...output, options: nonsense(output.options) }
  if (output.kind !== 'table') return output
  const columns = output.columns.map((column) =>
    'options' in column ? { ...column, options: nonsense(column.options) } : column,
  )
  return { ...output, columns }
}

const inOtherWords = (definition: WholeCalculator): WholeCalculator => ({
  ...definition,
  outputs: Object.fromEntries(
    Object.entries(definition.outputs).map(([id, output]) => [id, reworded(output)]),
  ),
})

/** Enough to reach most remarks; a state of the search takes longer. */
const STATES = 60

describe.each(calculatorIds.map((id) => [id] as const))('%s', (id) => {
  test('evaluate(…) gives the same numbers, codes and kinds of remark whatever its verdicts are called', () => {
    const definition = loadCalculator(id)
    const other = inOtherWords(definition)
    for (const given of randomStates(definition, STATES, 77)) {
      const [was, is] = [definition, other].map((one) => evaluate(one, given, { bikes }))
      expect(is!.problems).toEqual(was!.problems)
      expect(is!.now?.output).toEqual(was!.now?.output)
      expect(is!.now?.verdicts).toEqual(was!.now?.verdicts)
      expect(is!.now?.remarks.map(({ kind }) => kind)).toEqual(
        was!.now?.remarks.map(({ kind }) => kind),
      )
    }
  })
})

import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import type { Given } from '../../src/machine/given.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import type { Output, TableOutputColumn } from '../../src/machine/statement.ts'
import { bikes } from './bikes.ts'
import { readKept } from './kept.ts'
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

const wordsIn = (output: Output | TableOutputColumn): string[] =>
  'options' in output ? Object.values(output.options) : []

/** The words of every verdict of a calculator. */
const wordsOf = ({ outputs }: WholeCalculator): string[] =>
  Object.values(outputs).flatMap((output) =>
    output.kind === 'table' ? output.columns.flatMap(wordsIn) : wordsIn(output),
  )

/** Finds any of these words, the longest first. */
function anyOf(words: readonly string[]): RegExp {
  const escaped = [...words]
    .sort((one, other) => other.length - one.length)
    .map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'))
  return new RegExp(escaped.join('|') || '(?!)', 'gi')
}

/** A state of the search takes long, so that the record's have to do. */
const SLOW = 'find-change'

/** States that give results: those of the record, and random ones. */
function* states(definition: WholeCalculator): Generator<Given> {
  for (const { given } of readKept()[definition.id] ?? []) yield given
  if (definition.id === SLOW) return
  let left = STATES
  for (const given of randomStates(definition, 100 * STATES, 77)) {
    if (left === 0) return
    if (evaluate(definition, given, { bikes }).now === null) continue
    left--
    yield given
  }
}

/** With the record’s, enough to reach most remarks. */
const STATES = 8

describe.each(calculatorIds.map((id) => [id] as const))('%s', (id) => {
  test('evaluate(…) gives the same numbers, codes and remarks, but for the words themselves, whatever its verdicts are called', () => {
    const definition = loadCalculator(id)
    const other = inOtherWords(definition)
    const words = anyOf([...wordsOf(definition), ...wordsOf(other)])
    for (const given of states(definition)) {
      const [was, is] = [definition, other].map((one) => evaluate(one, given, { bikes }))
      expect(is!.problems).toEqual(was!.problems)
      expect(is!.now?.output).toEqual(was!.now?.output)
      expect(is!.now?.verdicts).toEqual(was!.now?.verdicts)
      const [before, now] = [was, is].map((one) =>
        one!.now?.remarks.map(({ kind, text }) => `${kind}: ${text.replaceAll(words, '…')}`),
      )
      expect(now).toEqual(before)
    }
  })
})

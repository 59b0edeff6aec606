import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { RESTATED } from './restated/index.ts'
import { missedCodes, unknownStates, wrongVerdicts } from './restated/compare.ts'
import { mayBeUnknown } from './restated/draws.ts'
import type { Wrong } from './restated/compare.ts'

/* Every verdict against what the inputs and the numbers of its card say in plain arithmetic. `npm run verdicts` tries 20,000 states. */

const tell = ({ output, is, must, given }: Wrong): string =>
  `${output}: “${is}” must be “${must}” at ${JSON.stringify(given)}`

/** A search for a change takes a tenth of a second, a choice among rates a hundredth. */
const FEW: Readonly<Record<string, number>> = { 'find-change': 3, 'choose-rate': 12, stance: 20 }

test('every verdict and list of codes of every calculator is said a second time', () => {
  const all = calculatorIds.flatMap((id) =>
    Object.entries(loadCalculator(id).outputs).flatMap(([output, described]) => {
      if (described.kind === 'choice') return [`${id} ${output}`]
      const columns = described.kind === 'table' ? described.columns : []
      return columns.flatMap(({ kind }, column) =>
        kind === 'choice' || kind === 'list' ? [`${id} ${output} ${column}`] : [],
      )
    }),
  )
  const said = RESTATED.flatMap(({ calculator, rules }) =>
    rules.map(({ output, column }) => [calculator, output, column].join(' ').trim()),
  )
  expect(said.sort()).toEqual(all.sort())
})

describe.each(RESTATED.map((each) => [each.calculator, each] as const))('%s', (id, restated) => {
  const definition = loadCalculator(id)

  test('its verdicts are what inputs and numbers say', () => {
    const wrong = wrongVerdicts(definition, restated, FEW[id] ?? 60, 71)
    expect(wrong.map(tell)).toEqual([])
  })

  test.runIf(mayBeUnknown(definition))(
    'with something unknown it lists every verdict that a state between has',
    () => {
      const states = [...unknownStates(definition, FEW[id] ? 2 : 6, 72)]
      const missed = states.flatMap((given) =>
        missedCodes(definition, restated.rules, given, 20, 73),
      )
      expect(missed.map(tell)).toEqual([])
    },
  )
})

import { expect, test } from 'vitest'
import type { Given } from '../../src/machine/given.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { RESTATED } from './restated/index.ts'
import { missedCodes, unknownStates, wrongAt, wrongVerdicts } from './restated/compare.ts'
import { mayBeUnknown, wholeState } from './restated/draws.ts'
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

/** States at which two numbers are one, and rounding must not say otherwise. */
const EQUAL: readonly (readonly [string, Given])[] = [
  // 35 mm of 140 mm against a window from 25 %
  ['sag', { travel: 140, readingPlusMinus: 0 }],
  // 18 mm against a band of 18 mm
  [
    'marks',
    {
      beforeLeft: 330,
      beforeRight: 400,
      afterLeft: 395.5,
      afterRight: 370.5,
      settled: 'different',
      frictionBand: 18,
      readingPlusMinus: 0,
    },
  ],
  // the spring just fills its room with the adjuster out
  ['fork-stack', { spacerLength: 95, capReach: 46 }],
  // 594 N squeeze it by 33 mm: 25 mm of preload and the 8 mm of the top-out spring
  ['preload-versus-rate', { preload: 25, load: 594, topOut: 'fitted', topOutRate: 9 }],
]

test.each(EQUAL)('%s takes equal numbers as equal', (id, given) => {
  const definition = loadCalculator(id)
  const { rules } = RESTATED.find(({ calculator }) => calculator === id)!
  const whole = wholeState(definition, given)
  expect(rules.flatMap((rule) => wrongAt(definition, rule, whole)).map(tell)).toEqual([])
})

test.each(RESTATED.map((each) => [each.calculator, each] as const))(
  '%s: its verdicts are what inputs and numbers say',
  (id, restated) => {
    const wrong = wrongVerdicts(loadCalculator(id), restated, FEW[id] ?? 45, 71)
    expect(wrong.map(tell)).toEqual([])
  },
)

test.each(
  RESTATED.filter(({ calculator }) => mayBeUnknown(loadCalculator(calculator))).map(
    (each) => [each.calculator, each] as const,
  ),
)('%s: with something unknown it lists every verdict that a state between has', (id, { rules }) => {
  const definition = loadCalculator(id)
  const states = [...unknownStates(definition, FEW[id] ? 2 : 6, 72)]
  const missed = states.flatMap((given) => missedCodes(definition, rules, given, 20, 73))
  expect(missed.map(tell)).toEqual([])
})

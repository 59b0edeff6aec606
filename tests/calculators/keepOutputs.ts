/**
 * Renews the record of results that `outputs.test.ts` compares with, and prints what changed: `npm run keep-outputs`. The states stay as they are; a calculator
 * without any, and a state that gives no results any more, get new ones.
 */
import { existsSync, writeFileSync } from 'node:fs'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import { differences, drawStates, KEPT, outputsAt, readKept, tell } from './kept.ts'
import type { Kept, KeptState } from './kept.ts'

const before: Kept = existsSync(KEPT) ? readKept() : {}

function tellChanges(definition: WholeCalculator, kept: readonly KeptState[]): void {
  const found = differences(definition, kept)
  for (const output of new Set(found.map((one) => one.output))) {
    const all = found.filter((one) => one.output === output)
    console.log(`${definition.id}, ${all.length} of ${kept.length} states, as ${tell(all[0]!)}`)
  }
}

function renewed(definition: WholeCalculator): KeptState[] {
  const kept = before[definition.id] ?? []
  tellChanges(definition, kept)
  const states = kept.map(({ given }) => given)
  const usable = states.filter((given) => outputsAt(definition, given) !== null)
  if (states.length === 0) console.log(`${definition.id}: new, with states of its own`)
  else if (usable.length < states.length)
    console.log(
      `${definition.id}: ${states.length - usable.length} states give no results any more, all drawn anew`,
    )
  const whole = usable.length > 0 && usable.length === states.length
  return (whole ? states : drawStates(definition)).map((given) => ({
    given,
    outputs: outputsAt(definition, given)!,
  }))
}

const lines = calculatorIds.map((id) => {
  const states = renewed(loadCalculator(id)).map((state) => `    ${JSON.stringify(state)}`)
  return `  ${JSON.stringify(id)}: [\n${states.join(',\n')}\n  ]`
})
writeFileSync(KEPT, `{\n${lines.join(',\n')}\n}\n`)

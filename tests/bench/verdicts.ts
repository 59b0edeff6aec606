/**
 * Every verdict of every calculator against its second saying, at 20,000 random states in all, half of them beside a change of a verdict; and, with inputs that are
 * not known, against 300 states between: `npm run verdicts`, or with the ids of calculators.
 */
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { missedCodes, unknownStates, wrongVerdicts } from '../calculators/restated/compare.ts'
import type { Wrong } from '../calculators/restated/compare.ts'
import { mayBeUnknown } from '../calculators/restated/draws.ts'
import { RESTATED } from '../calculators/restated/index.ts'

const SEED = 4711

/** A search takes a tenth of a second, a choice among rates a hundredth; what these leave goes to the others. */
const STATES: Readonly<Record<string, number>> = { 'find-change': 60, 'choose-rate': 740 }
const OTHERS = Math.ceil((20_000 - 800) / (RESTATED.length - 2))

/** States with something unknown, and states tried within each. */
const UNKNOWN: Readonly<Record<string, number>> = { 'choose-rate': 15, stance: 40 }
const WITHIN = 300

const only = process.argv.slice(2)
let wrongs = 0

function tell(what: string, found: readonly Wrong[]): void {
  wrongs += found.length
  console.log(`  ${what}: ${found.length} wrong`)
  for (const { output, is, must, given } of found.slice(0, 5))
    console.log(`      ${output}: “${is}” must be “${must}” at ${JSON.stringify(given)}`)
}

for (const restated of RESTATED) {
  const { calculator: id, rules } = restated
  if (only.length > 0 && !only.includes(id)) continue
  const definition = loadCalculator(id)
  console.log(id)
  const count = STATES[id] ?? OTHERS
  tell(`${count} states`, wrongVerdicts(definition, restated, count, SEED))
  if (!mayBeUnknown(definition)) continue
  const states = [...unknownStates(definition, UNKNOWN[id] ?? 200, SEED)]
  const missed = states.flatMap((given) => missedCodes(definition, rules, given, WITHIN, SEED))
  tell(`${states.length} states with something unknown`, missed)
}
const without = calculatorIds.length - RESTATED.length
console.log(`${without} calculators have no verdict. ${wrongs} wrong in all`)
process.exitCode = wrongs === 0 ? 0 : 1

import type { WholeCalculator } from '../../../src/machine/calculator.ts'
import { codesOf } from '../../../src/machine/cells.ts'
import type { Given } from '../../../src/machine/given.ts'
import { UNKNOWN } from '../../../src/machine/given.ts'
import { unknownOf } from '../../../src/machine/possible.ts'
import type { QuantityInput } from '../../../src/machine/statement.ts'
import { stream } from '../../core/bikes.ts'
import { atThreshold, plausible, resultsAt, wholeState } from './draws.ts'
import { stateOf, verdictCells } from './state.ts'
import type { Restated, Rule } from './state.ts'

/** A verdict that is not as it must be. */
export interface Wrong {
  output: string
  is: string
  must: string
  given: Given
}

const told = (codes: readonly (string | null)[]): string =>
  codes.map((code) => code ?? '').join(', ')

/** What must stand where the card has more words than the numbers tell apart. */
const fits = (is: string, must: string): boolean => must.split(' or ').includes(is)

/** A rule's verdict at one state, where it is not as it must be. */
export function wrongAt(definition: WholeCalculator, rule: Rule, given: Given): Wrong[] {
  const results = resultsAt(definition, given)
  if (results === null) return []
  const must = rule.must(stateOf(definition, given, results))
  const wanted = typeof must === 'string' || must === null ? [must] : must
  const found = verdictCells(rule, results).map((cell) => codesOf(cell).join(' or '))
  const right =
    found.length === wanted.length &&
    found.every((is, place) => is === (wanted[place] ?? '') || fits(is, wanted[place] ?? ''))
  return right ? [] : [{ output: rule.output, is: told(found), must: told(wanted), given }]
}

/** Random states of a calculator that give results and have nothing unknown, every second pair of them beside a change of a verdict. */
export function* knownStates(
  definition: WholeCalculator,
  { rules }: Restated,
  count: number,
  seed: number,
): Generator<Given> {
  const next = stream(seed + 1)
  let left = count
  for (const drawn of plausible(definition, seed)) {
    const given = wholeState(definition, drawn)
    if (Object.values(given).includes(UNKNOWN) || resultsAt(definition, given) === null) continue
    for (const state of [given, ...atThreshold(definition, rules, given, next)]) {
      yield state
      if (--left === 0) return
    }
  }
}

/** The verdicts of so many states that are not as they must be. */
export function wrongVerdicts(
  definition: WholeCalculator,
  restated: Restated,
  count: number,
  seed: number,
): Wrong[] {
  return [...knownStates(definition, restated, count, seed)].flatMap((given) =>
    restated.rules.flatMap((rule) => wrongAt(definition, rule, given)),
  )
}

/** A value between the ends of what stands in for an unknown, every eighth at an end. */
function possible(id: string, input: QuantityInput, next: () => number): number {
  const { low, high } = unknownOf(id, input)
  const part = next()
  return low + (high - low) * (part < 1 / 16 ? 0 : part > 15 / 16 ? 1 : next())
}

/** Codes that states within what is not known have, and that the card does not list; or, for a verdict of the range, one that is not of it. */
export function missedCodes(
  definition: WholeCalculator,
  rules: readonly Rule[],
  given: Given,
  samples: number,
  seed: number,
): Wrong[] {
  const next = stream(seed)
  const whole = resultsAt(definition, given)
  if (whole === null) return []
  const ids = Object.keys(given).filter((id) => given[id] === UNKNOWN)
  const found = rules
    .filter(({ ofRange }) => ofRange)
    .flatMap((rule) => wrongAt(definition, rule, given))
  for (let sample = 0; sample < samples; sample++) {
    const at = Object.fromEntries(
      ids.map((id) => [id, possible(id, definition.inputs[id] as QuantityInput, next)]),
    )
    const results = resultsAt(definition, { ...given, ...at })
    if (results === null) continue
    for (const rule of rules.filter(({ ofRange }) => !ofRange)) {
      const listed = verdictCells(rule, whole).map(codesOf)
      const here = verdictCells(rule, results).flatMap((cell, place) =>
        codesOf(cell).filter((code) => !listed[place]?.includes(code)),
      )
      if (here.length > 0)
        found.push({
          output: rule.output,
          is: listed.map((codes) => codes.join(' or ')).join(', '),
          must: `also ${here.join(', ')}, at ${JSON.stringify(at)}`,
          given,
        })
    }
    if (found.length > 0) return found
  }
  return found
}

/** Random states of a calculator with one to all of what may be unknown not known. */
export function* unknownStates(
  definition: WholeCalculator,
  count: number,
  seed: number,
): Generator<Given> {
  const next = stream(seed + 2)
  let left = count
  for (const drawn of plausible(definition, seed + 3)) {
    const given = wholeState(definition, drawn)
    const share = next()
    const unknown = Object.keys(given).filter((id) => {
      const input = definition.inputs[id]!
      return input.kind === 'quantity' && input.typical !== undefined && next() < share
    })
    const state = wholeState(definition, {
      ...given,
      ...Object.fromEntries(unknown.map((id) => [id, UNKNOWN])),
    })
    if (!Object.values(state).includes(UNKNOWN) || resultsAt(definition, state) === null) continue
    yield state
    if (--left === 0) return
  }
}

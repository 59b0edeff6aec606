import type { WholeCalculator } from '../../../src/machine/calculator.ts'
import type { Results } from '../../../src/machine/cells.ts'
import { codesOf } from '../../../src/machine/cells.ts'
import type { Given } from '../../../src/machine/given.ts'
import { defaultsOf, evaluate, isAsked } from '../../../src/machine/evaluate.ts'
import { stream } from '../../core/bikes.ts'
import { bikes } from '../bikes.ts'
import { randomStates } from '../stops.ts'
import { verdictCells } from './state.ts'
import type { Rule } from './state.ts'

/** The results of a state without its remarks; null where it is refused. */
export function resultsAt(definition: WholeCalculator, given: Given): Results | null {
  const { now } = evaluate(
    { ...definition, remarks: () => [], baseline: () => given },
    given,
    { bikes },
    null,
  )
  return now?.output ?? null
}

/** A state's values, what is not asked for as it is usually. */
export function wholeState(definition: WholeCalculator, given: Given): Given {
  const state = { ...defaultsOf(definition), ...given }
  return Object.fromEntries(
    Object.entries(definition.inputs).flatMap(([id, input]) => {
      const value = isAsked(input, state) ? state[id] : input.default
      return value === undefined ? [] : [[id, value]]
    }),
  )
}

/** All codes of some rules in one text. */
export const codesAt = (rules: readonly Rule[], results: Results): string =>
  JSON.stringify(rules.map((rule) => verdictCells(rule, results).map((cell) => codesOf(cell))))

/** Like a workshop's: as the card opens but for one to five values; or, one time in three, every value drawn. */
export function* plausible(definition: WholeCalculator, seed: number): Generator<Given> {
  const next = stream(seed)
  for (const drawn of randomStates(definition, Infinity, seed)) {
    const whole = next() < 1 / 3
    const ids = Object.keys(drawn).sort(() => next() - 0.5)
    const kept = whole ? ids : ids.slice(0, 1 + Math.floor(5 * next()))
    yield Object.fromEntries(kept.map((id) => [id, drawn[id]])) as Given
  }
}

/** Two neighbouring stops of a slider between which a verdict changes, found from a state; none where it does not change. */
export function atThreshold(
  definition: WholeCalculator,
  rules: readonly Rule[],
  given: Given,
  next: () => number,
): Given[] {
  const sliders = Object.entries(definition.inputs).filter(
    ([id, input]) =>
      input.kind === 'quantity' && typeof given[id] === 'number' && isAsked(input, given),
  )
  const [id, input] = sliders[Math.floor(next() * sliders.length)] ?? []
  if (id === undefined || input?.kind !== 'quantity') return []
  const [low, high] = input.range
  const most = Math.floor((high - low) / input.step + 1e-6)
  const at = (stop: number): Given => ({
    ...given,
    [id]: Number((low + stop * input.step).toPrecision(12)),
  })
  const codes = (stop: number): string | null => {
    const results = resultsAt(definition, at(stop))
    return results && codesAt(rules, results)
  }
  let from = Math.round(((given[id] as number) - low) / input.step)
  let to = next() < 0.5 ? 0 : most
  const here = codes(from)
  if (codes(to) === here) return []
  while (Math.abs(to - from) > 1) {
    const half = Math.round((from + to) / 2)
    if (codes(half) === here) from = half
    else to = half
  }
  return [at(from), at(to)]
}

/** Whether a calculator has an input that may be not known. */
export const mayBeUnknown = ({ inputs }: WholeCalculator): boolean =>
  Object.values(inputs).some((input) => input.kind === 'quantity' && input.typical !== undefined)

import type { Calculator } from './calculator.ts'
import type { Given } from './given.ts'
import { InputRefusal } from './work.ts'
import { middle } from '../units/interval.ts'
import { cellOf } from './cells.ts'
import type { Results } from './cells.ts'
import { mergeResults, verdictsIn } from './merge.ts'
import { unknownOf } from './possible.ts'
import { inputOf, placed, unknownIn } from './state.ts'
import type { Context, Loose } from './state.ts'
import { toSI } from '../units/units.ts'

/** A state over all that is not known: its input and picture in the middle, and the results of every possible state. */
export interface Solved {
  input: Loose
  inputSpread: Loose
  all: readonly Results[]
  output: Results
  verdicts: Readonly<Record<string, readonly string[]>>
  picture: unknown
}

/** The first lead result of a state that is a number; 0 where there is none. */
export function leadOf(definition: Calculator, given: Given, context: Context): number {
  const output = definition.solve(inputOf(definition, given, context)).outputs
  const leads = Object.entries(definition.outputs).filter(
    ([, described]) => described.kind !== 'table' && described.lead === true,
  )
  return leads.map(([id]) => middle(output[id])).find((value) => value !== null) ?? 0
}

function inputSpreadOf(definition: Calculator, input: Loose, unknown: readonly string[]): Loose {
  const ranges = unknown.flatMap((id) => {
    const described = definition.inputs[id]
    if (described?.kind !== 'quantity') return []
    const { low, high } = unknownOf(id, described)
    return [[id, { low: toSI(low, described.unit), high: toSI(high, described.unit) }] as const]
  })
  return { ...input, ...Object.fromEntries(ranges) }
}

export function solve(
  definition: Calculator,
  given: Given,
  states: readonly Given[],
  context: Context,
): Solved {
  const own = unknownIn(definition, given)
  const inputs = states.map((at) => inputOf(definition, placed(given, at), context))
  const solutions = inputs.map((input) => definition.solve(input))
  const all = solutions.map(({ outputs }) => outputs)
  const picture = solutions[0]!.picture()
  const input = inputs[0]!
  const known = { input, inputSpread: inputSpreadOf(definition, input, own), all, picture }
  if (own.length === 0) return { ...known, output: all[0]!, verdicts: verdictsIn(all) }
  const merged = mergeResults(all)
  const judged = definition.judge?.(input, merged, known.inputSpread) ?? {}
  const cells = Object.fromEntries(Object.entries(judged).map(([id, codes]) => [id, cellOf(codes)]))
  return { ...known, output: { ...merged, ...cells }, verdicts: { ...verdictsIn(all), ...judged } }
}

const recent = new WeakMap<
  Calculator,
  { key: string; bikes: Context['bikes']; solved: Solved | null }
>()

/** The state before, which stays the same while a slider moves the one now: its last result is kept. None where it cannot be computed. */
export function solveBefore(
  definition: Calculator,
  given: Given,
  states: readonly Given[],
  context: Context,
): Solved | null {
  const key = JSON.stringify([given, states])
  const last = recent.get(definition)
  if (last?.key === key && last.bikes === context.bikes) return last.solved
  const solved = attemptBefore(definition, given, states, context)
  recent.set(definition, { key, bikes: context.bikes, solved })
  return solved
}

function attemptBefore(
  definition: Calculator,
  given: Given,
  states: readonly Given[],
  context: Context,
): Solved | null {
  try {
    return solve(definition, given, states, context)
  } catch (error) {
    if (error instanceof InputRefusal) return null
    throw error
  }
}

import type { Calculator } from '../../src/machine/calculator.ts'
import { defaultsOf, isAsked } from '../../src/machine/evaluate.ts'
import type { Given } from '../../src/machine/given.ts'
import type { Exercise } from '../../src/machine/question.ts'
import type { Shown } from './asked.ts'

/** The one input that moves: what differs from the state before, else what questions draw, else the first number. */
export function sliderOf(
  calculator: Calculator,
  { given, held, draws = [] }: Shown,
  exercises: readonly Exercise[],
): string | null {
  const state: Given = { ...defaultsOf(calculator), ...given }
  const moves = (id: string): boolean => {
    const input = calculator.inputs[id]
    return input?.kind === 'quantity' && typeof state[id] === 'number' && isAsked(input, state)
  }
  const before: Given = held === null ? {} : { ...defaultsOf(calculator), ...held }
  const changed = Object.keys(before).filter((id) => before[id] !== state[id])
  const drawn = exercises.flatMap(({ draw }) => Object.keys(draw))
  return [...changed, ...draws, ...drawn, ...Object.keys(calculator.inputs)].find(moves) ?? null
}

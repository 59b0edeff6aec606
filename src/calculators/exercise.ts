import type { Given, InputValues, OutputValues } from './define.ts'
import type { Definition, Input, Output } from './define.ts'

/** A question that a worksheet can ask about a calculator, with numbers drawn anew for each sheet. */
export interface Exercise<I extends Record<string, Input> = Record<string, Input>, O extends Record<string, Output> = Record<string, Output>> {
  id: string
  /** values to draw from, by input id, in the definition's unit; inputs not named keep `fixed` or the default */
  draw: Partial<Record<keyof I & string, readonly (number | string)[]>>
  fixed?: Given
  /** the question in plain words; `given` holds the drawn values in the definition's unit */
  question(given: Given): string
  /** id of the output that is asked for */
  asks: keyof O & string
  /** wrong answers [SI], each from a wrong idea named in the reader's words */
  wrong: readonly { idea: string; answer(input: InputValues<I>, output: OutputValues<O>): number }[]
  /** why the right answer is right, in a sentence or two */
  because: string
}

/** Types a calculator's questions by its definition. */
export function exercisesFor<I extends Record<string, Input>, O extends Record<string, Output>, P>(
  _definition: Definition<I, O, P>,
  exercises: readonly Exercise<I, O>[],
): readonly Exercise<I, O>[] {
  return exercises
}

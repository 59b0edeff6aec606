import type { Unit } from '../units/units.ts'
import type { Given } from './given.ts'
import type { CardStatement } from './statement.ts'
import type { InputOf, OutputOf } from './values.ts'

/** Writes a value that is held in a calculator's unit for the class: in its own units, to the step of what it would be read with, and with the unit. */
export type Write = (value: unknown, unit: Unit) => string

/** 1: in the head or in a few lines; 2: with a pocket calculator; 3: to be judged, or worked with a calculator of this site. */
export type Level = 1 | 2 | 3

/** A question that a worksheet can ask about a calculator, with numbers drawn anew for each sheet. */
export interface Exercise<S extends CardStatement = CardStatement> {
  id: string
  level: Level
  /** its sum only comes out in metric units, so that a sheet in others leaves it out */
  metric?: true
  /** values to draw from, by input id, in the definition's unit; inputs not named keep `fixed` or the default */
  draw: Partial<Record<keyof S['inputs'] & string, readonly (number | string)[]>>
  fixed?: Given
  /** the question in plain words; `given` holds the drawn values in the definition's unit */
  question(given: Given, write: Write): string
  /** id of the output that is asked for */
  asks: keyof S['outputs'] & string
  /** wrong answers [SI], each from a wrong idea named in the reader's words */
  wrong: readonly { idea: string; answer(input: InputOf<S>, output: OutputOf<S>): number }[]
  /** why the right answer is right, in a sentence or two */
  because: string | ((write: Write) => string)
}

/** Types a calculator's questions by its statement. */
export const exercisesFor = <S extends CardStatement>(
  _statement: S,
  exercises: readonly Exercise<S>[],
): readonly Exercise<S>[] => exercises

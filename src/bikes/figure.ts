import type { Unit } from '../units/units.ts'

/** Where an output of a calculator is one of a bike's figures: while its inputs are as `when` says. */
export interface KeptFrom {
  /** "calculator.output" */
  output: string
  when?: Readonly<Record<string, string>>
}

/** One number of a bike: what it is called, in which unit it is written down, and where it is used. `range` and `typical` are in `unit`. */
export interface FigureDefinition {
  id: string
  label: string
  unit: Unit
  digits: number
  range: readonly [number, number]
  /** what an unknown one is taken to lie in; common practice, no published source */
  typical?: readonly [number, number]
  /** what knowing it would give, as the end of a sentence that begins with “Gives” */
  gives: string
  /** procedure that measures it */
  procedure?: string
  /** where an invented bike's sheet has it, as "fork.travel" */
  sheet?: string
  /** inputs that it feeds, as "calculator.input" */
  feeds: readonly string[]
  /** results that are this figure */
  keeps?: readonly KeptFrom[]
  /** readings that are this figure, as "reading" of whatever procedure takes it */
  reads?: readonly string[]
  /** never asked for: worked out from other figures */
  workedOut?: true
}

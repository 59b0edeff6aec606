import type { Quantity, Unit } from '../units/units.ts'
import type { Given } from './given.ts'

/** What every kind of input carries. */
interface InputBase {
  label: string
  /** one line under the field: what it is, or where to find it */
  hint?: string
  /** procedure that measures it */
  procedure?: string
  /** shown under "More" rather than at first; at most four controls show at first */
  more?: true
  /** asked only while another input (a choice) has this value, or one of these */
  when?: Readonly<Record<string, string | readonly string[]>>
}

/** A number with a unit. `range`, `step`, `default` and `typical` are in `unit`. */
export interface QuantityInput extends InputBase {
  kind: 'quantity'
  quantity: Quantity
  unit: Unit
  range: readonly [number, number]
  step: number
  /** absent only when optional */
  default?: number
  /** may be left empty; then `solve` gets undefined */
  optional?: true
  /** what stands for an empty optional field, in words ("the bike's own") */
  empty?: string
  /** the range used while a reader says "I don't know": results become intervals */
  typical?: readonly [number, number]
  /** where the typical range comes from */
  typicalFrom?: string
  /** what stands for "nobody has measured it": a reader's bike without the figure gets this, never the example's value */
  unmeasured?: number
  /** what one leg commonly has, for a rate that people also quote for the pair; twice as much is asked about */
  oneLeg?: readonly [number, number]
}

export interface ChoiceInput extends InputBase {
  kind: 'choice'
  /** value → label, in the order shown */
  options: Readonly<Record<string, string>>
  default: string
}

export interface TextInput extends InputBase {
  kind: 'text'
  default: string
  maxLength: number
  /** what is wrong with this text and how to put it right; undefined when it can be used. Set from `checks` of the calculator's work */
  check?: ((text: string) => string | undefined) | undefined
}

export interface TableColumn {
  id: string
  label: string
  quantity: Quantity
  unit: Unit
  range: readonly [number, number]
}

/** Rows of quantities. Cells are in the column's unit. */
export interface TableInput extends InputBase {
  kind: 'table'
  columns: readonly TableColumn[]
  rows: readonly [minimum: number, maximum: number]
  default: readonly (readonly number[])[]
}

/** An invented bike by id, or one of the reader's own. */
export interface BikeInput extends InputBase {
  kind: 'bike'
  default: string
}

export type Input = QuantityInput | ChoiceInput | TextInput | TableInput | BikeInput

/** A number among the results; `digits` are decimal places in `unit`. */
export interface QuantityOutput {
  kind?: 'quantity'
  label: string
  quantity: Quantity
  unit: Unit
  digits: number
  /** decimal places of a change of it, where a change is known better than the state itself; absent: as `digits` */
  changeDigits?: number
  /** the results told first, in bold */
  lead?: true
  /** shown with its sign, since it is a change */
  signed?: true
  /** a temperature difference and the like: converted without offset */
  difference?: true
  /** listed under "More results" */
  more?: true
}

/** A verdict: a code with a label, as an input's choice is. What is shown is never compared. */
export interface ChoiceOutput {
  kind: 'choice'
  label: string
  /** code → label */
  options: Readonly<Record<string, string>>
  lead?: true
  more?: true
}

/** Several verdicts at once, or none: a list of codes. */
export interface ListOutput {
  kind: 'list'
  label: string
  /** code → label */
  options: Readonly<Record<string, string>>
  /** shown where the list is empty */
  none: string
}

/** A column of results. */
export type TableOutputColumn = { id: string } & (QuantityOutput | ChoiceOutput | ListOutput)

export interface TableOutput {
  kind: 'table'
  label: string
  columns: readonly TableOutputColumn[]
  more?: true
}

export type Output = QuantityOutput | ChoiceOutput | TableOutput

/** Whether an output or column is a number. */
export const isNumber = (output: Output | TableOutputColumn): output is QuantityOutput =>
  output.kind === undefined || output.kind === 'quantity'

/** Questions under which the overview groups the calculators. */
export type Question =
  | 'Where did it stand?'
  | 'Which spring?'
  | 'Where does it sit?'
  | 'How does it steer?'
  | 'What happens on the brakes?'
  | 'Is the oil right?'
  | 'What does damping do?'

export type Inputs = Readonly<Record<string, Input>>
export type Outputs = Readonly<Record<string, Output>>

/** What a card shows of a calculator. A page carries it to the browser beside the same words in its markup, so that no script has to. */
export interface CardStatement<I extends Inputs = Inputs, O extends Outputs = Outputs> {
  id: string
  /** raised when a link of the version before would mean something else */
  version: number
  /** by earlier version: what its links meant by a value that they leave out, and what a reader has to be told of the difference */
  earlier?: Readonly<Record<number, { given: Given; told?: string }>>
  title: string
  /** a notice that stands above the calculator and cannot be closed */
  notice?: string
  inputs: I
  outputs: O
}

/** All that a calculator says of itself: plain data, no function. */
export interface Statement<
  I extends Inputs = Inputs,
  O extends Outputs = Outputs,
> extends CardStatement<I, O> {
  /** place in lists of calculators: 10, 20, …; in steps of ten, so that one fits between */
  order: number
  question: Question
  /** one sentence: the question it answers */
  answers: string
  /** what must hold for the numbers to be right */
  assumes: readonly string[]
  /** what the model leaves out, each with its size where known */
  leavesOut: readonly string[]
}

/** Keeps the literal types of a calculator's statement, from which the types of its values follow. */
export function defineStatement<const I extends Inputs, const O extends Outputs>(
  statement: Statement<I, O>,
): Statement<I, O> {
  return statement
}

/** The part of a statement that a page carries to the browser: nothing undefined. */
export function cardStatementOf({
  id,
  version,
  earlier,
  title,
  notice,
  inputs,
  outputs,
}: CardStatement): CardStatement {
  return JSON.parse(
    JSON.stringify({ id, version, earlier, title, notice, inputs, outputs }),
  ) as CardStatement
}

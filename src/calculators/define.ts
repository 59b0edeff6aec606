import type { BikeSpec } from './bikes.ts'
import type { Say } from './say.ts'
import type { Quantity, Unit } from './units.ts'

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
  /** may be left empty; then `compute` gets undefined */
  optional?: true
  /** what stands for an empty optional field, in words ("the bike's own") */
  empty?: string
  /** the range used while a reader says "I don't know": results become intervals */
  typical?: readonly [number, number]
  /** where the typical range comes from */
  typicalFrom?: string
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
  label: string
  quantity: Quantity
  unit: Unit
  digits: number
  /** the results told first, in bold */
  lead?: true
  /** shown with its sign, since it is a change */
  signed?: true
  /** a temperature difference and the like: converted without offset */
  difference?: true
  /** listed under "More results" */
  more?: true
}

export interface TextOutput {
  kind: 'text'
  label: string
  lead?: true
  more?: true
}

export interface TableOutput {
  kind: 'table'
  label: string
  columns: readonly ((QuantityOutput & { id: string }) | { kind: 'text'; id: string; label: string })[]
  more?: true
}

export type Output = QuantityOutput | TextOutput | TableOutput

/** A result known only within bounds [SI]; `value` is the middle estimate when there is one. */
export interface Interval {
  low: number
  high: number
  value?: number
}

export type Cell = number | string | Interval | null
export type OutputValue = Cell | readonly (readonly Cell[])[]

type ValueOfInput<T> = T extends { kind: 'quantity' }
  ? T extends { optional: true }
    ? number | undefined
    : number
  : T extends { kind: 'choice'; options: infer C }
    ? keyof C & string
    : T extends { kind: 'table' }
      ? readonly (readonly number[])[]
      : T extends { kind: 'bike' }
        ? BikeSpec
        : string

type ValueOfOutput<T> = T extends { kind: 'text' } ? string | null : T extends { kind: 'table' } ? readonly (readonly Cell[])[] : number | Interval | null

/** What `compute` receives: SI values by input id. */
export type InputValues<I> = { readonly [K in keyof I]: ValueOfInput<I[K]> }
/** What `compute` returns: SI values by output id; null where a value does not exist (a remark says why). */
export type OutputValues<O> = { readonly [K in keyof O]: ValueOfOutput<O[K]> }

/** A sentence about the result. `reading` says what the numbers mean, `next` what to do or measure, `limit` where they stop being true, `caution` names a hazard by id. */
export interface Remark {
  kind: 'reading' | 'next' | 'limit' | 'caution'
  text: string
  /** id of the caution whose text stands beside it (kind 'caution') */
  caution?: string
}

/** A hand-worked case of `<id>.checks.ts`, which the browser never loads. Values are in each definition's unit. */
export interface WorkedCheck {
  title: string
  given: Given
  expect: Readonly<Record<string, { value: number; tolerance: number }>>
  /** the working, with its source or "worked by hand" */
  working: string
}

/** Values by input id in the definition's unit: a number, a choice or text, rows of a table, or '?' for "I don't know". */
export type GivenValue = number | string | readonly (readonly number[])[]
export type Given = Readonly<Record<string, GivenValue>>

export interface RemarkContext<I, O> {
  input: InputValues<I>
  /** each result by its middle estimate, where it has one */
  output: OutputValues<O>
  /** the results as they are, an interval with its ends */
  spread: OutputValues<O>
  /** the state before the change, when one is held */
  before?: { input: InputValues<I>; output: OutputValues<O> }
  /** writes a quantity in the reader's unit */
  say: Say
}

/** Questions under which the overview groups the calculators. */
export type Question =
  | 'Where did it stand?'
  | 'Which spring?'
  | 'Where does it sit?'
  | 'How does it steer?'
  | 'What happens on the brakes?'
  | 'Is the oil right?'
  | 'What does damping do?'

type Inputs = Record<string, Input>
type Outputs = Record<string, Output>

/** What a card shows of a calculator, all plain data. A page carries it to the browser beside the same words in its markup, so that no script has to. */
export interface Statement<I extends Inputs = Inputs, O extends Outputs = Outputs> {
  id: string
  /** raised when a link of the version before would mean something else */
  version: number
  title: string
  /** a notice that stands above the calculator and cannot be closed */
  notice?: string
  inputs: I
  outputs: O
}

/** What a calculator does, exported by `<id>.work.ts`. The browser loads it with the page. */
export interface Work<I extends Inputs = Inputs, O extends Outputs = Outputs, P = unknown> {
  /** SI in, SI out */
  compute(input: InputValues<I>): OutputValues<O>
  /** values that make the "before" when the reader holds none: e.g. the change set to zero */
  baseline?(given: Given): Given
  /** what the figure draws beyond input and output: curves, poses; SI; computed here so that figures hold no physics */
  picture?(input: InputValues<I>, output: OutputValues<O>): P
  /** by input id, what is wrong with a text and how to put it right; undefined when it can be used */
  checks?: Readonly<Record<string, (text: string) => string | undefined>>
}

/** A calculator that can be run. `remarks`, from `<id>.remarks.ts`, reads the numbers; the browser loads it after the rest. */
export interface Calculator<I extends Inputs = Inputs, O extends Outputs = Outputs, P = unknown> extends Statement<I, O>, Work<I, O, P> {
  remarks?(context: RemarkContext<I, O>): readonly Remark[]
}

/** A whole calculator, with what stands around its card. */
export interface Definition<I extends Inputs = Inputs, O extends Outputs = Outputs, P = unknown> extends Calculator<I, O, P> {
  question: Question
  /** one sentence: the question it answers */
  answers: string
  /** what must hold for the numbers to be right */
  assumes: readonly string[]
  /** what the model leaves out, each with its size where known */
  leavesOut: readonly string[]
  remarks(context: RemarkContext<I, O>): readonly Remark[]
}

/** Thrown by `compute` when one input, sensible by itself, cannot go with the others. The text is shown at that field. */
export class InputRefusal extends RangeError {
  readonly input: string
  constructor(input: string, text: string) {
    super(text)
    this.name = 'InputRefusal'
    this.input = input
  }
}

/** A calculator: plain data and one function. It knows nothing of Preact, Astro, addresses or print. */
export function defineCalculator<const I extends Record<string, Input>, const O extends Record<string, Output>, P = undefined>(
  definition: Definition<I, O, P>,
): Definition<I, O, P> {
  return definition
}

type PartsOf<D> = D extends Definition<infer I, infer O, infer P> ? { input: InputValues<I>; output: OutputValues<O>; picture: P } : never

/** One computed state of a calculator, as a figure receives it. */
export type Snapshot<D> = PartsOf<D>

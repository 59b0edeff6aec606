import type { Results } from './cells.ts'
import type { Given } from './given.ts'
import type { CardStatement } from './statement.ts'
import type { InputOf, KnownInputOf, OutputOf, VerdictsOf } from './values.ts'

/** Inputs by id in SI, without their calculator's types. */
export type LooseInput = Readonly<Record<string, unknown>>

/** One state, solved. The picture (curves, poses; SI) is made only where it is drawn. */
export interface Solution<O, P> {
  outputs: O
  picture(): P
}

/** How a page reaches work that is done beside it: in a worker, or on its own thread where there is none. `here` gives an `Answerer`. */
export interface Away {
  worker(): Worker
  here(): Promise<{ default: (question: never) => unknown }>
}

/** What the machine knows of a calculator's work. */
export interface Work {
  /** SI in, SI out, bikes included */
  solve(input: LooseInput): Solution<Results, unknown>
  /** verdicts that hang on how wide a result is: by output id, every code that holds once inputs are not known and results are ranges; `known` has the ranges of the inputs */
  judge?(
    input: LooseInput,
    outputs: Results,
    known: LooseInput,
  ): Readonly<Record<string, readonly string[]>>
  /** values that make the "before" when the reader holds none: e.g. the change set to zero */
  baseline?(given: Given): Given
  /** set where `baseline` is a state of the example's, not the reader's own without the change: a card drops it once values are the reader's */
  exampleBaseline?: true
  /** by input id, what is wrong with a text and how to put it right; undefined when it can be used */
  textProblems?: Readonly<Record<string, (text: string) => string | undefined>>
  /** set in a browser where the work is done beside the page; `solve` is then never called */
  away?: Away
}

/** The same with the calculator's own types. */
interface TypedWork<S extends CardStatement, P> {
  solve(input: InputOf<S>): Solution<OutputOf<S>, P>
  judge?(input: InputOf<S>, outputs: OutputOf<S>, known: KnownInputOf<S>): Partial<VerdictsOf<S>>
  baseline?(given: Given): Given
  exampleBaseline?: true
  textProblems?: Work['textProblems']
}

/** What a calculator does. The machine checks every value against the statement before it calls. */
export const defineWork = <S extends CardStatement, P = unknown>(work: TypedWork<S, P>): Work =>
  work as Work

/** What a browser gets of a calculator that is worked out beside the page. */
export const defineAway = (away: Away): Work => ({
  solve() {
    throw new Error('is worked out beside the page')
  },
  away,
})

/** Thrown by `solve` when one input, sensible by itself, cannot go with the others. The text is shown at that field. */
export class InputRefusal extends RangeError {
  readonly input: string
  constructor(input: string, text: string) {
    super(text)
    this.name = 'InputRefusal'
    this.input = input
  }
}

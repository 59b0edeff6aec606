import type { CardStatement } from '../machine/statement.ts'
import type { InputOf, OutputOf } from '../machine/values.ts'
import type { Say } from '../units/say.ts'

/** One computed state of a calculator, as its figure receives it. */
export interface Drawn<S extends CardStatement, P = undefined> {
  input: InputOf<S>
  output: OutputOf<S>
  picture: P
}

/** What a figure receives: one computed state, the state before it when one is held, and the reader's units. */
export interface FigureProps<S extends CardStatement, P = undefined> {
  now: Drawn<S, P>
  before: Drawn<S, P> | null
  say: Say
  /** prefix for every id inside the SVG, so that two figures on a page don't share one */
  prefix: string
}

/** The same for the machine, which knows no calculator's types. */
export interface LooseFigureProps {
  now: LooseDrawn
  before: LooseDrawn | null
  say: Say
  prefix: string
}

interface LooseDrawn {
  input: unknown
  output: unknown
  picture: unknown
}

/** What a still picture receives besides its own values. */
export interface StillProps {
  say: Say
  prefix: string
}

import type { Say } from '../units/say.ts'
import type { CardStatement } from './statement.ts'
import type {
  ChangesOf,
  CodeOf,
  InputOf,
  KnownInputOf,
  OutputOf,
  ToldOutputOf,
  VerdictsOf,
} from './values.ts'

/** A sentence about the result. `reading` says what the numbers mean, `next` what to do or measure, `limit` where they stop being true, `caution` names a hazard by id. */
export interface Remark {
  kind: 'reading' | 'next' | 'limit' | 'caution'
  text: string
  /** the same said beside a reading in a procedure, where the card is not in sight */
  brief?: string
  /** id of the caution whose text stands beside it (kind 'caution') */
  caution?: string
}

/** One state as remarks read it. */
export interface ToldState<S extends CardStatement> {
  /** what is not known by the middle of its range: to tell states apart, never to be said */
  input: InputOf<S>
  inputSpread: KnownInputOf<S>
  /** each result by its estimate; what hangs on something that is not known as its range, which has no middle */
  output: ToldOutputOf<S>
  /** the results as they are, a measured one with its ± */
  spread: OutputOf<S>
  verdicts: VerdictsOf<S>
}

export interface RemarkContext<S extends CardStatement> extends ToldState<S> {
  /** the state before the change, when one is held */
  before?: ToldState<S>
  /** from that state to this */
  change: ChangesOf<S>
  /** the same as shares of what it was */
  changeShare: ChangesOf<S>
  /** writes a quantity in the reader's unit */
  say: Say
  /** the label of one code of a verdict; without a code, of what it is now, or of all that it may be */
  words<K extends keyof VerdictsOf<S> & string>(verdict: K, code?: CodeOf<S, K>): string
}

/** What the machine knows of a calculator's remarks. */
export type Remarks = (context: LooseContext) => readonly Remark[]

interface LooseState {
  input: unknown
  inputSpread: unknown
  output: unknown
  spread: unknown
  verdicts: unknown
}

/** A context without its calculator's types. */
export interface LooseContext extends LooseState {
  before?: LooseState
  change: unknown
  changeShare: unknown
  say: Say
  words(verdict: string, code?: string): string
}

/** A calculator's remarks, which read its own numbers and codes. The machine, which knows no types of its own, calls them with what the same statement gave. */
export const defineRemarks = <S extends CardStatement>(
  remarks: (context: RemarkContext<S>) => readonly Remark[],
): Remarks => remarks as Remarks

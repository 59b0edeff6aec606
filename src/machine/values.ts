import type { BikeSpec } from '../bikes/inSI.ts'
import type { Interval, Span } from '../units/interval.ts'
import type { Cell } from './cells.ts'
import type { CardStatement } from './statement.ts'

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

type ValueOfOutput<T> = T extends { kind: 'choice'; options: infer C }
  ? (keyof C & string) | null
  : T extends { kind: 'table' }
    ? readonly (readonly Cell[])[]
    : number | Interval | null

/** What `solve` receives: SI values by input id. */
export type InputOf<S extends CardStatement> = {
  readonly [K in keyof S['inputs']]: ValueOfInput<S['inputs'][K]>
}

/** What `solve` returns: SI values by output id; null where a value does not exist (a remark says why). */
export type OutputOf<S extends CardStatement> = {
  readonly [K in keyof S['outputs']]: ValueOfOutput<S['outputs'][K]>
}

/** The results as remarks are told them: each by its estimate, and what hangs on something not known as a range, which has no middle to speak of. */
export type ToldOutputOf<S extends CardStatement> = {
  readonly [K in keyof S['outputs']]: S['outputs'][K] extends { kind: 'choice' | 'table' }
    ? ValueOfOutput<S['outputs'][K]>
    : number | Span | null
}

/** The inputs as they are known: a range in place of a number that the reader does not know. */
export type KnownInputOf<S extends CardStatement> = {
  readonly [K in keyof S['inputs']]:
    | ValueOfInput<S['inputs'][K]>
    | (S['inputs'][K] extends { kind: 'quantity'; typical: unknown } ? Interval : never)
}

/** The codes of a verdict. */
export type CodeOf<
  S extends CardStatement,
  K extends keyof S['outputs'],
> = S['outputs'][K] extends { kind: 'choice'; options: infer C } ? keyof C & string : never

/** Every code that a verdict may have, given what is not known: one where all is known. */
export type VerdictsOf<S extends CardStatement> = {
  readonly [
    K in keyof S['outputs'] as S['outputs'][K] extends { kind: 'choice' } ? K : never
  ]: readonly CodeOf<S, K>[]
}

/** How far each number moved from the state before, over all that is not known. */
export type ChangesOf<S extends CardStatement> = {
  readonly [K in keyof S['outputs']]?: number | Interval
}

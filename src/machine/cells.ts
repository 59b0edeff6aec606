import type { Interval } from '../units/interval.ts'

/** Verdicts of which one is true, given what is not known: codes. */
export interface OneOf {
  readonly oneOf: readonly string[]
}

/**
 * One result: a number [SI], a range of it, a code, or codes of which one is true; null where there is none. Several verdicts at once are
 * their codes with a space between.
 */
export type Cell = number | string | Interval | OneOf | null
export type OutputValue = Cell | readonly (readonly Cell[])[]
export type Results = Readonly<Record<string, OutputValue>>

export const isOneOf = (cell: unknown): cell is OneOf =>
  typeof cell === 'object' && cell !== null && 'oneOf' in cell

/** The codes that a cell may have: one where all is known. */
export function codesOf(cell: Cell | undefined): readonly string[] {
  if (typeof cell === 'string') return [cell]
  return isOneOf(cell) ? cell.oneOf : []
}

/** The cell of the codes of which one is true. */
export const cellOf = (codes: readonly string[]): Cell =>
  codes.length > 1 ? { oneOf: codes } : (codes[0] ?? null)

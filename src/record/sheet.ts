import type { Book, Sheet } from './book.ts'
import type { Entry } from './reading.ts'

/** A step stands open, ticked, or changed: ticked once, when it read differently. */
export type TickState = 'open' | 'ticked' | 'changed'

const EMPTY: Sheet = { ticks: {}, readings: {} }

/** An entry of its own, not one that every object inherits ("constructor"). */
const own = <T>(record: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined

/** A procedure's sheet in the book; empty where nothing was written yet. */
export const sheetOf = (book: Book, procedure: string): Sheet =>
  own(book.sheets, procedure) ?? EMPTY

/** Whether a step that now reads as `hash` is ticked. */
export function tickState(book: Book, procedure: string, step: string, hash: string): TickState {
  const tick = own(sheetOf(book, procedure).ticks, step)
  if (tick === undefined) return 'open'
  return tick.hash === hash ? 'ticked' : 'changed'
}

/** The boxes of a reading. */
export const entriesOf = (book: Book, procedure: string, reading: string): readonly Entry[] =>
  own(sheetOf(book, procedure).readings, reading) ?? []

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

const withSheet = (book: Book, procedure: string, sheet: Sheet): Book => ({
  ...book,
  sheets: { ...book.sheets, [procedure]: sheet },
})

/** Whether a step that now reads as `hash` is ticked. */
export function tickState(book: Book, procedure: string, step: string, hash: string): TickState {
  const tick = own(sheetOf(book, procedure).ticks, step)
  if (tick === undefined) return 'open'
  return tick.hash === hash ? 'ticked' : 'changed'
}

/** The book with a step ticked, as it reads now, on a date (ISO 8601). */
export function ticked(
  book: Book,
  procedure: string,
  step: string,
  hash: string,
  at: string,
): Book {
  const sheet = sheetOf(book, procedure)
  return withSheet(book, procedure, { ...sheet, ticks: { ...sheet.ticks, [step]: { hash, at } } })
}

/** The book with a step open again. */
export function unticked(book: Book, procedure: string, step: string): Book {
  const sheet = sheetOf(book, procedure)
  return withSheet(book, procedure, {
    ...sheet,
    ticks: Object.fromEntries(Object.entries(sheet.ticks).filter(([id]) => id !== step)),
  })
}

/** What a box holds while nothing was typed in it. */
const BLANK: Entry = { typed: '', unit: '', value: null }

/** The book with one box of a reading filled (counted from 0). */
export function written(
  book: Book,
  procedure: string,
  reading: string,
  box: number,
  entry: Entry,
): Book {
  const sheet = sheetOf(book, procedure)
  const entries = [...(own(sheet.readings, reading) ?? [])]
  while (entries.length < box) entries.push(BLANK)
  entries[box] = entry
  return withSheet(book, procedure, {
    ...sheet,
    readings: { ...sheet.readings, [reading]: entries },
  })
}

/** The boxes of a reading. */
export const entriesOf = (book: Book, procedure: string, reading: string): readonly Entry[] =>
  own(sheetOf(book, procedure).readings, reading) ?? []

/** The book without anything of one procedure. */
export function startedAgain(book: Book, procedure: string): Book {
  return {
    ...book,
    sheets: Object.fromEntries(Object.entries(book.sheets).filter(([id]) => id !== procedure)),
  }
}

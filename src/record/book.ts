import * as z from 'zod/mini'

/** Names of procedures, steps and readings. */
const KEY = /^[a-z][A-Za-z0-9.-]{0,80}$/
export const keySchema = z.string().check(z.regex(KEY))
const short = z.string().check(z.maxLength(100))

export const entrySchema = z.strictObject({
  /** as it was typed */
  typed: z.string().check(z.maxLength(4000)),
  /** the unit it was typed in */
  unit: short,
  /** in the reading's unit; null where it is no number in range */
  value: z.nullable(z.number()),
})

export const tickSchema = z.strictObject({
  /** fingerprint of the step's text when it was ticked */
  hash: short,
  /** date of the tick, ISO 8601 */
  at: short,
})

const sheet = z.strictObject({
  ticks: z.record(keySchema, tickSchema),
  readings: z.record(keySchema, z.array(entrySchema).check(z.maxLength(20))),
})

/** The first form of the bench book, one bike's ticks and readings by procedure: what earlier editions kept and saved, and how a job's parts are looked at. */
const bookSchema = z.strictObject({
  format: z.literal('witness-mark-bench-book'),
  version: z.literal(1),
  /** edition of the site that wrote it last */
  edition: short,
  /** which bike it is, in the reader's words */
  bike: z.string().check(z.maxLength(200)),
  sheets: z.record(keySchema, sheet),
})

export type Book = z.infer<typeof bookSchema>
export type Sheet = z.infer<typeof sheet>

export const emptyBook = (edition = ''): Book => ({
  format: 'witness-mark-bench-book',
  version: 1,
  edition,
  bike: '',
  sheets: {},
})

/** A book read from text, or what is wrong with it and what to do. */
export type BookReading = { book: Book } | { problem: string }

const LARGEST = 1_000_000

function placeOf(path: readonly PropertyKey[]): string {
  return path.length === 0 ? 'at its top' : `at “${path.map(String).join(' › ')}”`
}

/** Reads a bench book's text. Nothing throws, and nothing of a bad file is used. */
export function readBook(text: string): BookReading {
  if (text.length > LARGEST)
    return {
      problem:
        'The file is larger than a bench book can be. Choose the file that “Save as a file” wrote',
    }
  let parsed: unknown
  try {
    parsed = JSON.parse(text)
  } catch {
    return { problem: 'The file is not JSON. Choose the file that “Save as a file” wrote' }
  }
  const format: unknown =
    typeof parsed === 'object' && parsed !== null ? Reflect.get(parsed, 'format') : undefined
  if (format !== 'witness-mark-bench-book')
    return {
      problem:
        'The file is not a bench book of this site. Choose the file that “Save as a file” wrote',
    }
  const version: unknown = Reflect.get(parsed as object, 'version')
  if (version !== 1)
    return {
      problem: `The file is a bench book of version ${String(version).slice(0, 12)}; this edition reads version 1. Open a newer edition of the site`,
    }
  const reading = z.safeParse(bookSchema, parsed)
  if (reading.success) return { book: reading.data }
  const [first] = reading.error.issues
  return {
    problem: `The file does not hold together ${placeOf(first?.path ?? [])}. Nothing of it was used: save it again where it came from`,
  }
}

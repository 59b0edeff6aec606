import * as z from 'zod/mini'
import { entrySchema, keySchema } from '../book.ts'
import type { SheetChange } from '../jobSheets.ts'

/* What was typed and is not kept yet. It is written down at once, where the browser waits for it, so that a page which goes in that moment loses nothing: the next one takes it over. */

const PREFIX = 'witness-mark.pending.'

/** A change on its way into the book. */
export interface Pending {
  change: SheetChange
  /** in words, for the list of changes */
  what: string
  /** which kind of page made it */
  kind: string
  edition: string
}

const tab = `${PREFIX}${Math.random().toString(36).slice(2, 10)}`

const words = z.string().check(z.maxLength(400))
const whole = z.number().check(z.int(), z.gte(0), z.lt(20))
/** Changes that set a value, and can be done twice without harm. */
const changes = z.union([
  z.strictObject({
    do: z.literal('write'),
    procedure: words,
    reading: keySchema,
    box: whole,
    entry: entrySchema,
    at: words,
  }),
  z.strictObject({
    do: z.literal('tick'),
    procedure: words,
    step: keySchema,
    hash: words,
    at: words,
  }),
  z.strictObject({ do: z.literal('untick'), procedure: words, step: keySchema }),
  z.strictObject({ do: z.literal('answer'), procedure: words, answers: z.record(words, words) }),
])
const pendingSchema = z.strictObject({
  change: changes,
  what: z.string(),
  kind: keySchema,
  edition: words,
})

const repeatable = ({ change }: Pending): boolean =>
  ['write', 'tick', 'untick', 'answer'].includes(change.do)

/** Writes down what this page has not kept yet. */
export function note(pending: readonly Pending[]): void {
  const list = pending.filter(repeatable)
  try {
    if (list.length === 0) localStorage.removeItem(tab)
    else localStorage.setItem(tab, JSON.stringify(list))
  } catch {
    // without it the change is kept a moment later, or the page says that it is not
  }
}

function readList(text: string | null): Pending[] {
  try {
    const list: unknown = JSON.parse(text ?? '[]')
    if (!Array.isArray(list)) return []
    return list.flatMap((each) => z.safeParse(pendingSchema, each).data ?? [])
  } catch {
    return []
  }
}

/** What pages that went have left behind, and its removal once it is kept. */
export function leftBehind(): { pending: Pending[]; forget(): void } {
  try {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith(PREFIX) && key !== tab)
    return {
      pending: keys.flatMap((key) => readList(localStorage.getItem(key))),
      forget: () => keys.forEach((key) => localStorage.removeItem(key)),
    }
  } catch {
    return { pending: [], forget: () => undefined }
  }
}

import * as z from 'zod/mini'
import { bikeSchema, jobSchema } from './records.ts'
import type { BikeRecord, JobRecord } from './records.ts'

/* The list of the last changes, each with the records as they were, so that it can be taken back. */

/** So many changes can be taken back. */
export const KEPT_CHANGES = 20

/** Keystrokes in one box that follow one another within this time [ms] are one change. */
const TOGETHER = 10 * 60 * 1000

/** A record put in its place, or taken away. */
export type Write =
  | { store: 'bikes'; id: string; record: BikeRecord | null }
  | { store: 'jobs'; id: string; record: JobRecord | null }

const writeSchema = z.union([
  z.strictObject({ store: z.literal('bikes'), id: z.string(), record: z.nullable(bikeSchema) }),
  z.strictObject({ store: z.literal('jobs'), id: z.string(), record: z.nullable(jobSchema) }),
])

export const changeSchema = z.strictObject({
  /** when it was made, ISO date and time */
  at: z.string().check(z.maxLength(40)),
  /** what was changed, in words */
  what: z.string().check(z.maxLength(400)),
  /** changes of one key that follow each other at once are one */
  key: z.string().check(z.maxLength(400)),
  /** the records as they were before */
  before: z.array(writeSchema),
})

export type Change = z.infer<typeof changeSchema>

/** The list with one more change at its end; the oldest falls off. A change that goes on with the last one is joined to it. */
export function withChange(list: readonly Change[], change: Change): Change[] {
  const last = list.at(-1)
  const goesOn =
    last !== undefined &&
    change.key !== '' &&
    last.key === change.key &&
    Date.parse(change.at) - Date.parse(last.at) < TOGETHER
  if (goesOn) return [...list.slice(0, -1), { ...change, before: last.before }]
  return [...list, change].slice(-KEPT_CHANGES)
}

/** What has to be written to take the last change back, and the list without it; null where there is none. */
export function undone(
  list: readonly Change[],
): { change: Change; writes: Write[]; rest: Change[] } | null {
  const change = list.at(-1)
  return change === undefined ? null : { change, writes: change.before, rest: list.slice(0, -1) }
}

import * as z from 'zod/mini'
import { entrySchema, keySchema, tickSchema } from './book.ts'

/* The bench book's records. Everything that is read, from the store or from a file, goes through these schemas; the published schema is made from them. */

/** The version of a file of records; version 1 was one bike's readings without dates. */
export const VERSION = 2
export const FORMAT = 'witness-mark-bench-book'

/** Ids of records: made here, never typed. */
const id = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,60}$/))
const words = (most: number) => z.string().check(z.maxLength(most))
const day = z.string().check(z.regex(/^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/))
/** No length, load or rate of a bike comes near it. */
const LARGEST = 1_000_000
const number = z.number().check(z.gte(-LARGEST), z.lte(LARGEST))

/** How a figure is known. */
export const SOURCES = ['measured', 'manual', 'label', 'guessed'] as const
export type Source = (typeof SOURCES)[number]

const figure = z.strictObject({
  /** in the figure's own unit */
  value: number,
  /** half the width of what it may be, in the same unit; absent: nobody has said */
  plusMinus: z.optional(number.check(z.gte(0))),
  from: z.enum(SOURCES),
  date: day,
  /** the reading that it came from, as "job part reading", or the calculator that worked it out */
  of: z.optional(words(200)),
})

export const bikeSchema = z.strictObject({
  id,
  /** in the reader's words */
  name: words(200),
  /** the invented bike whose figures stand in where nothing is known */
  like: keySchema,
  figures: z.record(keySchema, figure),
  note: words(4000),
  made: day,
  /** the job that procedures write to; null: none is open */
  job: z.nullable(id),
  /** counts the changes, so that two tabs can tell which is newer */
  rev: z.number().check(z.int(), z.gte(0), z.lte(1e9)),
})

const reading = z.strictObject({
  /** the day on which it was written; null in books from before readings had dates */
  at: z.nullable(day),
  boxes: z.array(entrySchema).check(z.maxLength(20)),
})

const part = z.strictObject({
  /** the procedure's id; done again in the same job, with a number after it */
  id: keySchema,
  procedure: keySchema,
  ticks: z.record(keySchema, tickSchema),
  readings: z.record(keySchema, reading),
})

const decision = z.strictObject({
  at: day,
  what: words(400),
  from: words(400),
  to: words(400),
  why: words(4000),
  agreed: words(400),
})

export const jobSchema = z.strictObject({
  id,
  bike: id,
  /** which job card; "loose" for procedures done one by one */
  kind: keySchema,
  /** answers to the card's questions */
  answers: z.record(keySchema, keySchema),
  opened: day,
  closed: z.nullable(day),
  odometer: words(40),
  customer: words(200),
  complaint: words(4000),
  parts: z.array(part).check(z.maxLength(1000)),
  decisions: z.array(decision).check(z.maxLength(200)),
  initials: words(200),
  notes: words(4000),
  rev: z.number().check(z.int(), z.gte(0), z.lte(1e9)),
})

/** A file of records, as it is saved and read back. */
export const fileSchema = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  /** edition of the site that wrote it */
  edition: words(100),
  saved: day,
  bikes: z.array(bikeSchema),
  jobs: z.array(jobSchema),
})

export type Figure = z.infer<typeof figure>
export type BikeRecord = z.infer<typeof bikeSchema>
export type JobRecord = z.infer<typeof jobSchema>
export type PartRecord = z.infer<typeof part>
export type ReadingRecord = z.infer<typeof reading>
export type RecordFile = z.infer<typeof fileSchema>

/** Everything that a book holds. */
export interface Records {
  bikes: readonly BikeRecord[]
  jobs: readonly JobRecord[]
}

/** A bike of which nothing is known yet. */
export const newBike = (
  id: string,
  { name, like, made }: Pick<BikeRecord, 'name' | 'like' | 'made'>,
): BikeRecord => ({ id, name, like, figures: {}, note: '', made, job: null, rev: 0 })

/** A job that has just been opened. */
export const newJob = (
  id: string,
  { bike, kind, opened }: Pick<JobRecord, 'bike' | 'kind' | 'opened'>,
): JobRecord => ({
  id,
  bike,
  kind,
  answers: {},
  opened,
  closed: null,
  odometer: '',
  customer: '',
  complaint: '',
  parts: [],
  decisions: [],
  initials: '',
  notes: '',
  rev: 0,
})

/** The kind of a job that belongs to no card: procedures done one by one. */
export const LOOSE = 'loose'

import type { Book } from './book.ts'
import { LOOSE, newBike, newJob } from './records.ts'
import type { BikeRecord, JobRecord, PartRecord } from './records.ts'
import { fingerprint } from './stepHash.ts'

/* The first form of the bench book was one bike without dates. It becomes one bike with one job; nothing of it is left out. */

const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/
/** A bike's name where the old book has none. */
export const UNNAMED = 'My bike'
/** Stands in for a bike of which nothing is known: the one that the chapters reckon with. */
export const STAND_IN = 'middleweight-roadster'

/** The days on which something of an old book was ticked, the first one first. */
const daysIn = (book: Book): string[] =>
  Object.values(book.sheets)
    .flatMap(({ ticks }) => Object.values(ticks).map(({ at }) => at))
    .filter((at) => ISO_DAY.test(at) && !Number.isNaN(Date.parse(at)))
    .sort()

/** Whether an old book holds anything that is worth a record. */
export const holdsAnything = (book: Book): boolean =>
  book.bike.trim() !== '' || Object.keys(book.sheets).length > 0

const partFrom = (procedure: string, { ticks, readings }: Book['sheets'][string]): PartRecord => ({
  id: procedure,
  procedure,
  ticks,
  readings: Object.fromEntries(
    Object.entries(readings).map(([id, boxes]) => [id, { at: null, boxes }]),
  ),
})

/** One bike and one job from an old book. The same book always gives the same ids, so that reading it twice adds nothing. `today` [ISO date] stands where the book has no day of its own. */
export function migrated(book: Book, today: string): { bike: BikeRecord; job: JobRecord } {
  const mark = fingerprint(JSON.stringify(book))
  const opened = daysIn(book)[0] ?? today
  const bike = newBike(`old-${mark}`, {
    name: book.bike.trim() === '' ? UNNAMED : book.bike,
    like: STAND_IN,
    made: opened,
  })
  const job = newJob(`old-${mark}-job`, { bike: bike.id, kind: LOOSE, opened })
  const edition = book.edition === '' ? '' : ` of the edition of ${book.edition}`
  return {
    bike: { ...bike, job: job.id },
    job: {
      ...job,
      notes: `Taken over from the bench book${edition}, whose readings had no dates.`,
      parts: Object.entries(book.sheets).map(([procedure, sheet]) => partFrom(procedure, sheet)),
    },
  }
}

/** Whether two values are the same all through: plain data, whose names may stand in any order. */
export function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return false
  if (Array.isArray(one) !== Array.isArray(other)) return false
  const [names, others] = [Object.keys(one), Object.keys(other)]
  return (
    names.length === others.length &&
    names.every(
      (name) =>
        Object.hasOwn(other, name) && same(Reflect.get(one, name), Reflect.get(other, name)),
    )
  )
}

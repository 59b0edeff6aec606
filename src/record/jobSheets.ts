import { emptyBook } from './book.ts'
import type { Book } from './book.ts'
import type { JobRecord, PartRecord, ReadingRecord } from './records.ts'
import type { Entry } from './reading.ts'

/* A job's parts, seen as sheets by procedure, and the changes that a page makes to them. */

/** One change that a page makes to a job: a box filled, a step ticked or opened again, a procedure begun once more, the card’s questions answered. Plain data, so that it can wait until it is kept. */
export type SheetChange =
  | { do: 'write'; procedure: string; reading: string; box: number; entry: Entry; at: string }
  | { do: 'tick'; procedure: string; step: string; hash: string; at: string }
  | { do: 'untick'; procedure: string; step: string }
  | { do: 'clear'; procedure: string }
  | { do: 'again'; procedure: string }
  | { do: 'answer'; procedure: string; answers: Readonly<Record<string, string>> }

/** The part of a job in which a procedure is being done: the last one of it. */
export const partOf = (job: JobRecord, procedure: string): PartRecord | undefined =>
  job.parts.findLast((part) => part.procedure === procedure)

const emptyPart = (id: string, procedure: string): PartRecord => ({
  id,
  procedure,
  ticks: {},
  readings: {},
})

const isEmpty = ({ ticks, readings }: PartRecord): boolean =>
  Object.keys(ticks).length === 0 && Object.keys(readings).length === 0

/** The name of the next part of a procedure: "measure-front-sag", then "measure-front-sag.2". */
function nextPartId(job: JobRecord, procedure: string): string {
  const taken = new Set(job.parts.map(({ id }) => id))
  if (!taken.has(procedure)) return procedure
  for (let count = 2; ; count++)
    if (!taken.has(`${procedure}.${count}`)) return `${procedure}.${count}`
}

/** The job with the latest part of a procedure changed; begun where there was none. */
function withPart(
  job: JobRecord,
  procedure: string,
  change: (part: PartRecord) => PartRecord,
): JobRecord {
  const now = partOf(job, procedure)
  const next = change(now ?? emptyPart(nextPartId(job, procedure), procedure))
  const parts = now ? job.parts.map((part) => (part === now ? next : part)) : [...job.parts, next]
  return { ...job, parts }
}

const BLANK: Entry = { typed: '', unit: '', value: null }

const own = <T>(record: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined

function writtenIn(
  part: PartRecord,
  { reading, box, entry, at }: Extract<SheetChange, { do: 'write' }>,
): PartRecord {
  const boxes = [...(own(part.readings, reading)?.boxes ?? [])]
  while (boxes.length < box) boxes.push(BLANK)
  boxes[box] = entry
  return { ...part, readings: { ...part.readings, [reading]: { at, boxes } } }
}

const without = <T>(record: Readonly<Record<string, T>>, key: string): Record<string, T> =>
  Object.fromEntries(Object.entries(record).filter(([each]) => each !== key))

/** The job after one change. A procedure that is begun again leaves what was read before as it was. */
export function changedJob(job: JobRecord, change: SheetChange): JobRecord {
  const { procedure } = change
  switch (change.do) {
    case 'write':
      return withPart(job, procedure, (part) => writtenIn(part, change))
    case 'tick': {
      const { step, hash, at } = change
      return withPart(job, procedure, (part) => ({
        ...part,
        ticks: { ...part.ticks, [step]: { hash, at } },
      }))
    }
    case 'untick':
      return withPart(job, procedure, (part) => ({
        ...part,
        ticks: without(part.ticks, change.step),
      }))
    case 'clear': {
      const last = partOf(job, procedure)
      return { ...job, parts: job.parts.filter((part) => part !== last) }
    }
    case 'answer':
      return { ...job, answers: { ...change.answers } }
    case 'again': {
      const last = partOf(job, procedure)
      if (!last || isEmpty(last)) return job
      return { ...job, parts: [...job.parts, emptyPart(nextPartId(job, procedure), procedure)] }
    }
  }
}

const boxesOf = (readings: Readonly<Record<string, ReadingRecord>>): Record<string, Entry[]> =>
  Object.fromEntries(Object.entries(readings).map(([id, { boxes }]) => [id, boxes]))

/** A job's parts as a book of sheets: of each procedure the part that is being done, which is the last. */
export function bookOfJob(job: JobRecord | null): Book {
  const book = emptyBook()
  if (job === null) return book
  return {
    ...book,
    sheets: Object.fromEntries(
      job.parts.map(({ procedure, ticks, readings }) => [
        procedure,
        { ticks, readings: boxesOf(readings) },
      ]),
    ),
  }
}

/** A single part as a book of its own, for what is worked out from it alone. */
export const bookOfPart = ({ procedure, ticks, readings }: PartRecord): Book => ({
  ...emptyBook(),
  sheets: { [procedure]: { ticks, readings: boxesOf(readings) } },
})

import type { Book } from '../../src/record/book.ts'
import { bookOfJob, changedJob } from '../../src/record/jobSheets.ts'
import type { Entry } from '../../src/record/reading.ts'
import { newJob } from '../../src/record/records.ts'

/** One box filled: its procedure and reading, which box, and what it holds. */
export type Filled = readonly [procedure: string, reading: string, box: number, entry: Entry]

/** A book in which these boxes were filled as a page fills them, one after the other. */
export const writtenBook = (filled: readonly Filled[]): Book =>
  bookOfJob(
    filled.reduce(
      (job, [procedure, reading, box, entry]) =>
        changedJob(job, { do: 'write', procedure, reading, box, entry, at: '2026-03-12' }),
      newJob('j1', { bike: 'b1', kind: 'loose', opened: '2026-03-12' }),
    ),
  )

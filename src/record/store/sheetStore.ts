import * as z from 'zod/mini'
import { bookOfJob, changedJob } from '../jobSheets.ts'
import type { SheetChange } from '../jobSheets.ts'
import type { Book } from '../book.ts'
import { jobSchema, newJob } from '../records.ts'
import type { JobRecord } from '../records.ts'
import { writeAll } from './bookStore.ts'
import type { Deed } from './bookStore.ts'
import { mirrorChosen } from './chosen.ts'
import type { Shelf } from './database.ts'
import { leftBehind, note } from './journal.ts'
import type { Pending } from './journal.ts'
import { changeShelf, keepingNow, KEEPING_TEXT, onBookChange, readShelf } from './keeper.ts'
import { findOpen, makeOpen } from './openJob.ts'
import type { Open } from './openJob.ts'

/* A page of steps and boxes and the job that it writes to. What is typed shows at once; it is kept a moment later, what was typed meanwhile together. */

/** What a page of steps shows. */
export interface Shown {
  book: Book
  open: Open
  /** why nothing is kept, in words; null while it is */
  problem: string | null
}

export interface Sheets {
  /** changes the job, shows it, and keeps it */
  change(change: SheetChange, what: string): void
  /** shows it again, as after a change of units */
  again(): void
}

const today = (): string => new Date().toISOString().slice(0, 10)

/** The job with all changes that leave it whole, and which these are. A page that went may have left nonsense behind. */
function withAll(
  job: JobRecord,
  pending: readonly Pending[],
): { changed: JobRecord; done: readonly Pending[] } {
  let changed = job
  const done = pending.filter(({ change }) => {
    const next = changedJob(changed, change)
    const whole = z.safeParse(jobSchema, next).success
    if (whole) changed = next
    return whole
  })
  return { changed, done }
}

/** What changes that are kept together are called in the list of changes. */
function deedOf(job: JobRecord, done: readonly Pending[]): Deed {
  // answers are kept beside what was done, and are told only where nothing else was
  const told = done.filter(({ change }) => change.do !== 'answer')
  const [first, ...more] = (told.length > 0 ? told : done).map(({ what }) => what)
  if (more.length > 0) return { what: `${first} and ${more.length} more` }
  const { change } = told[0] ?? done[0]!
  const key =
    change.do === 'write' ? `${job.id} ${change.procedure} ${change.reading} ${change.box}` : ''
  return { what: first!, key }
}

/** Puts changes into the open jobs that they belong to, all of one kind of page at once. */
async function keep(shelf: Shelf, pending: readonly Pending[]): Promise<void> {
  for (const kind of new Set(pending.map((each) => each.kind))) {
    const ofKind = pending.filter((each) => each.kind === kind)
    const { bike, job } = await makeOpen(shelf, kind, today())
    const { changed, done } = withAll(job, ofKind)
    if (done.length === 0) continue
    await writeAll(shelf, deedOf(job, done), [
      ...(bike.job === job.id
        ? []
        : [{ store: 'bikes', id: bike.id, record: { ...bike, job: job.id } } as const]),
      { store: 'jobs', id: job.id, record: changed },
    ])
    mirrorChosen(bike)
  }
}

/** Takes over what pages that went could not keep any more. */
export async function keepLeftBehind(): Promise<void> {
  const { pending, forget } = leftBehind()
  if (pending.length === 0) return
  const { kept } = await changeShelf((shelf) => keep(shelf, pending))
  if (kept) forget()
}

/** Follows the open job of the chosen bike for a page of this kind, and shows it whenever it changes. */
export function followSheets(kind: string, edition: string, show: (shown: Shown) => void): Sheets {
  let open: Open = { bike: null, job: null }
  let pending: Pending[] = []
  let keeping = false
  const blank: JobRecord = newJob('unkept', { bike: 'unkept', kind, opened: today() })
  const display = (): void => {
    const job = pending.reduce((now, each) => changedJob(now, each.change), open.job ?? blank)
    const why = keepingNow()
    show({ book: bookOfJob(job), open, problem: why && KEEPING_TEXT[why] })
  }
  const read = async (): Promise<void> => {
    open = await readShelf((shelf) => findOpen(shelf, kind))
    display()
  }
  const keepAll = async (): Promise<void> => {
    if (keeping) return
    keeping = true
    try {
      while (pending.length > 0) {
        const batch = pending
        const { kept } = await changeShelf((shelf) => keep(shelf, batch))
        // what could not be kept stays on the page, and is tried again with the next change
        if (!kept) break
        open = await readShelf((shelf) => findOpen(shelf, kind))
        pending = pending.slice(batch.length)
        note(pending)
      }
    } finally {
      keeping = false
      display()
    }
  }
  onBookChange(() => void read())
  void keepLeftBehind().then(read)
  return {
    change(change, what) {
      pending = [...pending, { change, what, kind, edition }]
      note(pending)
      display()
      void keepAll()
    },
    again: display,
  }
}

import type { Write } from './changes.ts'
import { same } from './migrate.ts'
import type { BikeRecord, JobRecord, Records } from './records.ts'

/* What a file would change in the book, said before anything is changed. */

export type Standing = 'new' | 'same' | 'conflict'
/** What is done with a record that both sides have, and have differently. */
export type Choice = 'mine' | 'theirs' | 'both'

export interface PlanItem<T> {
  standing: Standing
  theirs: T
  /** what the book has under the same id */
  mine: T | null
}

export interface ImportPlan {
  bikes: readonly PlanItem<BikeRecord>[]
  jobs: readonly PlanItem<JobRecord>[]
}

/** Two records are the same where all but their counts of changes is. */
const alike = (one: { rev: number }, other: { rev: number }): boolean =>
  same({ ...one, rev: 0 }, { ...other, rev: 0 })

function itemsOf<T extends { id: string; rev: number }>(
  mine: readonly T[],
  theirs: readonly T[],
): PlanItem<T>[] {
  const known = new Map(mine.map((record) => [record.id, record]))
  return theirs.map((record) => {
    const here = known.get(record.id) ?? null
    if (here === null) return { standing: 'new', theirs: record, mine: null }
    return { standing: alike(here, record) ? 'same' : 'conflict', theirs: record, mine: here }
  })
}

/** What is new, the same or in conflict. */
export const planImport = (mine: Records, theirs: Records): ImportPlan => ({
  bikes: itemsOf(mine.bikes, theirs.bikes),
  jobs: itemsOf(mine.jobs, theirs.jobs),
})

/** How many records of a plan stand so. */
export const countStanding = ({ bikes, jobs }: ImportPlan, standing: Standing): number =>
  [...bikes, ...jobs].filter((item) => item.standing === standing).length

/** The writes that take a file over. Where both have a record and differ, `choice` says which stays; "both" puts the file's under a new id beside the book's. */
export function writesOf(plan: ImportPlan, choice: Choice, newId: () => string): Write[] {
  const moved = new Map<string, string>()
  const place = <T extends { id: string; rev: number }>({
    standing,
    theirs,
    mine,
  }: PlanItem<T>): T | null => {
    if (standing === 'same' || (standing === 'conflict' && choice === 'mine')) return null
    if (standing === 'new') return theirs
    if (choice === 'theirs') return { ...theirs, rev: Math.max(theirs.rev, mine?.rev ?? 0) + 1 }
    const id = newId()
    moved.set(theirs.id, id)
    return { ...theirs, id }
  }
  const bikes = plan.bikes.flatMap((item) => place(item) ?? [])
  const movedBikes = new Map(moved)
  const jobs = plan.jobs.flatMap((item) => place(item) ?? [])
  return [
    ...bikes.map((record): Write => {
      const job = record.job === null ? null : (moved.get(record.job) ?? record.job)
      return { store: 'bikes', id: record.id, record: { ...record, job } }
    }),
    ...jobs.map((record): Write => {
      const bike = movedBikes.get(record.bike) ?? record.bike
      return { store: 'jobs', id: record.id, record: { ...record, bike } }
    }),
  ]
}

import { LOOSE, newBike, newJob } from '../records.ts'
import type { BikeRecord, JobRecord } from '../records.ts'
import { STAND_IN, UNNAMED } from '../migrate.ts'
import { bikeIn, chosenIn, jobIn, newId } from './bookStore.ts'
import type { Shelf } from './database.ts'

/* Which job a page writes to: the open one of the chosen bike. */

/** The bike and the job that a page works with; null: there is none yet. */
export interface Open {
  bike: BikeRecord | null
  job: JobRecord | null
}

const isOpen = (job: JobRecord | null): job is JobRecord => job !== null && job.closed === null

/** The open job of a bike that suits a page of this kind: a card has its own or takes over a loose one, a procedure goes with whatever is open. */
async function openJobOf(shelf: Shelf, bike: BikeRecord, kind: string): Promise<JobRecord | null> {
  const current = bike.job === null ? null : await jobIn(shelf, bike.job)
  if (isOpen(current) && (kind === LOOSE || [kind, LOOSE].includes(current.kind))) return current
  if (kind === LOOSE) return null
  for (const key of await shelf.keys('jobs')) {
    const job = typeof key === 'string' ? await jobIn(shelf, key) : null
    if (isOpen(job) && job.bike === bike.id && job.kind === kind) return job
  }
  return null
}

/** What is open for a page of this kind; nothing is made. */
export async function findOpen(shelf: Shelf, kind: string): Promise<Open> {
  const chosen = await chosenIn(shelf)
  const bike = chosen === null ? null : await bikeIn(shelf, chosen)
  return { bike, job: bike && (await openJobOf(shelf, bike, kind)) }
}

/** What is open for a page of this kind; a bike and a job are made where there is none, and the bike is chosen. `today` is an ISO date. */
export async function makeOpen(
  shelf: Shelf,
  kind: string,
  today: string,
): Promise<{ bike: BikeRecord; job: JobRecord }> {
  const found = await findOpen(shelf, kind)
  const bike = found.bike ?? newBike(newId(), { name: UNNAMED, like: STAND_IN, made: today })
  if (!found.bike) await shelf.put('state', 'chosen', bike.id)
  const job = found.job ?? newJob(newId(), { bike: bike.id, kind, opened: today })
  return { bike, job: job.kind === LOOSE ? { ...job, kind } : job }
}

import * as z from 'zod/mini'
import { changeSchema, KEPT_CHANGES, undone, withChange } from '../changes.ts'
import type { Change, Write } from '../changes.ts'
import { bikeSchema, jobSchema } from '../records.ts'
import type { BikeRecord, JobRecord } from '../records.ts'
import { mirrorChosen } from './chosen.ts'
import type { Shelf } from './database.ts'
import { changeShelf, readAll, readShelf } from './keeper.ts'

/* Bikes and jobs as they are kept. Every record is checked when it is read; every change is kept with what was there before. */

/** A record that can't be read any more: it stays where it is, and is offered as a file. */
export interface BadRecord {
  store: 'bikes' | 'jobs'
  key: string
  value: unknown
}

export interface Settings {
  /** whether customers' names are asked for at all */
  names: boolean
  /** closed jobs are deleted after so many days; null: never */
  deleteAfter: number | null
}

const settingsSchema = z.strictObject({
  names: z.boolean(),
  deleteAfter: z.nullable(z.number().check(z.int(), z.gte(1), z.lte(3660))),
})
const USUAL: Settings = { names: false, deleteAfter: null }

/** All that the book holds. */
export interface Whole {
  bikes: readonly BikeRecord[]
  jobs: readonly JobRecord[]
  bad: readonly BadRecord[]
  /** id of the chosen bike */
  chosen: string | null
  settings: Settings
  changes: readonly Change[]
}

const parsed = <T>(schema: z.core.$ZodType<T>, value: unknown): T | null => {
  const reading = z.safeParse(schema, value)
  return reading.success ? reading.data : null
}

/** A key as text; the site's own are text. */
const keyText = (key: IDBValidKey): string => (typeof key === 'string' ? key : JSON.stringify(key))

/** Records of one store that can be read, and those that can't. */
async function sorted<T extends { id: string }>(
  store: 'bikes' | 'jobs',
  schema: z.core.$ZodType<T>,
): Promise<{ good: T[]; bad: BadRecord[] }> {
  const good: T[] = []
  const bad: BadRecord[] = []
  for (const { key, value } of await readAll(store)) {
    const record = parsed(schema, value)
    if (record?.id === key && record !== null) good.push(record)
    else bad.push({ store, key: keyText(key), value })
  }
  return { good, bad }
}

async function changesIn(shelf: Shelf): Promise<{ key: IDBValidKey; change: Change }[]> {
  return (await shelf.all('changes')).flatMap(({ key, value }) => {
    const reading = z.safeParse(changeSchema, value)
    return reading.success ? [{ key, change: reading.data }] : []
  })
}

/** The id of the chosen bike, if that bike is there. */
export async function chosenIn(shelf: Shelf): Promise<string | null> {
  const id = await shelf.get('state', 'chosen')
  return typeof id === 'string' ? id : null
}

/** Reads the whole book; a record that can't be read stands among the bad ones, the others are as they were. */
export async function loadWhole(): Promise<Whole> {
  const bikes = await sorted('bikes', bikeSchema)
  const jobs = await sorted('jobs', jobSchema)
  const changes = (await readAll('changes')).flatMap(
    ({ value }) => parsed(changeSchema, value) ?? [],
  )
  const [chosen, settings] = await readShelf((shelf) =>
    Promise.all([chosenIn(shelf), shelf.get('state', 'settings')]),
  )
  const bike = bikes.good.find(({ id }) => id === chosen) ?? null
  mirrorChosen(bike)
  return {
    bikes: bikes.good.sort((one, other) => one.name.localeCompare(other.name)),
    jobs: jobs.good.sort((one, other) => other.opened.localeCompare(one.opened)),
    bad: [...bikes.bad, ...jobs.bad],
    chosen: bike?.id ?? null,
    settings: parsed(settingsSchema, settings) ?? USUAL,
    changes,
  }
}

/** What is done to the book, and what it is called in the list of changes. */
export interface Deed {
  what: string
  /** deeds of one key that follow each other at once are one in the list */
  key?: string
}

/** One bike of the book; null where there is none that can be read. */
export const bikeIn = async (shelf: Shelf, id: string): Promise<BikeRecord | null> =>
  parsed(bikeSchema, await shelf.get('bikes', id))
export const jobIn = async (shelf: Shelf, id: string): Promise<JobRecord | null> =>
  parsed(jobSchema, await shelf.get('jobs', id))

/** Writes records, each with its count of changes one higher than what was there, and keeps what was there for the list of changes. */
export async function writeAll(
  shelf: Shelf,
  { what, key = '' }: Deed,
  writes: readonly Write[],
): Promise<void> {
  // asked for together: one after the other a thousand take seconds
  const before = await Promise.all(
    writes.map(async ({ store, id }): Promise<Write> =>
      store === 'bikes'
        ? { store, id, record: await bikeIn(shelf, id) }
        : { store, id, record: await jobIn(shelf, id) },
    ),
  )
  await Promise.all(
    writes.map(({ store, id, record }, index) => {
      const was = before[index]?.record?.rev ?? 0
      return record === null
        ? shelf.remove(store, id)
        : shelf.put(store, id, { ...record, rev: Math.max(record.rev, was + 1) })
    }),
  )
  await keepChange(shelf, { at: new Date().toISOString(), what, key, before })
}

/** Puts a change on the list, or joins it to the last one. Only that one is read: the others may hold whole jobs. */
async function keepChange(shelf: Shelf, change: Change): Promise<void> {
  const keys = await shelf.keys('changes')
  const lastKey = keys.at(-1)
  const last =
    lastKey === undefined ? null : parsed(changeSchema, await shelf.get('changes', lastKey))
  const list = withChange(last === null ? [] : [last], change)
  if (last !== null && lastKey !== undefined && list.length === 1) {
    await shelf.put('changes', lastKey, list[0])
    return
  }
  await shelf.put('changes', null, change)
  for (const key of keys.slice(0, Math.max(0, keys.length + 1 - KEPT_CHANGES)))
    await shelf.remove('changes', key)
}

/** Changes the book in one transaction: `make` reads what it needs from the shelf and says what is to be written. */
export async function changeRecords(
  deed: Deed,
  make: (shelf: Shelf) => Promise<readonly Write[]>,
): Promise<boolean> {
  const { kept } = await changeShelf(async (shelf) => writeAll(shelf, deed, await make(shelf)))
  return kept
}

const revSchema = z.object({ rev: z.number() })

/** Takes the last change back; gives what it was, or null where there is none. */
export async function undoLast(): Promise<string | null> {
  const done = await changeShelf(async (shelf) => {
    const kept = await changesIn(shelf)
    const back = undone(kept.map(({ change }) => change))
    if (back === null) return null
    await Promise.all(
      back.writes.map(async ({ store, id, record }) => {
        if (record === null) return shelf.remove(store, id)
        const was = parsed(revSchema, await shelf.get(store, id))
        return shelf.put(store, id, { ...record, rev: (was?.rev ?? record.rev) + 1 })
      }),
    )
    await shelf.remove('changes', kept.at(-1)!.key)
    return back.change.what
  })
  return done.kept ? done.result : null
}

/** Chooses a bike for every page, or none. */
export async function chooseBike(bike: BikeRecord | null): Promise<void> {
  await changeShelf((shelf) => shelf.put('state', 'chosen', bike?.id ?? null))
  mirrorChosen(bike)
}

export async function saveSettings(settings: Settings): Promise<void> {
  await changeShelf((shelf) => shelf.put('state', 'settings', settings))
}

/** Takes a record that can't be read out of the book. */
export async function removeBad({ store, key }: BadRecord): Promise<void> {
  await changeShelf((shelf) => shelf.remove(store, key))
}

/** An id for a new record. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(10))
  return [...bytes].map((byte) => (byte % 36).toString(36)).join('')
}

import { openDB } from 'idb'
import type { IDBPDatabase, IDBPTransaction } from 'idb'

/* The browser's database: opened when it is needed, closed when the page goes, opened again where the browser dropped it. */

const DATABASE = 'witness-mark'
const STORES = ['bikes', 'jobs', 'changes', 'state'] as const
export type StoreName = (typeof STORES)[number]

/** What a transaction can do. Nothing else may be awaited inside it: it would end half-way. */
export interface Shelf {
  get(store: StoreName, key: IDBValidKey): Promise<unknown>
  keys(store: StoreName): Promise<IDBValidKey[]>
  /** records with their keys */
  all(store: StoreName): Promise<{ key: IDBValidKey; value: unknown }[]>
  put(store: StoreName, key: IDBValidKey | null, value: unknown): Promise<IDBValidKey>
  remove(store: StoreName, key: IDBValidKey): Promise<void>
}

export type Mode = 'readonly' | 'readwrite'

/** Something that the reader has to be told of the database. */
export type Trouble = 'blocked' | 'closed'

type Listener = (trouble: Trouble) => void
const listeners = new Set<Listener>()
/** Tells when another tab keeps this one waiting, or has taken the database over. */
export const onTrouble = (listener: Listener): void => void listeners.add(listener)
const tell = (trouble: Trouble): void => listeners.forEach((listener) => listener(trouble))

let opening: Promise<IDBPDatabase> | null = null

function forget(): void {
  const old = opening
  opening = null
  void old?.then((database) => database.close()).catch(() => undefined)
}

/** Opens the database as it is; where a store is missing, be it that something else opened it first, adds it. */
async function open(version?: number): Promise<IDBPDatabase> {
  const database = await openDB(DATABASE, version, {
    upgrade(made) {
      for (const name of STORES)
        if (!made.objectStoreNames.contains(name))
          made.createObjectStore(name, name === 'changes' ? { autoIncrement: true } : {})
    },
    blocked: () => tell('blocked'),
    blocking() {
      forget()
      tell('closed')
    },
    terminated: () => {
      opening = null
    },
  })
  if (STORES.every((name) => database.objectStoreNames.contains(name))) return database
  const next = database.version + 1
  database.close()
  return open(next)
}

function connection(): Promise<IDBPDatabase> {
  opening ??= open().catch((error: unknown) => {
    opening = null
    throw error
  })
  return opening
}

type Transaction = IDBPTransaction<unknown, StoreName[], Mode>

const shelfOf = (transaction: Transaction): Shelf => ({
  get: (store, key) => transaction.objectStore(store).get(key),
  keys: (store) => transaction.objectStore(store).getAllKeys(),
  async all(store) {
    const source = transaction.objectStore(store)
    const [keys, values] = await Promise.all([source.getAllKeys(), source.getAll()])
    return keys.map((key, index) => ({ key, value: values[index] as unknown }))
  },
  put: (store, key, value) => transaction.objectStore(store).put!(value, key ?? undefined),
  remove: (store, key) => transaction.objectStore(store).delete!(key),
})

async function transact<T>(mode: Mode, act: (shelf: Shelf) => Promise<T>): Promise<T> {
  const database = await connection()
  const transaction: Transaction = database.transaction([...STORES], mode, {
    durability: mode === 'readwrite' ? 'strict' : 'default',
  })
  try {
    const result = await act(shelfOf(transaction))
    await transaction.done
    return result
  } catch (error) {
    transaction.done.catch(() => undefined)
    try {
      transaction.abort()
    } catch {
      // it has ended by itself
    }
    throw error
  }
}

/** Errors of a connection that the browser has dropped, not of what was asked. */
const LOST = new Set(['InvalidStateError', 'UnknownError', 'TransactionInactiveError'])

/** Runs a transaction; on a connection that was dropped meanwhile, once more on a new one. */
export async function run<T>(mode: Mode, act: (shelf: Shelf) => Promise<T>): Promise<T> {
  try {
    return await transact(mode, act)
  } catch (error) {
    if (!(error instanceof DOMException) || !LOST.has(error.name)) throw error
    forget()
    return transact(mode, act)
  }
}

/** Closes the database with the page, so that the browser may keep the page for the way back. */
export function closeWithPage(): void {
  addEventListener('pagehide', forget)
}

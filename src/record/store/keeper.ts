import { closeWithPage, onTrouble, run } from './database.ts'
import type { Mode, Shelf, StoreName } from './database.ts'
import { memoryShelf } from './memory.ts'
import { moveFirstBook } from './moveFirstBook.ts'

/* Who keeps the book: the browser's database, or where that is refused the memory of this page. One lock goes round every read-change-write, and other tabs are told to read again. */

const LOCK = 'witness-mark.book'
const CHANNEL = 'witness-mark.book'

/** What the reader has to be told of how the book is kept; null: it is kept. */
export type Keeping = null | 'refused' | 'full' | 'blocked' | 'closed'

let keeping: Keeping = null
const listeners = new Set<() => void>()
let channel: BroadcastChannel | null = null

/** How the book is kept just now. */
export const keepingNow = (): Keeping => keeping

/** In words, and what to do. */
export const KEEPING_TEXT: Record<Exclude<Keeping, null>, string> = {
  refused:
    'This browser keeps nothing for this site: what you write is gone once the page is closed. Save it as a file, print it, or write the readings on paper.',
  full: 'The browser’s store for this site is full: your last change is on this page only. Save the book as a file, then delete old jobs or free room on the device.',
  blocked:
    'Another tab with an older edition of this site holds the bench book. Close it, and this page goes on by itself.',
  closed: 'A newer edition of this site has the bench book open. Load this page again to go on.',
}

function setKeeping(next: Keeping): void {
  if (next === keeping) return
  keeping = next
  listeners.forEach((listener) => listener())
}

const isFull = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'QuotaExceededError'

/** Runs `act` while no other tab changes the book; browsers without locks have the transaction alone. */
export async function alone<T>(act: () => Promise<T>): Promise<T> {
  // absent where the page does not come by a secure way
  const locks = navigator.locks as LockManager | undefined
  return locks ? await locks.request(LOCK, act) : act()
}

let ready: Promise<void> | null = null

/** Opens the book once: takes the first form of it over, listens to other tabs. */
function prepare(): Promise<void> {
  ready ??= (async () => {
    closeWithPage()
    onTrouble(setKeeping)
    try {
      // says at once whether the browser lets anything be kept
      await run('readonly', () => Promise.resolve())
      await alone(() => moveFirstBook(run))
      if (keeping === 'blocked') setKeeping(null)
    } catch (error) {
      setKeeping(isFull(error) ? 'full' : 'refused')
      if (keeping === 'refused') await moveFirstBook((_, act) => act(memoryShelf))
    }
    listen()
  })()
  return ready
}

function listen(): void {
  const open = (): void => {
    channel = new BroadcastChannel(CHANNEL)
    channel.onmessage = () => listeners.forEach((listener) => listener())
  }
  open()
  // an open channel would keep the page from being stored for the way back
  addEventListener('pagehide', () => channel?.close())
  addEventListener('pageshow', (event) => {
    if (!event.persisted) return
    open()
    listeners.forEach((listener) => listener())
  })
}

/** Tells when the book was changed elsewhere, or is kept otherwise than before. */
export const onBookChange = (listener: () => void): void => void listeners.add(listener)

/** Reads from the book. */
export async function readShelf<T>(act: (shelf: Shelf) => Promise<T>): Promise<T> {
  await prepare()
  return keeping === 'refused' ? act(memoryShelf) : run('readonly', act)
}

/** Every record of a store with its key. Where one of them can't be read the rest is read singly, and that one comes as undefined. */
export async function readAll(store: StoreName): Promise<{ key: IDBValidKey; value: unknown }[]> {
  try {
    return await readShelf((shelf) => shelf.all(store))
  } catch {
    const keys = await readShelf((shelf) => shelf.keys(store))
    return Promise.all(
      keys.map(async (key) => ({
        key,
        value: await readShelf((shelf) => shelf.get(store, key)).catch(() => undefined),
      })),
    )
  }
}

/** Changes the book, in one transaction. False where it could not be kept; then `keepingNow` says why. */
export async function changeShelf<T>(
  act: (shelf: Shelf) => Promise<T>,
): Promise<{ kept: true; result: T } | { kept: false }> {
  await prepare()
  if (keeping === 'refused') return { kept: true, result: await act(memoryShelf) }
  try {
    const result = await alone(() => run('readwrite' satisfies Mode, act))
    setKeeping(null)
    channel?.postMessage('read again')
    void askToPersist()
    return { kept: true, result }
  } catch (error) {
    if (!isFull(error)) throw error
    setKeeping('full')
    return { kept: false }
  }
}

const ASKED = 'witness-mark.asked'

/** Asks the browser once, at the first save, not to clear the book when room runs short. */
async function askToPersist(): Promise<void> {
  try {
    if (localStorage.getItem(ASKED) !== null) return
    localStorage.setItem(ASKED, '1')
    await navigator.storage.persist()
  } catch {
    // without an answer the book is kept as the browser likes
  }
}

import { readBook } from '../book.ts'
import type { Book } from '../book.ts'
import { holdsAnything, migrated, same } from '../migrate.ts'
import type { Mode, Shelf } from './database.ts'
import { mirrorChosen } from './chosen.ts'

/* The first form of the book lay in localStorage. It is copied in one transaction and read back; the old entry stays where it was. */

const KEY = 'witness-mark.bench-book'
const DONE = 'first book'

type Run = <T>(mode: Mode, act: (shelf: Shelf) => Promise<T>) => Promise<T>

function firstBook(): Book | null {
  try {
    const text = localStorage.getItem(KEY)
    if (text === null) return null
    const reading = readBook(text)
    return 'book' in reading && holdsAnything(reading.book) ? reading.book : null
  } catch {
    return null
  }
}

/** Takes the first form of the book over, once. */
export async function moveFirstBook(run: Run): Promise<void> {
  const book = firstBook()
  if (book === null) return
  const { bike, job } = migrated(book, new Date().toISOString().slice(0, 10))
  const moved = await run('readwrite', async (shelf) => {
    if ((await shelf.get('state', DONE)) !== undefined) return false
    await shelf.put('bikes', bike.id, bike)
    await shelf.put('jobs', job.id, job)
    if ((await shelf.get('state', 'chosen')) === undefined)
      await shelf.put('state', 'chosen', bike.id)
    return true
  })
  if (!moved) return
  await run('readwrite', async (shelf) => {
    const [there, thereToo] = [await shelf.get('bikes', bike.id), await shelf.get('jobs', job.id)]
    // the marker only once both were read back whole; else it is tried again with the next page
    if (same(there, bike) && same(thereToo, job)) await shelf.put('state', DONE, job.id)
  })
  mirrorChosen(bike)
}

import { emptyBook, readBook } from './book.ts'
import type { Book } from './book.ts'

/* The browser's own store. Every change reads the book afresh, so that two tabs don't overwrite one another's sheets. */

const KEY = 'witness-mark.bench-book'
const ASIDE = `${KEY}.unread`

/** The book as kept; empty where nothing is kept. What can't be read is laid aside, never overwritten. */
export function loadBook(): Book {
  try {
    const text = localStorage.getItem(KEY)
    if (text === null) return emptyBook()
    const reading = readBook(text)
    if ('book' in reading) return reading.book
    localStorage.setItem(ASIDE, text)
  } catch {
    // storage is refused: the page works on, and says that it keeps nothing
  }
  return emptyBook()
}

/** Keeps a book; false where the browser refuses. */
export function saveBook(book: Book): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(book))
    return true
  } catch {
    return false
  }
}

/** Changes the book as it is kept now, and returns it with whether it could be kept. */
export function changeBook(change: (book: Book) => Book): { book: Book; kept: boolean } {
  const book = change(loadBook())
  return { book, kept: saveBook(book) }
}

/** Tells when another tab has changed the book. */
export function onOtherTab(listener: () => void): void {
  addEventListener('storage', (event) => {
    if (event.key === KEY) listener()
  })
}

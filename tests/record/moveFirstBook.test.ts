import { readFileSync } from 'node:fs'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { Book } from '../../src/record/book.ts'
import { holdsAnything, migrated } from '../../src/record/migrate.ts'
import type { Mode, Shelf } from '../../src/record/store/database.ts'
import { moveFirstBook } from '../../src/record/store/moveFirstBook.ts'

/* The first form of the book taken over from where it lay, cut off at any moment, with a store of this test's own: what a browser adds is tried in tests/site. */

const books = JSON.parse(
  readFileSync(new URL('./fixtures/first-books.json', import.meta.url), 'utf8'),
) as Book[]
const KEY = 'witness-mark.bench-book'
const TODAY = new Date().toISOString().slice(0, 10)

/** A store whose transactions are kept whole or not at all; it breaks off in the writing of the `breaksAt`th record. */
function makeStore(breaksAt = Infinity) {
  let kept = new Map<string, unknown>()
  let writes = 0
  const run = async <T>(_: Mode, act: (shelf: Shelf) => Promise<T>): Promise<T> => {
    const draft = new Map(kept)
    const result = await act({
      get: (store, key) => Promise.resolve(draft.get(`${store} ${key as string}`)),
      keys: () => Promise.resolve([]),
      all: () => Promise.resolve([]),
      put(store, key, value) {
        if (++writes === breaksAt) return Promise.reject(new DOMException('gone', 'AbortError'))
        draft.set(`${store} ${key as string}`, structuredClone(value))
        return Promise.resolve(key!)
      },
      remove: () => Promise.resolve(),
    })
    kept = draft
    return result
  }
  return { run, kept: () => kept, mend: () => (breaksAt = Infinity) }
}

const texts = new Map<string, string>()
beforeEach(() => {
  texts.clear()
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
    removeItem: (key: string) => void texts.delete(key),
  })
  vi.stubGlobal('document', new EventTarget())
})
afterEach(() => vi.unstubAllGlobals())

describe('moveFirstBook(run)', () => {
  test.each(books.map((book, index) => [index, book] as const))(
    'takes recorded book %i over whole and once, and leaves its entry',
    async (_, book) => {
      texts.set(KEY, JSON.stringify(book))
      const { run, kept } = makeStore()
      await moveFirstBook(run)
      await moveFirstBook(run)
      expect(texts.get(KEY)).toBe(JSON.stringify(book))
      if (!holdsAnything(book)) return expect(kept().size).toBe(0)
      const { bike, job } = migrated(book, TODAY)
      expect(Object.fromEntries(kept())).toEqual({
        [`bikes ${bike.id}`]: bike,
        [`jobs ${job.id}`]: job,
        'state chosen': bike.id,
        'state first book': job.id,
      })
    },
  )

  test.each([1, 2, 3, 4])(
    'cut off in the writing of record %i, it is done again with the next page, and nothing is there twice',
    async (breaksAt) => {
      texts.set(KEY, JSON.stringify(books[3]))
      const { run, kept, mend } = makeStore(breaksAt)
      await expect(moveFirstBook(run)).rejects.toThrow('gone')
      expect([0, 3]).toContain(kept().size)
      mend()
      await moveFirstBook(run)
      expect([...kept().keys()].filter((key) => /^(bikes|jobs) /.test(key))).toHaveLength(2)
      expect(kept().has('state first book')).toBe(true)
    },
  )

  test('what was changed since is not put back to the first book', async () => {
    texts.set(KEY, JSON.stringify(books[3]))
    const { run, kept } = makeStore()
    await moveFirstBook(run)
    const { bike } = migrated(books[3]!, TODAY)
    kept().set(`bikes ${bike.id}`, { ...bike, name: 'Another name' })
    await moveFirstBook(run)
    expect(kept().get(`bikes ${bike.id}`)).toMatchObject({ name: 'Another name' })
  })
})

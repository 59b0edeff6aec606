import type { Page } from 'playwright-core'
import type { BikeRecord, JobRecord } from '../../src/record/records.ts'

/* The bench book's database, seen and changed past the site's own code: as it is kept, and as damage would leave it. */

type Store = 'bikes' | 'jobs' | 'changes' | 'state'

/** All records of one store. */
async function all(page: Page, store: Store): Promise<unknown[]> {
  return page.evaluate(
    (name) =>
      new Promise<unknown[]>((done, fail) => {
        const opening = indexedDB.open('witness-mark')
        opening.onerror = () => fail(new Error(String(opening.error)))
        opening.onsuccess = () => {
          const database = opening.result
          if (!database.objectStoreNames.contains(name)) {
            database.close()
            return done([])
          }
          const asking = database.transaction(name).objectStore(name).getAll()
          asking.onsuccess = () => {
            database.close()
            done(asking.result as unknown[])
          }
          asking.onerror = () => fail(new Error(String(asking.error)))
        }
      }),
    store,
  )
}

export const jobs = (page: Page): Promise<JobRecord[]> => all(page, 'jobs') as Promise<JobRecord[]>
export const bikes = (page: Page): Promise<BikeRecord[]> =>
  all(page, 'bikes') as Promise<BikeRecord[]>

/** Puts anything in a record's place. */
export async function putRecord(
  page: Page,
  store: Store,
  key: string,
  value: unknown,
): Promise<void> {
  await page.evaluate(
    ([name, at, put]) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('witness-mark')
        opening.onerror = () => fail(new Error(String(opening.error)))
        opening.onsuccess = () => {
          const transaction = opening.result.transaction(name, 'readwrite')
          transaction.objectStore(name).put(put, at)
          transaction.oncomplete = () => {
            opening.result.close()
            done()
          }
          transaction.onabort = () => fail(new Error(String(transaction.error)))
        }
      }),
    [store, key, value] as const,
  )
}

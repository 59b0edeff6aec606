import type { Page } from 'playwright-core'
import type { BikeRecord, JobRecord } from '../../src/record/records.ts'

/* The bench book's database, seen and changed past the site's own code: as it is kept, and as damage would leave it. */

type Store = 'bikes' | 'jobs' | 'changes' | 'state'

/** All records of one store. */
export async function all(page: Page, store: Store): Promise<unknown[]> {
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

/** Puts anything in the places of records, all at once; a place without a key gets the next one. */
export async function putRecords(
  page: Page,
  records: readonly (readonly [store: string, key: string | null, value: unknown])[],
): Promise<void> {
  await page.evaluate(
    (list) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('witness-mark')
        opening.onerror = () => fail(new Error(String(opening.error)))
        opening.onsuccess = () => {
          const database = opening.result
          const transaction = database.transaction([...database.objectStoreNames], 'readwrite')
          for (const [name, at, put] of list)
            transaction.objectStore(name).put(put, at ?? undefined)
          transaction.oncomplete = () => {
            database.close()
            done()
          }
          transaction.onabort = () => fail(new Error(String(transaction.error)))
        }
      }),
    records,
  )
}

/** Puts anything in one record's place. */
export const putRecord = (
  page: Page,
  store: Store,
  key: string | null,
  value: unknown,
): Promise<void> => putRecords(page, [[store, key, value]])

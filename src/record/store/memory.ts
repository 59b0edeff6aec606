import type { Shelf, StoreName } from './database.ts'

/* What stands in for the database where a browser refuses one: it lasts as long as the page. */

const stores = new Map<StoreName, Map<IDBValidKey, unknown>>()
let last = 0

function storeOf(name: StoreName): Map<IDBValidKey, unknown> {
  const store = stores.get(name) ?? new Map<IDBValidKey, unknown>()
  stores.set(name, store)
  return store
}

export const memoryShelf: Shelf = {
  get: (store, key) => Promise.resolve(storeOf(store).get(key)),
  keys: (store) => Promise.resolve([...storeOf(store).keys()]),
  all: (store) => Promise.resolve([...storeOf(store)].map(([key, value]) => ({ key, value }))),
  put(store, key, value) {
    const place = key ?? ++last
    storeOf(store).set(place, value)
    return Promise.resolve(place)
  },
  remove(store, key) {
    storeOf(store).delete(key)
    return Promise.resolve()
  },
}

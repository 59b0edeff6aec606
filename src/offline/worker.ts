import { PrecacheController } from 'workbox-precaching/PrecacheController.js'
import { registerRoute } from 'workbox-routing/registerRoute.js'
import { CacheFirst } from 'workbox-strategies/CacheFirst.js'
import { Listed } from './files.ts'
import type { OfflineFiles } from './files.ts'
import type { Asked, Keeping, KeptState } from './messages.ts'

/*
 * The service worker: one edition of the site, kept on the device. Pages come out of what is kept, else from the network and are kept; each is checked against
 * the hash that this edition's build gave it, so that no file of another edition gets in. Which files to keep is the list below; how, is the library's.
 */

/** Written by the build (`src/build/offline.ts`). */
declare const OFFLINE_FILES: OfflineFiles
const files = OFFLINE_FILES

interface Waits extends Event {
  waitUntil(promise: Promise<unknown>): void
}
interface Told extends Waits {
  data: Asked
  ports: readonly MessagePort[]
}
interface Scope {
  addEventListener(type: 'install' | 'activate', listener: (event: Waits) => void): void
  addEventListener(type: 'message', listener: (event: Told) => void): void
  skipWaiting(): Promise<void>
  clients: { claim(): Promise<void> }
  registration: { scope: string }
}
const scope = self as unknown as Scope

const base = new URL(scope.registration.scope)
const listed = new Listed(files)
/** The whole site is kept while there is a cache of this name. */
const WHOLE = `witness-mark-whole ${base.pathname}`
const cacheName = `witness-mark ${base.pathname}`

const kept = new PrecacheController({ cacheName })
kept.addToCacheList(
  listed.all().map((address) => {
    const integrity = listed.integrityOf(address)
    const url = new URL(address, base).href
    return integrity === undefined
      ? { url, revision: null }
      : { url, revision: integrity.slice(7, 17), integrity }
  }),
)
/** Files whose names say what they hold. */
const named = new CacheFirst({ cacheName })

/** So many files are asked for at once. */
const AT_ONCE = 6

const addressOf = (url: URL): string => url.pathname.slice(base.pathname.length)
/** Pages mark what they ask for with their edition, and so does the search's engine; what another edition's page asks for is none of this one's. */
const isForeign = ({ pathname, searchParams }: URL): boolean => {
  const mark = searchParams.get(pathname.endsWith('/pagefind-entry.json') ? 'ts' : 'edition')
  return mark !== null && mark !== files.edition
}
const keyOf = (url: URL): string | undefined => kept.getCacheKeyForURL(url.origin + url.pathname)

/** A file's response, and when it is kept. */
function handled(request: Request, url: URL, event: Event): [Promise<Response>, Promise<void>] {
  const cacheKey = keyOf(url)!
  const integrity = kept.getIntegrityForCacheKey(cacheKey)
  const strategy = integrity === undefined && event.type !== 'install' ? named : kept.strategy
  const options = { request, event: event as never, params: { cacheKey, integrity } }
  return strategy.handleAll(options)
}

/** Keeps files that are not kept yet. What did come stays although another did not. */
async function keep(
  addresses: readonly string[],
  event: Event,
  tell: (done: number) => void = () => undefined,
): Promise<void> {
  const waiting = [...addresses]
  let done = 0
  const next = async (): Promise<void> => {
    for (let address = waiting.shift(); address !== undefined; address = waiting.shift()) {
      const url = new URL(address, base)
      const integrity = listed.integrityOf(address)
      const request = new Request(url, integrity ? { cache: 'no-cache', integrity } : {})
      await Promise.all(handled(request, url, event))
      tell(++done)
    }
  }
  await Promise.all(
    Array.from({ length: AT_ONCE }, () =>
      next().catch((error: unknown) => {
        waiting.length = 0
        throw error
      }),
    ),
  )
}

/** Pages that an edition before has kept, and that there are in this one. */
async function visitedBefore(): Promise<string[]> {
  const requests = await (await caches.open(cacheName)).keys()
  return requests.map(({ url }) => addressOf(new URL(url))).filter((each) => listed.has(each))
}

scope.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      const whole = await caches.has(WHOLE)
      const pages = [...files.first, ...(await visitedBefore())]
      await keep(whole ? listed.all() : listed.withNeeds(pages), event)
    })(),
  )
})

scope.addEventListener('activate', (event) => {
  void kept.activate(event)
  event.waitUntil(scope.clients.claim())
})

registerRoute(
  ({ url, request, sameOrigin }) =>
    sameOrigin && request.mode !== 'navigate' && !isForeign(url) && keyOf(url) !== undefined,
  ({ request, url, event }) => handled(request, url, event)[0],
)

/** What is shown where a page can't be had: that it is not kept, or that there is none. */
const instead = (known: boolean): Promise<Response | undefined> =>
  kept.matchPrecache(new URL(known ? 'offline/' : '404.html', base).href)

registerRoute(
  ({ url, request, sameOrigin }) =>
    sameOrigin && request.mode === 'navigate' && url.pathname.startsWith(base.pathname),
  async ({ request, url, event }) => {
    const known = listed.has(addressOf(url))
    if (!known && listed.has(`${addressOf(url)}/`))
      return Response.redirect(`${url.pathname}/${url.search}`, 301)
    // what the network has instead is another edition's page, which is shown as it is and not kept
    const found = known ? handled(request, url, event)[0] : fetch(request)
    return found
      .catch(() => fetch(request))
      .catch(async () => (await instead(known)) ?? Response.error())
  },
)

/** Keeps a page that was opened, with what it needs. */
async function visited(pathname: string, event: Event): Promise<void> {
  const page = pathname.slice(base.pathname.length)
  if (!pathname.startsWith(base.pathname) || !listed.has(page)) return
  // the page first: where the network has another edition's, the rest is not there either
  await keep([page], event)
  await keep(listed.withNeeds([page]), event)
}

async function keepWhole(event: Event, port: MessagePort): Promise<void> {
  const tell = (keeping: Keeping): void => port.postMessage(keeping)
  const all = listed.all()
  try {
    // told a hundred times, not a thousand
    const share = Math.ceil(all.length / 100)
    await keep(all, event, (done) => {
      if (done % share === 0) tell({ kept: 'some', done, of: all.length })
    })
    await caches.open(WHOLE)
    tell({ kept: 'all' })
  } catch (error) {
    tell({ kept: 'not', full: (error as Error).name === 'QuotaExceededError' })
  }
}

async function tellState(port: MessagePort): Promise<void> {
  const { edition, wire, stored } = files
  const state: KeptState = { edition, wire, stored, whole: await caches.has(WHOLE) }
  port.postMessage(state)
}

async function forget(event: Event, port: MessagePort): Promise<void> {
  await caches.delete(WHOLE)
  await caches.delete(cacheName)
  await tellState(port)
  await keep(listed.withNeeds(files.first), event)
}

function answer(event: Told): Promise<unknown> {
  const [port] = event.ports
  switch (event.data.ask) {
    case 'visited':
      return visited(event.data.pathname, event).catch(() => undefined)
    case 'load':
      return scope.skipWaiting()
    case 'state':
      return tellState(port!)
    case 'keep':
      return keepWhole(event, port!)
    case 'forget':
      return forget(event, port!).catch(() => undefined)
  }
}

scope.addEventListener('message', (event) => event.waitUntil(answer(event)))

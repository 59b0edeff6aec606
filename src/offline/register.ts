import type { Asked } from './messages.ts'
import { registerWorker } from './registration.ts'

/* Starts the service worker once the page is there and at rest, tells it which page that is, and looks for a new edition. */

// absent where the page does not come by a secure way
const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined
const saving = (navigator as { connection?: { saveData?: boolean } }).connection?.saveData

const offer = () => import('./offer.ts')

async function begin(at: ServiceWorkerContainer): Promise<void> {
  const old = at.controller
  const registration = await registerWorker(at)
  const look = (): void => {
    if (registration.waiting && old) void offer().then((made) => made.offerEdition(registration))
  }
  const follow = (): void => registration.installing?.addEventListener('statechange', look)
  registration.addEventListener('updatefound', follow)
  follow()
  look()
  if (old)
    at.addEventListener('controllerchange', () => void offer().then((made) => made.tellOlder()))
  const asked: Asked = { ask: 'visited', pathname: location.pathname }
  const { active } = await at.ready
  active?.postMessage(asked)
}

if (workers && !(saving && !workers.controller)) {
  const start = (): void => void begin(workers).catch(() => undefined)
  const wait = (): unknown =>
    'requestIdleCallback' in window ? requestIdleCallback(start) : setTimeout(start, 500)
  if (document.readyState === 'complete') wait()
  else addEventListener('load', wait)
}

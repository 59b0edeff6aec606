import type { Asked, Keeping, KeptState } from './messages.ts'
import { registerWorker } from './registration.ts'

/* What a page can have done about what is kept on the device. */

/** The worker of this site; null where the browser has none, or the page does not come by a secure way. */
async function worker(): Promise<ServiceWorker | null> {
  const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined
  if (!workers) return null
  try {
    await registerWorker(workers)
    return (await workers.ready).active
  } catch {
    return null
  }
}

/** Asks the worker, and hears its answers until one is the last. */
async function ask<T>(asked: Asked, isLast: (answer: T) => boolean): Promise<T | null> {
  const to = await worker()
  if (to === null) return null
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel()
    port1.onmessage = ({ data }: MessageEvent<T>) => {
      if (!isLast(data)) return
      port1.close()
      done(data)
    }
    to.postMessage(asked, [port2])
  })
}

const always = (): boolean => true

/** What is kept; null where nothing can be. */
export const keptState = (): Promise<KeptState | null> => ask({ ask: 'state' }, always)

/** Takes everything off the device but what is needed to say so. */
export const forgetKept = (): Promise<KeptState | null> => ask({ ask: 'forget' }, always)

/** Why the whole site could not be kept. */
export type KeepProblem = 'full' | 'network' | 'edition' | 'unsupported'

/** Keeps the whole site; `tell` gets the share that is there. Null where all went well. */
export async function keepWhole(tell: (share: number) => void): Promise<KeepProblem | null> {
  const last = await ask<Keeping>({ ask: 'keep' }, (keeping) => {
    if (keeping.kept === 'some') tell(keeping.done / keeping.of)
    return keeping.kept !== 'some'
  })
  if (last === null) return 'unsupported'
  if (last.kept === 'all') return null
  if (last.kept === 'not' && last.full) return 'full'
  const registration = await navigator.serviceWorker.ready
  await registration.update().catch(() => undefined)
  return registration.waiting || registration.installing ? 'edition' : 'network'
}

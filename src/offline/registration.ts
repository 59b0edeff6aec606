import { base } from '../base.ts'

/** Registers the service worker of this site, or finds it registered. Its file is asked of the server each time, whatever a host says of how long to keep it. */
export const registerWorker = (at: ServiceWorkerContainer): Promise<ServiceWorkerRegistration> =>
  at.register(`${base}sw.js`, { scope: base, updateViaCache: 'none' })

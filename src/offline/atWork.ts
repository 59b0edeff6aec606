/* Pages on which a job is under way hold a lock together, so that no page of any tab takes a new edition in the middle of it. */

const LOCK = 'witness-mark.at-work'
// absent where the page does not come by a secure way
const locks = (): LockManager | undefined => navigator.locks

let wanted = false
let release: (() => void) | null = null

function follow(hold: boolean): void {
  if (!hold) {
    release?.()
    release = null
  } else if (release === null) {
    const until = new Promise<void>((done) => (release = done))
    void locks()?.request(LOCK, { mode: 'shared' }, () => until)
  }
}

/** Says whether the job on this page is under way: something is done, and something is left to do. */
export function sayAtWork(now: boolean): void {
  wanted = now
  follow(now)
}

/** Waits until no page has a job under way. */
export const atRest = async (): Promise<void> => void (await locks()?.request(LOCK, () => null))

/** Whether no page has a job under way. */
export const isAtRest = async (): Promise<boolean> =>
  (await locks()?.request(LOCK, { ifAvailable: true }, (lock) => lock !== null)) ?? true

// a lock would keep the page from being stored for the way back
addEventListener('pagehide', () => follow(false))
addEventListener('pageshow', () => follow(wanted))

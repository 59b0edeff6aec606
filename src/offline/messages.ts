/* What pages and the service worker say to each other. */

/** What a page asks of the worker. */
export type Asked =
  /** the page at this path was opened: keep it */
  | { ask: 'visited'; pathname: string }
  /** what is kept, and what all of it would weigh */
  | { ask: 'state' }
  /** keep the whole site; the answer comes in parts */
  | { ask: 'keep' }
  /** keep no more than what is visited */
  | { ask: 'forget' }
  /** the reader wants the new edition */
  | { ask: 'load' }

/** What is kept on this device. */
export interface KeptState {
  edition: string
  /** bytes, gzip */
  wire: number
  /** bytes */
  stored: number
  /** whether the whole site is there */
  whole: boolean
}

/** How keeping the whole site goes. */
export type Keeping =
  { kept: 'some'; done: number; of: number } | { kept: 'all' } | { kept: 'not'; full: boolean }

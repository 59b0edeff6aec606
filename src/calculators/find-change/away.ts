import { defineAway } from '../../machine/work.ts'

/** A search solves thousands of stances: a page has it done in a worker. */
export default defineAway({
  worker: () => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }),
  here: () => import('./answer.ts'),
})

import type { JobRecord } from '../../src/record/records.ts'
import type { Change } from '../procedure/ticks.ts'
import type { Asked } from './filter.ts'
import { sheetOfJob } from './kept.ts'

/* The answers to a card's questions are kept with its job, so that somebody who comes back without the link finds the card as it was. */

const textOf = (answers: object): string => JSON.stringify(Object.entries(answers).sort())

/** Keeps and restores answers. A page that is only looked at opens no job: they are kept with the first thing done. */
export function answersKept(
  kind: string,
  asked: Asked,
  change: Change,
): { done(): void; answered(): void; shown(job: JobRecord | null): void } {
  /** the answers that the book holds, once a job is open */
  let held: string | null = null
  const done = (): void => {
    const answers = asked.answers()
    if (textOf(answers) === (held ?? textOf({}))) return
    held = textOf(answers)
    change({ do: 'answer', procedure: sheetOfJob(kind), answers }, 'Questions answered')
  }
  return {
    done,
    answered() {
      if (held !== null) done()
    },
    shown(job) {
      if (!job || held !== null) return
      held = textOf(job.answers)
      asked.restore(job.answers)
    },
  }
}

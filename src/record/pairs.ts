import { takenMean } from './carry.ts'
import type { Taken } from './carry.ts'
import type { Book } from './book.ts'

const AFTER = 'After'

/** A reading taken before the work and again after it, in the reading's unit. */
export interface Pair {
  id: string
  label: string
  unit: string
  before: number
  after: number
}

const latest = (book: Book, all: readonly Taken[]): { taken: Taken; mean: number } | null => {
  for (const taken of [...all].reverse()) {
    const mean = takenMean(book, taken)
    if (mean !== null) return { taken, mean }
  }
  return null
}

/**
 * Readings whose ids pair ("markLeft", "markLeftAfter"), with both sides filled. Before is the first in the order of the job, after the last: in between
 * the same length may have been read more than once.
 */
export function pairs(all: readonly Taken[], book: Book): Pair[] {
  const names = [...new Set(all.map(({ spec }) => spec.id))].filter((id) => id.endsWith(AFTER))
  return names.flatMap((name) => {
    const id = name.slice(0, -AFTER.length)
    const before = latest(book, all.filter(({ spec }) => spec.id === id).reverse())
    const after = latest(
      book,
      all.filter(({ spec }) => spec.id === name),
    )
    if (!before || !after || before.taken.spec.unit !== after.taken.spec.unit) return []
    return [
      {
        id,
        label: before.taken.spec.label,
        unit: before.taken.spec.unit,
        before: before.mean,
        after: after.mean,
      },
    ]
  })
}

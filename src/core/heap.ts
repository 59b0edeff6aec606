/** A queue that gives back its least entry first, by an order that must be total. */
export interface Heap<Entry> {
  push(entry: Entry): void
  pop(): Entry | undefined
}

/** A binary heap. `before` says whether one entry comes before another. Source: Williams 1964, Algorithm 232 (from memory). */
export function heapOf<Entry>(before: (a: Entry, b: Entry) => boolean): Heap<Entry> {
  const entries: Entry[] = []
  return {
    push(entry) {
      let place = entries.push(entry) - 1
      while (place > 0) {
        const above = (place - 1) >> 1
        if (!before(entry, entries[above]!)) break
        entries[place] = entries[above]!
        place = above
      }
      entries[place] = entry
    },
    pop() {
      const least = entries[0]
      const last = entries.pop()
      if (entries.length === 0 || last === undefined) return least
      sink(entries, last, before)
      return least
    },
  }
}

function sink<Entry>(
  entries: Entry[],
  entry: Entry,
  before: (a: Entry, b: Entry) => boolean,
): void {
  let place = 0
  for (;;) {
    let below = 2 * place + 1
    if (below >= entries.length) break
    if (below + 1 < entries.length && before(entries[below + 1]!, entries[below]!)) below++
    if (!before(entries[below]!, entry)) break
    entries[place] = entries[below]!
    place = below
  }
  entries[place] = entry
}

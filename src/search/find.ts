import type { Kind, Lexicon } from './lexicon.ts'
import type { Concept, Query } from './query.ts'
import { readQuery } from './query.ts'
import { rank } from './rank.ts'
import type { Ranked } from './rank.ts'

/** What is used of the index's script. */
export interface TextIndex {
  search(words: string | null): Promise<{ results: { id: string; score: number; data: () => Promise<Fragment> }[] }>
}

/** The text of one page as the index keeps it. */
export interface Fragment {
  content: string
  anchors: { element: string; id: string; text?: string; location: number }[]
}

export interface Found {
  query: Query
  ranked: readonly Ranked[]
}

/** Alternatives asked of the index for each concept: the words themselves and the site's own; titles are matched on all. */
const ASKED = 3

async function textScores(index: TextIndex, { alternatives }: Concept): Promise<Map<string, number>> {
  const best = new Map<string, number>()
  await Promise.all(
    alternatives.slice(0, ASKED).map(async ({ words, nearness }) => {
      const { results } = await index.search(words.join(' '))
      const most = Math.max(...results.map(({ score }) => score))
      for (const { id, score } of results) best.set(id, Math.max(best.get(id) ?? 0, (nearness * score) / most))
    }),
  )
  return best
}

/** Searches for a text as a reader types it: one search of the index for each way of saying each word, and their results merged. */
export async function find(text: string, index: TextIndex, lexicon: Lexicon, kinds: ReadonlySet<Kind> = new Set()): Promise<Found> {
  const query = readQuery(text, lexicon)
  const inText = await Promise.all(query.concepts.map((concept) => textScores(index, concept)))
  return { query, ranked: rank(query, inText, lexicon, kinds) }
}

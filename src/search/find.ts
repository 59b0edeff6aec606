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
  /** the text of something that was found */
  load: (id: string) => Promise<Fragment | undefined>
}

type Loaders = Map<string, () => Promise<Fragment>>

/** Alternatives asked of the index for each concept: the words themselves and the first others; titles are matched on all. */
const ASKED = 3

async function ask(words: string | null, index: TextIndex, loaders: Loaders): Promise<{ id: string; score: number }[]> {
  const { results } = await index.search(words)
  for (const { id, data } of results) loaders.set(id, data)
  return results
}

async function textScores({ alternatives }: Concept, index: TextIndex, loaders: Loaders): Promise<Map<string, number>> {
  const best = new Map<string, number>()
  for (const { words, nearness } of alternatives.slice(0, ASKED)) {
    const results = await ask(words.join(' '), index, loaders)
    const most = Math.max(...results.map(({ score }) => score))
    for (const { id, score } of results) best.set(id, Math.max(best.get(id) ?? 0, (nearness * score) / most))
  }
  return best
}

/** Searches for a text as a reader types it: one search of the index for each way of saying each word, and their results merged. */
export async function find(text: string, index: TextIndex, lexicon: Lexicon, kinds: ReadonlySet<Kind> = new Set()): Promise<Found> {
  const query = readQuery(text, lexicon)
  const loaders: Loaders = new Map()
  const inText = await Promise.all(query.concepts.map((concept) => textScores(concept, index, loaders)))
  const load = async (id: string): Promise<Fragment | undefined> => {
    // an entry known by a name that its text lacks is in none of the searches, but in the search for everything
    if (!loaders.has(id)) await ask(null, index, loaders)
    return loaders.get(id)?.()
  }
  return { query, ranked: rank(query, inText, lexicon, kinds), load }
}

import { leaning } from './intent.ts'
import type { Kind, Lexicon } from './lexicon.ts'
import type { Query } from './query.ts'
import { readQuery } from './query.ts'
import { rank } from './rank.ts'
import type { Ranked } from './rank.ts'
import { stem } from './stem.ts'
import { weighQuery } from './weigh.ts'
import type { TextScores } from './weigh.ts'

/** What is used of the index's script. */
export interface TextIndex {
  search(
    words: string | null,
  ): Promise<{ results: { id: string; score: number; data: () => Promise<Fragment> }[] }>
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

async function ask(
  words: string | null,
  index: TextIndex,
  loaders: Loaders,
): Promise<{ id: string; score: number }[]> {
  const { results } = await index.search(words)
  for (const { id, data } of results) loaders.set(id, data)
  return results
}

/** Whether the site has a word; of short ones and of those with figures the vocabulary knows nothing. The index, asked for a word that no page has, gives the pages with its beginning: “work” for “worksheet”. */
const onSite = (word: string, lexicon: Lexicon): boolean =>
  !/^[a-z]{3,}$/.test(word) || lexicon.onSite.has(stem(word))

async function textScores(
  words: readonly string[],
  index: TextIndex,
  loaders: Loaders,
): Promise<TextScores> {
  const results = await ask(words.join(' '), index, loaders)
  const most = Math.max(...results.map(({ score }) => score))
  return new Map(results.map(({ id, score }) => [id, score / most]))
}

/** Searches for a text as a reader types it: one search of the index for each way of saying each word, and their results merged. */
export async function find(
  text: string,
  index: TextIndex,
  lexicon: Lexicon,
  kinds: ReadonlySet<Kind> = new Set(),
): Promise<Found> {
  const read = readQuery(text, lexicon)
  const loaders: Loaders = new Map()
  const texts = await Promise.all(
    read.concepts.map(({ alternatives }) =>
      Promise.all(
        alternatives.map(async ({ words }) =>
          words.every((word) => onSite(word, lexicon))
            ? textScores(words, index, loaders)
            : new Map<string, number>(),
        ),
      ),
    ),
  )
  const weighed = weighQuery(read, texts, lexicon.entries.size)
  const load = async (id: string): Promise<Fragment | undefined> => {
    // an entry known by a name that its text lacks is in none of the searches, but in the search for everything
    if (!loaders.has(id)) await ask(null, index, loaders)
    return loaders.get(id)?.()
  }
  const ranked = rank(weighed, lexicon, leaning(text)).filter(
    ({ entry }) => kinds.size === 0 || kinds.has(entry.kind),
  )
  return { query: weighed.query, ranked, load }
}

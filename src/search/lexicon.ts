import { stem } from './stem.ts'
import { wordsOf } from './words.ts'

export type Kind =
  'chapter' | 'procedure' | 'job' | 'caution' | 'calculator' | 'lesson' | 'glossary' | 'symptom'

/** One thing that can be found. */
export interface Entry {
  /** the index's own name for it */
  id: string
  /** address under the base path, without a slash before it */
  url: string
  kind: Kind
  title: string
  /** other titles and words under which it is known */
  names: readonly string[]
  /** signal word of a caution */
  signal?: string
}

/** An entry before the index has named it; `text` stands for things that have no page of their own. */
export type SourceEntry = Omit<Entry, 'id'> & { text?: string }

/** What the query layer needs to know, as it is written when the site is built. */
export interface LexiconFile {
  stop: readonly string[]
  /** words that count a quarter */
  light: readonly string[]
  /** words of the language that no page has and that are not to be taken for slips */
  english: readonly string[]
  /** groups of words and phrases that should find one another, the site's own word first */
  synonyms: readonly (readonly string[])[]
  /** every word of the site that a typing error may be meant for, in its most used form, the most used first, with a space between */
  words: string
  entries: readonly Entry[]
}

/** A word or phrase of a group, by its words' roots. */
export interface Phrase {
  roots: readonly string[]
  said: string
  group: number
}

export interface Lexicon {
  stop: ReadonlySet<string>
  light: ReadonlySet<string>
  english: ReadonlySet<string>
  groups: readonly (readonly string[])[]
  /** phrases by their first root, the longest first */
  phrases: ReadonlyMap<string, readonly Phrase[]>
  words: readonly string[]
  roots: ReadonlySet<string>
  /** roots of the words of three letters or more that stand on the site */
  onSite: ReadonlySet<string>
  entries: ReadonlyMap<string, Entry>
}

function phrasesByFirstRoot(groups: readonly (readonly string[])[]): Map<string, Phrase[]> {
  const byRoot = new Map<string, Phrase[]>()
  for (const [group, words] of groups.entries()) {
    for (const said of words) {
      const roots = wordsOf(said).map(stem)
      const first = roots[0]
      if (first === undefined) continue
      byRoot.set(
        first,
        [...(byRoot.get(first) ?? []), { roots, said, group }].sort(
          (a, b) => b.roots.length - a.roots.length,
        ),
      )
    }
  }
  return byRoot
}

/** Makes the file ready for use. */
export function prepareLexicon(file: LexiconFile): Lexicon {
  const words = file.words.split(' ')
  return {
    stop: new Set(file.stop.flatMap(wordsOf)),
    light: new Set(file.light.flatMap(wordsOf)),
    english: new Set(file.english),
    groups: file.synonyms,
    phrases: phrasesByFirstRoot(file.synonyms),
    words,
    roots: new Set([...words, ...file.synonyms.flat().flatMap(wordsOf)].map(stem)),
    onSite: new Set(words.map(stem)),
    entries: new Map(file.entries.map((entry) => [entry.id, entry])),
  }
}

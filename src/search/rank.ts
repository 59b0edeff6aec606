import type { Entry, Kind, Lexicon } from './lexicon.ts'
import { conceptInTitle } from './match.ts'
import type { Query } from './query.ts'
import { stem } from './stem.ts'
import type { Weighed } from './weigh.ts'
import { wordsOf } from './words.ts'

export interface Ranked {
  entry: Entry
  score: number
}

const NAME = 0.8
/** A keyword that is no other name of the thing, such as “jack” of the caution that a bike can fall. */
const KEYWORD_EXACT = 0.4
const HAS_OTHER_NAMES: ReadonlySet<Kind> = new Set(['glossary', 'symptom', 'chapter'])
const TEXT = 0.6
const TEXT_BESIDE_TITLE = 0.3
/** A title that says what was asked and nothing else. */
const EXACT = 0.8
/** The part of a score that a page loses if it names nothing but one small part of the query. */
const COVERAGE = 0.5
/** A concept with at least this score is covered. */
const COVERED = 0.2

/** For the words of their titles, what to do and what can hurt come before what explains. */
const KIND: Record<Kind, number> = {
  procedure: 1.25,
  job: 1.1,
  caution: 1.25,
  symptom: 1.1,
  glossary: 1.1,
  calculator: 1.05,
  lesson: 1,
  chapter: 1,
}

interface Titled {
  roots: readonly string[]
  /** roots without stop words, by which exactness is judged */
  bare: readonly string[]
  factor: number
  /** how much it counts that the query exhausts it */
  exact: number
}

const titled = new WeakMap<Entry, readonly Titled[]>()

function titlesOf(entry: Entry, lexicon: Lexicon): readonly Titled[] {
  const known = titled.get(entry)
  if (known) return known
  const made = [entry.title, ...entry.names].map((text, index) => {
    const words = wordsOf(text.replace(/[-/]/g, ' '))
    const joined = wordsOf(text).filter((word) => !words.includes(word))
    const roots = [...words, ...joined].map(stem)
    return {
      roots,
      bare: words.filter((word) => !lexicon.stop.has(word)).map(stem),
      factor: index === 0 ? 1 : NAME,
      exact: index === 0 ? 1 : HAS_OTHER_NAMES.has(entry.kind) ? NAME : KEYWORD_EXACT,
    }
  })
  titled.set(entry, made)
  return made
}

interface InTitles {
  /** best score of each concept */
  concepts: readonly number[]
  /** for each title, the share of its own words that the query accounts for, times each concept's score there */
  exact: readonly { share: number; factor: number; exact: number; concepts: readonly number[] }[]
}

function inTitles(entry: Entry, query: Query, lexicon: Lexicon): InTitles {
  const exact = titlesOf(entry, lexicon).map(({ roots, bare, factor, exact }) => {
    const found = query.concepts.map((concept) => conceptInTitle(concept, roots))
    const covered = bare.filter((root) => found.some(({ covers }) => covers.includes(root))).length
    return {
      share: bare.length === 0 ? 0 : covered / bare.length,
      factor,
      exact,
      concepts: found.map(({ score }) => score),
    }
  })
  return {
    exact,
    concepts: query.concepts.map((_, index) =>
      Math.max(0, ...exact.map(({ factor, concepts }) => factor * (concepts[index] ?? 0))),
    ),
  }
}

const conceptScore = (title: number, text: number, kind: Kind): number =>
  Math.max(title * KIND[kind] + TEXT_BESIDE_TITLE * text, TEXT * text)

/** Puts the entries in order: a title before another name, a name before the text, and a title that the query exhausts before one that has more words. `lean` favours a kind. */
export function rank(
  { query, rarity, inText }: Weighed,
  lexicon: Lexicon,
  lean: (kind: Kind) => number = () => 1,
): Ranked[] {
  const most = rarity.reduce((sum, value) => sum + value, 0) || 1
  const weighed = (values: readonly number[]): number =>
    values.reduce((sum, value, index) => sum + value * (rarity[index] ?? 0), 0) / most
  const scored = [...lexicon.entries.values()].map((entry) => {
    const titles = inTitles(entry, query, lexicon)
    const concepts = query.concepts.map((_, index) =>
      conceptScore(titles.concepts[index] ?? 0, inText[index]?.get(entry.id) ?? 0, entry.kind),
    )
    const exact = Math.max(
      0,
      ...titles.exact.map((title) => title.share * title.exact * weighed(title.concepts)),
    )
    const covered = weighed(concepts.map((score) => Math.min(1, score / COVERED)))
    return {
      entry,
      score:
        lean(entry.kind) *
        (1 - COVERAGE * (1 - covered)) *
        (weighed(concepts) + EXACT * exact * KIND[entry.kind]),
    }
  })
  return scored.filter(({ score }) => score > 0).sort((a, b) => b.score - a.score)
}

import type { Entry, Kind, Lexicon } from './lexicon.ts'
import { conceptInTitle } from './match.ts'
import type { Query } from './query.ts'
import { stem } from './stem.ts'
import { wordsOf } from './words.ts'

/** For each concept, by entry id: how strongly the index finds it in the text, from 0 to 1. */
export type InText = readonly ReadonlyMap<string, number>[]

export interface Ranked {
  entry: Entry
  score: number
}

const NAME = 0.85
const TEXT = 0.5
const TEXT_BESIDE_TITLE = 0.25
/** A title that says what was asked and nothing else. */
const EXACT = 0.7

/** For the words of their titles, what to do and what can hurt come before what explains. */
const KIND: Record<Kind, number> = { procedure: 1.2, caution: 1.2, symptom: 1.1, glossary: 1.1, calculator: 1.05, lesson: 1, chapter: 1 }

interface Titled {
  roots: readonly string[]
  /** roots without stop words, by which exactness is judged */
  bare: readonly string[]
  factor: number
}

const titled = new WeakMap<Entry, readonly Titled[]>()

function titlesOf(entry: Entry, lexicon: Lexicon): readonly Titled[] {
  const known = titled.get(entry)
  if (known) return known
  const made = [entry.title, ...entry.names].map((text, index) => {
    const words = wordsOf(text.replace(/[-/]/g, ' '))
    const joined = wordsOf(text).filter((word) => !words.includes(word))
    const roots = [...words, ...joined].map(stem)
    return { roots, bare: words.filter((word) => !lexicon.stop.has(word)).map(stem), factor: index === 0 ? 1 : NAME }
  })
  titled.set(entry, made)
  return made
}

interface InTitles {
  /** best score of each concept */
  concepts: readonly number[]
  /** for each title, the share of its own words that the query accounts for, times each concept's score there */
  exact: readonly { share: number; factor: number; concepts: readonly number[] }[]
}

function inTitles(entry: Entry, query: Query, lexicon: Lexicon): InTitles {
  const exact = titlesOf(entry, lexicon).map(({ roots, bare, factor }) => {
    const found = query.concepts.map((concept) => conceptInTitle(concept, roots))
    const covered = bare.filter((root) => found.some(({ covers }) => covers.includes(root))).length
    return { share: bare.length === 0 ? 0 : covered / bare.length, factor, concepts: found.map(({ score }) => score) }
  })
  return { exact, concepts: query.concepts.map((_, index) => Math.max(0, ...exact.map(({ factor, concepts }) => factor * (concepts[index] ?? 0)))) }
}

const conceptScore = (title: number, text: number, kind: Kind): number => Math.max(title * KIND[kind] + TEXT_BESIDE_TITLE * text, TEXT * text)

/**
 * Puts the entries in order: a concept counts the more the fewer entries have it; a title before another name, a name before the text; a title that
 * the query exhausts before one that has more words.
 */
export function rank(query: Query, inText: InText, lexicon: Lexicon, kinds: ReadonlySet<Kind>): Ranked[] {
  const entries = [...lexicon.entries.values()]
  const titles = entries.map((entry) => inTitles(entry, query, lexicon))
  const scores = entries.map((entry, at) =>
    query.concepts.map((_, index) => conceptScore(titles[at]?.concepts[index] ?? 0, inText[index]?.get(entry.id) ?? 0, entry.kind)),
  )
  const rarity = query.concepts.map(({ weight }, index) => {
    const having = scores.reduce((sum, each) => sum + Math.min(1, each[index] ?? 0), 0)
    return weight * Math.log(1 + entries.length / (1 + having))
  })
  const most = rarity.reduce((sum, value) => sum + value, 0) || 1
  const weighed = (values: readonly number[]): number => values.reduce((sum, value, index) => sum + value * (rarity[index] ?? 0), 0) / most
  return entries
    .map((entry, at) => {
      const exact = Math.max(0, ...(titles[at]?.exact ?? []).map(({ share, factor, concepts }) => share * factor * weighed(concepts)))
      return { entry, score: weighed(scores[at] ?? []) + EXACT * exact * KIND[entry.kind] }
    })
    .filter(({ entry, score }) => score > 0 && (kinds.size === 0 || kinds.has(entry.kind)))
    .sort((a, b) => b.score - a.score)
}

import { asksForNumber } from './intent.ts'
import type { Lexicon, Phrase } from './lexicon.ts'
import { looksLikeSlip, nearestWord } from './spelling.ts'
import { stem } from './stem.ts'
import { typedWords } from './words.ts'
import type { Typed } from './words.ts'

/** One way of saying a concept. */
export interface Alternative {
  words: readonly string[]
  roots: readonly string[]
  /** how near it is to what was typed, 1 for the words themselves */
  nearness: number
}

/** One thing that the reader asked for, with the other ways to say it. */
export interface Concept {
  alternatives: readonly Alternative[]
  /** how much it counts beside the others, 1 for a word and less for a number */
  weight: number
}

export interface Correction {
  wrote: string
  searched: string
}

export interface Query {
  concepts: readonly Concept[]
  corrections: readonly Correction[]
  /** whether it asks for a number: “how much sag” */
  number: boolean
}

const SYNONYM = 0.8
const JOINED = 0.95
const CORRECTED = 0.8
/** A figure rarely stands on the page that answers, so that it only decides between equals. */
const NUMBER_WEIGHT = 0.15
const LIGHT_WEIGHT = 0.25

const alternative = (words: readonly string[], nearness: number): Alternative => ({
  words,
  roots: words.map(stem),
  nearness,
})

function synonymsOf(roots: readonly string[], nearness: number, lexicon: Lexicon): Alternative[] {
  const found = (lexicon.phrases.get(roots[0] ?? '') ?? []).filter(
    (phrase) =>
      phrase.roots.length === roots.length &&
      phrase.roots.every((root, index) => root === roots[index]),
  )
  const others = new Set(found.flatMap(({ group }) => lexicon.groups[group] ?? []))
  return [...others]
    .map((said) =>
      alternative(
        typedWords(said).map(({ word }) => word),
        nearness * SYNONYM,
      ),
    )
    .filter((other) => other.roots.join(' ') !== roots.join(' '))
}

function concept(ways: readonly Alternative[], lexicon: Lexicon): Concept {
  const first = ways[0]
  const words = first?.words ?? []
  const weight = words.every((word) => /^\d+$/.test(word))
    ? NUMBER_WEIGHT
    : words.every((word) => lexicon.light.has(word))
      ? LIGHT_WEIGHT
      : 1
  return {
    alternatives: [...ways, ...ways.flatMap((way) => synonymsOf(way.roots, way.nearness, lexicon))],
    weight,
  }
}

/** The longest phrase of the synonyms that begins here. */
function phraseAt(roots: readonly string[], at: number, lexicon: Lexicon): Phrase | undefined {
  return (lexicon.phrases.get(roots[at] ?? '') ?? []).find(
    (phrase) =>
      phrase.roots.length > 1 && phrase.roots.every((root, index) => root === roots[at + index]),
  )
}

/** Two known words that were written as one. */
function takenApart(word: string, lexicon: Lexicon): string[] | undefined {
  for (let at = 3; at <= word.length - 3; at++) {
    const halves = [word.slice(0, at), word.slice(at)]
    if (halves.every((half) => lexicon.roots.has(stem(half)))) return halves
  }
  return undefined
}

/** The most used word that goes on from what was typed. */
const begun = (word: string, lexicon: Lexicon): string | undefined =>
  word.length > 3 ? lexicon.words.find((other) => other.startsWith(word)) : undefined

/**
 * How an unknown word is read: in its parts, as the beginning of a word, as two words, as a slip; else as it stands. A slip in a stop word is no word at all.
 * Beside words that the site knows, what may be a word of the language stays as it is. */
function unknown(
  { word, parts }: Typed,
  lexicon: Lexicon,
  corrections: Correction[],
  alone: boolean,
): Alternative[] {
  if (parts.length > 1 && parts.some((part) => lexicon.roots.has(stem(part))))
    return [alternative(parts, 1)]
  const whole = begun(word, lexicon)
  if (whole !== undefined) return [alternative([whole], JOINED)]
  const halves = takenApart(word, lexicon)
  if (halves) return [alternative(halves, JOINED)]
  const meant = lexicon.english.has(word) ? undefined : nearestWord(word, lexicon.words)
  if (meant === undefined || !(alone || looksLikeSlip(word, meant))) return [alternative([word], 1)]
  if (lexicon.stop.has(meant)) return []
  corrections.push({ wrote: word, searched: meant })
  return [alternative([meant], CORRECTED)]
}

function waysToRead(
  typed: Typed,
  next: Typed | undefined,
  lexicon: Lexicon,
  corrections: Correction[],
  alone: boolean,
): { ways: Alternative[]; used: number } {
  const known = lexicon.roots.has(stem(typed.word)) || /^\d+$/.test(typed.word)
  const joined = next ? typed.word + next.word : ''
  if (next && joined.length > 5 && lexicon.words.includes(joined))
    return {
      ways: [alternative([joined], 1), alternative([typed.word, next.word], JOINED)],
      used: 2,
    }
  if (!known) return { ways: unknown(typed, lexicon, corrections, alone), used: 1 }
  return {
    ways: [
      alternative([typed.word], 1),
      ...(typed.parts.length > 1 ? [alternative(typed.parts, JOINED)] : []),
    ],
    used: 1,
  }
}

/** Reads what was typed: phrases first, then the words that carry meaning, each corrected if no page has it. */
export function readQuery(text: string, lexicon: Lexicon): Query {
  const all = typedWords(text)
  const isKnown = (word: string): boolean => lexicon.roots.has(stem(word))
  const alone = !all.some(({ word }) => !lexicon.stop.has(word) && isKnown(word))
  const carries = all.some(({ word }) => !lexicon.stop.has(word))
  const roots = all.map(({ word }) => stem(word))
  const concepts: Concept[] = []
  const corrections: Correction[] = []
  for (let at = 0; at < all.length;) {
    const typed = all[at]
    if (!typed) break
    const phrase = phraseAt(roots, at, lexicon)
    if (phrase) {
      const words = all.slice(at, at + phrase.roots.length).map(({ word }) => word)
      concepts.push(concept([alternative(words, 1)], lexicon))
      at += words.length
    } else if (carries && lexicon.stop.has(typed.word)) {
      at += 1
    } else {
      const { ways, used } = waysToRead(typed, all[at + 1], lexicon, corrections, alone)
      if (ways.length > 0) concepts.push(concept(ways, lexicon))
      at += used
    }
  }
  return { concepts, corrections, number: asksForNumber(text) }
}

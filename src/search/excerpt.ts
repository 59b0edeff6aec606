import type { Fragment } from './find.ts'
import { agree } from './match.ts'
import type { Query } from './query.ts'
import { stem } from './stem.ts'
import { wordsOf } from './words.ts'

/** A stretch of text; `found` where it is a word that was searched for. */
export interface Piece {
  text: string
  found: boolean
}

export interface Passage {
  pieces: readonly Piece[]
  /** share of the query's concepts that the passage names, from 0 to 1 */
  share: number
}

export interface Section extends Passage {
  /** id of the heading */
  id: string
  heading: string
}

const LENGTH = 28
/** A passage begins at its sentence if that began no earlier than this many words before the first word found. */
const LEAD_IN = 8
/** What a number in sight is worth in a passage that answers “how much”, beside 1 for a word of the question. */
const NUMBER = 0.4
const MOST_SECTIONS = 3
/** A text of no more words than this is shown from its beginning, unless a number that answers stands past it. */
const SHORT_TEXT = 60
/** The title stands within so many words of the beginning, or not at all. */
const TITLE_WITHIN = 30

/** Whether a run of roots stands at a place of the text, given the roots of its words. */
const standsAt = (
  run: readonly string[],
  texts: readonly (readonly string[])[],
  at: number,
): boolean => run.every((root, index) => texts[at + index]?.some((other) => agree(root, other) > 0))

/** For each word of the text, the concepts that it names; a phrase is named only where its words stand side by side. */
function conceptsAt(words: readonly string[], { concepts }: Query): number[][] {
  const known = new Map<string, string[]>()
  const roots = words.map((word) => {
    const seen =
      known.get(word) ?? [...wordsOf(word), ...wordsOf(word.replace(/[-/]/g, ' '))].map(stem)
    known.set(word, seen)
    return seen
  })
  const named = words.map((): number[] => [])
  for (const [index, { alternatives }] of concepts.entries()) {
    for (const { roots: run } of alternatives) {
      for (const at of words.keys()) {
        if (!standsAt(run, roots, at)) continue
        for (let word = at; word < at + run.length; word++)
          if (!named[word]?.includes(index)) named[word]?.push(index)
      }
    }
  }
  return named
}

const hasNumber = (words: readonly string[]): boolean => words.some((word) => /\d/.test(word))

const endsSentence = (word: string): boolean => /[.?:]$/.test(word)

function beginning(words: readonly string[], from: number, first: number): number {
  for (let at = first; at >= Math.max(from, first - LEAD_IN); at--)
    if (at === from || endsSentence(words[at - 1] ?? '')) return at
  return Math.max(from, first - 3)
}

function pieces(words: readonly string[], found: readonly boolean[]): Piece[] {
  const out: Piece[] = []
  for (const [index, word] of words.entries()) {
    const isFound = found[index] === true
    const space = index > 0 ? ' ' : ''
    const last = out.at(-1)
    if (last && last.found === isFound) last.text += space + word
    else if (last && isFound) {
      // the space before a found word is no part of it
      last.text += space
      out.push({ text: word, found: true })
    } else out.push({ text: space + word, found: isFound })
  }
  return out
}

/** How much of the query some words name, and how many of them it takes. */
function gathered(
  named: readonly number[][],
  concepts: Query['concepts'],
): { weight: number; span: number } {
  const seen = new Set<number>()
  let span = 0
  for (const [at, indexes] of named.entries()) {
    const before = seen.size
    for (const index of indexes) seen.add(index)
    if (seen.size > before) span = at
  }
  return { weight: [...seen].reduce((sum, index) => sum + (concepts[index]?.weight ?? 0), 0), span }
}

/** The narrowest stretch between two places that names most of the query. */
function best(
  words: readonly string[],
  named: readonly number[][],
  from: number,
  to: number,
  { concepts, number }: Query,
): Passage {
  const weight = concepts.reduce((sum, concept) => sum + concept.weight, 0) || 1
  let first = from
  let most = { weight: 0, span: 0 }
  let worth = 0
  let answers = false
  for (let at = from; at < to; at++) {
    if (named[at]?.length === 0) continue
    const until = Math.min(to, at + LENGTH - LEAD_IN)
    const here = gathered(named.slice(at, until), concepts)
    const told = number && hasNumber(words.slice(at, until)) ? NUMBER : 0
    if (here.weight + told > worth || (here.weight + told === worth && here.span < most.span))
      [most, first, worth, answers] = [here, at, here.weight + told, told > 0]
  }
  const isShort = to - from <= SHORT_TEXT && to === words.length
  const missed = answers && !hasNumber(words.slice(from, from + LENGTH))
  const begin = isShort && !missed ? from : beginning(words, from, first)
  const end = Math.min(to, begin + LENGTH)
  const shown = words.slice(begin, end)
  const found = shown.map((_, index) =>
    (named[begin + index] ?? []).some((index) => (concepts[index]?.weight ?? 0) === 1),
  )
  const text = pieces(shown, found)
  if (end < to) text.push({ text: ' …', found: false })
  return { pieces: text, share: most.weight / weight }
}

/** Where the text begins after its title. */
function afterTitle(words: readonly string[], title: string): number {
  const run = wordsOf(title)
  for (let at = 0; at < Math.min(words.length, TITLE_WITHIN); at++) {
    const end = at + title.trim().split(/\s+/).length
    if (wordsOf(words.slice(at, end).join(' ')).join(' ') === run.join(' ')) return end
  }
  return 0
}

/** The best passage of a page, and of its sections under headings with an id those that answer best. */
export function passages(
  { content, anchors }: Fragment,
  title: string,
  query: Query,
): { passage: Passage; sections: Section[] } {
  const words = content.split(/\s+/)
  const named = conceptsAt(words, query)
  const headings = anchors.filter(({ element, text }) => /^h[2-4]$/.test(element) && text)
  const from = Math.min(afterTitle(words, title), words.length - 1)
  const sections = headings.map(
    ({ id, text = '', location }, index): Section & { inHeading: number } => {
      const after = location + text.trim().split(/\s+/).length
      const to = headings[index + 1]?.location ?? words.length
      const inHeading = new Set(named.slice(location, after).flat()).size
      return {
        id,
        heading: text.trim(),
        inHeading,
        ...best(words, named, after, Math.max(after, to), query),
      }
    },
  )
  const passage = best(words, named, from, words.length, query)
  const good = sections
    .filter(({ share, inHeading }) => share > 0 && (inHeading > 0 || share >= 0.99 * passage.share))
    .sort((a, b) => b.share + b.inHeading - a.share - a.inHeading)
  return {
    passage,
    sections: good.slice(0, MOST_SECTIONS).map(({ inHeading: _, ...section }) => section),
  }
}

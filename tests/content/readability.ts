import { parseHTML } from 'linkedom'
import { syllable } from 'syllable'

/** How long a text is, how its sentences run and how hard it is to read. */
export interface Readability {
  words: number
  sentences: number
  /** mean words in a sentence */
  sentenceLength: number
  /** standard deviation of the words in a sentence */
  spread: number
  /** share of sentences of six words or fewer */
  short: number
  /** Flesch–Kincaid grade: 0.39 words/sentences + 11.8 syllables/words − 15.59 (Kincaid et al. 1975) */
  grade: number
}

/** What is not prose: formulas' derivations, calculators, drawings, tables, contents. */
const NOT_PROSE = '.derivation, [data-calculator-place], nav, .contents, figure, .still, table, math, script, style, .cite, .tip, .verdict, .steps-nav, button, .kicker, .value small'
const BLOCKS = 'p, li, h1, h2, h3, dt, dd, .ask, .answer, .why, td'
/** What is read, and is no running text: lists, headings, answers to choose from, words set in bold before a sentence. */
const NOT_RUNNING = 'li, h1, h2, h3, dt, dd, .answer > :not(.why), .idea, .head, .near > p, .aside, .caution, .words, .close, .card-lines, .kicker, p > strong:first-child, p > b:first-child'
const SENTENCE_END = /(?<=[.?!])[”"’']?\s+(?=[“"'(]?[\p{Lu}\d])/u

/** The texts of a built page, block by block, without what `without` names. */
function blocksOf(html: string, without: string): string[] {
  const { document } = parseHTML(html)
  const main = document.querySelector('main')!
  for (const element of main.querySelectorAll(without)) element.remove()
  const blocks = [...main.querySelectorAll(BLOCKS)].map((block) => {
    const own = block.cloneNode(true) as HTMLElement
    for (const inner of own.querySelectorAll(BLOCKS)) inner.remove()
    return own.textContent.replace(/\s+/g, ' ').trim()
  })
  return blocks.filter((text) => /\p{L}{2}/u.test(text))
}

/** What belongs to every page of its kind and not to the chapter's own text: cautions in full, the card, what to record and when to stop. */
const NOT_ITS_OWN = '.caution, .card-lines, .able, .close'

/** All that a chapter says in its own words besides derivations, sentence by sentence. */
export const sentencesOf = (html: string): string[] => blocksOf(html, `${NOT_PROSE}, ${NOT_ITS_OWN}`).flatMap((text) => text.split(SENTENCE_END))

/** The running text of a built page, sentence by sentence: paragraphs, questions and reasons. */
export const runningSentences = (html: string): string[] => blocksOf(html, `${NOT_PROSE}, ${NOT_RUNNING}`).flatMap((text) => text.split(SENTENCE_END))

/** Figures and units are read as one short word each: "15 mm" is not harder than "it". */
const wordsOf = (sentence: string): string[] => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word))

/** A sentence of this many words or fewer is a short one. */
const SHORT = 6

/** Length, rhythm and grade of sentences. */
export function readability(sentences: readonly string[]): Readability {
  const lengths = sentences.map((sentence) => wordsOf(sentence).length)
  const words = sentences.flatMap(wordsOf)
  const syllables = words.reduce((sum, word) => sum + (/\p{L}/u.test(word) ? Math.max(1, syllable(word)) : 1), 0)
  const sentenceLength = words.length / sentences.length
  const spread = Math.sqrt(lengths.reduce((sum, length) => sum + (length - sentenceLength) ** 2, 0) / lengths.length)
  const short = lengths.filter((length) => length <= SHORT).length / lengths.length
  return { words: words.length, sentences: sentences.length, sentenceLength, spread, short, grade: 0.39 * sentenceLength + 11.8 * (syllables / words.length) - 15.59 }
}

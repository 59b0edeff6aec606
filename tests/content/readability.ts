import { parseHTML } from 'linkedom'
import { syllable } from 'syllable'

/** How long a text is and how hard to read. */
export interface Readability {
  words: number
  sentences: number
  /** mean words in a sentence */
  sentenceLength: number
  /** Flesch–Kincaid grade: 0.39 words/sentences + 11.8 syllables/words − 15.59 (Kincaid et al. 1975) */
  grade: number
}

/** What is not prose: formulas' derivations, calculators, drawings, tables, contents. */
const NOT_PROSE = '.derivation, [data-calculator-place], nav, .contents, figure, .still, table, math, script, style, .cite, .tip, .verdict, .steps-nav, button, .kicker, .value small'
const BLOCKS = 'p, li, h1, h2, h3, dt, dd, .ask, .answer, .why, td'

/** The sentences of a built page's prose, as a reader meets them. */
export function sentencesOf(html: string): string[] {
  const { document } = parseHTML(html)
  const main = document.querySelector('main')!
  for (const element of main.querySelectorAll(NOT_PROSE)) element.remove()
  const blocks = [...main.querySelectorAll(BLOCKS)].map((block) => {
    const own = block.cloneNode(true) as HTMLElement
    for (const inner of own.querySelectorAll(BLOCKS)) inner.remove()
    return own.textContent.replace(/\s+/g, ' ').trim()
  })
  return blocks.filter((text) => /\p{L}{2}/u.test(text)).flatMap((text) => text.split(/(?<=[.?!:])[”"']?\s+(?=[“"'(]?[\p{Lu}\d])/u))
}

/** Figures and units are read as one short word each: "15 mm" is not harder than "it". */
const wordsOf = (sentence: string): string[] => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word))

/** Length and grade of sentences. */
export function readability(sentences: readonly string[]): Readability {
  const words = sentences.flatMap(wordsOf)
  const syllables = words.reduce((sum, word) => sum + (/\p{L}/u.test(word) ? Math.max(1, syllable(word)) : 1), 0)
  const sentenceLength = words.length / sentences.length
  return { words: words.length, sentences: sentences.length, sentenceLength, grade: 0.39 * sentenceLength + 11.8 * (syllables / words.length) - 15.59 }
}

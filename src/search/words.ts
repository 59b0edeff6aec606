/** Units that are often written without a space after their number. */
const UNITS = 'mm|cm|in|n|nm|n/mm|kg/mm|kgf/mm|lb/in|lbf/in|kg|lb|lbs|st|bar|psi|c|f|deg|ml|cc|cst'
const NUMBER_AND_UNIT = new RegExp(`(\\d)(${UNITS})(?![a-z0-9/])`, 'g')
/** A size marking on a tyre wall, such as 120/70-17 or 120/70 R 17. */
const TYRE_SIZE = /\b\d{2,3}\/\d{2,3}(\s*-\s*|\s*z?r\s*|\s+)\d{2}\b/g

const plain = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[‘’']s?(?![a-z])/g, '')
    .replace(/[‘’']/g, '')

/**
 * The words of a text, small letters, without accents and apostrophes. A word with a hyphen, stroke or point inside stays one word without it
 * (`pre-load` gives `preload`, `N/mm` gives `nmm`), as the index has it.
 */
export function wordsOf(text: string): string[] {
  return plain(text)
    .replace(/(\p{L}|\d)[-‐‑–/.,·](?=\p{L}|\d)/gu, '$1')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
}

/** One word as typed: its letters joined, and its parts where a hyphen or stroke stood in it. */
export interface Typed {
  word: string
  parts: readonly string[]
}

/** The words of a query as typed. A number is taken from its unit, and a tyre's size marking adds the words “tyre size”. */
export function typedWords(query: string): Typed[] {
  const text = plain(query).replace(TYRE_SIZE, ' tyre size ').replace(NUMBER_AND_UNIT, '$1 $2')
  return text
    .split(/[^\p{L}\p{N}\-‐‑–/.,]+/u)
    .map((typed) => ({
      word: wordsOf(typed).join(''),
      parts: typed.split(/[^\p{L}\p{N}]+/u).filter((part) => part !== ''),
    }))
    .filter(({ word }) => word !== '')
}

/** Words of this many letters or fewer are never corrected: too many real words lie one slip away. */
export const TOO_SHORT = 3
/** From this length a word with two slips still has only one near neighbour as a rule. */
const LONG = 8

/**
 * Slips between two words (Damerau-Levenshtein distance in its optimal string alignment form): letters missing, added, changed, or two
 * neighbours swapped. Stops counting above `most` and gives `most + 1`.
 */
export function slips(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1
  let before: number[] = []
  let above = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const changed = (above[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      let least = Math.min(changed, (above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1)
      row.push(least)
    }
    if (Math.min(...row) > most) return most + 1
    before = above
    above = row
  }
  return above[b.length] ?? most + 1
}

/**
 * The word of the vocabulary that was most likely meant, or nothing. One slip; two in a word of eight letters or more if the first letter agrees.
 * Of several, a word with the same first letter goes first, then the one that comes earlier in the vocabulary, which is sorted by how often it is used.
 */
export function nearestWord(word: string, vocabulary: readonly string[]): string | undefined {
  if (word.length <= TOO_SHORT || /\d/.test(word)) return undefined
  for (const most of word.length >= LONG ? [1, 2] : [1]) {
    const near = vocabulary.filter(
      (other) =>
        other.length >= TOO_SHORT &&
        (most === 1 || other[0] === word[0]) &&
        slips(word, other, most) <= most,
    )
    const found = near.find((other) => other[0] === word[0]) ?? near[0]
    if (found !== undefined) return found
  }
  return undefined
}

const KEYS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm']
/** Letters that are written for one another because they sound alike. */
const ALIKE = ['aeiouy', 'cksxz', 'cst', 'dt', 'bp', 'fv', 'gj', 'mn']

/** Whether one letter may have been typed for another: a key beside it, above or below on the usual English keyboard, or the same sound. */
function mistyped(a: string, b: string): boolean {
  if (ALIKE.some((letters) => letters.includes(a) && letters.includes(b))) return true
  const place = (letter: string): [number, number] => {
    const row = KEYS.findIndex((keys) => keys.includes(letter))
    return [row, KEYS[row]?.indexOf(letter) ?? -9]
  }
  const [[rowA, columnA], [rowB, columnB]] = [place(a), place(b)]
  return Math.abs(rowA - rowB) <= 1 && Math.abs(columnA - columnB) <= 1
}

/**
 * Whether a word that the site has not is a slip for one that it has, or rather another word of the language, such as “track” beside “crack” or “vague”
 * beside “value”. A short word is a slip if it begins alike, and if a letter that differs could have been typed for the other; a long one always.
 */
export function looksLikeSlip(word: string, meant: string): boolean {
  if (word.length >= LONG) return true
  const differing = [...word].map((_, at) => at).filter((at) => word[at] !== meant[at])
  const [at = -1, next = -1] = differing
  const swapped = word[at] === meant[next] && word[next] === meant[at]
  if (word.length === meant.length && differing.length === 2 && swapped) return true
  if (word[0] !== meant[0]) return false
  return word.length !== meant.length || mistyped(word[at] ?? '', meant[at] ?? '')
}

import type { Correction } from './query.ts'

/** How many were found, for the status line. */
export function sayCount(count: number, text: string): string {
  if (count === 0) return `Nothing found for “${text}”.`
  return `${count} ${count === 1 ? 'result' : 'results'} for “${text}”.`
}

/** What was searched for in place of what was written, or nothing. */
export function sayCorrections(corrections: readonly Correction[]): string {
  if (corrections.length === 0) return ''
  const list = (words: readonly string[]): string => words.join(', ')
  return `Searched for ${list(corrections.map(({ searched }) => searched))}; you wrote ${list(corrections.map(({ wrote }) => wrote))}.`
}

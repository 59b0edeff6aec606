import type { Cell } from './cells.ts'
import { codesOf } from './cells.ts'
import type { ChoiceOutput, ListOutput } from './statement.ts'

export type WordOutput = ChoiceOutput | ListOutput

/** Verdicts of which one is true, as words for the reader. */
export const eitherOf = (labels: readonly string[]): string => labels.join(', or ')

/** The words of a code; a list of codes has a space between two. */
export function labelOf(output: WordOutput, code: string): string {
  const labels = code.split(' ').flatMap((one) => output.options[one] ?? [])
  return labels.length > 0 || output.kind === 'choice' ? labels.join('; ') : output.none
}

/** The words of a cell: every verdict that it may have. */
export const wordsOf = (output: WordOutput, cell: Cell): string =>
  eitherOf(codesOf(cell).map((code) => labelOf(output, code)))

/** A label without what it adds in brackets: a sheet says that. */
export const nameOf = (label: string): string => label.replace(/ \([^)]*\)$/, '')

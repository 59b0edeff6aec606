import type { JSX } from 'preact'
import type { Source } from '../../src/record/records.ts'

/* A small sign beside the word, so that sources can be told apart at a glance: a rule, a book, a tag, a broken ring. */
const PATHS: Record<Source, string> = {
  measured: 'M2 5.5h14v7H2zM5 5.5v3M8 5.5v4M11 5.5v3M14 5.5v4',
  manual:
    'M9 5C7 3.5 4.500 3.500 2.500 4v10c2-.5 4.500-.5 6.500 1 2-1.500 4.500-1.500 6.500-1V4c-2-.5-4.500-.5-6.500 1zM9 5v10',
  label: 'M2 5h9l5 4-5 4H2z',
  guessed: 'M9 3.200a5.800 5.800 0 1 0 .01 0',
}

export const SourceSign = ({ from }: { from: Source }): JSX.Element => (
  <svg class={`source-sign ${from}`} viewBox="0 0 18 18" aria-hidden="true">
    <path d={PATHS[from]} />
  </svg>
)

import type { Given } from './given.ts'

/** A hand-worked case of `worked.ts`, which the browser never loads. Values are in each definition's unit; a key is a result, an end of one (`sag.low`), or a cell of a table by row and column (`misses.0.2`). */
export interface WorkedCase {
  title: string
  given: Given
  expect: Readonly<Record<string, { value: number; tolerance: number }>>
  /** functions of the core that these values come out of, besides what they call */
  core?: readonly string[]
  /** the working, with its source or "worked by hand" */
  working: string
}

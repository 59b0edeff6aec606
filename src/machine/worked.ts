import type { Given } from './given.ts'

/** A hand-worked case of `worked.ts`, which the browser never loads. Values are in each definition's unit. */
export interface WorkedCase {
  title: string
  given: Given
  expect: Readonly<Record<string, { value: number; tolerance: number }>>
  /** the working, with its source or "worked by hand" */
  working: string
}

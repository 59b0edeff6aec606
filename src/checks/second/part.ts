import type { Drawn } from './bikes.ts'

/** One function of the core beside the second method's own way to the same number. */
export interface Part {
  name: string
  core(drawn: Drawn): number
  other(drawn: Drawn): number
}

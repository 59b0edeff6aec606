import type { Given } from '../../machine/given.ts'

/** One state of a calculator, and what the second method says of its results [SI]. */
export interface OneCase {
  calculator: string
  given: Given
  others: Readonly<Record<string, number>>
  /** functions of the core that these results come out of */
  core: readonly string[]
  /** how far apart they may be [SI; past 1 a share], where more than the balance of a bike */
  allowed?: number
}

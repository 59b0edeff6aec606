import { coverageFactor, propagate } from '../core/index.ts'
import type { Interval } from './define.ts'

/** The share of such intervals that hold the true value. */
export const COVERAGE = 0.95

/** 1.96: widens a standard uncertainty to about 95 %. */
const FACTOR = coverageFactor({ degreesOfFreedom: Infinity, probability: COVERAGE })

/** Standard uncertainty of a reading that is within ±`limit`, anywhere equally likely; the unit is the caller's. Source: JCGM 100:2008, 4.3.7. */
export const standardFromLimit = (limit: number): number => limit / Math.sqrt(3)

/** Half the width of the interval that covers about 95 %, from a standard uncertainty. */
export const expanded = (standard: number): number => FACTOR * standard

/** An estimate and the interval about it that covers about 95 %. */
export const about = (value: number, standard: number): Interval & { value: number } => ({
  value,
  low: value - expanded(standard),
  high: value + expanded(standard),
})

/** Carries readings, each within its ± limit, through a measurement function to an interval that covers about 95 %. Units are the caller's. */
export function measured(measure: (values: number[]) => number, values: readonly number[], limits: readonly number[]): Interval & { value: number } {
  const { value, uncertainty } = propagate(measure, values, limits.map(standardFromLimit))
  return about(value, uncertainty)
}

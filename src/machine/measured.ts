import { coverageFactor, propagate } from '../core/index.ts'
import type { Interval } from '../units/interval.ts'

/** The share of such intervals that hold the true value. */
export const COVERAGE = 0.95

/** 1.96: widens a standard uncertainty to about 95 %. */
const FACTOR = coverageFactor({ degreesOfFreedom: Infinity, probability: COVERAGE })

/** Standard uncertainty of a reading that is within ±`limit`, anywhere equally likely; the unit is the caller's. Source: JCGM 100:2008, 4.3.7. */
export const standardFromLimit = (limit: number): number => limit / Math.sqrt(3)

/** The expected range of three readings, in standard deviations of one: the constant d₂ of control charts (Montgomery, Statistical Quality Control, from memory). */
const RANGE_OF_THREE = 1.693

/**
 * Half the width of the interval that covers about 95 % of the difference between two means of three readings each, whose repeats lie `spread` apart; the unit
 * is the caller's. Two ranges of three leave about four degrees of freedom. Source: JCGM 100:2008, 4.2.3 and G.3.2.
 */
export function expandedFromSpread(spread: number): number {
  const ofOneMean = spread / RANGE_OF_THREE / Math.sqrt(3)
  return coverageFactor({ degreesOfFreedom: 4, probability: COVERAGE }) * ofOneMean * Math.SQRT2
}

/** Half the width of the interval that covers about 95 %, from a standard uncertainty. */
export const expanded = (standard: number): number => FACTOR * standard

/** An estimate and the interval about it that covers about 95 %. */
export const about = (value: number, standard: number): Interval & { value: number } => ({
  value,
  low: value - expanded(standard),
  high: value + expanded(standard),
})

/** Carries readings, each within its ± limit, through a measurement function to an interval that covers about 95 %. Units are the caller's. */
export function measured(
  measure: (values: number[]) => number,
  values: readonly number[],
  limits: readonly number[],
): Interval & { value: number } {
  const { value, uncertainty } = propagate(measure, values, limits.map(standardFromLimit))
  return about(value, uncertainty)
}

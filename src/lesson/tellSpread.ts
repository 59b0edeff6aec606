import { formatNumber } from '../units/say.ts'
import type { Spread } from './spread.ts'

const RANGE = 2

const number = (value: number): string => formatNumber(value, RANGE)

/** How far readings scatter, by what makes them. */
function tellScatter({ study, readersAlone, repeats }: Spread): string[] {
  const own = study === null ? readersAlone.own : Math.sqrt(study.variance.repeatability)
  const readers = study === null ? readersAlone.readers : Math.sqrt(study.variance.reproducibility)
  const told = [
    `One reader’s own repeats scatter by ${number(own)} (standard deviation). ${repeats} readings bring that down to ${number(own / Math.sqrt(repeats))}.`,
    `From reader to reader the means differ by ${number(readers)}, beyond what repeats explain.`,
  ]
  if (study === null) return told
  const { variance } = study
  const share = variance.total === 0 ? 0 : (100 * variance.gauge) / variance.total
  return [
    ...told,
    `From bike to bike they differ by ${number(Math.sqrt(variance.part))}. Readers and repeats together make ${formatNumber(share, 0)} % of the whole variance.`,
  ]
}

/** Whose fork sticks: with one bike nobody can say what is wide. */
function tellSticky({ study, sticky }: Spread): string {
  if (study === null)
    return 'There is one bike. Whether its friction band is wide shows beside a second one.'
  return sticky === null
    ? 'No fork’s friction band is wider than the others’ by more than chance.'
    : `${sticky} has a wider friction band than every other bike, whoever reads: that is the fork, not the reader. Have it looked at before it is set up.`
}

/** What the analysis says, in sentences for a class; numbers are in the unit that the class typed. */
export function tellSpread(spread: Spread): string[] {
  const { study, bikes, bands, apart, scattered } = spread
  return [
    ...tellScatter(spread),
    `Friction bands, lifted less pushed: ${bikes.map((bike, index) => `${bike} ${number(bands[index]!)}`).join(', ')}.`,
    apart === null
      ? 'No reader lies apart from the others by more than chance.'
      : `${apart} reads another length than the others${study === null ? '' : ', on every bike alike'}. Look together at the two edges that the rule is laid to.`,
    scattered === null
      ? 'No reader’s own repeats scatter more than the others’.'
      : `${scattered}’s own repeats scatter more than the others’. Was the rule held, or was the fork still moving?`,
    tellSticky(spread),
  ]
}

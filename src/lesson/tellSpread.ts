import type { Spread } from './spread.ts'

const RANGE = 2

const number = (value: number): string => value.toFixed(RANGE)

/** What the analysis says, in sentences for a class; numbers are in the unit that the class typed. */
export function tellSpread({ study, bikes, bands, apart, scattered, sticky }: Spread): string[] {
  const { variance, lines } = study
  const repeats =
    1 +
    lines.repeat.degreesOfFreedom /
      ((lines.part.degreesOfFreedom + 1) * (lines.reader.degreesOfFreedom + 1))
  const own = Math.sqrt(variance.repeatability)
  const readers = Math.sqrt(variance.reproducibility)
  const between = Math.sqrt(variance.part)
  const share = variance.total === 0 ? 0 : (100 * variance.gauge) / variance.total
  return [
    `One reader’s own repeats scatter by ${number(own)} (standard deviation). ${repeats} readings bring that down to ${number(own / Math.sqrt(repeats))}.`,
    `From reader to reader the means differ by ${number(readers)}, beyond what repeats explain.`,
    `From bike to bike they differ by ${number(between)}. Readers and repeats together make ${share.toFixed(0)} % of the whole variance.`,
    `Friction bands, lifted less pushed: ${bikes.map((bike, index) => `${bike} ${number(bands[index]!)}`).join(', ')}.`,
    apart === null
      ? 'No reader lies apart from the others by more than chance.'
      : `${apart} reads another length than the others, on every bike alike. Look together at the two edges that the rule is laid to.`,
    scattered === null
      ? 'No reader’s own repeats scatter more than the others’.'
      : `${scattered}’s own repeats scatter more than the others’. Was the rule held, or was the fork still moving?`,
    sticky === null
      ? 'No fork’s friction band is wider than the others’ by more than chance.'
      : `${sticky} has a wider friction band than every other bike, whoever reads: that is the fork, not the reader. Have it looked at before it is set up.`,
  ]
}

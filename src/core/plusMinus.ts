import { DomainError, finite, positive, record } from './domain.ts'

/** How far a figure may be off: by a limit either way, or by a standard uncertainty; in the figure's unit. */
export type PlusMinus = { limit: number } | { standard: number }

/** A figure known from a low to a high end alone, or ± about the figure that stands in the bike. */
export type Range = PlusMinus | { low: number; high: number }

/** A figure with its standard uncertainty, in one unit. */
export interface Estimate {
  value: number
  uncertainty: number
}

/**
 * Standard uncertainty of a figure that is off by no more than a limit, every error up to it as likely as any other: limit/√3; one that is standard
 * already is handed back. Refuses what is not above 0 and both at once. Source: JCGM 100:2008, 4.3.7 (from memory).
 */
export function standardUncertainty(parameter: string, plusMinus: PlusMinus): number {
  const { limit, standard } = record(parameter, plusMinus) as { limit?: number; standard?: number }
  if ((limit == null) === (standard == null))
    throw new DomainError(
      parameter,
      plusMinus,
      'must hold either a limit or a standard uncertainty',
    )
  return standard == null
    ? positive(`${parameter}.limit`, limit) / Math.sqrt(3)
    : positive(`${parameter}.standard`, standard)
}

/** A range as an observation: ± about a figure, or the middle of low and high with half of what lies between as its limit. */
export function estimateOf(parameter: string, range: Range, figure: number | null): Estimate {
  if ('low' in record(parameter, range)) {
    const { low, high } = range as { low: number; high: number }
    if (finite(`${parameter}.high`, high) <= finite(`${parameter}.low`, low))
      throw new DomainError(`${parameter}.high`, high, 'must be above the low end')
    return {
      value: (low + high) / 2,
      uncertainty: standardUncertainty(parameter, { limit: (high - low) / 2 }),
    }
  }
  if (figure === null)
    throw new DomainError(
      parameter,
      range,
      'must hold a low and a high end: no figure stands in the bike',
    )
  return { value: figure, uncertainty: standardUncertainty(parameter, range as PlusMinus) }
}

import { STANDARD_GRAVITY } from '../../core/index.ts'
import type { RateRow } from '../../core/index.ts'

/** Points of rider share [1] by which a guess may be out: leaning an arm's length forward moves about as much. Common practice, no source. */
export const SHARE_DOUBT = 0.05

/** From the lowest to the highest rate that misses nothing [N/m]; null where each misses something. Never one spring: readings do not tell neighbours apart. */
export function candidatesOf(
  rows: readonly Pick<RateRow, 'rate' | 'misses'>[],
): { low: number; high: number } | null {
  const rates = rows.filter((row) => row.misses.length === 0).map((row) => row.rate)
  return rates.length === 0 ? null : { low: Math.min(...rates), high: Math.max(...rates) }
}

/** How far a judgement of "hard braking" may be out [m/s²], 0.05 g: what riders call a firm stop spans more than that (common practice, no source). */
export const BRAKING_DOUBT = 0.05 * STANDARD_GRAVITY

/** How far five points of rider share move the load along the fork, as a share of it [1]; preload, set to the sag wanted, takes that up. Takes the load [N] for a front load moved by points [1] of the rider. */
export function rateSpread(forkLoadAt: (points: number) => number): number {
  return (forkLoadAt(SHARE_DOUBT) - forkLoadAt(-SHARE_DOUBT)) / (2 * forkLoadAt(0))
}

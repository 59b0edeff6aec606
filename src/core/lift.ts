import type { Bike, LoadCase } from './bike.ts'
import { bracketedRoot } from './root.ts'
import { solveStance, type StanceOptions } from './stance.ts'

const HIGHEST_DECELERATION = 20

/**
 * Deceleration [m/s²] at which the rear wheel's load reaches 0, the travels following; 0 if it is off the ground at rest, null if it stays
 * loaded up to 20 m/s². The load case's own deceleration is left aside. On a slope down it is less, and the bike's speed does not matter. Refuses what `solveStance` refuses. Source: `solveStance`.
 */
export function liftDeceleration(
  bike: Bike,
  loadCase: LoadCase = {},
  options: StanceOptions = {},
): number | null {
  const rearLoad = (deceleration: number): number =>
    solveStance(bike, { ...loadCase, deceleration }, options).rearLoad
  let before = rearLoad(0)
  if (before <= 0) return 0
  // In steps, so that a load which comes back at a harder stop does not hide the first lift.
  for (let high = 1; high <= HIGHEST_DECELERATION; high++) {
    const after = rearLoad(high)
    if (after <= 0) return bracketedRoot(rearLoad, high - 1, high, before, after)
    before = after
  }
  return null
}

import type { Bike } from './bike.ts'
import { forkForceFromAxleLoad } from './loads.ts'
import type { Stance } from './stance.ts'

/**
 * What presses the fork together beyond its load at rest, along its axis [N]: the weight that moved
 * forward, and the brake force along the raked fork (with the turn of the axis, small); and the
 * first's share of both [1], null where there is nothing to share. A stop that carries part of it
 * is counted in. Source: the fork's balance in `solveStance`, taken apart.
 */
export function diveParts(
  bike: Bike,
  rest: Stance,
  braking: Stance,
): { transfer: number; brake: number; transferShare: number | null } {
  const alongFork = (wheelLoad: number): number =>
    forkForceFromAxleLoad({
      wheelLoad: Math.max(0, wheelLoad),
      unsprungMass: bike.frontUnsprungMass,
      rake: braking.rake,
    })
  const carried = braking.forkForce + braking.frontStopForce
  const transfer = alongFork(braking.frontLoad) - alongFork(rest.frontLoad)
  const brake = carried - alongFork(braking.frontLoad)
  const both = transfer + brake
  return { transfer, brake, transferShare: both > 0 ? transfer / both : null }
}

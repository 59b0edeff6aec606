import type { Bike, LoadCase } from './bike.ts'
import { DomainError, list, record } from './domain.ts'
import { forkForce, forkLimit, type Fork } from './fork.ts'
import type { GasState } from './gas.ts'
import { solveStance, type Stance } from './stance.ts'

/**
 * The force along the steering axis [N] that the fork must give to stand at a travel [m] in a case. It depends on the bike's pose alone, not on what
 * gives it: so one stand-in spring, wound until it stands there, serves all rates.
 */
export function forceNeeded(bike: Bike, loadCase: LoadCase, travel: number): number {
  const first = solveStance(bike, loadCase)
  let force = first.forkForce + first.frontStopForce
  if (force <= 0) return force
  const rate = force / (2 * travel)
  let before: Stance | null = null
  for (let i = 0; i < 12; i++) {
    const leg = { spring: [{ rate }], preload: force / rate - travel }
    const stance = solveStance(
      { ...bike, fork: { travel: bike.fork.travel, legs: [leg] } },
      loadCase,
    )
    const off = travel - stance.frontTravel
    const needed = stance.forkForce + stance.frontStopForce
    const moved = before ? stance.frontTravel - before.frontTravel : 0
    const slope =
      before && moved !== 0 ? (needed - before.forkForce - before.frontStopForce) / moved : 0
    force = needed + off * slope
    if (Math.abs(off) < 1e-13) break
    before = stance
  }
  return force
}

/** A fork as it is without its springs: gas and top-out spring stay. Refuses a fork that has none to take out. */
export function withoutSprings(fork: Fork): Fork {
  if (
    !list('bike.fork.legs', fork.legs, 1).some(
      (leg) => list('bike.fork.legs.spring', record('bike.fork.legs', leg).spring).length > 0,
    )
  ) {
    throw new DomainError('bike.fork.legs', fork.legs, 'must hold a spring in one leg at least')
  }
  return { ...fork, legs: fork.legs.map((leg) => ({ ...leg, spring: [], preload: 0 })) }
}

/** What gas and top-out spring of a fork without springs give at a travel [m], in newtons; past a hydraulic lock no spring is needed, so as much as it takes. */
export function bareForce(fork: Fork, travel: number, state: GasState | undefined): number {
  return travel < forkLimit(fork, state).travel ? forkForce(fork, travel, state) : Number.MAX_VALUE
}

import type { PointMass } from './bike.ts'
import { STANDARD_GRAVITY } from './constants.ts'
import {
  between,
  DomainError,
  finite,
  list,
  nonNegative,
  positive,
  record,
  representable,
} from './domain.ts'
import { usableRake } from './trail.ts'

/**
 * Wheel loads [N] of a rigid vehicle from its masses [kg] at (x, z) [m] from the rear contact, its wheelbase [m] and a deceleration [m/s²] of
 * either sign (below 0 it speeds up), on ground of a slope [rad, positive downhill] if given: the loads are square to it. Refuses a wheelbase not above 0 and masses below 0. A load below 0 is as if the ground could pull.
 * Source: moments about the rear contact.
 */
export function wheelLoads(vehicle: {
  masses: readonly PointMass[]
  wheelbase: number
  deceleration?: number
  slope?: number
}): { front: number; rear: number } {
  const { masses, wheelbase, deceleration = 0, slope = 0 } = record('vehicle', vehicle)
  between('slope', slope, -Math.PI / 2, Math.PI / 2)
  const square = STANDARD_GRAVITY * Math.cos(slope)
  const held = finite('deceleration', deceleration) + STANDARD_GRAVITY * Math.sin(slope)
  let weight = 0
  let moment = 0
  for (const part of list('masses', masses, 1)) {
    const mass = nonNegative('mass', record('masses', part).mass)
    weight += mass * square
    moment += mass * (square * finite('x', part.x) + held * finite('z', part.z))
  }
  const front = representable('load', moment / positive('wheelbase', wheelbase))
  return { front, rear: representable('load', weight - front) }
}

/** Front share [1] of two scale readings in one unit. Refuses readings below 0 and two of 0. */
export function frontShareFromScales({ front, rear }: { front: number; rear: number }): number {
  const total = nonNegative('front', front) + nonNegative('rear', rear)
  if (total === 0) throw new DomainError('rear', rear, 'must not be 0 when the front reads 0')
  return representable('share', front / total)
}

/**
 * Force [N] that a wheel load [N] puts along the steering axis, from the front unsprung mass [kg] and rake [rad], at rest.
 * Below 0 when the wheel hangs. Refuses a load or mass below 0 and a rake outside 0…89.4°. Source: balance of the wheel along the axis.
 */
export function forkForceFromAxleLoad({
  wheelLoad,
  unsprungMass,
  rake,
}: {
  wheelLoad: number
  unsprungMass: number
  rake: number
}): number {
  const beyond =
    nonNegative('wheelLoad', wheelLoad) -
    nonNegative('unsprungMass', unsprungMass) * STANDARD_GRAVITY
  return representable('force', beyond * Math.cos(usableRake(rake)))
}

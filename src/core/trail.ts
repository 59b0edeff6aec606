import { finite, positive, record, representable, within } from './domain.ts'

/** What trail follows from: wheel radius [m], rake from the vertical [rad], and axle offset ahead of the steering axis [m]. */
export interface SteeringGeometry {
  frontRadius: number
  rake: number
  forkOffset: number
}

// At 90° the steering axis lies flat, and ground trail has no value.
/** Refuses a rake [rad] outside 0…89.4°, and hands it back. */
export function usableRake(rake: number): number {
  return within('rake', rake, 0, 1.56)
}

function checked({ frontRadius, rake, forkOffset }: SteeringGeometry): SteeringGeometry {
  return {
    frontRadius: positive('frontRadius', frontRadius),
    rake: usableRake(rake),
    forkOffset: finite('forkOffset', forkOffset),
  }
}

/** Trail at right angles to the steering axis [m], R sin ε − offset. Refuses a radius not above 0 or a rake outside 0…89.4°. Source: ISO 11838 terms; Meijaard et al. 2007. */
export function normalTrail(geometry: SteeringGeometry): number {
  const { frontRadius, rake, forkOffset } = checked(record('geometry', geometry))
  return representable('normalTrail', frontRadius * Math.sin(rake) - forkOffset)
}

/** Trail along the ground [m], normal trail ÷ cos ε; refuses what `normalTrail` refuses. Source: as `normalTrail`. */
export function groundTrail(geometry: SteeringGeometry): number {
  return representable('trail', normalTrail(geometry) / Math.cos(geometry.rake))
}

/** Wheel flop [m], trail sin ε cos ε, from ground trail [m] and rake [rad]; for a small steer angle δ the front sinks by about flop·δ²/2. */
export function wheelFlop({ trail, rake }: { trail: number; rake: number }): number {
  usableRake(rake)
  return representable('wheelFlop', finite('trail', trail) * Math.sin(rake) * Math.cos(rake))
}

/** Moment about the steering axis [N m] of a side force [N] at the contact patch, from ground trail [m] and rake [rad]. */
export function trailMoment({
  sideForce,
  trail,
  rake,
}: {
  sideForce: number
  trail: number
  rake: number
}): number {
  usableRake(rake)
  return representable(
    'moment',
    finite('sideForce', sideForce) * finite('trail', trail) * Math.cos(rake),
  )
}

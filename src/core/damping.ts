import { STANDARD_GRAVITY } from './constants.ts'
import { DomainError, finite, nonNegative, positive, record, representable } from './domain.ts'

/** A mass on a spring. */
export interface MassOnSpring {
  /** [kg], above 0 */
  mass: number
  /** [N/m], above 0 */
  stiffness: number
}

/** A mass on a spring with a damper whose force grows in proportion to speed. */
export interface DampedMass extends MassOnSpring {
  /** [N s/m], not below 0 */
  damping: number
}

/**
 * Natural frequency √(k/m) [rad/s] of a mass [kg] on a stiffness [N/m]; refuses values of 0 or below. Source: Rao, Mechanical Vibrations, ch. 2.
 */
export function naturalFrequency(system: MassOnSpring): number {
  const { mass, stiffness } = record('system', system)
  return Math.sqrt(
    representable('stiffness', positive('stiffness', stiffness) / positive('mass', mass)),
  )
}

/**
 * Natural frequency √(g/δ) [rad/s] of a linear spring that its load has pressed down by `deflection` [m];
 * refuses 0 and below. Preload is part of the deflection: it counts from the free length. Source: Rao, ch. 2.
 */
export function staticDeflectionFrequency(deflection: number): number {
  return Math.sqrt(
    representable('deflection', STANDARD_GRAVITY / positive('deflection', deflection)),
  )
}

/** Damping ratio c/(2√(k m)) [1] from mass [kg], stiffness [N/m] and damping [N s/m]; refuses a damping below 0. Source: Rao, ch. 2. */
export function dampingRatio(system: DampedMass): number {
  const { mass, stiffness, damping } = record('system', system)
  const critical =
    2 * Math.sqrt(positive('stiffness', stiffness)) * Math.sqrt(positive('mass', mass))
  return representable('damping', nonNegative('damping', damping) / critical)
}

/**
 * Logarithmic decrement 2πζ/√(1 − ζ²) [1]: the natural logarithm of the ratio of two successive peaks.
 * Refuses a ratio of 1 or more, where nothing swings and no second peak exists. Source: Rao, ch. 2.
 */
export function logDecrement(dampingRatio: number): number {
  const ratio = nonNegative('dampingRatio', dampingRatio)
  if (ratio >= 1)
    throw new DomainError(
      'dampingRatio',
      ratio,
      'must be below 1: from 1 on nothing swings, so there are no peaks to compare',
    )
  return (2 * Math.PI * ratio) / Math.sqrt((1 - ratio) * (1 + ratio))
}

/**
 * Share [1] by which a damped mass passes its new rest position when the load changes in no time: exp(−πζ/√(1 − ζ²)).
 * 0 from a ratio of 1 on; refuses a ratio below 0. Source: Rao, ch. 4; Ogata, Modern Control Engineering, ch. 5.
 */
export function stepOvershoot(dampingRatio: number): number {
  const ratio = nonNegative('dampingRatio', dampingRatio)
  if (ratio >= 1) return 0
  return Math.exp((-Math.PI * ratio) / Math.sqrt((1 - ratio) * (1 + ratio)))
}

/**
 * Displacement [m] of a released mass at `time` [s ≥ 0], from its displacement [m] and velocity [m/s] at time 0;
 * mass [kg], stiffness [N/m ≥ 0], damping [N s/m ≥ 0], any damping ratio. Refuses a time below 0. Source: Rao, ch. 2.
 */
export function dampedFree(
  system: DampedMass & { displacement: number; velocity: number },
  time: number,
): number {
  record('system', system)
  const mass = positive('mass', system.mass)
  const decay = nonNegative('damping', system.damping) / (2 * mass)
  const square = nonNegative('stiffness', system.stiffness) / mass
  const start = finite('displacement', system.displacement)
  const speed = finite('velocity', system.velocity)
  const t = nonNegative('time', time)
  const discriminant = decay * decay - square
  if (discriminant < 0) {
    const w = Math.sqrt(-discriminant)
    return representable(
      'displacement',
      Math.exp(-decay * t) *
        (start * Math.cos(w * t) + ((speed + decay * start) / w) * Math.sin(w * t)),
    )
  }
  // Written with the slow root alone, so that nothing overflows at long times, and the critical case is the limit w → 0.
  const w = Math.sqrt(discriminant)
  const slow = decay + w > 0 ? -square / (decay + w) : 0
  const spread = w > 0 ? -Math.expm1(-2 * w * t) / (2 * w) : t
  return representable(
    'displacement',
    Math.exp(slow * t) * (start + (speed - slow * start) * spread),
  )
}

/**
 * Share [1] of a shaking road's amplitude that reaches the body: √(1 + (2ζr)²)/√((1 − r²)² + (2ζr)²), r the road's
 * frequency over the natural one. Refuses values below 0, and r = 1 without damping, where there is no bound. Source: Rao, ch. 3.
 */
export function transmissibility(shaking: {
  frequencyRatio: number
  dampingRatio: number
}): number {
  record('shaking', shaking)
  const r = nonNegative('frequencyRatio', shaking.frequencyRatio)
  const zeta = nonNegative('dampingRatio', shaking.dampingRatio)
  // Above resonance divided through by r², so that a large ratio does not overflow.
  const u = r <= 1 ? r : 1 / r
  const damped = 2 * zeta * u
  if (!Number.isFinite(damped)) return 1
  const share = Math.hypot(r <= 1 ? 1 : u * u, damped) / Math.hypot((1 - u) * (1 + u), damped)
  if (Number.isFinite(share)) return share
  throw new DomainError(
    'dampingRatio',
    zeta,
    'must be above 0 at a frequency ratio of 1: without damping the swing grows without bound',
  )
}

/** One end of a bike as two masses on two springs, rates at the wheel. */
export interface QuarterVehicle {
  /** [kg] */
  sprungMass: number
  /** [kg] */
  unsprungMass: number
  /** [N/m] */
  springRate: number
  /** [N/m] */
  tyreRate: number
}

/**
 * The two undamped natural frequencies [rad/s] of one end: `body`, the slow one, and `wheel`, the fast one. Exact, with both masses moving in both.
 * Masses [kg] and rates at the wheel [N/m]; refuses 0 and below. Source: Gillespie, Fundamentals of Vehicle Dynamics, ch. 5 (the model, from memory).
 */
export function quarterVehicle(end: QuarterVehicle): { body: number; wheel: number } {
  const { sprungMass, unsprungMass, springRate, tyreRate } = record('end', end)
  const body = positive('springRate', springRate) / positive('sprungMass', sprungMass)
  const coupling = springRate / positive('unsprungMass', unsprungMass)
  const tyre = positive('tyreRate', tyreRate) / unsprungMass
  // λ² − (body + coupling + tyre) λ + body·tyre = 0. The discriminant as a sum of squares and a product of positives keeps all its digits.
  const half = (coupling + tyre + body) / 2
  const root = Math.sqrt(((coupling + tyre - body) / 2) ** 2 + body * coupling)
  const fast = half + root
  return {
    body: Math.sqrt(body) * Math.sqrt(tyre / representable('tyreRate', fast)),
    wheel: Math.sqrt(fast),
  }
}

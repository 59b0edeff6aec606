import type { Bike, CoilGroup, LoadCase } from '../../core/index.ts'

/** One bike, its load and how it is braked, for both methods to settle. */
export interface Drawn {
  bike: Bike
  loadCase: LoadCase
  /** friction that holds an end up [N, along the fork and at the rear wheel]; below 0 it holds it down */
  rub?: readonly [number, number]
}

/** Draws bikes that might stand on a road, from a stream of numbers from 0 to 1: about the sizes of the three invented ones, each figure by itself. */
export function drawBike(next: () => number): Drawn {
  const between = (low: number, high: number): number => low + (high - low) * next()
  const frontRadius = between(0.28, 0.33)
  const rearRadius = between(0.28, 0.33)
  const datum = { frontTravel: between(0, 0.03), rearTravel: between(0, 0.03) }
  const springs = (rate: number): CoilGroup[] =>
    next() < 0.5
      ? [{ rate }]
      : [{ rate: 4 * rate, closes: between(0.005, 0.02) }, { rate: 1.3 * rate }]
  const leg = () => ({
    spring: springs(between(6e3, 12e3)),
    preload: between(0, 0.025),
    gas: {
      tubeDiameter: between(0.036, 0.045),
      boreDiameter: between(0.034, 0.038),
      airHeight: between(0.12, 0.18),
      stackVolume: between(0, 60e-6),
    },
  })
  const bike: Bike = {
    geometry: {
      wheelbase: between(1.3, 1.6),
      rake: between(0.38, 0.5),
      pivot: { x: between(0.45, 0.6), z: between(0.34, 0.42) },
      frontRadius,
      rearRadius,
      forkOffset: between(0.02, 0.06),
      tubeRaise: between(-0.01, 0.02),
      rearRaise: between(-0.01, 0.02),
      datum,
    },
    sprung: { mass: between(90, 200), x: between(0.65, 0.8), z: between(0.5, 0.65) },
    frontUnsprungMass: between(14, 30),
    rearUnsprungMass: between(14, 28),
    fork: {
      travel: between(0.11, 0.16),
      legs: [leg(), leg()],
      topOut: { rate: between(1e4, 4e4), length: between(0, 0.02) },
    },
    rear: {
      travel: between(0.1, 0.16),
      shocks: next() < 0.3 ? 2 : 1,
      spring: springs(between(80e3, 140e3)),
      preload: between(0.004, 0.015),
      gasForce: between(0, 200),
      motionRatio: { initial: between(0.4, 0.55), slope: between(0, 0.6) },
    },
  }
  return { bike, loadCase: drawCase(next) }
}

/** A rider at rest, leaning, or braking. */
function drawCase(next: () => number): LoadCase {
  const between = (low: number, high: number): number => low + (high - low) * next()
  const payload = [{ mass: between(55, 120), x: between(0.55, 0.75), z: between(0.9, 1.1) }]
  const kind = next()
  if (kind < 0.4) return { payload }
  if (kind < 0.6) return { payload, lean: between(0, 0.7) }
  return {
    payload,
    deceleration: between(1, 6),
    frontBrakeShare: between(0.5, 1),
    gasState: { exponent: between(1, 1.4), from: between(0.02, 0.04) },
  }
}

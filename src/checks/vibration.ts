import {
  bracketedRoot,
  dampedFree,
  dampingRatio,
  logDecrement,
  naturalFrequency,
  quarterVehicle,
  rampOvershoot,
  staticDeflectionFrequency,
  stepOvershoot,
  transmissibility,
  type DampedMass,
} from '../core/index.ts'
import { eigenvalues } from '../core/eigen.ts'
import { call, slopeOf } from './call.ts'

type Released = Parameters<typeof dampedFree>[0]
type Shaking = Parameters<typeof transmissibility>[0]

/** A force that swings at a frequency [rad/s] on a damped mass: what reaches the ground, and how far the mass swings. */
function forced({
  force,
  frequency,
  ...system
}: DampedMass & { force: number; frequency: number }) {
  const shaking = {
    frequencyRatio: frequency / naturalFrequency(system),
    dampingRatio: dampingRatio(system),
  }
  const transmitted = force * transmissibility(shaking)
  // spring and damper hand the force on, a quarter of a turn apart
  return {
    transmitted,
    amplitude: transmitted / Math.hypot(system.stiffness, system.damping * frequency),
  }
}

/** The moment of the first peak after 0 [s]: where the speed is 0. */
function peakTime({ within, ...released }: Released & { within: number }): number {
  const speed = slopeOf((time) => dampedFree(released, time), 1e-5)
  return bracketedRoot(speed, within / 1000, within)
}

/** The frequency ratio at which most gets through: where the slope is 0. */
function worstRatio({ dampingRatio: ratio }: { dampingRatio: number }): number {
  return bracketedRoot(
    slopeOf((frequencyRatio) => transmissibility({ frequencyRatio, dampingRatio: ratio }), 1e-5),
    0.5,
    1,
  )
}

/** Stiffness under a mass so that a given share of a shaking gets through above resonance, without damping. */
function isolator({
  mass,
  frequency,
  share,
}: {
  mass: number
  frequency: number
  share: number
}): number {
  const ratio = bracketedRoot(
    (frequencyRatio) => transmissibility({ frequencyRatio, dampingRatio: 0 }) - share,
    1.5,
    100,
  )
  return (frequency / ratio / naturalFrequency({ mass, stiffness: 1 })) ** 2
}

/** Mean of a swing that dies out: δ = ζ ωₙ T, so the time of one swing is the decrement over ζ ωₙ. */
function dampedSwing(system: DampedMass) {
  const ratio = dampingRatio(system)
  const period = logDecrement(ratio) / (ratio * naturalFrequency(system))
  return { period, frequency: (2 * Math.PI) / period }
}

function roots({ mass, stiffness, damping }: DampedMass) {
  const found = eigenvalues([
    [0, 1],
    [-stiffness / mass, -damping / mass],
  ])
  return { slow: found[0]?.re, fast: found[1]?.re }
}

export const vibration = {
  naturalFrequency: call(['naturalFrequency'], naturalFrequency),
  naturalPeriod: call(
    ['naturalFrequency'],
    (system: Parameters<typeof naturalFrequency>[0]) => (2 * Math.PI) / naturalFrequency(system),
  ),
  staticDeflectionFrequency: call(
    ['staticDeflectionFrequency'],
    ({ deflection }: { deflection: number }) => staticDeflectionFrequency(deflection),
  ),
  dampingRatio: call(['dampingRatio'], dampingRatio),
  // the ratio grows in proportion to the damping
  dampingForRatio: call(
    ['dampingRatio'],
    ({ ratio, ...system }: DampedMass & { ratio: number }) =>
      ratio / dampingRatio({ ...system, damping: 1 }),
  ),
  // the frequency grows with the root of the stiffness
  stiffnessForFrequency: call(
    ['naturalFrequency'],
    ({ mass, frequency }: { mass: number; frequency: number }) =>
      (frequency / naturalFrequency({ mass, stiffness: 1 })) ** 2,
  ),
  logDecrement: call(['logDecrement'], ({ ratio }: { ratio: number }) => logDecrement(ratio)),
  ratioFromPeaks: call(['logDecrement'], ({ first, next }: { first: number; next: number }) =>
    bracketedRoot((ratio) => logDecrement(ratio) - Math.log(first / next), 0, 0.999),
  ),
  dampedSwing: call(['logDecrement', 'dampingRatio', 'naturalFrequency'], dampedSwing),
  dampedFree: call(['dampedFree'], ({ time, ...released }: Released & { time: number }) =>
    dampedFree(released, time),
  ),
  peakTime: call(['dampedFree'], peakTime),
  // displacement grows in proportion to the speed of the start
  speedForPeak: call(
    ['dampedFree'],
    ({ peak, time, ...released }: Released & { peak: number; time: number }) =>
      peak / dampedFree({ ...released, velocity: 1 }, time),
  ),
  stepOvershoot: call(['stepOvershoot'], ({ ratio }: { ratio: number }) => stepOvershoot(ratio)),
  /** rise in natural periods, as textbooks chart it */
  rampOvershoot: call(['rampOvershoot'], ({ ratio, rise }: { ratio: number; rise: number }) =>
    rampOvershoot({ dampingRatio: ratio, naturalFrequency: 2 * Math.PI, rampTime: rise }),
  ),
  transmissibility: call(['transmissibility'], (shaking: Shaking) => transmissibility(shaking)),
  shakenAmplitude: call(
    ['transmissibility', 'naturalFrequency'],
    ({
      amplitude,
      frequency,
      ...system
    }: {
      amplitude: number
      frequency: number
      mass: number
      stiffness: number
    }) =>
      amplitude *
      transmissibility({ frequencyRatio: frequency / naturalFrequency(system), dampingRatio: 0 }),
  ),
  forcedMass: call(['transmissibility', 'dampingRatio', 'naturalFrequency'], forced),
  worstRatio: call(['transmissibility'], worstRatio),
  isolatorStiffness: call(['transmissibility', 'naturalFrequency'], isolator),
  quarterVehicle: call(['quarterVehicle'], quarterVehicle),
  roots: call(['eigenvalues'], roots),
}

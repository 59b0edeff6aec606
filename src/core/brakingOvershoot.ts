import { STANDARD_GRAVITY } from './constants.ts'
import { naturalFrequency } from './damping.ts'
import { list, nonNegative } from './domain.ts'
import { type Fork, forkForce } from './fork.ts'
import type { GasState } from './gas.ts'
import { rampOvershoot } from './overshoot.ts'
import type { Stance } from './stance.ts'

/**
 * How far beyond its settled travel under braking a fork goes when the brake comes on in a time [m], lowest and highest over damping ratios [1] and
 * ramp times [s]. The front as one mass on the spring's mean slope between both travels, taken upright: rate/cos²(rake). Between the stops a
 * fork without slope, or a front that carries nothing, counts as slow: the step's overshoot.
 */
export function brakingOvershoot(
  fork: Fork,
  rider: Stance,
  braking: Stance,
  state: GasState | undefined,
  { dampingRatios, rampTimes }: { dampingRatios: readonly number[]; rampTimes: readonly number[] },
): [number, number] {
  const change = Math.max(0, braking.frontTravel - rider.frontTravel)
  const stiffness =
    meanSlope(fork, rider.frontTravel, braking.frontTravel, state) / Math.cos(rider.rake) ** 2
  const mass = rider.forkForce / (STANDARD_GRAVITY * Math.cos(rider.rake))
  const frequency = stiffness > 0 && mass > 0 ? naturalFrequency({ mass, stiffness }) : null
  const shares = list('dampingRatios', dampingRatios, 1).flatMap((dampingRatio) =>
    list('rampTimes', rampTimes, 1).map((rampTime) =>
      rampOvershoot({
        dampingRatio,
        naturalFrequency: frequency ?? 1,
        rampTime: frequency === null ? 0 : nonNegative('rampTimes', rampTime),
      }),
    ),
  )
  return [change * Math.min(...shares), change * Math.max(...shares)]
}

/** Slope of the fork's force [N/m] between two travels [m]; no number where they coincide, and there is nothing to go beyond. */
function meanSlope(fork: Fork, x0: number, x1: number, state: GasState | undefined): number {
  return (forkForce(fork, x1, state) - forkForce(fork, x0, state)) / (x1 - x0)
}

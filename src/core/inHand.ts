import type { Bike, LoadCase } from './bike.ts'
import { brakingOvershoot } from './brakingOvershoot.ts'
import { STANDARD_GRAVITY } from './constants.ts'
import { naturalFrequency } from './damping.ts'
import { nonNegative, record } from './domain.ts'
import { forkRate } from './fork.ts'
import { bracketedRoot } from './root.ts'
import { solveStance, type Stance, type Stop } from './stance.ts'

/** A bike on its brakes: who is aboard, how it brakes, and how quickly the brake may come on. */
export interface BrakingQuestion {
  bike: Bike
  /** at rest, with the rider aboard */
  rider: LoadCase
  /** the same on the brakes; without a gas state the gas is squeezed fast (exponent 1.4) from where the bike stood */
  braking: LoadCase
  /** damping ratios between which the fork's lies [1] */
  dampingRatios?: readonly number[]
  /** times between which the brake comes on [s] */
  rampTimes?: readonly number[]
}

/** What a quick brake uses of the fork's travel, and what it leaves; lengths along the steering axis [m]. */
export interface InHand {
  riderSag: number
  /** settled on the brakes */
  brakingTravel: number
  /** how far beyond that a brake put on quickly goes, low and high */
  overshoot: [number, number]
  /** travel left beyond that, low and high; below 0 the stop is reached */
  reserve: [number, number]
  /** where the settled fork stands */
  stop: Stop
  /** undamped ride frequency of the front with the rider [rad/s]; null where it carries nothing or the fork has no slope there */
  rideFrequency: number | null
}

/** The gas of a fork braked fast from a travel [m]: exponent 1.4, adiabatic air. */
export const squeezedFrom = (from: number): { exponent: number; from: number } => ({
  exponent: 1.4,
  from,
})

/**
 * What is left in hand of a fork's travel on the brakes, from a settled stop to a quick one. Not below 0 while nothing reaches the stop.
 * Refuses what `solveStance` refuses. Source: `solveStance` and `rampOvershoot`.
 */
export function inHand(question: BrakingQuestion): InHand {
  const { bike, rider, braking, dampingRatios, rampTimes } = record('question', question)
  const rest = solveStance(bike, rider)
  const gasState = braking.gasState ?? squeezedFrom(rest.frontTravel)
  const settled = solveStance(bike, { ...braking, gasState })
  const overshoot = brakingOvershoot(bike.fork, rest, settled, gasState, {
    dampingRatios: dampingRatios ?? [0.3, 0.4],
    rampTimes: rampTimes ?? [0.1, 0.2],
  })
  const left = settled.frontLimit.travel - settled.frontTravel
  return {
    riderSag: rest.frontTravel,
    brakingTravel: settled.frontTravel,
    overshoot,
    reserve: [left - overshoot[1], left - overshoot[0]],
    stop: settled.frontStop,
    rideFrequency: rideFrequencyOf(bike, rider, rest),
  }
}

/** The front as one mass on the fork's slope where it stands, taken upright: rate/cos²(rake). */
function rideFrequencyOf(bike: Bike, { gasState }: LoadCase, rest: Stance): number | null {
  const upright = Math.cos(rest.rake)
  const mass = rest.forkForce / (STANDARD_GRAVITY * upright)
  if (!(rest.frontTravel < rest.frontLimit.travel)) return null
  const stiffness = forkRate(bike.fork, rest.frontTravel, gasState) / upright ** 2
  return mass > 0 && stiffness > 0 ? naturalFrequency({ mass, stiffness }) : null
}

/** The hardest braking that is looked for [m/s²]: no road tyre gives one and a half g. */
const HARDEST = 1.5 * STANDARD_GRAVITY

/**
 * The deceleration [m/s²] at which the deepest of the quick brakes reaches a stroke [m]: what a cable tie says of how hard somebody brakes, bumps
 * included. Null where the bike stands deeper at rest, or where one and a half g does not get there.
 */
export function decelerationReaching(question: BrakingQuestion, stroke: number): number | null {
  nonNegative('stroke', stroke)
  const beyond = (deceleration: number): number => {
    const { brakingTravel, overshoot } = inHand({
      ...question,
      braking: { ...question.braking, deceleration },
    })
    const difference = brakingTravel + overshoot[1] - stroke
    // a hundredth of a micrometre is nothing: the search ends there
    return Math.abs(difference) < 1e-8 ? 0 : difference
  }
  const [least, most] = [beyond(0), beyond(HARDEST)]
  return least > 0 || most < 0 ? null : bracketedRoot(beyond, 0, HARDEST, least, most)
}

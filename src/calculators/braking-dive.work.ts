import { brakingOvershoot, forkForceFromAxleLoad, liftDeceleration, solveStance, STANDARD_GRAVITY } from '../core/index.ts'
import type { Bike, GasState, LoadCase, Stance } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import { bikeOf, geometryOf } from './bikes.ts'
import type { inputs, outputs } from './braking-dive.fields.ts'
import type { Given, InputValues, Interval, OutputValues } from './define.ts'
import { aboard } from './whole-bike.ts'

type Values = InputValues<typeof inputs>

/** Settled travel against deceleration, with the band that a quick brake passes it by. */
export interface DiveCurve {
  deceleration: number
  settled: number
  peak: readonly [number, number]
}

export interface DivePicture {
  bike: BikePicture
  curve: readonly DiveCurve[]
  limit: number
  lift: number | null
  brakeForce: { front: number; rear: number }
}

interface Dive {
  bike: Bike
  loadCase: LoadCase
  gasState: GasState
  rest: Stance
  braking: Stance
  overshoot: [number, number]
}

function caseOf(input: Values): { bike: Bike; loadCase: LoadCase; rest: Stance; gasState: GasState } {
  const bike = bikeOf(input.bike)
  const payload = aboard(input.bike, input)
  const rest = solveStance(bike, { payload })
  // The gas has come slowly to where the bike stands, then the brake squeezes it fast.
  const gasState = { exponent: input.exponent, from: rest.frontTravel }
  return { bike, rest, gasState, loadCase: { payload, frontBrakeShare: input.frontBrakeShare, gasState } }
}

function brake(
  input: Values,
  { bike, rest, gasState, loadCase }: ReturnType<typeof caseOf>,
  deceleration: number,
): { braking: Stance; overshoot: [number, number] } {
  const braking = solveStance(bike, { ...loadCase, deceleration })
  const spread = { dampingRatios: [input.dampingLow, input.dampingHigh], rampTimes: [input.quickest, input.slowest] }
  return { braking, overshoot: brakingOvershoot(bike.fork, rest, braking, gasState, spread) }
}

function diveOf(input: Values): Dive {
  const prepared = caseOf(input)
  return { ...prepared, ...brake(input, prepared, input.deceleration) }
}

/** What pushes the fork together beyond its load at rest [N along the axis]: the weight that moved forward, and the brake along the raked fork. */
function partsOf({ bike, rest, braking }: Dive): { transferPart: number; brakePart: number } {
  const alongFork = (wheelLoad: number): number =>
    forkForceFromAxleLoad({ wheelLoad: Math.max(0, wheelLoad), unsprungMass: bike.frontUnsprungMass, rake: braking.rake })
  const carried = braking.forkForce + braking.frontStopForce
  return { transferPart: alongFork(braking.frontLoad) - alongFork(rest.frontLoad), brakePart: carried - alongFork(braking.frontLoad) }
}

/** SI in, SI out. */
export function compute(input: Values): OutputValues<typeof outputs> {
  const dive = diveOf(input)
  const { bike, loadCase, braking, overshoot } = dive
  const { frontTravel, frontLimit, frontLoad, rearLoad, trail, rake, rearTravel, wheelbase, pitch, neededGrip } = braking
  const left = frontLimit.travel - frontTravel
  const peak: Interval = { low: frontTravel + overshoot[0], high: frontTravel + overshoot[1] }
  return {
    frontTravel,
    peak,
    reserve: { low: left - overshoot[1], high: left - overshoot[0] },
    travelShare: frontTravel / bike.fork.travel,
    ...partsOf(dive),
    frontLoad,
    rearLoad,
    trail,
    rake,
    liftDeceleration: liftDeceleration(bike, loadCase),
    rearTravel,
    wheelbase,
    pitch,
    frontGrip: neededGrip.front,
  }
}

/** Before: no brake. */
export const baseline = (): Given => ({ deceleration: 0 })

const STEPS = 24
/** The curve ends at the lift or at 1.1 g, the most that a dry road gives a tyre, from memory. */
const STRONGEST = 1.1 * STANDARD_GRAVITY

/** The bike on the brakes, and its dive against deceleration [SI]. */
export function picture(input: Values): DivePicture {
  const dive = diveOf(input)
  const { bike, loadCase, braking } = dive
  const lift = liftDeceleration(bike, loadCase)
  const end = Math.max(input.deceleration, Math.min(lift ?? STRONGEST, STRONGEST))
  const curve = Array.from({ length: STEPS + 1 }, (_, index) => {
    const deceleration = (end * index) / STEPS
    const { braking: there, overshoot } = brake(input, dive, deceleration)
    return { deceleration, settled: there.frontTravel, peak: [there.frontTravel + overshoot[0], there.frontTravel + overshoot[1]] as const }
  })
  const drawn = bikePicture(input.bike, geometryOf(input.bike), braking)
  const brakeForce = { front: (braking.neededGrip.front ?? 0) * braking.frontLoad, rear: (braking.neededGrip.rear ?? 0) * braking.rearLoad }
  return {
    bike: { ...drawn, aboard: aboard(input.bike, input).map((place) => ({ ...place, ...braking.toGround(place) })) },
    curve,
    limit: braking.frontLimit.travel,
    lift,
    brakeForce,
  }
}

import {
  brakingOvershoot,
  diveParts,
  liftDeceleration,
  sample,
  solveStance,
  STANDARD_GRAVITY,
} from '../../core/index.ts'
import type { Bike, GasState, LoadCase, Stance } from '../../core/index.ts'
import { bikePicture } from '../../bikes/picture.ts'
import type { BikePicture } from '../../bikes/picture.ts'
import { bikeOf, geometryOf } from '../../bikes/bikes.ts'
import type statement from './statement.ts'
import type { Given } from '../../machine/given.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import { aboard } from '../../bikes/aboard.ts'

type Values = InputOf<typeof statement>

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

function caseOf(input: Values): {
  bike: Bike
  loadCase: LoadCase
  rest: Stance
  gasState: GasState
} {
  const bike = bikeOf(input.bike)
  const payload = aboard(input.bike, input)
  const rest = solveStance(bike, { payload })
  // The gas has come slowly to where the bike stands, then the brake squeezes it fast.
  const gasState = { exponent: input.exponent, from: rest.frontTravel }
  return {
    bike,
    rest,
    gasState,
    loadCase: { payload, frontBrakeShare: input.frontBrakeShare, gasState },
  }
}

function brake(
  input: Values,
  { bike, rest, gasState, loadCase }: ReturnType<typeof caseOf>,
  deceleration: number,
): { braking: Stance; overshoot: [number, number] } {
  const braking = solveStance(bike, { ...loadCase, deceleration })
  const spread = {
    dampingRatios: [input.dampingLow, input.dampingHigh],
    rampTimes: [input.quickest, input.slowest],
  }
  return { braking, overshoot: brakingOvershoot(bike.fork, rest, braking, gasState, spread) }
}

function diveOf(input: Values): Dive {
  const prepared = caseOf(input)
  return { ...prepared, ...brake(input, prepared, input.deceleration) }
}

/** SI in, SI out. */
function compute(dive: ReturnType<typeof diveOf>): OutputOf<typeof statement> {
  const { bike, loadCase, braking, overshoot } = dive
  const {
    frontTravel,
    frontLimit,
    frontLoad,
    rearLoad,
    trail,
    rake,
    rearTravel,
    wheelbase,
    pitch,
    neededGrip,
  } = braking
  const left = frontLimit.travel - frontTravel
  const parts = diveParts(bike, dive.rest, braking)
  const peak: Interval = { low: frontTravel + overshoot[0], high: frontTravel + overshoot[1] }
  return {
    frontTravel,
    peak,
    reserve: { low: left - overshoot[1], high: left - overshoot[0] },
    travelShare: frontTravel / bike.fork.travel,
    transferPart: parts.transfer,
    brakePart: parts.brake,
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
const baseline = (): Given => ({ deceleration: 0 })

const STEPS = 24
/** The curve ends at the lift or at 1.1 g, the most that a dry road gives a tyre, from memory. */
const STRONGEST = 1.1 * STANDARD_GRAVITY

/** The bike on the brakes, and its dive against deceleration [SI]. */
function picture(input: Values, dive: ReturnType<typeof diveOf>): DivePicture {
  const { bike, loadCase, braking } = dive
  const lift = liftDeceleration(bike, loadCase)
  const end = Math.max(input.deceleration, Math.min(lift ?? STRONGEST, STRONGEST))
  const curve = sample(0, end, STEPS).map((deceleration) => {
    const { braking: there, overshoot } = brake(input, dive, deceleration)
    return {
      deceleration,
      settled: there.frontTravel,
      peak: [there.frontTravel + overshoot[0], there.frontTravel + overshoot[1]] as const,
    }
  })
  const drawn = bikePicture(input.bike, geometryOf(input.bike), braking)
  const brakeForce = {
    front: (braking.neededGrip.front ?? 0) * braking.frontLoad,
    rear: (braking.neededGrip.rear ?? 0) * braking.rearLoad,
  }
  return {
    bike: {
      ...drawn,
      aboard: aboard(input.bike, input).map((place) => ({ ...place, ...braking.toGround(place) })),
    },
    curve,
    limit: braking.frontLimit.travel,
    lift,
    brakeForce,
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const dive = diveOf(input)
    return { outputs: compute(dive), picture: () => picture(input, dive) }
  },
  baseline,
})

import {
  forkForce,
  liftDeceleration,
  rearWheelForce,
  sample,
  solveStance,
} from '../../core/index.ts'
import type { Bike, LoadCase, Stance, TravelLimit } from '../../core/index.ts'
import { bikePicture } from '../../bikes/picture.ts'
import type { BikePicture } from '../../bikes/picture.ts'
import type { BikeSpec } from '../../bikes/inSI.ts'
import type { OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import { fittedOf, sheetOf, wholeBike } from './bike.ts'
import type { StanceGiven } from './bike.ts'
import type statement from './statement.ts'
import { aboard } from '../../bikes/aboard.ts'

/** Force against used travel, [m] and [N], and where the end stands on it. */
export interface EndCurve {
  points: readonly (readonly [number, number])[]
  at: readonly [number, number]
  limit: number
}

export interface StancePicture {
  bike: BikePicture
  front: EndCurve
  rear: EndCurve
}

interface Solved {
  spec: BikeSpec
  bike: Bike
  loadCase: Omit<LoadCase, 'payload'> & { payload: ReturnType<typeof aboard> }
  stance: Stance
}

/** Gas squeezed by a brake has no time to shed its heat: 1.4, the ideal gas law's fast end. */
const FAST = 1.4

function loadCaseOf(given: StanceGiven, spec: BikeSpec, bike: Bike): Solved['loadCase'] {
  const twoUp = given.situation === 'twoUp'
  const payload = aboard(spec, {
    rider: given.rider,
    passenger: given.passenger ?? (twoUp ? spec.passenger.mass : 0),
    luggage: given.luggage ?? (twoUp ? spec.luggage.mass : 0),
  })
  if (given.situation === 'leaning') return { payload, lean: given.lean }
  if (given.situation !== 'braking') return { payload }
  const from = solveStance(bike, { payload }).frontTravel
  return {
    payload,
    deceleration: given.deceleration,
    frontBrakeShare: given.frontBrakeShare,
    gasState: { exponent: FAST, from },
  }
}

function solve(given: StanceGiven): Solved {
  const spec = sheetOf(given)
  const standard = wholeBike(spec, given, {})
  const settled =
    given.shockLengthChange === 0
      ? 0
      : solveStance(standard, { payload: aboard(spec, { rider: given.rider }) }).rearTravel
  const bike = wholeBike(spec, given, fittedOf(spec, given, settled))
  const loadCase = loadCaseOf(given, spec, bike)
  return { spec, bike, loadCase, stance: solveStance(bike, loadCase) }
}

/** What was read on the scales less where these springs would have let the bike alone stand [m]: 0 where they are the bike's own. */
function misfitOf(
  given: StanceGiven,
  spec: BikeSpec,
): { front: number | null; rear: number | null } {
  if (given.from !== 'scales') return { front: null, rear: null }
  const { frontTravel, rearTravel } = solveStance(wholeBike(spec, given, {}))
  return { front: given.scaleFrontTravel - frontTravel, rear: given.scaleRearTravel - rearTravel }
}

/** Where friction may hold an end: from sinking slowly to rising slowly. */
function band({ bike, loadCase }: Solved, end: 'frontTravel' | 'rearTravel'): Interval {
  const travels = [-1, 1].map((settle) => solveStance(bike, loadCase, { settle })[end])
  return { low: Math.min(...travels), high: Math.max(...travels) }
}

const POINTS = 40

function curveOf(
  force: (x: number) => number,
  limit: TravelLimit,
  at: readonly [number, number],
): EndCurve {
  // A lock is approached, never reached.
  const last = limit.cause === 'locked' ? limit.travel * 0.98 : limit.travel
  const points = sample(0, last, POINTS).map((x) => [x, force(x)] as const)
  return { points, at, limit: limit.travel }
}

/** SI in, SI out. */
function compute(given: StanceGiven, solved: ReturnType<typeof solve>): OutputOf<typeof statement> {
  const { spec, bike, loadCase, stance } = solved
  const {
    frontTravel,
    rearTravel,
    frontLoad,
    rearLoad,
    frontShare,
    trail,
    rake,
    wheelbase,
    pitch,
    normalTrail,
    forkForce: fork,
    rearForce,
  } = stance
  const misfit = misfitOf(given, spec)
  return {
    frontTravel,
    rearTravel,
    frontLoad,
    rearLoad,
    frontShare,
    trail,
    rake,
    wheelbase,
    frontTravelShare: frontTravel / bike.fork.travel,
    rearTravelShare: rearTravel / bike.rear.travel,
    frontStop: stance.frontStop,
    rearStop: stance.rearStop,
    frontBand: band(solved, 'frontTravel'),
    rearBand: band(solved, 'rearTravel'),
    scaleFrontMisfit: misfit.front,
    scaleRearMisfit: misfit.rear,
    exposedTube: spec.fork.exposedTube - frontTravel,
    pitch,
    normalTrail,
    forkForce: fork,
    rearForce,
    centreAhead: stance.centreOfGravity.x,
    centreHeight: stance.centreOfGravity.z,
    liftDeceleration: given.situation === 'leaning' ? null : liftDeceleration(bike, loadCase),
    frontGrip: stance.neededGrip.front,
    rearGrip: stance.neededGrip.rear,
  }
}

const NO_CHANGE = {
  forkPreloadChange: 0,
  tubeRaise: 0,
  forkRateChange: 0,
  oilHeightChange: 0,
  frontRadiusChange: 0,
  rearPreloadChange: 0,
  rearRateChange: 0,
  shockLengthChange: 0,
  rearRadiusChange: 0,
} as const

/** Before: nothing changed at either end. */
const baseline = () => NO_CHANGE

/** The bike in its pose and both ends' force curves [m, N], each with where the end stands. */
function picture(solved: ReturnType<typeof solve>): StancePicture {
  const { spec, bike, loadCase, stance } = solved
  return {
    bike: {
      ...bikePicture(spec, bike.geometry, stance),
      aboard: loadCase.payload.map((place) => ({ ...place, ...stance.toGround(place) })),
    },
    front: curveOf((x) => forkForce(bike.fork, x, loadCase.gasState), stance.frontLimit, [
      stance.frontTravel,
      stance.forkForce,
    ]),
    rear: curveOf((x) => rearWheelForce(bike.rear, x), stance.rearLimit, [
      stance.rearTravel,
      stance.rearForce,
    ]),
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const solved = solve(input)
    return { outputs: compute(input, solved), picture: () => picture(solved) }
  },
  baseline,
})

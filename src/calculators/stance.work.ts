import { forkForce, liftDeceleration, rearWheelForce, solveStance } from '../core/index.ts'
import type { Bike, LoadCase, Stance, Stop, TravelLimit } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import type { BikeSpec } from './bikes.ts'
import type { Interval, OutputValues } from './define.ts'
import { fittedOf, sheetOf, wholeBike } from './stance.bike.ts'
import type { StanceGiven } from './stance.bike.ts'
import type { outputs } from './stance.fields.ts'
import { aboard } from './whole-bike.ts'

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
const MM = 1e-3

const STOPS: Readonly<Record<Stop, string>> = { none: 'between its stops', extended: 'fully extended', bottomed: 'on its stop', coilBound: 'coil-bound' }

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
  return { payload, deceleration: given.deceleration, frontBrakeShare: given.frontBrakeShare, gasState: { exponent: FAST, from } }
}

function solve(given: StanceGiven): Solved {
  const spec = sheetOf(given)
  const standard = wholeBike(spec, given, {})
  const settled = given.shockLengthChange === 0 ? 0 : solveStance(standard, { payload: aboard(spec, { rider: given.rider }) }).rearTravel
  const bike = wholeBike(spec, given, fittedOf(spec, given, settled))
  const loadCase = loadCaseOf(given, spec, bike)
  return { spec, bike, loadCase, stance: solveStance(bike, loadCase) }
}

/** Where friction may hold an end: from sinking slowly to rising slowly. */
function band({ bike, loadCase }: Solved, end: 'frontTravel' | 'rearTravel'): Interval {
  const travels = [-1, 1].map((settle) => solveStance(bike, loadCase, { settle })[end])
  return { low: Math.min(...travels), high: Math.max(...travels) }
}

const POINTS = 40

function curveOf(force: (x: number) => number, limit: TravelLimit, at: readonly [number, number]): EndCurve {
  // A lock is approached, never reached.
  const last = limit.cause === 'locked' ? limit.travel * 0.98 : limit.travel
  const points = Array.from({ length: POINTS + 1 }, (_, index) => Math.min(last, (last * index) / POINTS)).map((x) => [x, force(x)] as const)
  return { points, at, limit: limit.travel }
}

/** SI in, SI out. */
export function compute(given: StanceGiven): OutputValues<typeof outputs> {
  const solved = solve(given)
  const { spec, bike, loadCase, stance } = solved
  const { frontTravel, rearTravel, frontLoad, rearLoad, frontShare, trail, rake, wheelbase, pitch, normalTrail, forkForce: fork, rearForce } = stance
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
    frontStop: STOPS[stance.frontStop],
    rearStop: STOPS[stance.rearStop],
    frontBand: band(solved, 'frontTravel'),
    rearBand: band(solved, 'rearTravel'),
    exposedTube: spec.fork.exposedTube * MM - frontTravel,
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
export const baseline = () => NO_CHANGE

/** The bike in its pose and both ends' force curves [m, N], each with where the end stands. */
export function picture(given: StanceGiven): StancePicture {
  const { spec, bike, loadCase, stance } = solve(given)
  return {
    bike: { ...bikePicture(spec, bike.geometry, stance), aboard: loadCase.payload.map((place) => ({ ...place, ...stance.toGround(place) })) },
    front: curveOf((x) => forkForce(bike.fork, x, loadCase.gasState), stance.frontLimit, [stance.frontTravel, stance.forkForce]),
    rear: curveOf((x) => rearWheelForce(bike.rear, x), stance.rearLimit, [stance.rearTravel, stance.rearForce]),
  }
}

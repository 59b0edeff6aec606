import { forkForce, liftDeceleration, rearWheelForce, solveStance } from '../core/index.ts'
import type { Bike, LoadCase, Stance, Stop, TravelLimit } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import type { BikeSpec } from './bikes.ts'
import { defineCalculator } from './define.ts'
import type { Interval } from './define.ts'
import { fittedOf, sheetOf, wholeBike } from './stance.bike.ts'
import type { StanceGiven } from './stance.bike.ts'
import { stanceInputs } from './stance.inputs.ts'
import { stanceRemarks } from './stance.remarks.ts'
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

function pictureOf(given: StanceGiven): StancePicture {
  const { spec, bike, loadCase, stance } = solve(given)
  return {
    bike: { ...bikePicture(spec, bike.geometry, stance), aboard: loadCase.payload.map((place) => ({ ...place, ...stance.toGround(place) })) },
    front: curveOf((x) => forkForce(bike.fork, x, loadCase.gasState), stance.frontLimit, [stance.frontTravel, stance.forkForce]),
    rear: curveOf((x) => rearWheelForce(bike.rear, x), stance.rearLimit, [stance.rearTravel, stance.rearForce]),
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

const length = (label: string, digits = 1) => ({ label, quantity: 'length', unit: 'mm', digits }) as const

export default defineCalculator({
  id: 'stance',
  version: 1,
  title: 'The whole bike',
  question: 'Where does it sit?',
  answers: 'Where both ends settle together, at rest, braking, leaning or two-up, and what a change at one end does to the other.',
  assumes: [
    'A steady state: at rest, or in a long even stop or bend, on a level road. Nothing moves any more.',
    'No friction in the figures; the friction band is given apart. Gas slow at rest and in a bend, fast on the brakes.',
    'Steering straight ahead, caliper on the swing arm, unsprung masses and places aboard as on the bike’s sheet.',
  ],
  leavesOut: [
    'Tyre deflection: about 4 mm of trail and 7 mm of height with a tyre of 180 N/mm under 1.2 kN.',
    'Damping: a brake put on quickly passes the settled dive by 15 to 32 % of the change.',
    'Chain pull, air, frame and fork flex, bushing friction that grows with the brake.',
    'Pneumatic trail, as large as the changes shown, and yokes that are not parallel to the steering axis.',
  ],
  inputs: stanceInputs,
  outputs: {
    frontTravel: { ...length('Front travel used'), lead: true },
    rearTravel: { ...length('Rear travel used'), lead: true },
    frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
    rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1 },
    frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 2 },
    trail: { ...length('Trail'), lead: true },
    rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 2 },
    wheelbase: length('Wheelbase'),
    frontTravelShare: { label: 'Front, share of its travel', quantity: 'share', unit: '%', digits: 0 },
    rearTravelShare: { label: 'Rear, share of its travel', quantity: 'share', unit: '%', digits: 0 },
    frontStop: { kind: 'text', label: 'The front stands' },
    rearStop: { kind: 'text', label: 'The rear stands' },
    frontBand: length('Front travel, friction either way'),
    rearBand: length('Rear travel, friction either way'),
    exposedTube: { ...length('Exposed tube, seal to mark'), more: true },
    pitch: { label: 'Pitch, nose up', quantity: 'angle', unit: '°', digits: 2, signed: true, more: true },
    normalTrail: { ...length('Normal trail'), more: true },
    forkForce: { label: 'Force in the fork, along it', quantity: 'force', unit: 'N', digits: 0, more: true },
    rearForce: { label: 'Force of the rear spring, at the wheel', quantity: 'force', unit: 'N', digits: 0, more: true },
    centreAhead: { ...length('Centre of gravity ahead of the rear contact', 0), more: true },
    centreHeight: { ...length('Centre of gravity above the ground', 0), more: true },
    liftDeceleration: { label: 'Rear wheel carries nothing from', quantity: 'acceleration', unit: 'g', digits: 2, more: true },
    frontGrip: { label: 'Grip needed at the front, force ÷ load', quantity: 'ratio', unit: '', digits: 2, more: true },
    rearGrip: { label: 'Grip needed at the rear, force ÷ load', quantity: 'ratio', unit: '', digits: 2, more: true },
  },
  compute(given) {
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
  },
  baseline: () => NO_CHANGE,
  picture: pictureOf,
  remarks: (context) => stanceRemarks(context as never),
})

import { brakingOvershoot, forkForceFromAxleLoad, liftDeceleration, solveStance, STANDARD_GRAVITY } from '../core/index.ts'
import type { Bike, GasState, LoadCase, Stance } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import { bikeOf, geometryOf } from './bikes.ts'
import type { BikeSpec } from './bikes.ts'
import { brakingDiveRemarks } from './braking-dive.remarks.ts'
import { defineCalculator } from './define.ts'
import type { Interval } from './define.ts'
import { luggageMass, passengerMass, riderMass } from './whole-bike.fields.ts'
import { aboard } from './whole-bike.ts'

interface Given {
  bike: BikeSpec
  deceleration: number
  rider: number
  passenger: number
  luggage: number
  frontBrakeShare: number
  exponent: number
  quickest: number
  slowest: number
  dampingLow: number
  dampingHigh: number
}

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

function caseOf(given: Given): { bike: Bike; loadCase: LoadCase; rest: Stance; gasState: GasState } {
  const bike = bikeOf(given.bike)
  const payload = aboard(given.bike, given)
  const rest = solveStance(bike, { payload })
  // The gas has come slowly to where the bike stands, then the brake squeezes it fast.
  const gasState = { exponent: given.exponent, from: rest.frontTravel }
  return { bike, rest, gasState, loadCase: { payload, frontBrakeShare: given.frontBrakeShare, gasState } }
}

function brake(
  given: Given,
  { bike, rest, gasState, loadCase }: ReturnType<typeof caseOf>,
  deceleration: number,
): { braking: Stance; overshoot: [number, number] } {
  const braking = solveStance(bike, { ...loadCase, deceleration })
  const spread = { dampingRatios: [given.dampingLow, given.dampingHigh], rampTimes: [given.quickest, given.slowest] }
  return { braking, overshoot: brakingOvershoot(bike.fork, rest, braking, gasState, spread) }
}

function diveOf(given: Given): Dive {
  const prepared = caseOf(given)
  return { ...prepared, ...brake(given, prepared, given.deceleration) }
}

/** What pushes the fork together beyond its load at rest [N along the axis]: the weight that moved forward, and the brake along the raked fork. */
function partsOf({ bike, rest, braking }: Dive): { transferPart: number; brakePart: number } {
  const alongFork = (wheelLoad: number): number =>
    forkForceFromAxleLoad({ wheelLoad: Math.max(0, wheelLoad), unsprungMass: bike.frontUnsprungMass, rake: braking.rake })
  const carried = braking.forkForce + braking.frontStopForce
  return { transferPart: alongFork(braking.frontLoad) - alongFork(rest.frontLoad), brakePart: carried - alongFork(braking.frontLoad) }
}

const STEPS = 24
/** The curve ends at the lift or at 1.1 g, the most that a dry road gives a tyre, from memory. */
const STRONGEST = 1.1 * STANDARD_GRAVITY

function pictureOf(given: Given): DivePicture {
  const dive = diveOf(given)
  const { bike, loadCase, braking } = dive
  const lift = liftDeceleration(bike, loadCase)
  const end = Math.max(given.deceleration, Math.min(lift ?? STRONGEST, STRONGEST))
  const curve = Array.from({ length: STEPS + 1 }, (_, index) => {
    const deceleration = (end * index) / STEPS
    const { braking: there, overshoot } = brake(given, dive, deceleration)
    return { deceleration, settled: there.frontTravel, peak: [there.frontTravel + overshoot[0], there.frontTravel + overshoot[1]] as const }
  })
  const picture = bikePicture(given.bike, geometryOf(given.bike), braking)
  const brakeForce = { front: (braking.neededGrip.front ?? 0) * braking.frontLoad, rear: (braking.neededGrip.rear ?? 0) * braking.rearLoad }
  return {
    bike: { ...picture, aboard: aboard(given.bike, given).map((place) => ({ ...place, ...braking.toGround(place) })) },
    curve,
    limit: braking.frontLimit.travel,
    lift,
    brakeForce,
  }
}

const seconds = (label: string, standard: number) =>
  ({ kind: 'quantity', label, quantity: 'time', unit: 's', range: [0, 2], step: 0.05, default: standard, more: true }) as const
const damping = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    hint: '0 none, 1 no overshoot at all.',
    quantity: 'ratio',
    unit: '',
    range: [0, 1],
    step: 0.05,
    default: standard,
    more: true,
  }) as const

export default defineCalculator({
  id: 'braking-dive',
  version: 1,
  title: 'Dive on the brakes',
  question: 'What happens on the brakes?',
  answers: 'How much travel the front uses against deceleration, what pushes it, and how much is left.',
  assumes: [
    'Level road, upright, straight ahead, a steady deceleration that the tyres can give.',
    'The settled figures are those of a long even stop. The gas is squeezed fast (exponent 1.4) from where the bike stood.',
    'The band for a quick brake treats the front as one mass on one spring, with a damping ratio and a time that you set.',
  ],
  leavesOut: [
    'Bumps on the brakes, which use travel on top of all this: the reserve is for them.',
    'Bushing friction that grows with the brake, tyre squash (several millimetres more), and air drag, which helps to slow the bike.',
    'A damper’s own law: a square one passes the settled dive by another amount than this straight one.',
  ],
  inputs: {
    bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
    deceleration: {
      kind: 'quantity',
      label: 'Deceleration',
      hint: 'A firm stop is about 0.6 g; a dry road gives 0.9 to 1.',
      quantity: 'acceleration',
      unit: 'g',
      range: [0, 1.2],
      step: 0.05,
      default: 0.6,
    },
    rider: riderMass,
    frontBrakeShare: { kind: 'quantity', label: 'Front brake’s share', quantity: 'share', unit: '%', range: [0, 100], step: 5, default: 100 },
    passenger: { ...passengerMass, more: true },
    luggage: { ...luggageMass, more: true },
    quickest: seconds('Brake put on in, at the quickest', 0.1),
    slowest: seconds('Brake put on in, at the slowest', 0.2),
    dampingLow: damping('Front’s damping ratio, at the least', 0.3),
    dampingHigh: damping('Front’s damping ratio, at the most', 0.4),
    exponent: {
      kind: 'quantity',
      label: 'Gas exponent',
      hint: '1 squeezed slowly, 1.4 fast; measured forks lie between.',
      quantity: 'ratio',
      unit: '',
      range: [1, 1.4],
      step: 0.05,
      default: 1.4,
      typical: [1, 1.4],
      typicalFrom: 'slow and fast: the ideal gas law’s two ends',
      more: true,
    },
  },
  outputs: {
    frontTravel: { label: 'Front travel used, settled', quantity: 'length', unit: 'mm', digits: 1, lead: true },
    peak: { label: 'Front travel asked for, quick brake', quantity: 'length', unit: 'mm', digits: 0 },
    reserve: { label: 'Travel left beyond that', quantity: 'length', unit: 'mm', digits: 0, lead: true, signed: true },
    travelShare: { label: 'Share of travel, settled', quantity: 'share', unit: '%', digits: 0 },
    transferPart: { label: 'Pushed by load transfer', quantity: 'force', unit: 'N', digits: 0 },
    brakePart: { label: 'Pushed by the brake along the fork', quantity: 'force', unit: 'N', digits: 0 },
    frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1 },
    rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1 },
    trail: { label: 'Trail', quantity: 'length', unit: 'mm', digits: 1 },
    rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 2 },
    liftDeceleration: { label: 'Rear wheel carries nothing from', quantity: 'acceleration', unit: 'g', digits: 2 },
    rearTravel: { label: 'Rear travel used', quantity: 'length', unit: 'mm', digits: 1, more: true },
    wheelbase: { label: 'Wheelbase', quantity: 'length', unit: 'mm', digits: 1, more: true },
    pitch: { label: 'Pitch, nose up', quantity: 'angle', unit: '°', digits: 2, signed: true, more: true },
    frontGrip: { label: 'Grip needed at the front, force ÷ load', quantity: 'ratio', unit: '', digits: 2, more: true },
  },
  compute(given) {
    const dive = diveOf(given)
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
  },
  baseline: () => ({ deceleration: 0 }),
  picture: pictureOf,
  remarks: (context) => brakingDiveRemarks(context as never),
})

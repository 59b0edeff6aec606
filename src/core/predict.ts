import type { LoadCase, PointMass } from './bike.ts'
import { brakingOvershoot } from './brakingOvershoot.ts'
import type { Ridden } from './bikeParameters.ts'
import { type Geometry, pose } from './chassis.ts'
import { STANDARD_GRAVITY } from './constants.ts'
import { DomainError } from './domain.ts'
import { forkTravel } from './fork.ts'
import { wheelLoads } from './loads.ts'
import type {
  At,
  DeepestReading,
  LengthReading,
  LoadReading,
  Observation,
  SpringForceReading,
  TravelReading,
} from './observation.ts'
import { rearTravel } from './rear.ts'
import { springForce } from './spring.ts'
import { solveStance, type Stance } from './stance.ts'

/** What a reading depends on besides the bike, by the name of the parameter. */
export type Aside = (parameter: string) => number

/** The stances that readings ask for, of one bike; each is solved once, however many readings need it. */
export interface Stances {
  ridden: Ridden
  aside: Aside
  at: (
    carrying: { rider?: boolean; payload?: readonly PointMass[] },
    settle: number,
    raised?: LoadReading['raised'],
  ) => Stance
}

/** Stances of a bike to ask for; solved when first asked. */
export function stancesOf(ridden: Ridden, aside: Aside): Stances {
  const solved = new Map<string, Stance>()
  const at: Stances['at'] = ({ rider = false, payload = [] }, settle, raised) => {
    const key = `${rider} ${settle} ${payload.length > 0 || raised != null ? JSON.stringify([payload, raised]) : ''}`
    const known = solved.get(key)
    if (known) return known
    const { bike } = ridden
    const lifted =
      raised == null ? bike : { ...bike, geometry: raisedGeometry(bike.geometry, raised) }
    const stance = solveStance(lifted, { payload: load(ridden, rider, payload) }, { settle })
    solved.set(key, stance)
    return stance
  }
  return { ridden, aside, at }
}

function load({ rider }: Ridden, on: boolean, payload: readonly PointMass[]): PointMass[] {
  if (!on) return [...payload]
  if (rider === null)
    throw new DomainError('prior.rider', rider, 'must be given for readings with the rider')
  return [rider, ...payload]
}

// An axle lifted above level stands as it would on a larger wheel; the figures keep to the wheel for which they were quoted.
function raisedGeometry(
  geometry: Geometry,
  { axle, by }: NonNullable<LoadReading['raised']>,
): Geometry {
  const { frontRadius, rearRadius, datum } = geometry
  const quoted = {
    ...datum,
    frontRadius: datum.frontRadius ?? frontRadius,
    rearRadius: datum.rearRadius ?? rearRadius,
  }
  return axle === 'front'
    ? { ...geometry, frontRadius: frontRadius + by, datum: quoted }
    : { ...geometry, rearRadius: rearRadius + by, datum: quoted }
}

/** What should be read [m or N] on a bike. */
export function predict(observation: Observation, stances: Stances): number {
  switch (observation.kind) {
    case 'length':
      return stances.aside(`${observation.at}Extended`) - usedTravel(observation, stances)
    case 'travel':
      return usedTravel(observation, stances)
    case 'load':
      return wheelLoad(observation, stances)
    case 'springForce':
      return testedForce(observation, stances)
    case 'deepest':
      return deepestTravel(observation, stances)
  }
}

const travelOf = (stance: Stance, at: At): number =>
  at === 'front' ? stance.frontTravel : stance.rearTravel

function usedTravel(reading: LengthReading | TravelReading, stances: Stances): number {
  const settledBy = (settle: number): number => travelOf(stances.at(reading, settle), reading.at)
  switch (reading.settled) {
    case 'hanging':
      return hangingTravel(reading.at, stances.ridden)
    case 'down':
      return settledBy(1)
    case 'up':
      return settledBy(-1)
    case 'mean':
      return (settledBy(1) + settledBy(-1)) / 2
  }
}

// A strong top-out spring can hold a hanging wheel short of full extension: the wheel's weight pulls against it, along the axis at the front.
function hangingTravel(at: At, { bike }: Ridden): number {
  if (at === 'rear') return rearTravel(bike.rear, -bike.rearUnsprungMass * STANDARD_GRAVITY)
  return forkTravel(
    bike.fork,
    -bike.frontUnsprungMass * STANDARD_GRAVITY * Math.cos(bike.geometry.rake),
  )
}

function wheelLoad(reading: LoadReading, stances: Stances): number {
  const { at, raised, held } = reading
  if (held != null) return heldLoad(reading, held, stances.ridden)
  const { frontLoad, rearLoad } = stances.at(reading, 0, raised)
  return at === 'front' ? frontLoad : rearLoad
}

function heldLoad(
  { at, raised, rider = false, payload = [] }: LoadReading,
  held: NonNullable<LoadReading['held']>,
  ridden: Ridden,
): number {
  const { bike } = ridden
  const geometry = raised == null ? bike.geometry : raisedGeometry(bike.geometry, raised)
  const { toGround, frontAxle, rearAxle, wheelbase } = pose(
    geometry,
    held.frontTravel,
    held.rearTravel,
  )
  const carried = [bike.sprung, ...load(ridden, rider, payload)].map((part) => ({
    mass: part.mass,
    ...toGround(part),
  }))
  const masses = [
    ...carried,
    { mass: bike.frontUnsprungMass, ...frontAxle },
    { mass: bike.rearUnsprungMass, ...rearAxle },
  ]
  return wheelLoads({ masses, wheelbase })[at]
}

function testedForce({ at, length }: SpringForceReading, { ridden, aside }: Stances): number {
  const { fork, rear } = ridden.bike
  const spring =
    at === 'front' ? fork.legs.find((leg) => leg.spring.length > 0)?.spring : rear.spring
  return springForce(spring ?? [], aside(`${at}FreeLength`) - length)
}

/** Between which the fork's damping ratio lies, and how quickly brakes are put on [s]: common practice, as `chooseRate` has it. */
const QUICK_BRAKE = { dampingRatios: [0.3, 0.4], rampTimes: [0.1, 0.2] }

// The fork dives from its riding height, where shaking has undone friction, and friction holds it up all the way down.
function deepestTravel(reading: DeepestReading, stances: Stances): number {
  const { name, rider = false, payload = [], frontBrakeShare } = reading
  const { ridden, aside } = stances
  const riding = stances.at(reading, 0)
  const gasState = { exponent: aside('brakingExponent'), from: riding.frontTravel }
  const loadCase: LoadCase = {
    payload: load(ridden, rider, payload),
    deceleration: aside(decelerationOf(name)),
    gasState,
  }
  const braking = solveStance(
    ridden.bike,
    frontBrakeShare == null ? loadCase : { ...loadCase, frontBrakeShare },
    { settle: -1 },
  )
  const [low, high] = brakingOvershoot(ridden.bike.fork, riding, braking, gasState, QUICK_BRAKE)
  return stopped(
    braking.frontTravel + low + aside('overshoot') * (high - low),
    braking.frontLimit.travel,
  )
}

// How gradually a stop takes over [m]: rubber and an oil lock give. A sharp corner has no slope for a fit to follow.
const GIVE = 0.0015

/** A travel that nears its end as if into rubber. */
function stopped(travel: number, end: number): number {
  const beyond = (travel - end) / GIVE
  return Math.min(travel, end) - GIVE * Math.log1p(Math.exp(-Math.abs(beyond)))
}

/** The parameter that stands for how hard one braking was. */
export const decelerationOf = (name: string): string => `deceleration of ${name}`

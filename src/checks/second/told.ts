import { STANDARD_GRAVITY } from '../../core/index.ts'
import type { Drawn } from './bikes.ts'
import { forkPush, shockPush, stroke } from './laws.ts'
import { placesOf, settle } from './settle.ts'

/** Everything that the second method can tell of a settled bike [SI]. */
export interface Told {
  frontTravel: number
  rearTravel: number
  rake: number
  trail: number
  wheelbase: number
  pitch: number
  normalTrail: number
  frontLoad: number
  rearLoad: number
  frontShare: number
  frontTravelShare: number
  rearTravelShare: number
  forkForce: number
  rearForce: number
  centreAhead: number
  centreHeight: number
  frontGrip: number
  rearGrip: number
}

const STEP = 1e-5

/**
 * Load on the front wheel [N] by the work of tilting: with both ends held, the whole bike is turned by a hair about the place where its rear tyre stands,
 * and the front wheel’s load must give what weight and braking lose.
 */
function frontLoadOf(drawn: Drawn, places: ReturnType<typeof placesOf>, wheelbase: number): number {
  const { deceleration = 0, lean = 0 } = drawn.loadCase
  const gravity = STANDARD_GRAVITY / Math.cos(lean)
  const energy = (by: number): number =>
    places.reduce((sum, { mass, x, z }) => {
      const up = x * Math.sin(by) + z * Math.cos(by)
      const ahead = x * Math.cos(by) - z * Math.sin(by)
      return sum + mass * (gravity * up - deceleration * ahead)
    }, 0)
  const rise = wheelbase * (Math.sin(STEP) - Math.sin(-STEP))
  return (energy(STEP) - energy(-STEP)) / rise
}

/** Settles a bike by virtual work, and tells the rest from its places. */
export function tell(drawn: Drawn): Told {
  const { bike, loadCase } = drawn
  const { deceleration = 0, frontBrakeShare = 1, lean = 0, gasState } = loadCase
  const settled = settle(drawn)
  const used = [settled.frontTravel, settled.rearTravel] as const
  const places = placesOf(drawn, used)
  const mass = places.reduce((sum, part) => sum + part.mass, 0)
  const mean = (of: 'x' | 'z'): number =>
    places.reduce((sum, part) => sum + part.mass * part[of], 0) / mass
  const frontLoad = frontLoadOf(drawn, places, settled.wheelbase)
  const rearLoad = (mass * STANDARD_GRAVITY) / Math.cos(lean) - frontLoad
  const shockPerWheel =
    (stroke(bike.rear, used[1] + STEP) - stroke(bike.rear, used[1] - STEP)) / (2 * STEP)
  const brake = mass * deceleration
  return {
    ...settled,
    pitch: settled.rake - bike.geometry.rake,
    normalTrail: settled.trail * Math.sin(Math.PI / 2 - settled.rake),
    frontLoad,
    rearLoad,
    frontShare: frontLoad / (frontLoad + rearLoad),
    frontTravelShare: used[0] / bike.fork.travel,
    rearTravelShare: used[1] / bike.rear.travel,
    forkForce: forkPush(bike.fork, used[0], gasState),
    rearForce: shockPush(bike.rear, used[1]) * shockPerWheel,
    centreAhead: mean('x'),
    centreHeight: mean('z'),
    frontGrip: (frontBrakeShare * brake) / frontLoad,
    rearGrip: ((1 - frontBrakeShare) * brake) / rearLoad,
  }
}

import { STANDARD_GRAVITY } from '../../core/index.ts'
import type { Bike, Geometry } from '../../core/index.ts'
import type { Drawn } from './bikes.ts'
import { forkPush, shockPush, stroke } from './laws.ts'
import { halve } from './searches.ts'

/*
 * Where a bike settles, by virtual work: the travels at which no small movement of either end gains or loses work. It writes down no balance of forces or moments and no
 * wheel load; places come from a search for the pitch that puts both wheels on the ground, and all derivatives are differences. So it shares no equation with the core.
 */

interface Point {
  x: number
  z: number
}

/** What the second method finds [SI]. */
export interface Settled {
  frontTravel: number
  rearTravel: number
  rake: number
  trail: number
  wheelbase: number
}

/** The points of a bike on the ground, x from the rear contact. */
interface Placed {
  pitch: number
  front: Point
  rear: Point
  /** where a point of the chassis drawing lies */
  place(point: Point): Point
  /** direction of the swing arm, from the axle to the pivot */
  arm: number
}

const turned = ({ x, z }: Point, by: number): Point => ({
  x: x * Math.cos(by) - z * Math.sin(by),
  z: x * Math.sin(by) + z * Math.cos(by),
})

/** Both axles in the chassis drawing. */
function axles(geometry: Geometry, used: readonly [number, number]): { front: Point; rear: Point } {
  const { datum, pivot, rake } = geometry
  const datumRadius = {
    front: datum.frontRadius ?? geometry.frontRadius,
    rear: datum.rearRadius ?? geometry.rearRadius,
  }
  const shortened = used[0] + (geometry.tubeRaise ?? 0) - datum.frontTravel
  // the offset lies square to the axis of the steering, forward and up
  const ahead = geometry.forkOffset - (datum.forkOffset ?? geometry.forkOffset)
  const front = {
    x: geometry.wheelbase - shortened * Math.sin(rake) + ahead * Math.cos(rake),
    z: datumRadius.front + shortened * Math.cos(rake) + ahead * Math.sin(rake),
  }
  const height = datumRadius.rear + used[1] - datum.rearTravel - (geometry.rearRaise ?? 0)
  const length = Math.hypot(pivot.x, pivot.z - datumRadius.rear)
  return {
    front,
    rear: { x: pivot.x - Math.sqrt(length ** 2 - (pivot.z - height) ** 2), z: height },
  }
}

/** The bike set down: the pitch at which the front axle is as high as its wheel when the rear one is. */
function setDown(geometry: Geometry, used: readonly [number, number]): Placed {
  const { front, rear } = axles(geometry, used)
  const between = { x: front.x - rear.x, z: front.z - rear.z }
  const drop = geometry.frontRadius - geometry.rearRadius
  const pitch = halve((at) => turned(between, at).z < drop, [-1, 1], 70)
  const place = (point: Point): Point => {
    const { x, z } = turned({ x: point.x - rear.x, z: point.z - rear.z }, pitch)
    return { x, z: z + geometry.rearRadius }
  }
  const pivot = place(geometry.pivot)
  return {
    pitch,
    place,
    front: place(front),
    rear: { x: 0, z: geometry.rearRadius },
    arm: Math.atan2(pivot.z - geometry.rearRadius, pivot.x),
  }
}

/** Width of the differences [m]: the error of a slope is its square, and a rounding over it. */
const STEP = 2e-5

/** The work that a small movement of each end leaves over, per metre of it [N]. */
function leftOver(
  { bike, loadCase, rub = [0, 0] }: Drawn,
  used: readonly [number, number],
): [number, number] {
  const { payload = [], deceleration = 0, frontBrakeShare = 1, lean = 0, gasState } = loadCase
  const gravity = STANDARD_GRAVITY / Math.cos(lean)
  const carried = [bike.sprung, ...payload]
  const total =
    carried.reduce((sum, { mass }) => sum + mass, bike.frontUnsprungMass) + bike.rearUnsprungMass
  const brake = {
    front: frontBrakeShare * total * deceleration,
    rear: (1 - frontBrakeShare) * total * deceleration,
  }
  const springs = [
    -forkPush(bike.fork, used[0], gasState),
    (-shockPush(bike.rear, used[1]) *
      (stroke(bike.rear, used[1] + STEP) - stroke(bike.rear, used[1] - STEP))) /
      (2 * STEP),
  ] as const
  const work = (end: 0 | 1): number => {
    const moved = (by: number) =>
      setDown(bike.geometry, end === 0 ? [used[0] + by, used[1]] : [used[0], used[1] + by])
    const [back, forth] = [moved(-STEP), moved(STEP)]
    const drawn = (
      part: Point,
      mass: number,
      of: (placed: Placed) => Point = (placed) => placed.place(part),
    ): number => {
      const [from, to] = [of(back), of(forth)]
      return mass * (-gravity * (to.z - from.z) + deceleration * (to.x - from.x))
    }
    const masses =
      carried.reduce((sum, part) => sum + drawn(part, part.mass), 0) +
      drawn(bike.sprung, bike.frontUnsprungMass, ({ front }) => front)
    // a braked wheel turns with what holds its caliper, the fork leg or the arm: its tread slides back by the turn
    const slid =
      -brake.front *
        (forth.front.x - back.front.x + bike.geometry.frontRadius * (forth.pitch - back.pitch)) -
      brake.rear * bike.geometry.rearRadius * (forth.arm - back.arm)
    return (masses + slid) / (2 * STEP)
  }
  return [work(0) + springs[0] - rub[0], work(1) + springs[1] - rub[1]]
}

/** The travels at which both ends come to rest, between their stops, by Newton's steps with slopes from differences. */
export function settle(drawn: Drawn): Settled {
  const used: [number, number] = [0.04, 0.04]
  for (let round = 0; round < 40; round++) {
    const now = leftOver(drawn, used)
    const [a, b] = [
      leftOver(drawn, [used[0] + 1e-5, used[1]]),
      leftOver(drawn, [used[0], used[1] + 1e-5]),
    ]
    const slopes = [
      (a[0] - now[0]) / 1e-5,
      (b[0] - now[0]) / 1e-5,
      (a[1] - now[1]) / 1e-5,
      (b[1] - now[1]) / 1e-5,
    ] as const
    const scale = slopes[0] * slopes[3] - slopes[1] * slopes[2]
    const by = [
      (now[0] * slopes[3] - now[1] * slopes[1]) / scale,
      (now[1] * slopes[0] - now[0] * slopes[2]) / scale,
    ] as const
    used[0] -= Math.max(-0.02, Math.min(0.02, by[0]))
    used[1] -= Math.max(-0.02, Math.min(0.02, by[1]))
    if (Math.abs(by[0]) + Math.abs(by[1]) < 1e-13) break
  }
  return read(drawn.bike, used)
}

/** Every mass of a bike [kg] and where it lies, x from the rear contact and z from the ground [m], at given travels. */
export function placesOf(
  { bike, loadCase: { payload = [] } }: Drawn,
  used: readonly [number, number],
): { mass: number; x: number; z: number }[] {
  const placed = setDown(bike.geometry, used)
  return [
    ...[bike.sprung, ...payload].map((part) => ({ mass: part.mass, ...placed.place(part) })),
    { mass: bike.frontUnsprungMass, ...placed.front },
    { mass: bike.rearUnsprungMass, ...placed.rear },
  ]
}

/** Where a point of the chassis drawing lies on the ground at given travels [m]. */
export const placeAt = (
  { geometry }: Bike,
  used: readonly [number, number],
): ((point: Point) => Point) => setDown(geometry, used).place

/** Rake, trail and wheelbase by their meanings: the steering axis drawn down to the ground, against the point below the axle. */
export function read({ geometry }: Bike, used: readonly [number, number]): Settled {
  const { front, rear, pitch } = setDown(geometry, used)
  const rake = geometry.rake + pitch
  // the axis passes behind the axle by the offset, square to itself
  const onAxis = {
    x: front.x - geometry.forkOffset * Math.cos(rake),
    z: front.z - geometry.forkOffset * Math.sin(rake),
  }
  const meetsGround = onAxis.x + onAxis.z * Math.tan(rake)
  return {
    frontTravel: used[0],
    rearTravel: used[1],
    rake,
    trail: meetsGround - front.x,
    wheelbase: front.x - rear.x,
  }
}

import type { BikePicture } from '../bikes/picture.ts'
import { bodywork } from './bodywork.ts'
import type { Bodywork } from './bodywork.ts'

interface Point {
  x: number
  z: number
}

/** How the chassis frame stands in the ground frame: its origin [m], and cosine and sine of its pitch. */
export interface Chassis {
  x: number
  z: number
  cos: number
  sin: number
}

/** Every place a side view needs, in the ground frame [m]. Two shapes of one bike have the same places, so that they can be compared point by point. */
export interface BikeShape {
  frontAxle: Point
  rearAxle: Point
  frontRadius: number
  rearRadius: number
  /** the steering axis, from above the upper yoke to the ground */
  axisTop: Point
  axisFoot: Point
  /** along the fork's tubes, from the axle up */
  seal: Point
  lowerYoke: Point
  upperYoke: Point
  tubeTop: Point
  pivot: Point
  shockFoot: Point
  shockHead: Point
  chassis: Chassis
  body: Bodywork
}

const along = (from: Point, direction: Point, distance: number): Point => ({
  x: from.x + direction.x * distance,
  z: from.z + direction.z * distance,
})
const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + (b.x - a.x) * share,
  z: a.z + (b.z - a.z) * share,
})

// Drawing sizes [m]. They carry no result: only where a line stands that no figure of the bike fixes.
const YOKE_SPACING = 0.185
/** How far a tube stands out of the upper yoke before it is moved [m]. */
export const TUBE_ABOVE_YOKE = 0.022
const AXLE_CLAMP = 0.045
const TYRE_CLEARANCE = 0.045
const AXIS_ABOVE = 0.14
const YOKE_HALF = 0.014

/** Heights of seal and yokes above the axle along the tubes, at full extension with the tubes level in the yokes [m]. */
function forkHeights({ fork, geometry }: BikePicture): {
  seal: number
  lower: number
  upper: number
} {
  const radius = geometry.datum.frontRadius ?? geometry.frontRadius
  const clear = radius + TYRE_CLEARANCE
  const seal = fork.upsideDown ? AXLE_CLAMP + fork.exposedTube : clear
  const lower = (fork.upsideDown ? clear + fork.travel : seal + fork.exposedTube) + YOKE_HALF
  return { seal, lower, upper: lower + YOKE_SPACING }
}

function chassisOf(toGround: (point: Point) => Point): Chassis {
  const [origin, ahead] = [toGround({ x: 0, z: 0 }), toGround({ x: 1, z: 0 })]
  return { ...origin, cos: ahead.x - origin.x, sin: ahead.z - origin.z }
}

/** Where everything stands. The yokes belong to the chassis, the axle to the ground, the tubes slide between them. */
export function bikeShape(picture: BikePicture): BikeShape {
  const { pose, geometry, frontTravel, fork, shocks } = picture
  const { datum, rake, wheelbase } = geometry
  const heights = forkHeights(picture)
  const up = { x: -Math.sin(rake), z: Math.cos(rake) }
  const ahead = { x: Math.cos(rake), z: Math.sin(rake) }
  const datumAxle = { x: wheelbase, z: datum.frontRadius ?? geometry.frontRadius }
  const onAxis = along(datumAxle, ahead, -(datum.forkOffset ?? geometry.forkOffset))
  const yokeOnAxis = (height: number): Point => along(onAxis, up, height - datum.frontTravel)
  const yokeOnTube = (height: number): Point =>
    along(yokeOnAxis(height), ahead, geometry.forkOffset)
  const upGround = { x: -Math.sin(pose.rake), z: Math.cos(pose.rake) }
  const fromAxle = (height: number): Point => along(pose.frontAxle, upGround, height)
  const raise = geometry.tubeRaise ?? 0
  // An upside-down fork's seal hangs on the outer tube, so it comes down with the travel; a conventional one's stays above the axle.
  const seal = fork.upsideDown ? heights.seal - frontTravel : heights.seal
  const body = bodywork({ pivot: geometry.pivot, head: yokeOnAxis(heights.upper) })
  return {
    frontAxle: pose.frontAxle,
    rearAxle: pose.rearAxle,
    frontRadius: geometry.frontRadius,
    rearRadius: geometry.rearRadius,
    axisTop: pose.toGround(yokeOnAxis(heights.upper + AXIS_ABOVE)),
    axisFoot: { x: pose.wheelbase + pose.trail, z: 0 },
    seal: fromAxle(seal),
    lowerYoke: pose.toGround(yokeOnTube(heights.lower)),
    upperYoke: pose.toGround(yokeOnTube(heights.upper)),
    tubeTop: pose.toGround(yokeOnTube(heights.upper + YOKE_HALF + TUBE_ABOVE_YOKE + raise)),
    pivot: pose.pivot,
    shockFoot:
      shocks > 1
        ? between(pose.rearAxle, pose.pivot, 0.07)
        : along(between(pose.pivot, pose.rearAxle, 0.4), { x: -0.1, z: 1 }, 0.03),
    shockHead: pose.toGround(
      body.outlines[shocks > 1 ? 'twinShockHead' : 'shockHead']![0]!.points[0]!,
    ),
    chassis: chassisOf(pose.toGround),
    body,
  }
}

const mixed = (now: number, before: number, times: number): number => now + (before - now) * times

const mixedChassis = (now: Chassis, before: Chassis, times: number): Chassis => ({
  x: mixed(now.x, before.x, times),
  z: mixed(now.z, before.z, times),
  cos: mixed(now.cos, before.cos, times),
  sin: mixed(now.sin, before.sin, times),
})

/** The shape before, its distance from the shape now drawn `times` as large: 1 is true. */
export function exaggerated(now: BikeShape, before: BikeShape, times: number): BikeShape {
  if (times === 1) return before
  const parts = Object.entries(now).map(([name, value]) => {
    const other = before[name as keyof BikeShape]
    if (typeof value === 'number') return [name, mixed(value, Number(other), times)]
    if (name === 'body') return [name, before.body]
    return [
      name,
      name === 'chassis'
        ? mixedChassis(now.chassis, before.chassis, times)
        : between(value as Point, other as Point, times),
    ]
  })
  return Object.fromEntries(parts)
}

import { DomainError, finite, nonNegative, positive, record, representable } from './domain.ts'
import { usableRake } from './trail.ts'

/** A place in the plane of the bike [m]: x forward, z up. */
export interface Point {
  x: number
  z: number
}

/**
 * A chassis: wheelbase [m], rake [rad] and swing-arm pivot [m] of the datum pose; wheel radii [m] and fork offset [m] fitted now;
 * `tubeRaise`, tubes slid up through the yokes [m]; `rearRaise`, rise of the back at the axle from a longer shock [m].
 * `datum`: the used travels [m] for which the figures were quoted, and what was fitted then (absent: the same).
 */
export interface Geometry {
  wheelbase: number
  rake: number
  pivot: Point
  frontRadius: number
  rearRadius: number
  forkOffset: number
  tubeRaise?: number
  rearRaise?: number
  datum: {
    frontTravel: number
    rearTravel: number
    frontRadius?: number
    rearRadius?: number
    forkOffset?: number
  }
}

/** Where a chassis stands with its travels used: angles [rad], lengths [m], points in the ground frame [m]. Pitch is positive nose-up. */
export interface Pose {
  pitch: number
  rake: number
  trail: number
  normalTrail: number
  wheelbase: number
  frontAxle: Point
  rearAxle: Point
  pivot: Point
  /** Moves a point [m] from the chassis frame to the ground frame. */
  toGround: (point: Point) => Point
}

/** A geometry with what does not change from pose to pose worked out. */
export interface Chassis {
  sinRake: number
  cosRake: number
  /** Front axle at no used travel, rear axle height at no used travel, both in the chassis frame [m]. */
  front: Point
  rearHeight: number
  pivot: Point
  armSquared: number
  frontRadius: number
  rearRadius: number
  forkOffset: number
}

/** A chassis at one pair of travels: the numbers that loads and pose are made of, kept in one object that a search can use again. */
export interface Attitude {
  /** Rear axle in the chassis frame [m], and how far the pivot is ahead of it [m]. */
  rearX: number
  rearZ: number
  arm: number
  /** From rear to front axle, in the chassis frame [m]. */
  vx: number
  vz: number
  wheelbase: number
  sinPitch: number
  cosPitch: number
  sinRake: number
  cosRake: number
}

/** An attitude to write into. */
export function blankAttitude(): Attitude {
  return {
    rearX: 0,
    rearZ: 0,
    arm: 0,
    vx: 0,
    vz: 0,
    wheelbase: 0,
    sinPitch: 0,
    cosPitch: 1,
    sinRake: 0,
    cosRake: 1,
  }
}

/** A geometry ready to pose; refuses lengths and angles that make no sense. */
export function chassis(geometry: Geometry): Chassis {
  const { wheelbase, rake, pivot, frontRadius, rearRadius, forkOffset, datum } = record(
    'geometry',
    geometry,
  )
  nonNegative('datum.frontTravel', record('datum', datum).frontTravel)
  nonNegative('datum.rearTravel', datum.rearTravel)
  const frontRadius0 = positive(
    'datum.frontRadius',
    datum.frontRadius ?? positive('frontRadius', frontRadius),
  )
  const rearRadius0 = positive(
    'datum.rearRadius',
    datum.rearRadius ?? positive('rearRadius', rearRadius),
  )
  const offsetChange =
    finite('forkOffset', forkOffset) - finite('datum.forkOffset', datum.forkOffset ?? forkOffset)
  const sinRake = Math.sin(usableRake(rake))
  const cosRake = Math.cos(rake)
  const shortening = finite('tubeRaise', geometry.tubeRaise ?? 0) - datum.frontTravel
  const rise = finite('rearRaise', geometry.rearRaise ?? 0)
  finite('pivot.z', record('pivot', pivot).z)
  return {
    sinRake,
    cosRake,
    front: {
      x: positive('wheelbase', wheelbase) - shortening * sinRake + offsetChange * cosRake,
      z: frontRadius0 + shortening * cosRake + offsetChange * sinRake,
    },
    rearHeight: rearRadius0 - datum.rearTravel - rise,
    pivot,
    armSquared: positive('pivot.x', pivot.x) ** 2 + (rearRadius0 - pivot.z) ** 2,
    frontRadius: positive('frontRadius', frontRadius),
    rearRadius: positive('rearRadius', rearRadius),
    forkOffset,
  }
}

/**
 * Poses a chassis at used travels [m]; refuses a swing arm that does not reach, and wheels that do not stand apart.
 * Pitch comes as sine and cosine, from turning the line of the axles until both wheels touch the ground: no angle is needed to find loads.
 */
export function takeAttitude(
  body: Chassis,
  frontTravel: number,
  rearTravel: number,
  out: Attitude,
): Attitude {
  const { pivot, sinRake, cosRake } = body
  out.rearZ = body.rearHeight + rearTravel
  const reach = body.armSquared - (out.rearZ - pivot.z) ** 2
  if (!(reach > 0))
    throw new DomainError(
      'rearTravel',
      rearTravel,
      'must leave the rear axle within reach of the swing arm',
    )
  out.arm = Math.sqrt(reach)
  out.rearX = pivot.x - out.arm
  out.vx = body.front.x - frontTravel * sinRake - out.rearX
  out.vz = body.front.z + frontTravel * cosRake - out.rearZ
  const rise = body.frontRadius - body.rearRadius
  const span = out.vx * out.vx + out.vz * out.vz
  const base = span - rise * rise
  if (!(base > 0))
    throw new DomainError(
      'wheelbase',
      Math.sqrt(span),
      'must keep the axles further apart than the radii differ',
    )
  out.wheelbase = Math.sqrt(base)
  out.cosPitch = (out.vx * out.wheelbase + out.vz * rise) / span
  out.sinPitch = (out.vx * rise - out.vz * out.wheelbase) / span
  out.sinRake = sinRake * out.cosPitch + cosRake * out.sinPitch
  out.cosRake = cosRake * out.cosPitch - sinRake * out.sinPitch
  if (!(out.cosRake > 0))
    throw new DomainError(
      'rake',
      Math.atan2(out.sinRake, out.cosRake),
      'must stay short of a level steering axis',
    )
  return out
}

/** The pose of a chassis in an attitude. */
export function poseOf(body: Chassis, at: Attitude): Pose {
  const { rearX, rearZ, sinPitch, cosPitch, wheelbase } = at
  const { rearRadius, frontRadius, forkOffset, pivot } = body
  const toGround = ({ x, z }: Point): Point => ({
    x: (x - rearX) * cosPitch - (z - rearZ) * sinPitch,
    z: rearRadius + (x - rearX) * sinPitch + (z - rearZ) * cosPitch,
  })
  const normalTrail = frontRadius * at.sinRake - forkOffset
  return {
    pitch: Math.atan2(sinPitch, cosPitch),
    rake: Math.atan2(at.sinRake, at.cosRake),
    trail: representable('trail', normalTrail / at.cosRake),
    normalTrail,
    wheelbase,
    frontAxle: { x: wheelbase, z: frontRadius },
    rearAxle: { x: 0, z: rearRadius },
    pivot: toGround(pivot),
    toGround,
  }
}

/**
 * A place on a chassis [m, chassis frame] from where it is in the ground frame [m] of a pose: `toGround` undone. Refuses places that are no
 * numbers. Source: a turn by the pitch, undone.
 */
export function toChassis({ toGround, pitch }: Pose, place: Point): Point {
  const origin = toGround({ x: 0, z: 0 })
  const x = finite('place.x', record('place', place).x) - origin.x
  const z = finite('place.z', place.z) - origin.z
  const [sin, cos] = [Math.sin(pitch), Math.cos(pitch)]
  return { x: x * cos + z * sin, z: z * cos - x * sin }
}

/**
 * The pose of a chassis at used travels [m]: exact, without small angles. Refuses travels below 0 and geometry that cannot be built.
 * Source: rigid-body geometry of a fork that slides along the steering axis and a rear axle on an arc about the pivot.
 */
export function pose(geometry: Geometry, frontTravel: number, rearTravel: number): Pose {
  const body = chassis(geometry)
  const at = takeAttitude(
    body,
    nonNegative('frontTravel', frontTravel),
    nonNegative('rearTravel', rearTravel),
    blankAttitude(),
  )
  return poseOf(body, at)
}

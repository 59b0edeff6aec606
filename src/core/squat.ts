import { runningRadii, type Sprockets } from './chain.ts'
import type { Point } from './chassis.ts'
import { DomainError, finite, positive, record } from './domain.ts'

/**
 * What decides how a chain-driven bike squats, in the ground frame with its origin in the rear
 * contact, x forward and z up [m]: rear axle, swing-arm pivot, centre of the engine's sprocket,
 * sprockets, wheelbase, and height of the centre of gravity of everything.
 */
export interface DrivenRear {
  rearAxle: Point
  pivot: Point
  frontSprocket: Point
  sprockets: Sprockets
  wheelbase: number
  centreOfGravityHeight: number
}

/**
 * Squat under power: angles above level [rad] of the swing arm and of the upper, pulling run of the
 * chain (positive where they rise forwards); where their lines cross [m], null where they run
 * parallel; the angle of the line from the rear contact to there; that of the load transfer, height
 * over wheelbase; their tangents' quotient, `squatRatio` [1] (transfer over line: above 1 the back
 * squats, below 1 it rises; null for a level line), and its inverse `antiSquat` [1].
 */
export interface Squat {
  armAngle: number
  chainAngle: number
  crossing: Point | null
  squatLineAngle: number
  transferAngle: number
  squatRatio: number | null
  antiSquat: number
}

/** Lines closer to parallel than this [rad] cross too far away to say where. */
const PARALLEL = 1e-9

/**
 * Squat of a chain-driven rear at a steady pull, moments about the pivot alone: the line from the
 * rear contact to the crossing of arm and upper chain run has the direction of the force at the
 * contact that the spring need not carry. Air, and friction of the suspension, are left out.
 * Refuses an axle not behind the pivot, sprockets that overlap, and a wheelbase or height not above
 * 0. Source: Cossalter, Motorcycle Dynamics, chapter on squat.
 */
export function squat(driven: DrivenRear): Squat {
  const { rearAxle, pivot, frontSprocket, sprockets } = record('driven', driven)
  const { front, rear } = runningRadii(sprockets)
  const arm = { x: pivotAhead(rearAxle, pivot), z: finite('pivot.z', pivot.z) - rearAxle.z }
  const centres = {
    x: finite('frontSprocket.x', frontSprocket.x) - rearAxle.x,
    z: finite('frontSprocket.z', frontSprocket.z) - rearAxle.z,
  }
  const distance = Math.hypot(centres.x, centres.z)
  if (distance <= front + rear)
    throw new DomainError('frontSprocket', frontSprocket, 'must leave room between the sprockets')
  const armAngle = Math.atan2(arm.z, arm.x)
  const chainAngle = Math.atan2(centres.z, centres.x) - Math.asin((rear - front) / distance)
  // the run touches the rear sprocket at a right angle to itself, above the axle
  const touch = {
    x: rearAxle.x - rear * Math.sin(chainAngle),
    z: rearAxle.z + rear * Math.cos(chainAngle),
  }
  const transferAngle = Math.atan2(
    positive('centreOfGravityHeight', driven.centreOfGravityHeight),
    positive('wheelbase', driven.wheelbase),
  )
  const crossing = crossingOf(rearAxle, armAngle, touch, chainAngle)
  const line = lineTo(crossing, armAngle)
  const antiSquat = Math.tan(line) / Math.tan(transferAngle)
  return {
    armAngle,
    chainAngle,
    crossing,
    squatLineAngle: line,
    transferAngle,
    squatRatio: Number.isFinite(1 / antiSquat) ? 1 / antiSquat : null,
    antiSquat,
  }
}

function pivotAhead(rearAxle: Point, pivot: Point): number {
  finite('rearAxle.z', record('rearAxle', rearAxle).z)
  return positive(
    'pivot.x',
    finite('pivot.x', record('pivot', pivot).x) - finite('rearAxle.x', rearAxle.x),
  )
}

function crossingOf(from: Point, angle: number, other: Point, otherAngle: number): Point | null {
  const turn = Math.sin(otherAngle - angle)
  if (Math.abs(turn) < PARALLEL) return null
  const along =
    ((other.x - from.x) * Math.sin(otherAngle) - (other.z - from.z) * Math.cos(otherAngle)) / turn
  return { x: from.x + along * Math.cos(angle), z: from.z + along * Math.sin(angle) }
}

// A crossing behind the contact lies on the same line as one ahead of it.
function lineTo(crossing: Point | null, parallel: number): number {
  return crossing === null ? parallel : Math.atan(crossing.z / crossing.x)
}

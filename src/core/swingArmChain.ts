import { chainExcess, chainPath, midRunSlack, runningRadii, type Sprockets } from './chain.ts'
import type { Point } from './chassis.ts'
import { DomainError, finite, nonNegative, positive, record } from './domain.ts'

/**
 * A chain between a sprocket on the engine and one on a swing arm, in the chassis frame with its
 * origin in the pivot, x forward and z up [m]: `frontSprocket` its centre, `armLength` pivot to
 * rear axle, `axleHeight` of the axle at full extension (below 0 where it hangs lower than the
 * pivot).
 */
export interface ChainDrive extends Sprockets {
  frontSprocket: Point
  armLength: number
  axleHeight: number
}

/**
 * A chain drive at one place of its travel: rear axle from the pivot [m], the arm's angle above
 * level towards the pivot [rad], the sprocket centres' distance [m], one straight run [m], the taut
 * way [m], and how both runs rise forwards [rad].
 */
export interface ChainStation {
  axle: Point
  armAngle: number
  centreDistance: number
  run: number
  length: number
  upperRunAngle: number
  lowerRunAngle: number
}

/**
 * A chain drive at a used travel [m], vertical at the axle; below 0 for an arm that hangs lower
 * than `axleHeight` says. Refuses travel past the reach of the arm, and sprockets that overlap.
 * Source: rigid-body geometry; tangents to two circles.
 */
export function chainAt(drive: ChainDrive, travel: number): ChainStation {
  const { frontSprocket, armLength, axleHeight } = record('drive', drive)
  const z = finite('axleHeight', axleHeight) + finite('travel', travel)
  const reach = positive('armLength', armLength) ** 2 - z * z
  if (!(reach > 0))
    throw new DomainError('travel', travel, 'must leave the axle within reach of the swing arm')
  const axle = { x: -Math.sqrt(reach), z }
  const ahead = finite('frontSprocket.x', record('frontSprocket', frontSprocket).x) - axle.x
  const above = finite('frontSprocket.z', frontSprocket.z) - z
  const centreDistance = Math.hypot(ahead, above)
  const { run, length } = chainPath({ ...drive, centreDistance })
  const { front, rear } = runningRadii(drive)
  const centreLine = Math.atan2(above, ahead)
  const tilt = Math.asin((rear - front) / centreDistance)
  return {
    axle,
    armAngle: Math.atan2(-z, -axle.x),
    centreDistance,
    run,
    length,
    upperRunAngle: centreLine - tilt,
    lowerRunAngle: centreLine + tilt,
  }
}

/**
 * Used travel [m] between two at which the chain's way is longest: where sprocket, pivot and axle
 * lie in one line, if the arm comes through there, else at an end. Refuses what `chainAt` refuses.
 * Source: the way grows with the distance of the centres, which is a cosine of the angle between.
 */
export function tightestTravel(drive: ChainDrive, from: number, to: number): number {
  const { frontSprocket, armLength, axleHeight } = drive
  const offset = Math.hypot(frontSprocket.x, frontSprocket.z)
  // about the pivot itself the way never changes
  if (offset === 0) return from
  const inLine = (-armLength * frontSprocket.z) / offset - axleHeight
  const [low, high] = [Math.min(from, to), Math.max(from, to)]
  const places = [from, to, ...(inLine > low && inLine < high ? [inLine] : [])]
  const ways = places.map((travel) => chainAt(drive, travel).length)
  return places[ways.indexOf(Math.max(...ways))]!
}

/**
 * Slack of a chain at one place of the travel: the excess of the chain over its taut way [m], below
 * 0 where it would have to stretch, and the free movement at mid-run [m].
 */
export interface SlackAt {
  travel: number
  excess: number
  slack: number
}

/**
 * Slack at a used travel [m] of a chain whose free movement at mid-run was `slack` [m] at the used
 * travel `at` [m]. Refuses a slack below 0 and what `chainAt` refuses. Source: the chain's length
 * does not change.
 */
export function slackAt(
  drive: ChainDrive,
  read: { slack: number; at: number },
  travel: number,
): SlackAt {
  const there = chainAt(drive, finite('at', record('read', read).at))
  const here = chainAt(drive, travel)
  const spare = chainExcess({ run: there.run, slack: nonNegative('slack', read.slack) })
  const excess = spare + (there.length - here.length)
  return { travel, excess, slack: midRunSlack({ run: here.run, excess }) }
}

/**
 * The free movement at mid-run [m], at the used travel `at` [m], below which the chain is tight
 * somewhere between two travels [m]. Source: `slackAt`, with none left at `tightestTravel`.
 */
export function leastSlack(drive: ChainDrive, at: number, from: number, to: number): number {
  const there = chainAt(drive, at)
  const longest = chainAt(drive, tightestTravel(drive, from, to)).length
  return midRunSlack({ run: there.run, excess: longest - there.length })
}

import type { ChainDrive } from '../../core/index.ts'
import { halve } from './searches.ts'

/*
 * A chain about two sprockets without the rule for two circles: the way round any convex shape is its breadth added up over all directions (Cauchy), and a straight run lies
 * where both circles reach equally far.
 */

interface Circle {
  x: number
  z: number
  radius: number
}

/** Circles that carry one link for each tooth: as long round as the teeth. */
function circlesOf(drive: ChainDrive, travel: number): readonly [Circle, Circle] {
  const { pitch, frontTeeth, rearTeeth, armLength, axleHeight, frontSprocket } = drive
  const up = Math.asin((axleHeight + travel) / armLength)
  return [
    { ...frontSprocket, radius: (pitch * frontTeeth) / (2 * Math.PI) },
    {
      x: -armLength * Math.cos(up),
      z: armLength * Math.sin(up),
      radius: (pitch * rearTeeth) / (2 * Math.PI),
    },
  ]
}

const reach = ({ x, z, radius }: Circle, towards: number): number =>
  x * Math.cos(towards) + z * Math.sin(towards) + radius

const DIRECTIONS = 40_000

/** Length [m] of a band about both circles. */
function roundBoth([front, rear]: readonly [Circle, Circle]): number {
  let sum = 0
  for (let i = 0; i < DIRECTIONS; i++) {
    const towards = (2 * Math.PI * i) / DIRECTIONS
    sum += Math.max(reach(front, towards), reach(rear, towards))
  }
  return (2 * Math.PI * sum) / DIRECTIONS
}

/** The upper straight run [m]: from circle to circle at the direction, found by halving, in which they reach equally far. */
function straight([front, rear]: readonly [Circle, Circle]): number {
  const at = halve((towards) => reach(front, towards) > reach(rear, towards), [0, Math.PI])
  const touch = ({ x, z, radius }: Circle) => ({
    x: x + radius * Math.cos(at),
    z: z + radius * Math.sin(at),
  })
  const [a, b] = [touch(front), touch(rear)]
  return Math.hypot(a.x - b.x, a.z - b.z)
}

/** How far the middle of a run can be moved up and down when the chain is so much longer: up or down by half of it, the run is two sides of a triangle. */
const movement = (run: number, longer: number): number =>
  halve((by) => 2 * Math.hypot(run / 2, by / 2) - run < longer, [0, run])

/** Slack of a chain [m] at any travel, once it was read at one. */
export function chainBySupport(drive: ChainDrive, read: { slack: number; at: number }) {
  const [there, thereRun] = [
    roundBoth(circlesOf(drive, read.at)),
    straight(circlesOf(drive, read.at)),
  ]
  const longer = 2 * Math.hypot(thereRun / 2, read.slack / 2) - thereRun
  const way = (travel: number): number => roundBoth(circlesOf(drive, travel))
  const run = (travel: number): number => straight(circlesOf(drive, travel))
  return {
    way,
    run,
    slack: (travel: number): number => movement(run(travel), longer + there - way(travel)),
    /** slack that goes up in a way longer by so much */
    takenUp: (travel: number, by: number): number => movement(run(travel), by),
  }
}

/** Where something is largest between two places, by thirds. */
export function largestAt(of: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to]
  for (let i = 0; i < 60; i++) {
    const third = (high - low) / 3
    if (of(low + third) < of(high - third)) low += third
    else high -= third
  }
  return (low + high) / 2
}

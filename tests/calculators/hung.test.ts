import { describe, expect, test } from 'vitest'
import { FRONT_HUNG, REAR_HUNG } from '../../src/drawing/stills/hung.tsx'
import type { Hung } from '../../src/drawing/stills/hung.tsx'
import { CHASSIS, FRAME, POINTS } from '../../src/drawing/side/roadster.ts'
import { bikes } from './bikes.ts'
import { expectNear } from './evaluated.ts'

// the drawn bike has the figures of the roadster of the examples [mm]
const { wheelbase, frontShare, fork, frontRadius, rearRadius } = bikes['middleweight-roadster']!
/** Where the bike's weight acts, behind or ahead of which a stand must be, or the end that should hang comes down [mm from the rear axle]. */
const WEIGHT = (wheelbase * frontShare) / 100
/** Drawing sizes: seal above the axle, and half a yoke [mm]. */
const SEAL = 345
const HALF_YOKE = 14

const apart = (a: { x: number; z: number }, b: { x: number; z: number }): number =>
  Math.hypot(a.x - b.x, a.z - b.z) * 1000
const lowest = ({ shape }: Hung, end: 'front' | 'rear'): number =>
  (shape[`${end}Axle`].z - shape[`${end}Radius`]) * 1000

describe('the pictures of a bike hung by its frame', () => {
  test('draw the held end clear of the floor, its spring at full extension', () => {
    // a turn of a few degrees leaves rounding only
    // the rear on its paddock stand, clear of the floor too
    expectNear(lowest(FRONT_HUNG, 'rear'), 30, 1e-6)
    expectNear(lowest(REAR_HUNG, 'front'), 0, 1e-6)
    for (const clear of [lowest(FRONT_HUNG, 'front'), lowest(REAR_HUNG, 'rear')])
      expect(clear).toBeGreaterThan(40)
    // a leg out to its stop shows all of its exposed tube
    expectNear(
      apart(FRONT_HUNG.shape.frontAxle, FRONT_HUNG.shape.lowerYoke),
      SEAL + fork.exposedTube + HALF_YOKE,
      1e-6,
    )
    expectNear(FRONT_HUNG.shape.frontRadius * 1000, frontRadius, 1e-9)
    // the swing arm hangs as it does at full extension: pivot to axle as the bike's sheet has it, nothing below it
    const { pivot, rearAxle } = REAR_HUNG.shape
    expectNear(apart(pivot, rearAxle), Math.hypot(540, 390 - rearRadius), 1e-6)
  })

  test('put the stand under the frame’s lower tube, ahead of the weight for the front and behind it for the rear', () => {
    const [rail, width] = FRAME.find(([path]) => path.includes('L650 240'))!
    const level = Number(/L\d+ (\d+)/.exec(rail.slice(rail.indexOf('930')))![1])
    for (const at of [POINTS.railFront, POINTS.railRear]) {
      expect(at.z).toBe(level - width / 2)
      // within the level stretch of the tube
      expect(at.x).toBeGreaterThanOrEqual(650)
      expect(at.x).toBeLessThanOrEqual(940)
    }
    expect(POINTS.railFront.x).toBeGreaterThan(WEIGHT + 100)
    expect(POINTS.railRear.x).toBeLessThan(WEIGHT - 50)
    // engine, sump and silencer end above the pad, or beside it by more than half its width [mm]
    const lowestOf = (path: string): number =>
      Math.min(...[...path.matchAll(/(-?\d+) (-?\d+)/g)].map(([, , z]) => Number(z)))
    for (const part of ['engine', 'sump', 'pipe'] as const)
      expect(lowestOf(CHASSIS[part]), part).toBeGreaterThan(POINTS.railFront.z)
    const silencer = [...CHASSIS.silencer.matchAll(/(-?\d+) (-?\d+)/g)].map(([, x]) => Number(x))
    expect(POINTS.railRear.x - Math.max(...silencer)).toBeGreaterThan(60)
  })

  test('start the straps on the frame, behind the steering axis', () => {
    const { shape, at, view } = FRONT_HUNG
    const [top, foot] = [view.spot(shape.upperYoke), view.spot(shape.lowerYoke)]
    const [x, y] = at('headGusset')
    const beside = top[0] + ((foot[0] - top[0]) * (y - top[1])) / (foot[1] - top[1])
    expect(x).toBeLessThan(beside - 5)
  })
})

import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  chainAt,
  type ChainDrive,
  chainExcess,
  leastSlack,
  slackAt,
  tightestTravel,
} from '../../src/core/index.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'

const drive: ChainDrive = {
  pitch: 0.015875,
  frontTeeth: 16,
  rearTeeth: 44,
  frontSprocket: { x: 0.075, z: 0.005 },
  armLength: 0.58,
  axleHeight: -0.09,
}
const drives = fc.record({
  pitch: fc.constantFrom(0.0127, 0.015875),
  frontTeeth: fc.integer({ min: 13, max: 18 }),
  rearTeeth: fc.integer({ min: 36, max: 50 }),
  frontSprocket: fc.record({
    x: fc.double({ min: -0.03, max: 0.12, noNaN: true }),
    z: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
  }),
  armLength: fc.double({ min: 0.48, max: 0.65, noNaN: true }),
  axleHeight: fc.double({ min: -0.15, max: 0.02, noNaN: true }),
})

test('chainAt(…) with arm, pivot and sprocket in one line is the sum of both, worked by hand', () => {
  const level = { ...drive, frontSprocket: { x: 0.075, z: 0 } }
  const station = chainAt(level, 0.09)
  same(station.centreDistance, 0.655)
  same(station.armAngle, 0)
  // 28 teeth more on 15.875 mm: 70.74 mm of radius; asin(70.74/655) = 6.20°, falling forwards above, rising below
  near((station.upperRunAngle * 180) / Math.PI, -6.2, 0.005)
  same(station.upperRunAngle, -station.lowerRunAngle)
})

test('tightestTravel(…) is where a fine search finds the longest way', () => {
  fc.assert(
    fc.property(drives, (it) => {
      const best = tightestTravel(it, 0, 0.13)
      const longest = chainAt(it, best).length
      for (let step = 0; step <= 260; step++)
        expect(chainAt(it, step * 0.0005).length).toBeLessThanOrEqual(longest + 1e-12)
      expect(best).toBeGreaterThanOrEqual(0)
      expect(best).toBeLessThanOrEqual(0.13)
    }),
    { numRuns: 50 },
  )
})

test('tightestTravel(…) is in the middle of the travel on a common bike, and an end where the arm never comes into line', () => {
  near(tightestTravel(drive, 0, 0.13), 0.09 - (0.58 * 0.005) / Math.hypot(0.075, 0.005), 1e-12)
  expect(tightestTravel({ ...drive, axleHeight: -0.25 }, 0, 0.13)).toBe(0.13)
  expect(tightestTravel({ ...drive, axleHeight: 0.01 }, 0, 0.13)).toBe(0)
  expect(tightestTravel({ ...drive, frontSprocket: { x: 0, z: 0 } }, 0, 0.13)).toBe(0)
})

test('slackAt(…) where it was read is what was read, and by hand at the tightest place: 35 mm hanging leave 23', () => {
  const read = { slack: 0.035, at: 0 }
  same(slackAt(drive, read, 0).slack, 0.035, 1e-9)
  // By hand: centres √(647.98² + 95²) = 654.90 mm hanging, 655.17 mm in line. The way grows by 2 × cos 6.2° × 0.2655 = 0.528 mm;
  // 35 mm in a run of 651.1 mm is 0.940 mm, so 0.412 mm is left: √(0.412 × 1302.1) = 23.2 mm.
  const centres = Math.hypot(Math.sqrt(0.58 ** 2 - 0.09 ** 2) + 0.075, 0.095)
  const inLine = 0.58 + Math.hypot(0.075, 0.005)
  const growth = 2 * Math.cos(Math.asin(0.07074 / 0.655)) * (inLine - centres)
  const run = Math.sqrt(centres ** 2 - 0.07074 ** 2)
  const left = chainExcess({ run, slack: 0.035 }) - growth
  const { slack, excess } = slackAt(drive, read, tightestTravel(drive, 0, 0.13))
  near(excess, left, 2e-6) // the hand's run is a straight line between both ends of the growth
  near(slack, Math.sqrt(2 * run * left), 1e-4)
  near(slack, 0.0232, 5e-5) // half a unit of the last digit worked
})

test('slackAt(…) keeps the chain’s length: its way and its excess add up to the same all along', () => {
  fc.assert(
    fc.property(drives, fc.double({ min: 0.005, max: 0.08, noNaN: true }), (it, slack) => {
      const read = { slack, at: 0.03 }
      const whole = chainAt(it, 0.03).length + slackAt(it, read, 0.03).excess
      for (const travel of [-0.01, 0, 0.06, 0.13])
        near(chainAt(it, travel).length + slackAt(it, read, travel).excess, whole, 1e-12)
    }),
  )
})

test('leastSlack(…) is the slack that leaves none at the tightest place', () => {
  fc.assert(
    fc.property(drives, (it) => {
      const slack = leastSlack(it, 0, 0, 0.13)
      near(slackAt(it, { slack, at: 0 }, tightestTravel(it, 0, 0.13)).excess, 0, 1e-12)
    }),
  )
})

test('slackAt(…) tells how much a chain would have to stretch by an excess below 0', () => {
  const { slack, excess } = slackAt({ ...drive, axleHeight: -0.2 }, { slack: 0.02, at: 0 }, 0.13)
  expect(slack).toBe(0)
  expect(excess).toBeLessThan(0)
})

test('chainAt(…) and slackAt(…) refuse what cannot be built', () => {
  expectRefusal(() => chainAt({ ...drive, armLength: 0 }, 0), 'armLength')
  expectRefusal(() => chainAt(drive, 0.7), 'travel')
  expectRefusal(
    () => chainAt({ ...drive, frontSprocket: { x: Number.NaN, z: 0 } }, 0),
    'frontSprocket.x',
  )
  expectRefusal(() => chainAt({ ...drive, frontSprocket: { x: -0.5, z: 0 } }, 0), 'centreDistance')
  expectRefusal(() => slackAt(drive, { slack: -0.01, at: 0 }, 0), 'slack')
  expectRefusal(() => slackAt(drive, { slack: 0.01, at: Number.NaN }, 0), 'at')
})

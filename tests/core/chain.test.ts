import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  chainCentreDistance,
  chainExcess,
  chainPath,
  hangingSag,
  midRunSlack,
  sprocketPitchDiameter,
} from '../../src/core/index.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'

const teeth = fc.integer({ min: 10, max: 60 })
const pitches = fc.constantFrom(0.0127, 0.015875, 0.01905)

test('chainPath(…) on equal sprockets is two centre distances and a turn about one, worked by hand', () => {
  const path = chainPath({ pitch: 0.0127, frontTeeth: 20, rearTeeth: 20, centreDistance: 0.635 })
  // 2 × 50 pitches and 20 teeth
  same(path.links, 120)
  same(path.run, 0.635)
  same(path.frontWrap, Math.PI)
})

test('chainPath(…) has the tangent of a 3-4-5 triangle, worked by hand', () => {
  // one tooth is 2π m here, so the radii are 10 and 40 m; 50 m apart: √(50² − 30²) = 40
  const path = chainPath({
    pitch: 2 * Math.PI,
    frontTeeth: 10,
    rearTeeth: 40,
    centreDistance: 50.0000001,
  })
  near(path.run, 40, 1e-6) // the centre distance stays a hair clear of touching sprockets
  near(path.rearWrap, Math.PI + 2 * Math.asin(0.6), 1e-7)
})

test('chainPath(…) is no shorter than twice its runs and half the teeth, and grows with the distance by both runs’ cosines', () => {
  fc.assert(
    fc.property(
      pitches,
      teeth,
      teeth,
      fc.double({ min: 0.5, max: 0.8, noNaN: true }),
      (pitch, frontTeeth, rearTeeth, centreDistance) => {
        const at = (distance: number) =>
          chainPath({ pitch, frontTeeth, rearTeeth, centreDistance: distance })
        const { length, run, frontWrap, rearWrap, links } = at(centreDistance)
        same(frontWrap + rearWrap, 2 * Math.PI)
        same(links * pitch, length)
        expect(length).toBeGreaterThanOrEqual(
          2 * centreDistance + (pitch * (frontTeeth + rearTeeth)) / 2 - 1e-12,
        )
        const slope = (at(centreDistance + 1e-5).length - at(centreDistance - 1e-5).length) / 2e-5
        near(slope, (2 * run) / centreDistance, 1e-8) // what central differences over 10 µm leave
      },
    ),
  )
})

test('chainCentreDistance(…) undoes chainPath(…)', () => {
  fc.assert(
    fc.property(
      pitches,
      teeth,
      teeth,
      fc.double({ min: 0.5, max: 0.8, noNaN: true }),
      (pitch, frontTeeth, rearTeeth, centreDistance) => {
        const { links } = chainPath({ pitch, frontTeeth, rearTeeth, centreDistance })
        same(chainCentreDistance({ pitch, frontTeeth, rearTeeth, links }), centreDistance, 1e-10)
      },
    ),
  )
})

test('sprocketPitchDiameter(…) is the circle of a polygon whose sides are one pitch', () => {
  fc.assert(
    fc.property(pitches, teeth, (pitch, count) => {
      const radius = sprocketPitchDiameter({ pitch, teeth: count }) / 2
      const turn = (2 * Math.PI) / count
      same(Math.hypot(radius - radius * Math.cos(turn), radius * Math.sin(turn)), pitch, 1e-10)
    }),
  )
})

test('chainExcess(…) of 35 mm in a run of 600 mm is 1.02 mm, worked by hand as the sides of a triangle', () => {
  // √(600² + 35²) = 601.0200; at mid-run 17.5 mm either way
  near(chainExcess({ run: 0.6, slack: 0.035 }), 0.00102, 5e-7)
  const { hypot } = Math
  near(2 * hypot(0.3, 0.0175) - 0.6, chainExcess({ run: 0.6, slack: 0.035 }), 1e-15)
})

test('midRunSlack(…) undoes chainExcess(…), and is 0 for a tight chain', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 1, noNaN: true }),
      fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
      (run, slack) => same(midRunSlack({ run, excess: chainExcess({ run, slack }) }), slack, 1e-9),
    ),
  )
  expect(midRunSlack({ run: 0.6, excess: -0.001 })).toBe(0)
})

test('hangingSag(…) is less than half the movement by hand: √(3/8) against √2 for a small excess', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-5, max: 1e-3, noNaN: true }), (excess) => {
      const share = hangingSag({ span: 0.6, excess }) / midRunSlack({ run: 0.6, excess })
      near(share, Math.sqrt(3 / 16), 1e-3) // the triangle's own second term: excess ÷ (4 × run)
    }),
  )
})

test('chainPath(…), chainCentreDistance(…) and the slacks refuse what cannot be built', () => {
  const path = { pitch: 0.0127, frontTeeth: 15, rearTeeth: 42, centreDistance: 0.6 }
  expectRefusal(() => chainPath({ ...path, pitch: 0 }), 'pitch')
  expectRefusal(() => chainPath({ ...path, frontTeeth: 5 }), 'frontTeeth')
  expectRefusal(() => chainPath({ ...path, rearTeeth: 42.5 }), 'rearTeeth')
  expectRefusal(() => chainPath({ ...path, centreDistance: 0.1 }), 'centreDistance')
  expectRefusal(() => chainCentreDistance({ ...path, links: 40 }), 'links')
  expectRefusal(() => chainExcess({ run: 0, slack: 0.01 }), 'run')
  expectRefusal(() => chainExcess({ run: 0.6, slack: -0.01 }), 'slack')
  expectRefusal(() => midRunSlack({ run: 0.6, excess: Number.NaN }), 'excess')
  expectRefusal(() => hangingSag({ span: 0.6, excess: -1 }), 'excess')
  expectRefusal(() => sprocketPitchDiameter({ pitch: 0.0127, teeth: 3 }), 'teeth')
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Geometry, groundTrail, normalTrail, pose } from '../../src/core/index.ts'
import { plainBike, randomCase, stream } from './bikes.ts'
import { near, same } from './near.ts'
import { between } from './draws.ts'

const DEGREE = Math.PI / 180
const plain: Geometry = { ...plainBike().geometry, rearRadius: 0.3 }
const seeds = fc.integer({ min: 0, max: 2 ** 31 })
const used = between(0, 0.1)

describe('the datum pose', () => {
  test('pose(…) at the datum travels is what was quoted: rake, wheelbase and pivot', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { geometry } = randomCase(stream(seed)).bike
        const { frontTravel, rearTravel } = geometry.datum
        const quoted: Geometry = {
          ...geometry,
          tubeRaise: 0,
          rearRaise: 0,
          datum: { frontTravel, rearTravel },
        }
        const there = pose(quoted, frontTravel, rearTravel)
        near(there.pitch, 0, 1e-12)
        near(there.rake, quoted.rake, 1e-12)
        near(there.wheelbase, quoted.wheelbase, 1e-12)
        near(there.pivot.x, quoted.pivot.x, 1e-12)
        near(there.pivot.z, quoted.pivot.z, 1e-12)
        near(there.trail, groundTrail(quoted), 1e-12)
        near(there.normalTrail, normalTrail(quoted), 1e-12)
      }),
    )
  })

  test('pose(…) puts the origin under the rear axle and both wheels on the ground', () => {
    const there = pose({ ...plain, rearRadius: 0.31 }, 0.05, 0.02)
    expect(there.rearAxle).toEqual({ x: 0, z: 0.31 })
    expect(there.frontAxle).toEqual({ x: there.wheelbase, z: 0.3 })
  })

  test('pose(…) takes parts fitted now for those of the datum when none are named', () => {
    const named = {
      ...plain,
      datum: { ...plain.datum, frontRadius: 0.3, rearRadius: 0.3, forkOffset: 0.03 },
    }
    const { toGround: _a, ...one } = pose(named, 0.03, 0.02)
    const { toGround: _b, ...other } = pose(plain, 0.03, 0.02)
    expect(one).toEqual(other)
  })
})

describe('worked by hand', () => {
  test('pose(…) with 60 mm in at the front and 30 mm out at the rear pitches 3.33° down and leaves 87 mm of trail', () => {
    const settled = { ...plain, datum: { frontTravel: 0, rearTravel: 0.03 } }
    const there = pose(settled, 0.06, 0)
    near(there.pitch / DEGREE, -3.33, 0.08) // the hand took (54.4 + 30)/1450 for the angle; the wheelbase is 25 mm shorter by then
    near(there.trail, 0.087, 0.001)
  })

  test('pose(…) with tubes 10 mm up pitches 0.36°, shortens the wheelbase by 4.3 mm and takes trail from 106.8 to 104.6 mm', () => {
    const there = pose({ ...plain, tubeRaise: 0.01 }, 0, 0)
    near(there.pitch / DEGREE, -0.36, 0.005)
    near(there.wheelbase - 1.45, -0.0043, 0.0002) // the rear axle swings too
    near(there.trail, 0.1046, 5e-5)
  })

  test('pose(…) at full extension has about 107 mm of trail if the figures were for there, 111 mm if for 30 mm settled in front and 10 behind', () => {
    near(pose(plain, 0, 0).trail, 0.107, 0.0005)
    near(
      pose({ ...plain, datum: { frontTravel: 0.03, rearTravel: 0.01 } }, 0, 0).trail,
      0.111,
      0.0005,
    )
  })
})

describe('what a change does', () => {
  test('pose(…) with the tubes up by some travel is the pose with that much more travel used', () => {
    fc.assert(
      fc.property(used, used, between(0, 0.02), (front, rear, raise) => {
        near(
          pose({ ...plain, tubeRaise: raise }, front, rear).trail,
          pose(plain, front + raise, rear).trail,
          1e-12,
        )
      }),
    )
  })

  test('pose(…) with the back raised is the pose with that much less travel used there', () => {
    near(pose({ ...plain, rearRaise: 0.01 }, 0.02, 0.03).rake, pose(plain, 0.02, 0.02).rake, 1e-12)
  })

  test('pose(…) with both wheels larger by the same moves trail and not pitch', () => {
    const datum = { ...plain.datum, frontRadius: 0.3, rearRadius: 0.3 }
    const there = pose({ ...plain, datum, frontRadius: 0.31, rearRadius: 0.31 }, 0, 0)
    near(there.pitch, 0, 1e-12)
    near(there.trail, groundTrail({ ...plain, frontRadius: 0.31 }), 1e-12)
  })

  test('pose(…) with a smaller front wheel than quoted stands nose-down by its drop over the wheelbase', () => {
    const there = pose(
      { ...plain, frontRadius: 0.28, datum: { ...plain.datum, frontRadius: 0.3 } },
      0,
      0,
    )
    near(there.pitch, -Math.asin(0.02 / 1.45), 1e-12)
  })

  test('pose(…) with other yokes moves the axle along the new offset: square to the steering axis', () => {
    const there = pose(
      { ...plain, forkOffset: 0.035, datum: { ...plain.datum, forkOffset: 0.03 } },
      0,
      0,
    )
    const line = { x: 1.45 + 0.005 * Math.cos(plain.rake), z: 0.005 * Math.sin(plain.rake) }
    near(there.wheelbase, Math.hypot(line.x, line.z), 1e-12)
    near(there.pitch, -Math.atan2(line.z, line.x), 1e-12)
    near(there.normalTrail, 0.3 * Math.sin(plain.rake + there.pitch) - 0.035, 1e-12)
  })

  test('pose(…) keeps the rear axle on its arc about the pivot', () => {
    fc.assert(
      fc.property(seeds, used, used, (seed, front, rear) => {
        const { geometry } = randomCase(stream(seed)).bike
        const there = pose(geometry, front, rear)
        const radius = geometry.datum.rearRadius ?? geometry.rearRadius
        near(
          Math.hypot(there.pivot.x, there.pivot.z - there.rearAxle.z),
          Math.hypot(geometry.pivot.x, geometry.pivot.z - radius),
          1e-12,
        )
      }),
    )
  })

  test('pose(…).toGround(…) turns the chassis without bending it', () => {
    const there = pose(plain, 0.05, 0.01)
    const [a, b] = [there.toGround({ x: 0.3, z: 0.5 }), there.toGround({ x: 0.9, z: 1.1 })]
    same(Math.hypot(b.x - a.x, b.z - a.z), Math.hypot(0.6, 0.6))
    near(Math.atan2(b.z - a.z, b.x - a.x) - Math.PI / 4, there.pitch, 1e-12)
  })

  test('pose(…) grows nose-down as the fork goes in, and rake and trail fall with it', () => {
    fc.assert(
      fc.property(used, used, (front, rear) => {
        const [before, after] = [pose(plain, front, rear), pose(plain, front + 0.005, rear)]
        expect(after.pitch).toBeLessThan(before.pitch)
        expect(after.rake).toBeLessThan(before.rake)
        expect(after.trail).toBeLessThan(before.trail)
        expect(after.wheelbase).toBeLessThan(before.wheelbase)
      }),
    )
  })
})

test('pose(…) refuses what makes no sense', () => {
  const bad: [object, string][] = [
    [{ wheelbase: 0 }, 'wheelbase'],
    [{ rake: -0.1 }, 'rake'],
    [{ rake: 1.6 }, 'rake'],
    [{ frontRadius: 0 }, 'frontRadius'],
    [{ rearRadius: -1 }, 'rearRadius'],
    [{ forkOffset: NaN }, 'forkOffset'],
    [{ tubeRaise: NaN }, 'tubeRaise'],
    [{ rearRaise: Infinity }, 'rearRaise'],
    [{ pivot: { x: 0, z: 0.4 } }, 'pivot.x'],
    [{ pivot: { x: 0.5, z: NaN } }, 'pivot.z'],
    [{ pivot: undefined }, 'pivot'],
    [{ datum: undefined }, 'datum'],
    [{ datum: { frontTravel: -0.1, rearTravel: 0 } }, 'datum.frontTravel'],
    [{ datum: { frontTravel: 0, rearTravel: NaN } }, 'datum.rearTravel'],
    [{ datum: { frontTravel: 0, rearTravel: 0, frontRadius: 0 } }, 'datum.frontRadius'],
  ]
  for (const [change, parameter] of bad) {
    expect(() => pose({ ...plain, ...change }, 0, 0), parameter).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  }
  expect(() => pose(plain, -0.01, 0)).toThrow(expect.objectContaining({ parameter: 'frontTravel' }))
  expect(() => pose(plain, 0, NaN)).toThrow(expect.objectContaining({ parameter: 'rearTravel' }))
  expect(() => pose(plain, 0, 1)).toThrow('within reach of the swing arm')
})

// figures that are exact in binary, so that the limit itself can be stood on
const square: Geometry = {
  wheelbase: 1.5,
  rake: 0.4,
  pivot: { x: 0.5, z: 0.25 },
  frontRadius: 0.25,
  rearRadius: 0.25,
  forkOffset: 0,
  datum: { frontTravel: 0, rearTravel: 0 },
}

test('pose(…) refuses a swing arm that stands upright, and allows one that nearly does', () => {
  expect(() => pose(square, 0, 0.5)).toThrow('within reach of the swing arm')
  near(
    pose(square, 0, 0.4375).wheelbase,
    Math.hypot(1 + Math.sqrt(0.25 - 0.4375 ** 2), 0.4375),
    1e-12,
  )
})

test('pose(…) refuses wheels whose radii differ by the distance of the axles or more: neither then stands apart', () => {
  const datum = { ...square.datum, frontRadius: 0.25, rearRadius: 0.25 }
  for (const frontRadius of [1.75, 2]) {
    expect(() => pose({ ...square, frontRadius, datum }, 0, 0)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'wheelbase' }),
    )
  }
  near(
    pose({ ...square, frontRadius: 1.5, datum }, 0, 0).wheelbase,
    Math.sqrt(1.5 ** 2 - 1.25 ** 2),
    1e-12,
  )
})

test('pose(…) refuses a pitch that lays the steering axis level or beyond', () => {
  const raked: Geometry = { ...square, rake: 1.5 }
  expect(() => pose(raked, 0, 0.2)).toThrow(
    expect.objectContaining({ name: 'DomainError', parameter: 'rake' }),
  )
  const there = pose(raked, 0, 0.05)
  near(there.rake, 1.5 + there.pitch, 1e-12)
})

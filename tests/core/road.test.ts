import { describe, expect, test } from 'vitest'
import { roadOf, type Profile } from '../../src/core/road.ts'
import { expectRefusal, expectWithin } from './tolerance.ts'

const ramp: Profile = { kind: 'step', height: 0.02, length: 2, speed: 8 }

describe('roadOf', () => {
  test('roadOf a step is half a cosine over its length: half the height half way, and its formula changes at the top', () => {
    const road = roadOf(ramp)
    expect([road.period, road.changes]).toEqual([0.25, [0.25]])
    // height (1 − cos(π t/T))/2, to the rounding of the sine
    for (const t of [0, 0.05, 0.125, 0.2, 0.25])
      expectWithin(road.height(t), 0.01 * (1 - Math.cos((Math.PI * t) / 0.25)), 1e-16)
    expect([road.height(0.25), road.height(9)]).toEqual([0.02, 0.02])
  })

  test('roadOf a bump is one full cosine, level again from its end', () => {
    const road = roadOf({ ...ramp, kind: 'bump' })
    expect([road.period, road.changes]).toEqual([0.25, [0.25]])
    for (const t of [0, 0.05, 0.125, 0.2])
      expectWithin(road.height(t), 0.01 * (1 - Math.cos((2 * Math.PI * t) / 0.25)), 1e-16)
    expect([road.height(0.25), road.height(9)]).toEqual([0, 0])
  })

  test('roadOf waves goes on in full cosines, without a change of formula', () => {
    const road = roadOf({ ...ramp, kind: 'waves' })
    expect([road.period, road.changes]).toEqual([0.25, []])
    for (const t of [0, 0.1, 0.3, 7.77])
      expectWithin(road.height(t), 0.01 * (1 - Math.cos((2 * Math.PI * t) / 0.25)), 1e-14)
  })

  test('roadOf a sharp step is up at time 0, and a flat road or a wheel that stands sees none', () => {
    const sharp = roadOf({ ...ramp, length: 0 })
    expect([sharp.height(0), sharp.height(3), sharp.changes, sharp.period]).toEqual([
      0.02,
      0.02,
      [],
      Infinity,
    ])
    for (const kind of ['step', 'bump', 'waves'] as const) {
      for (const change of [{ speed: 0 }, { height: 0 }]) {
        const flat = roadOf({ ...ramp, kind, ...change })
        expect([flat.height(0), flat.height(0.1), flat.changes, flat.period]).toEqual([
          0,
          0,
          [],
          Infinity,
        ])
      }
    }
    expect(roadOf({ ...ramp, length: 0, speed: 0 }).height(1)).toBe(0)
  })

  test('roadOf refuses lengths below 0, and a bump or waves of no length', () => {
    expectRefusal(() => roadOf({ ...ramp, length: -1 }), 'profile.length')
    for (const kind of ['bump', 'waves'] as const)
      expectRefusal(() => roadOf({ ...ramp, kind, length: 0 }), 'profile.length')
    expectRefusal(() => roadOf({ ...ramp, speed: -1 }), 'profile.speed')
    expectRefusal(() => roadOf({ ...ramp, speed: NaN }), 'profile.speed')
    expectRefusal(() => roadOf(undefined as unknown as Profile), 'profile')
  })
})

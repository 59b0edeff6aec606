import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { forkStack, METRIC_THREAD_PITCHES, spacerFor, turnsToTravel } from '../../src/core/stack.ts'
import { expectRefusal, expectWithin } from './tolerance.ts'

const stack = {
  tubeDepth: 0.5,
  capReach: 0.02,
  springLength: 0.35,
  spacerLength: 0.14,
  washers: [0.0015, 0.0015],
  settings: [0, 0.008, 0.016],
}
// lengths under 1 m added up a few times
const SUM = 1e-15
const some = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('forkStack', () => {
  test('forkStack adds spring, spacer, washers, cap reach and setting, less the depth of the tube', () => {
    const rows = forkStack(stack)
    expect(rows.map((row) => row.setting)).toEqual([0, 0.008, 0.016])
    // by hand: 350 + 140 + 3 + 20 − 500 = 13 mm
    for (const { setting, preload, loose } of rows) {
      expectWithin(preload, 0.013 + setting, SUM)
      expect(loose).toBe(false)
    }
  })

  test('forkStack calls a negative preload loose: a result, not an error', () => {
    const [row] = forkStack({ ...stack, spacerLength: 0.12, settings: [0] })
    expectWithin(row?.preload ?? NaN, -0.007, SUM)
    expect(row?.loose).toBe(true)
  })

  test('forkStack does not call a spring loose that fits without play', () => {
    const fits = {
      tubeDepth: 0.5,
      capReach: 0,
      springLength: 0.25,
      spacerLength: 0.25,
      settings: [0],
    }
    expect(forkStack(fits)).toEqual([{ setting: 0, preload: 0, loose: false }])
  })

  test('forkStack takes no washers, no settings, a negative setting and a recessed cap', () => {
    expect(forkStack({ ...stack, settings: [] })).toEqual([])
    expectWithin(forkStack({ ...stack, washers: [] })[0]?.preload ?? NaN, 0.01, SUM)
    expectWithin(
      forkStack({ ...stack, capReach: -0.01, settings: [-0.002] })[0]?.preload ?? NaN,
      -0.019,
      SUM,
    )
    expect(forkStack({ ...stack, washers: undefined })).toHaveLength(3)
  })

  test('forkStack refuses negative lengths and what is no number', () => {
    expectRefusal(() => forkStack({ ...stack, springLength: 0 }), 'springLength')
    expectRefusal(() => forkStack({ ...stack, spacerLength: -0.01 }), 'spacerLength')
    expectRefusal(() => forkStack({ ...stack, tubeDepth: -0.5 }), 'tubeDepth')
    expectRefusal(() => forkStack({ ...stack, washers: [-0.001] }), 'washers')
    expectRefusal(() => forkStack({ ...stack, settings: [NaN] }), 'settings')
    expectRefusal(() => forkStack({ ...stack, capReach: Infinity }), 'capReach')
  })
})

describe('spacerFor', () => {
  test('spacerFor gives the spacer with which forkStack gives the wanted preload', () => {
    fc.assert(
      fc.property(
        some(0.3, 0.7),
        some(-0.02, 0.05),
        some(0.2, 0.3),
        some(0, 0.05),
        some(-0.01, 0.02),
        (tubeDepth, capReach, springLength, preload, setting) => {
          const parts = { tubeDepth, capReach, springLength, washers: [0.002] }
          const spacerLength = spacerFor({ ...parts, setting, preload })
          fc.pre(spacerLength >= 0)
          expectWithin(
            forkStack({ ...parts, spacerLength, settings: [setting] })[0]?.preload ?? NaN,
            preload,
            SUM,
          )
        },
      ),
    )
  })

  test('spacerFor is negative where even without a spacer the stack is too long', () => {
    expectWithin(
      spacerFor({
        tubeDepth: 0.35,
        capReach: 0.02,
        springLength: 0.35,
        washers: [],
        setting: 0,
        preload: 0.01,
      }),
      -0.01,
      SUM,
    )
  })

  test('spacerFor refuses what is no number', () => {
    expectRefusal(() => spacerFor({ ...stack, setting: 0, preload: NaN }), 'preload')
    expectRefusal(() => spacerFor({ ...stack, setting: Infinity, preload: 0 }), 'setting')
  })
})

describe('turnsToTravel', () => {
  test('turnsToTravel gives one pitch a turn, either way', () => {
    expectWithin(turnsToTravel({ turns: 3.5, pitch: 0.001 }), 0.0035, SUM)
    expectWithin(turnsToTravel({ turns: -2, pitch: 0.00125 }), -0.0025, SUM)
    expect(turnsToTravel({ turns: 0, pitch: 0.001 })).toBe(0)
  })

  test('turnsToTravel refuses a pitch of 0 or below', () => {
    expectRefusal(() => turnsToTravel({ turns: 1, pitch: 0 }), 'pitch')
    expectRefusal(
      () => turnsToTravel(undefined as unknown as { turns: number; pitch: number }),
      'screw',
    )
    expectRefusal(() => turnsToTravel({ turns: NaN, pitch: 0.001 }), 'turns')
  })
})

describe('METRIC_THREAD_PITCHES', () => {
  test('METRIC_THREAD_PITCHES satisfies D2 = D − (3√3/8)P with the basic pitch diameters of ISO 724 (mm, as in github adrianschlatter/threadlib, commit 3830919)', () => {
    const pitchDiameters: Record<string, number> = {
      M3: 2.675,
      M4: 3.545,
      M5: 4.48,
      M6: 5.35,
      M8: 7.188,
      M8x1: 7.35,
      M10: 9.026,
      'M10x1.25': 9.188,
      M10x1: 9.35,
      M12: 10.863,
      'M12x1.5': 11.026,
      'M12x1.25': 11.188,
      M12x1: 11.35,
      M14: 12.701,
      'M14x1.5': 13.026,
      M20: 18.376,
      'M20x1.5': 19.026,
      M20x1: 19.35,
    }
    expect(Object.keys(METRIC_THREAD_PITCHES)).toEqual(Object.keys(pitchDiameters))
    for (const [name, pitch] of Object.entries(METRIC_THREAD_PITCHES)) {
      const diameter = Number(/^M(\d+)/.exec(name)?.[1])
      expectWithin(
        diameter - (3 * Math.sqrt(3) * pitch * 1000) / 8,
        pitchDiameters[name] ?? NaN,
        0.0006,
      ) // printed to three decimals
    }
  })
})

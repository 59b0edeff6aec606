import { describe, expect, test } from 'vitest'
import PreloadVersusRateFigure from '../../components/figures/PreloadVersusRate.tsx'
import type { Interval } from '../../src/calculators/define.ts'
import preload from '../../src/calculators/preload-versus-rate.ts'
import { dots, places, valueAt } from './drawn.ts'
import { drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'

// Rounding of newtons and millimetres; the balance of a fork is found to 1e-9 of its force.
const FINE = 1e-6

describe('preload-versus-rate', () => {
  test('preload-versus-rate gives a millimetre of height for a millimetre, and keeps force and slope', () => {
    for (const wound of [0, 5, 20, 40]) {
      expectNear(result(preload, { preload: wound }, 'travelUsed') + wound, result(preload, { preload: 10 }, 'travelUsed') + 10, FINE)
      expectNear(result(preload, { preload: wound }, 'springForce'), 971, FINE)
      expectNear(result(preload, { preload: wound }, 'rateHere'), 18, FINE)
    }
  })

  test('preload-versus-rate compares with the standard set-up unless another is held', () => {
    const { before } = shown(preload, { preload: 30, rate: 8 })
    expect(before?.input).toMatchObject({ rate: 9000, preload: 0.015, load: 971 })
    expect(shown(preload, {}, { preload: 5 }).before?.input.preload).toBe(0.005)
  })

  test('preload-versus-rate says what the ten millimetres buy at full travel: seven per cent', () => {
    const text = remarksOf(preload, { preload: 25 })
    expect(text).toMatch(/10 mm more preload, and the front sits 10\.0 mm higher/)
    expect(text).toMatch(/971 N as before, on the same slope/)
    // 180 of 2430 N
    expect(text).toMatch(/180 N more, 7 %: right in direction, small in size/)
  })

  test('preload-versus-rate with trapped air gives about nine millimetres for ten, and says why', () => {
    const gained = result(preload, { preload: 15, gas: 'sealed' }, 'travelUsed') - result(preload, { preload: 25, gas: 'sealed' }, 'travelUsed')
    // slope of the springs over slope with air, 18/20.3 = 0.886 at mid-change; the curve of the air is under a hundredth
    expectNear(gained, 8.86, 0.01)
    expect(remarksOf(preload, { gas: 'sealed' })).toMatch(/Sealed air pushes less when the fork sits higher/)
  })

  test('preload-versus-rate on the top stop raises nothing but the load that leaves it', () => {
    // 18 N/mm · 54 mm = 972 N just holds 971 N on the stop; 53 mm does not
    expect(shown(preload, { preload: 54 }).now.output.where).toBe('on its top stop')
    expect(shown(preload, { preload: 53 }).now.output.where).toBe('between its stops')
    expect(remarksOf(preload, { preload: 60 }, { preload: 55 })).toMatch(/Preload raises nothing here.*now 1080 N, 990 N before/)
  })

  test('preload-versus-rate blames a top-out spring that still pushes', () => {
    const given = { topOut: 'fitted', load: 600, preload: 30 }
    expect(shown(preload, given).now.output.where).toBe('the top-out spring still pushes')
    expect(remarksOf(preload, given, { ...given, preload: 25 })).toMatch(/top-out spring still pushes over its last 8 mm/)
  })

  test('preload-versus-rate shows force at full travel as a band where air is squeezed slowly or fast', () => {
    const force = shown(preload, { gas: 'sealed' }).now.output.forceAtFullTravel as Interval
    // pair of legs at full travel: 1452.2 mm² · 0.101325 MPa · (265 697/91 436 − 1) · 2 = 560.9 N of slow air on 2610 N
    expectNear(force.low, 2610 + 560.9, 0.2)
    expect(force.high).toBeGreaterThan(force.low)
  })

  test('preload-versus-rate warns of a leg that oil fills before its travel ends', () => {
    const { now } = shown(preload, { gas: 'sealed', airHeight: 40 })
    expect(now.output.forceAtFullTravel).toBeNull()
    expect(now.remarks.some(({ caution }) => caution === 'overfilled-fork-locks')).toBe(true)
  })

  test('PreloadVersusRateFigure marks the load on both curves, ten millimetres apart', () => {
    const markup = drawn(preload, PreloadVersusRateFigure)
    expectSound(markup)
    const [, now] = dots(markup, 'now')
    const [, before] = dots(markup, 'before')
    // a hundredth of a unit is about 0.005 mm of travel and 0.2 N
    expectNear(valueAt(markup, 'x', now![0]), 28.944, 0.01)
    expectNear(valueAt(markup, 'x', before![0]), 38.944, 0.01)
    expectNear(valueAt(markup, 'y', now![1]), 971, 0.5)
    expectNear(now![1], before![1], 1e-9)
  })

  test('PreloadVersusRateFigure divides one squeeze at two places', () => {
    const markup = drawn(preload, PreloadVersusRateFigure)
    const [wholeBefore, partBefore] = places(markup, /rect class="before"/, 'width')
    const [wholeNow] = places(markup, /rect class="now fill"/, 'width')
    const [partNow] = places(markup, /rect class="now solid"/, 'width')
    expectNear(wholeNow, wholeBefore!, 0.01) // the markup rounds to a hundredth
    expectNear(partNow! / partBefore!, 25 / 15, 0.001)
  })

  test('PreloadVersusRateFigure puts the numbers in a table', () => {
    expect(drawn(preload, PreloadVersusRateFigure)).toMatch(/<th scope="row">971<\/th><td>38\.9<\/td><td>18\.0<\/td><td>28\.9<\/td><td>18\.0<\/td>/)
  })
})

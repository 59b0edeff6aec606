import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import PreloadVersusRateFigure from '../../src/calculators/preload-versus-rate/Figure.tsx'
import type { Interval } from '../../src/units/interval.ts'
import { dots, parts, places, valueAt } from './drawn.ts'
import { drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'

const preload = loadCalculator('preload-versus-rate')

// Rounding of newtons and millimetres; the balance of a fork is found to 1e-9 of its force.
const FINE = 1e-6

describe('preload-versus-rate', () => {
  test('preload-versus-rate gives a millimetre of height for a millimetre, and keeps force and slope', () => {
    for (const wound of [0, 5, 20, 40]) {
      expectNear(
        result(preload, { preload: wound }, 'travelUsed') + wound,
        result(preload, { preload: 10 }, 'travelUsed') + 10,
        FINE,
      )
      expectNear(result(preload, { preload: wound }, 'springForce'), 971, FINE)
      expectNear(result(preload, { preload: wound }, 'rateHere'), 18, FINE)
    }
  })

  test('preload-versus-rate squeezes the air fast from where the fork carries its load', () => {
    // by hand: springs 18 · (15 + 120) = 2430 N; the air slowly to 35.1 mm (214.7 of 265.7 cm³, 125.4 kPa), fast from there to 91.4 cm³: 414 kPa, 909 N
    // more for the pair. From full extension at once the air alone would push 1016 N.
    const { forceAtFullTravel } = shown(preload, {
      rate: 9,
      preload: 15,
      gas: 'sealed',
      airHeight: 130,
    }).now.output
    expectNear((forceAtFullTravel as Interval).high, 2430 + 909, 3) // a tenth of a millimetre of settled travel is 1 N
    expectNear((forceAtFullTravel as Interval).low, 2430 + 560.9, 0.5)
  })

  test('preload-versus-rate tells where the fork may stand, not where it would in the middle', () => {
    const open = { rate: 'unknown', preload: 'unknown', load: 560 }
    const { output } = shown(preload, open).now
    expect(output.where).toBe('between')
    const stiff = { rate: 'unknown', preload: 60, load: 'unknown' }
    expect([...shown(preload, stiff).now.verdicts.where!].sort()).toEqual(['between', 'top-stop'])
    expect(remarksOf(preload, stiff)).toMatch(/leaves open where the fork sits: 0\.0 to 25\.7 mm/)
    expect(remarksOf(preload, stiff)).not.toMatch(/front will clack/)
    // the change itself is known, although the load is not
    expect(remarksOf(preload, { load: 'unknown' })).toMatch(
      /10 mm more preload, and the front sits 10\.0 mm higher/,
    )
  })

  test('preload-versus-rate lets a fork with a top-out spring off the warning that it clacks', () => {
    expect(remarksOf(preload, { preload: 60 })).toMatch(/the front will clack over every crest/)
    const fitted = remarksOf(preload, { preload: 60, load: 700, topOut: 'fitted' })
    expect(fitted).toMatch(/on its top stop/)
    expect(fitted).not.toMatch(/clack/)
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
    expect(text).toMatch(/180 N more, 7 %, because the fork starts from higher up/)
    // one step of rate at the same sag gives half of that: 19 N/mm squeezed by 971/19 = 51.105 mm in place of 53.944, 12.161 mm of preload;
    // 19 · 132.161 = 2511 N, 3.3 % more
    const stiffer = result(preload, { rate: 9.5, preload: 12.161 }, 'forceAtFullTravel')
    expectNear(stiffer, 2511, 0.1)
    expect(180).toBeGreaterThan(2 * (stiffer - 2430))
    expect(text).not.toMatch(/small in size/)
  })

  test('preload-versus-rate with trapped air gives about nine millimetres for ten, and says why', () => {
    const gained =
      result(preload, { preload: 15, gas: 'sealed' }, 'travelUsed') -
      result(preload, { preload: 25, gas: 'sealed' }, 'travelUsed')
    // slope of the springs over slope with air, 18/20.3 = 0.886 at mid-change; the curve of the air is under a hundredth
    expectNear(gained, 8.86, 0.01)
    expect(remarksOf(preload, { gas: 'sealed' })).toMatch(
      /Sealed air pushes less when the fork sits higher/,
    )
  })

  test('preload-versus-rate on the top stop raises nothing but the load that leaves it', () => {
    // 18 N/mm · 54 mm = 972 N just holds 971 N on the stop; 53 mm does not
    expect(shown(preload, { preload: 54 }).now.output.where).toBe('top-stop')
    expect(shown(preload, { preload: 53 }).now.output.where).toBe('between')
    expect(remarksOf(preload, { preload: 60 }, { preload: 55 })).toMatch(
      /Preload raises nothing here.*now 1080 N, 990 N before/,
    )
  })

  test('preload-versus-rate blames a top-out spring that still pushes', () => {
    const given = { topOut: 'fitted', load: 600, preload: 30 }
    expect(shown(preload, given).now.output.where).toBe('top-out')
    expect(remarksOf(preload, given, { ...given, preload: 25 })).toMatch(
      /top-out spring still pushes over its last 8 mm/,
    )
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
    const [wholeBefore, partBefore] = places(markup, 'rect[class="before"]', 'width')
    const [wholeNow] = places(markup, 'rect[class="now fill"]', 'width')
    const [partNow] = places(markup, 'rect[class="now solid"]', 'width')
    expectNear(wholeNow, wholeBefore!, 0.01) // the markup rounds to a hundredth
    expectNear(partNow! / partBefore!, 25 / 15, 0.001)
  })

  test('PreloadVersusRateFigure and the remarks give the air its share where the fork is sealed', () => {
    const only = 'preload only moves the boundary'
    expect(drawn(preload, PreloadVersusRateFigure)).toContain(only)
    const sealed = { gas: 'sealed' }
    const held = { preload: 15, gas: 'sealed' }
    const markup = drawn(preload, PreloadVersusRateFigure, sealed, held)
    expect(markup).not.toContain(only)
    expect(markup).toContain('the air’s share of it')
    // the squeeze does change: 35.10 + 15 and 26.24 + 25 mm, by 1.14
    const squeeze = (given: object) => result(preload, { ...given }, 'squeeze')
    expectNear(squeeze(sealed) - squeeze(held), 1.14, 0.01)
    expect(remarksOf(preload, { ...sealed, rate: 10, preload: 15 }, held)).toMatch(
      /Springs and air together still carry the load/,
    )
  })

  test('PreloadVersusRateFigure puts the numbers in a table', () => {
    const rows = parts(drawn(preload, PreloadVersusRateFigure), 'tr').map((row) =>
      [...row.children].map(({ textContent }) => textContent),
    )
    expect(rows).toContainEqual(['971', '38.9', '18.0', '28.9', '18.0'])
  })
})

import { codesOf } from '../../src/machine/cells.ts'
import type { Cell } from '../../src/machine/cells.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import MarksFigure from '../../src/calculators/marks/Figure.tsx'
import { SIDE_TOLERANCE, STICKY_BAND } from '../../src/calculators/marks/remarks.ts'
import type { Given } from '../../src/machine/given.ts'
import type { Remark } from '../../src/machine/remark.ts'
import type { Interval } from '../../src/units/interval.ts'
import { decodeLink } from '../../src/machine/link.ts'
import { encodeLink } from '../../src/machine/writeLink.ts'
import { parts, places } from './drawn.ts'
import { drawn, expectNear, expectSound, remarksOf, result, ROUNDING, shown } from './evaluated.ts'

const marks = loadCalculator('marks')

const even = { beforeLeft: 115, beforeRight: 115, frictionBand: 5 }
const onMark = (given: Given): unknown => shown(marks, { ...even, ...given }).now.output.onMark
const both = (after: number): Given => ({ afterLeft: after, afterRight: after })

describe('marks', () => {
  test('marks that did not move at all are on the mark, and nothing exceeds a band of its own size', () => {
    // no ± at all: only no change is none
    expect(onMark({ ...both(115), settled: 'same', spread: 0, readingPlusMinus: 0 })).toBe(
      'on-mark',
    )
    expect(onMark({ ...both(115), settled: 'different', readingPlusMinus: 0 })).toBe('friction')
    expect(
      onMark({ ...both(115), settled: 'different', frictionBand: 0, readingPlusMinus: 0 }),
    ).toBe('friction')
  })

  test('marks settled alike both times judges by the spread of the repeats and the readings, not by the band', () => {
    // Three readings that lie 1 mm apart: s = 1/1.693 = 0.591, of a mean 0.341, of a difference 0.482, times Student's 2.776 for four degrees of
    // freedom 1.339 mm; four readings within ±0.5 mm make 0.566 mm; together 1.454 mm. Worked by hand, to the digits that 2.776 has.
    const { low, high } = shown(marks, { ...even, ...both(120) }).now.output
      .heightChange as Interval
    expectNear((high - low) / 2, 0.001454, 1e-6)
    // a band of 5 mm would have hidden all of these
    for (const settled of ['same', 'means']) {
      expect(onMark({ ...both(116), settled })).toBe('on-mark')
      expect(onMark({ ...both(117), settled })).toBe('higher')
      expect(onMark({ ...both(113), settled })).toBe('lower')
    }
    expect(onMark({ ...both(117), spread: 2 })).toBe('on-mark')
    expect(remarksOf(marks, { ...even, ...both(117) })).toMatch(/friction drops out of it/)
    expect(remarksOf(marks, { ...even, ...both(117) })).toMatch(/20 N more or less is about 1 mm/)
    expect(remarksOf(marks, { ...even, ...both(117), settled: 'means' })).not.toMatch(
      /20 N more or less/,
    )
  })

  test('marks settled differently is no more than friction up to the band, with both ± in it', () => {
    const apart = { settled: 'different', readingPlusMinus: 0 }
    expect(onMark({ ...both(120), ...apart })).toBe('friction')
    expect(onMark({ ...both(120.1), ...apart })).toBe('higher')
    expect(onMark({ ...both(109.9), ...apart })).toBe('lower')
    // within ±1 mm each: 1.13 mm on the change and 1.60 mm on the band, together 1.96 mm. 6.5 mm against a band of 6 says nothing either way
    const read = { settled: 'different', frictionBand: 6, readingPlusMinus: 1 }
    expect(onMark({ ...both(121.5), ...read })).toBe('edge')
    expect(onMark({ ...both(118.5), ...read })).toBe('friction')
    expect(onMark({ ...both(123.5), ...read })).toBe('higher')
    expect(remarksOf(marks, { ...even, ...both(121.5), ...read })).not.toMatch(
      /something has moved it/,
    )
  })

  test('marks with a band that is not known names its range and every verdict that it leaves open', () => {
    const { now } = shown(marks, {
      ...even,
      ...both(121),
      settled: 'different',
      frictionBand: 'unknown',
    })
    expect(codesOf(now.output.onMark as Cell)).toEqual(['higher', 'edge', 'friction'])
    const told = remarksOf(marks, {
      ...even,
      ...both(121),
      settled: 'different',
      frictionBand: 'unknown',
    })
    expect(told).toMatch(/Friction alone can make 3\.0 to 8\.0 mm, since you don’t know/)
    expect(told).not.toMatch(/5\.5 mm/)
  })

  test('marks carries the ± of four readings: within ±0.5 mm each, ±0.57 mm on the mean', () => {
    // JCGM 100, 4.3.7: 0.5/√3 for one reading; the mean of two less the mean of two is 0.5/√3 · √(4/4); times 1.96 is 0.566 mm
    const { low, high } = shown(marks, { ...even, readingPlusMinus: 0.5, spread: 0 }).now.output
      .heightChange as Interval
    expectNear((high - low) / 2, 0.000566, 1e-6) // half the last digit worked
  })

  test('marks remarks on legs that differ by more than a millimetre and more than the readings can hide, and names the caution', () => {
    const apart = (difference: number, readingPlusMinus = 0.5) =>
      shown(marks, { ...even, afterLeft: 120 + difference, afterRight: 120, readingPlusMinus }).now
        .remarks
    const cautions = (remarks: readonly Remark[]) =>
      remarks.some(({ caution }) => caution === 'unequal-legs')
    expect(cautions(apart(SIDE_TOLERANCE * 1000))).toBe(false)
    expect(cautions(apart(SIDE_TOLERANCE * 1000 + 0.1))).toBe(true)
    // within ±1 mm each, two readings are good to 1.6 mm between them
    expect(cautions(apart(1.5, 1))).toBe(false)
    expect(apart(1.5, 1).some(({ text }) => /cannot tell from none/.test(text))).toBe(true)
    expect(cautions(apart(1.7, 1))).toBe(true)
    expect(remarksOf(marks, { ...even, beforeLeft: 117, afterLeft: 122, afterRight: 120 })).toMatch(
      /as they did before/,
    )
  })

  test('marks asks for a free fork where the band is wide', () => {
    expect(remarksOf(marks, { frictionBand: STICKY_BAND * 1000 })).not.toMatch(/Free the fork/)
    expect(remarksOf(marks, { frictionBand: STICKY_BAND * 1000 + 0.5 })).toMatch(/Free the fork/)
  })

  test('a link to marks from before the question how it was settled opens with the same numbers, judged by the band, and says so', () => {
    const old =
      'v=1&beforeLeft=115&beforeRight=115&afterLeft=121&afterRight=121.5&frictionBand=5&travel=120&readingPlusMinus=0.5'
    const { given, problems } = decodeLink(marks, old, [])
    const { output } = shown(marks, given).now
    // as version 1 gave them: the change with the ± of its four readings alone
    expectNear((output.heightChange as Interval).value!, 0.00625, ROUNDING)
    expectNear((output.heightChange as Interval).high, 0.00625 + 0.000566, 1e-6)
    expectNear(output.share, 0.0520833, 1e-6)
    expect(problems.join()).toMatch(
      /earlier edition, which judged every change by the friction band/,
    )
    expect(decodeLink(marks, encodeLink(marks, given), []).problems).toEqual([])
    expect(decodeLink(marks, 'afterLeft=121', []).given.settled).toBe('same')
  })

  test('marks refuses a change longer than the travel at the travel field', async () => {
    const { evaluate } = await import('../../src/machine/evaluate.ts')
    const { problems } = evaluate(
      marks,
      { beforeLeft: 10, beforeRight: 10, afterLeft: 200, afterRight: 200 },
      { bikes: {} },
    )
    expect(Object.keys(problems)).toEqual(['travel'])
  })

  test('MarksFigure draws each change in proportion to the friction band', () => {
    const markup = drawn(marks, MarksFigure, {
      ...even,
      afterLeft: 119,
      afterRight: 125,
      settled: 'different',
    })
    expectSound(markup)
    expect(markup).toContain('friction alone could have made the change')
    const [band] = places(markup, 'rect[class="band"]', 'height')
    const [, , ...circles] = [0, 0, ...places(markup, 'circle[class="now solid"]', 'cy')]
    const magnified = parts(markup, 'svg').find((svg) => svg.querySelector('.band'))!.outerHTML
    const [mark] = places(magnified, 'line[class="mark"]', 'y1')
    // a verdict's code is for code: what is written is its words or nothing
    expect(markup).not.toMatch(/friction\. Mean|at the mark: friction/)
    const scale = band! / 10 // units for a millimetre: the band is 5 mm to either side
    expect(circles).toHaveLength(3)
    // a hundredth of a unit is what the markup rounds to; twice that for a difference
    expectNear(
      (mark! - circles[0]!) / scale,
      result(marks, { ...even, afterLeft: 119, afterRight: 125 }, 'leftChange'),
      0.02,
    )
    expectNear((mark! - circles[2]!) / scale, 10, 0.02)
    expectNear(
      result(marks, { ...even, afterLeft: 119, afterRight: 125 }, 'heightChange'),
      7,
      ROUNDING * 1000,
    )
    // settled alike, the shaded band is what the readings can hide: 1.454 mm either way of 10 mm
    const alike = drawn(marks, MarksFigure, { ...even, afterLeft: 119, afterRight: 125 })
    const [hidden] = places(alike, 'rect[class="band"]', 'height')
    expectNear(hidden! / band!, 1.454 / 5, 0.001)
    expect(alike).toContain('a change is too small to tell by these readings')
  })
})

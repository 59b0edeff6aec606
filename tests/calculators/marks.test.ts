import { describe, expect, test } from 'vitest'
import MarksFigure from '../../components/figures/Marks.tsx'
import { SIDE_TOLERANCE, STICKY_BAND } from '../../src/calculators/marks.remarks.ts'
import marks from '../../src/calculators/marks.ts'
import type { Interval } from '../../src/calculators/define.ts'
import { places } from './drawn.ts'
import { drawn, expectNear, expectSound, remarksOf, result, ROUNDING, shown } from './evaluated.ts'

const even = { beforeLeft: 115, beforeRight: 115, frictionBand: 5 }

describe('marks', () => {
  test('marks is back on its mark up to the friction band, and past it is not', () => {
    // the band itself is still friction's; a tenth of a millimetre more is not
    expect(shown(marks, { ...even, afterLeft: 120, afterRight: 120 }).now.output.onMark).toBe('back on its mark')
    expect(shown(marks, { ...even, afterLeft: 120.1, afterRight: 120.1 }).now.output.onMark).toBe('higher than its mark')
    expect(shown(marks, { ...even, afterLeft: 109.9, afterRight: 109.9 }).now.output.onMark).toBe('lower than its mark')
  })

  test('marks carries the ± of four readings: within ±0.5 mm each, ±0.57 mm on the mean', () => {
    // JCGM 100, 4.3.7: 0.5/√3 for one reading; the mean of two less the mean of two is 0.5/√3 · √(4/4); times 1.96 is 0.566 mm
    const { low, high } = shown(marks, { ...even, readingPlusMinus: 0.5 }).now.output.heightChange as Interval
    expectNear((high - low) / 2, 0.000566, 1e-6) // half the last digit worked
  })

  test('marks remarks on legs that differ by more than a millimetre, and names the caution', () => {
    const apart = (difference: number) => shown(marks, { ...even, afterLeft: 120 + difference, afterRight: 120 }).now.remarks
    expect(apart(SIDE_TOLERANCE * 1000).some(({ caution }) => caution === 'unequal-legs')).toBe(false)
    expect(apart(SIDE_TOLERANCE * 1000 + 0.1).some(({ caution }) => caution === 'unequal-legs')).toBe(true)
    expect(remarksOf(marks, { ...even, beforeLeft: 117, afterLeft: 122, afterRight: 120 })).toMatch(/as they did before/)
  })

  test('marks asks for a free fork where the band is wide', () => {
    expect(remarksOf(marks, { frictionBand: STICKY_BAND * 1000 })).not.toMatch(/Free the fork/)
    expect(remarksOf(marks, { frictionBand: STICKY_BAND * 1000 + 0.5 })).toMatch(/Free the fork/)
  })

  test('marks refuses a change longer than the travel at the travel field', async () => {
    const { evaluate } = await import('../../src/calculators/evaluate.ts')
    const { problems } = evaluate(marks as never, { beforeLeft: 10, beforeRight: 10, afterLeft: 200, afterRight: 200 }, { bikes: {} })
    expect(Object.keys(problems)).toEqual(['travel'])
  })

  test('MarksFigure draws each change in proportion to the friction band', () => {
    const markup = drawn(marks, MarksFigure, { ...even, afterLeft: 119, afterRight: 125 })
    expectSound(markup)
    const [band] = places(markup, /rect class="band"/, 'height')
    const [, , ...circles] = [0, 0, ...places(markup, /circle class="now solid"/, 'cy')]
    const [mark] = places(markup.slice(markup.indexOf('class="band"')), /line class="mark"/, 'y1')
    const scale = band! / 10 // units for a millimetre: the band is 5 mm to either side
    expect(circles).toHaveLength(3)
    // a hundredth of a unit is what the markup rounds to; twice that for a difference
    expectNear((mark! - circles[0]!) / scale, result(marks, { ...even, afterLeft: 119, afterRight: 125 }, 'leftChange'), 0.02)
    expectNear((mark! - circles[2]!) / scale, 10, 0.02)
    expectNear(result(marks, { ...even, afterLeft: 119, afterRight: 125 }, 'heightChange'), 7, ROUNDING * 1000)
  })
})

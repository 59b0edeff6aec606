import { describe, expect, test } from 'vitest'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'
import {
  apartText,
  boxText,
  entryOf,
  meanOf,
  readBox,
  readingUnit,
  showValue,
} from '../../src/record/reading.ts'
import type { ReadingSpec } from '../../src/record/reading.ts'

const tube: ReadingSpec = {
  id: 'markLeft',
  label: 'Exposed tube at rest, left leg',
  quantity: 'length',
  unit: 'mm',
  range: [20, 400],
  repeat: 3,
}
const notes: ReadingSpec = { id: 'notes', label: 'What the bike does', quantity: 'text', unit: '' }

describe('readBox(spec, typed, unit)', () => {
  test('readBox takes a comma and a point', () => {
    expect(readBox(tube, '112,5', 'mm')).toEqual({ kind: 'number', value: 112.5 })
    expect(readBox(tube, ' 112.5 ', 'mm')).toEqual({ kind: 'number', value: 112.5 })
  })
  test('readBox converts from the unit that was typed in: 4.5 in are 114.3 mm exactly', () => {
    expect(readBox(tube, '4.5', 'in')).toEqual({ kind: 'number', value: 114.3 })
  })
  test.each([
    [
      '1,125',
      'Exposed tube at rest, left leg: “1,125” can be read two ways. Leave out the thousands mark, or write more or fewer decimals',
    ],
    [
      'about 112',
      'Exposed tube at rest, left leg: “about 112” is not a number. Write digits with one point or comma, as 7.5 or 7,5',
    ],
    ['11', 'Exposed tube at rest, left leg must be between 20\u00a0mm and 400\u00a0mm'],
  ])('readBox says what is wrong with “%s” and how to put it right', (typed, problem) => {
    expect(readBox(tube, typed, 'mm')).toEqual({ kind: 'problem', problem })
  })
  test('readBox names the range in the unit in sight', () => {
    expect(readBox(tube, '0.2', 'in')).toEqual({
      kind: 'problem',
      problem: 'Exposed tube at rest, left leg must be between 0.787\u00a0in and 15.748\u00a0in',
    })
  })
  test('readBox leaves words alone', () => {
    expect(readBox(notes, 'dives on the brakes', '')).toEqual({ kind: 'text' })
    expect(readBox(notes, '  ', '')).toEqual({ kind: 'empty' })
  })
})

describe('readingUnit(unit, choice)', () => {
  test('readingUnit follows the reader, but asks a scale for kgf and not for newtons', () => {
    expect(readingUnit('mm', IMPERIAL)).toBe('in')
    expect(readingUnit('kgf', METRIC)).toBe('kgf')
    expect(readingUnit('kgf', IMPERIAL)).toBe('lbf')
    expect(readingUnit('km', IMPERIAL)).toBe('km')
  })
})

describe('boxText(spec, entry, unit)', () => {
  test('boxText gives back what was typed in the unit it was typed in, to the letter', () => {
    expect(boxText(tube, entryOf(tube, '112,50', 'mm'), 'mm')).toBe('112,50')
  })
  test('boxText converts for another unit, and back again nothing has drifted', () => {
    const entry = entryOf(tube, '112.5', 'mm')
    expect(boxText(tube, entry, 'in')).toBe('4.429')
    expect(boxText(tube, entry, 'mm')).toBe('112.5')
  })
  test('boxText keeps what can not be read', () => {
    expect(boxText(tube, entryOf(tube, 'abc', 'mm'), 'in')).toBe('abc')
  })
})

describe('meanOf(spec, entries)', () => {
  test('meanOf leaves out empty and unreadable boxes: (112 + 113.5) / 2 = 112.75, spread 1.5', () => {
    const entries = ['112', '', '113,5', 'x'].map((typed) => entryOf(tube, typed, 'mm'))
    expect(meanOf(tube, entries)).toEqual({ mean: 112.75, count: 2, spread: 1.5, apart: false })
    expect(meanOf(tube, [])).toBeNull()
  })
  const read = (spec: ReadingSpec, unit: string, ...typed: string[]) =>
    meanOf(
      spec,
      typed.map((text) => entryOf(spec, text, unit)),
    )
  test.each([
    ['127, 127 and 130: 3 mm are allowed', tube, 'mm', ['127', '127', '130'], false],
    ['127, 127 and 130.1', tube, 'mm', ['127', '127', '130.1'], true],
    ['two of three, 8 mm apart', tube, 'mm', ['127', '', '135'], true],
    ['5.000 and 5.118 in: 2.997 mm', tube, 'in', ['5.000', '5.118'], false],
    ['5.00 and 5.12 in: 3.05 mm', tube, 'in', ['5.00', '5.12'], true],
    [
      'angles, which have no such limit',
      { ...tube, quantity: 'angle', unit: '°', range: [15, 40] } satisfies ReadingSpec,
      '°',
      ['20', '25'],
      false,
    ],
  ])('meanOf holds back readings more than 3 mm apart: %s', (_, spec, unit, typed, apart) => {
    expect(read(spec, unit, ...typed)?.apart).toBe(apart)
  })
  test('apartText says how far, in the unit in sight: 8 mm are 0.315 in', () => {
    const mean = read(tube, 'mm', '128', '127', '135')
    expect(apartText(mean, tube, 'mm')).toBe('These are 8\u00a0mm apart: read once more.')
    expect(apartText(mean, tube, 'in')).toBe('These are 0.315\u00a0in apart: read once more.')
    expect(apartText(read(tube, 'mm', '128', '127'), tube, 'mm')).toBe('')
  })
})

describe('showValue(value, unit, shown)', () => {
  test('showValue drops idle zeros and uses the true minus', () => {
    expect(showValue(112, 'mm', 'mm')).toBe('112\u00a0mm')
    expect(showValue(-3.25, 'mm', 'mm')).toBe('−3.3\u00a0mm')
    expect(showValue(7, 'turns', 'turns')).toBe('7\u00a0turns')
  })
})

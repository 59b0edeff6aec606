import { expect, test } from 'vitest'
import { listAll, counted, dayOf, formatDay, listAny } from '../../src/units/words.ts'

test('counted(count, one, more) has the word that goes with it', () => {
  expect([0, 1, 2].map((count) => counted(count, 'row'))).toEqual(['0 rows', '1 row', '2 rows'])
  expect(counted(2, 'person', 'people')).toBe('2 people')
})

test('listAll(words) and listAny(words) join as British prose does', () => {
  expect(['a', 'a,b', 'a,b,c'].map((all) => listAll(all.split(',')))).toEqual([
    'a',
    'a and b',
    'a, b and c',
  ])
  expect(listAny(['a', 'b', 'c'])).toBe('a, b or c')
  expect(listAll([])).toBe('')
})

test('formatDay(date, as) writes a day, whatever the clock of the place', () => {
  const date = dayOf('2026-03-01')
  expect((['short', 'ofYear'] as const).map((as) => formatDay(date, as))).toEqual([
    '1 Mar 2026',
    '1 Mar',
  ])
})

test('dayOf(iso) is a day even where the month has fewer', () =>
  expect(formatDay(dayOf('2026-02-30'), 'short')).toBe('2 Mar 2026'))

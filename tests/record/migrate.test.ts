import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { emptyBook, readBook } from '../../src/record/book.ts'
import type { Book } from '../../src/record/book.ts'
import { bookOfJob, changedJob, partOf } from '../../src/record/jobSheets.ts'
import { holdsAnything, migrated, same } from '../../src/record/migrate.ts'
import { bikeSchema, jobSchema, newJob } from '../../src/record/records.ts'

/* Twenty books as the first version wrote them, from an empty one to one with every box filled: odd names, other units, what can't be read, steps and procedures that went. */
const books = JSON.parse(
  readFileSync(new URL('./fixtures/first-books.json', import.meta.url), 'utf8'),
) as Book[]

describe('migrated(book, today)', () => {
  test('there are twenty recorded books, and the first version’s reader takes each', () => {
    expect(books).toHaveLength(20)
    for (const book of books) expect(readBook(JSON.stringify(book))).toEqual({ book })
  })
  test.each(books.map((book, index) => [index, book] as const))(
    'book %i becomes one bike with one job, and nothing of it is lost',
    (_, book) => {
      const { bike, job } = migrated(book, '2026-03-12')
      expect(z.safeParse(bikeSchema, bike).error).toBeUndefined()
      expect(z.safeParse(jobSchema, job).error).toBeUndefined()
      expect([bike.job, job.bike, job.closed]).toEqual([job.id, bike.id, null])
      expect(bookOfJob(job).sheets).toEqual(book.sheets)
      if (book.bike.trim() !== '') expect(bike.name).toBe(book.bike)
      if (book.edition !== '') expect(job.notes).toContain(book.edition)
      // no reading is given a day that nobody wrote
      const days = job.parts.flatMap(({ readings }) => Object.values(readings).map(({ at }) => at))
      expect(days.every((at) => at === null)).toBe(true)
    },
  )
  test('the same book gives the same records, another book other ids', () => {
    const all = books.map((book) => migrated(book, '2026-03-12'))
    expect(all).toEqual(books.map((book) => migrated(book, '2026-03-12')))
    expect(new Set(all.map(({ bike }) => bike.id)).size).toBe(20)
  })
  test('the job is opened on the first day that was ticked, else today', () => {
    const untouched = migrated({ ...emptyBook(), bike: 'mine' }, '2026-03-12')
    expect(untouched.job.opened).toBe('2026-03-12')
    const tick = { hash: 'x', at: '2025-05-06' }
    const odd = { hash: 'x', at: 'an earlier day' }
    const sheets = { 'inspect-first': { ticks: { a: odd, b: tick }, readings: {} } }
    expect(migrated({ ...emptyBook(), sheets }, '2026-03-12').job.opened).toBe('2025-05-06')
  })
  test('an empty book holds nothing that is worth a record', () => {
    expect(holdsAnything(books[0]!)).toBe(false)
    expect(books.slice(1).every(holdsAnything)).toBe(true)
  })
})

describe('same(one, other)', () => {
  test('compares plain data all through, whatever the order of names', () => {
    expect(same({ a: [1, { b: null }], c: 'x' }, { c: 'x', a: [1, { b: null }] })).toBe(true)
    expect(same({ a: 1 }, { a: 1, b: undefined })).toBe(false)
    expect(same([1, 2], { 0: 1, 1: 2 })).toBe(false)
    expect(same({ a: { b: 1 } }, { a: { b: 2 } })).toBe(false)
    expect(same({ toString: 1 }, {})).toBe(false)
  })
})

describe('changedJob(job, change)', () => {
  const job = newJob('j1', { bike: 'b1', kind: 'loose', opened: '2026-03-12' })
  const entry = (typed: string) => ({ typed, unit: 'mm', value: Number(typed) })
  const write = (typed: string, at = '2026-03-12') => ({
    do: 'write' as const,
    procedure: 'measure-front-sag',
    reading: 'extended',
    box: 1,
    entry: entry(typed),
    at,
  })
  test('writes a box with its day, and blanks before it', () => {
    const { parts } = changedJob(job, write('150'))
    expect(parts).toEqual([
      {
        id: 'measure-front-sag',
        procedure: 'measure-front-sag',
        ticks: {},
        readings: {
          extended: {
            at: '2026-03-12',
            boxes: [{ typed: '', unit: '', value: null }, entry('150')],
          },
        },
      },
    ])
  })
  test('a procedure begun again in the same job leaves the first reading as it was', () => {
    const again = changedJob(changedJob(job, write('150')), {
      do: 'again',
      procedure: 'measure-front-sag',
    })
    const both = changedJob(again, write('148', '2026-03-26'))
    expect(both.parts.map(({ id }) => id)).toEqual(['measure-front-sag', 'measure-front-sag.2'])
    expect(both.parts.map(({ readings }) => readings['extended']?.boxes[1]?.typed)).toEqual([
      '150',
      '148',
    ])
    expect(bookOfJob(both).sheets['measure-front-sag']?.readings['extended']?.[1]?.typed).toBe(
      '148',
    )
    // with nothing in it yet there is nothing to leave behind
    expect(changedJob(again, { do: 'again', procedure: 'measure-front-sag' })).toBe(again)
    expect(changedJob(job, { do: 'again', procedure: 'measure-front-sag' })).toBe(job)
  })
  test('ticks, opens a step again, and clears the last part alone', () => {
    const tick = {
      do: 'tick' as const,
      procedure: 'inspect-first',
      step: 'look-for-leaks',
      hash: 'h',
      at: '2026-03-12',
    }
    const ticked = changedJob(changedJob(job, write('150')), tick)
    expect(partOf(ticked, 'inspect-first')?.ticks).toEqual({
      'look-for-leaks': { hash: 'h', at: '2026-03-12' },
    })
    const open = changedJob(ticked, {
      do: 'untick',
      procedure: 'inspect-first',
      step: 'look-for-leaks',
    })
    expect(partOf(open, 'inspect-first')?.ticks).toEqual({})
    const cleared = changedJob(ticked, { do: 'clear', procedure: 'inspect-first' })
    expect(cleared.parts.map(({ id }) => id)).toEqual(['measure-front-sag'])
  })
})

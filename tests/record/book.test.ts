import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { emptyBook, readBook } from '../../src/record/book.ts'
import type { Book } from '../../src/record/book.ts'
import { bookOfJob, changedJob } from '../../src/record/jobSheets.ts'
import { newJob } from '../../src/record/records.ts'
import { tickState } from '../../src/record/sheet.ts'

const untouched = newJob('j1', { bike: 'b1', kind: 'loose', opened: '2026-03-12' })
const step = { procedure: 'record-a-baseline', step: 'read-the-marks' }
const ticked = changedJob(untouched, { do: 'tick', ...step, hash: 'abc', at: '2025-01-02' })

describe('readBook(text)', () => {
  test('readBook gives back every book that was written', () => {
    const text = fc.string({ maxLength: 40 })
    const box = fc.record({
      typed: text,
      unit: fc.constantFrom('mm', 'in', ''),
      value: fc.option(
        fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0),
        { nil: null },
      ),
    })
    const id = fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/)
    fc.assert(
      fc.property(
        fc.dictionary(
          id,
          fc.record(
            {
              ticks: fc.dictionary(
                id,
                fc.record({ hash: text, at: text }, { noNullPrototype: true }),
                { noNullPrototype: true },
              ),
              readings: fc.dictionary(id, fc.array(box, { maxLength: 3 }), {
                noNullPrototype: true,
              }),
            },
            { noNullPrototype: true },
          ),
          { noNullPrototype: true },
        ),
        text,
        (sheets, bike) => {
          const book: Book = { ...emptyBook('e'), bike, sheets }
          expect(readBook(JSON.stringify(book))).toEqual({
            book: JSON.parse(JSON.stringify(book)) as Book,
          })
        },
      ),
      { numRuns: 60 },
    )
  })
  test.each([
    ['not JSON', 'hello', 'The file is not JSON. Choose the file that “Save as a file” wrote'],
    [
      'another format',
      '{"format":"x"}',
      'The file is not a bench book of this site. Choose the file that “Save as a file” wrote',
    ],
    [
      'null',
      'null',
      'The file is not a bench book of this site. Choose the file that “Save as a file” wrote',
    ],
    [
      'a later version',
      JSON.stringify({ ...emptyBook(), version: 2 }),
      'The file is a bench book of version 2; this edition reads version 1. Open a newer edition of the site',
    ],
    [
      'a number where words belong',
      JSON.stringify({
        ...emptyBook(),
        sheets: { a: { ticks: {}, readings: { b: [{ typed: 5, unit: 'mm', value: null }] } } },
      }),
      'The file does not hold together at “sheets › a › readings › b › 0 › typed”. Nothing of it was used: save it again where it came from',
    ],
    [
      'a file beyond all measure',
      ' '.repeat(1_000_001),
      'The file is larger than a bench book can be. Choose the file that “Save as a file” wrote',
    ],
  ])('readBook says what is wrong with %s', (_, text, problem) => {
    expect(readBook(text)).toEqual({ problem })
  })
  test('readBook refuses names that reach into an object’s own works', () => {
    expect(
      readBook(
        '{"format":"witness-mark-bench-book","version":1,"edition":"","bike":"","sheets":{"__proto__":{"ticks":{},"readings":{}}}}',
      ),
    ).not.toHaveProperty('book.sheets.__proto__.ticks')
    expect({}).not.toHaveProperty('ticks')
  })
  test('readBook never throws', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => void readBook(text)),
      { numRuns: 200 },
    )
  })
})

describe('tickState(book, procedure, step, hash)', () => {
  test('tickState tells ticked, open, and changed since', () => {
    const book = bookOfJob(ticked)
    expect(tickState(book, 'record-a-baseline', 'read-the-marks', 'abc')).toBe('ticked')
    expect(tickState(book, 'record-a-baseline', 'read-the-marks', 'xyz')).toBe('changed')
    expect(tickState(book, 'record-a-baseline', 'wipe-the-tubes', 'abc')).toBe('open')
    expect(tickState(book, 'constructor', 'toString', 'abc')).toBe('open')
  })
  test('tickState is open again after the tick was taken away', () => {
    const open = bookOfJob(changedJob(ticked, { do: 'untick', ...step }))
    expect(tickState(open, 'record-a-baseline', 'read-the-marks', 'abc')).toBe('open')
  })
})

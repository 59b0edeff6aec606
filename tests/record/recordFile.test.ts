import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Book } from '../../src/record/book.ts'
import { countStanding, planImport, writesOf } from '../../src/record/importPlan.ts'
import { migrated } from '../../src/record/migrate.ts'
import { depthOf, fileText, readFile } from '../../src/record/recordFile.ts'
import { newBike, newJob } from '../../src/record/records.ts'
import type { JobRecord, Records } from '../../src/record/records.ts'

const TODAY = '2026-03-12'
const books = JSON.parse(
  readFileSync(new URL('./fixtures/first-books.json', import.meta.url), 'utf8'),
) as Book[]
const own: Records = {
  bikes: books.slice(1).map((book) => migrated(book, TODAY).bike),
  jobs: books.slice(1).map((book) => migrated(book, TODAY).job),
}
const good = JSON.parse(fileText(own, '2026-01-01', TODAY)) as Record<string, unknown>
const file = (change: Record<string, unknown>): string => JSON.stringify({ ...good, ...change })
const oneBike = newBike('b1', { name: 'Roadster', like: 'middleweight-roadster', made: TODAY })
const withFigure = (figure: unknown, id = 'mass'): string =>
  `{"format":"witness-mark-bench-book","version":2,"edition":"","saved":"${TODAY}","jobs":[],"bikes":[${JSON.stringify(oneBike).replace('"figures":{}', `"figures":{"${id}":${JSON.stringify(figure)}}`)}]}`
const figure = { value: 200, from: 'measured', date: TODAY }

describe('readFile(text, today)', () => {
  test('gives back every record that was saved', () => {
    expect(readFile(fileText(own, '2026-01-01', TODAY), TODAY)).toEqual({ records: own })
  })
  test('reads a book of the first version as one bike with one job', () => {
    const { bike, job } = migrated(books[3]!, TODAY)
    expect(readFile(JSON.stringify(books[3]), TODAY)).toEqual({
      records: { bikes: [bike], jobs: [job] },
    })
    expect(readFile(JSON.stringify(books[0]), TODAY)).toEqual({ records: { bikes: [], jobs: [] } })
  })
  const nested = `${'['.repeat(100_000)}${']'.repeat(100_000)}`
  const NOTHING = 'Nothing of it was used: save it again where it came from'
  test.each<[string, string, string]>([
    ['no JSON', '%PDF-1.7', 'The file is not JSON. Choose a file that “Save as a file” wrote'],
    ['nothing at all', '', 'The file is not JSON. Choose a file that “Save as a file” wrote'],
    [
      'null',
      'null',
      'The file is not a bench book of this site. Choose a file that “Save as a file” wrote',
    ],
    [
      'another format',
      '{"format":"x","version":2}',
      'The file is not a bench book of this site. Choose a file that “Save as a file” wrote',
    ],
    [
      'a format only inherited',
      '{"__proto__":{"format":"witness-mark-bench-book","version":2}}',
      'The file has a name, “__proto__”, that a bench book can’t have. Choose a file that “Save as a file” wrote',
    ],
    [
      'a newer version',
      file({ version: 3 }),
      'The file is a bench book of version 3; this edition reads versions 1 and 2. Open a newer edition of the site',
    ],
    [
      'a version in words',
      file({ version: '2' }).replace('"version":"2"', '"version":"two or so, said at length"'),
      'The file is a bench book of version two or so, s; this edition reads versions 1 and 2. Open a newer edition of the site',
    ],
    [
      'brackets a hundred thousand deep',
      nested,
      'The file is nested more than 30 levels deep, which no bench book is. Choose a file that “Save as a file” wrote',
    ],
    [
      'a number past all size',
      withFigure({ ...figure, value: 1e300 }),
      `The file does not hold together: a number or a text at “bikes › 0 › figures › mass › value” is outside what a bench book takes. ${NOTHING}`,
    ],
    [
      'a number that JSON can’t hold',
      withFigure(figure).replace('200', '1e999'),
      `The file does not hold together: what it has at “bikes › 0 › figures › mass › value” is not what belongs there. ${NOTHING}`,
    ],
    [
      'a figure called __proto__',
      withFigure(figure, '__proto__'),
      `The file has a name, “__proto__”, that a bench book can’t have. Choose a file that “Save as a file” wrote`,
    ],
    [
      'a source that there is not',
      withFigure({ ...figure, from: 'dreamt' }),
      `The file does not hold together: what it has at “bikes › 0 › figures › mass › from” is not what belongs there. ${NOTHING}`,
    ],
    [
      'something more',
      file({ extra: 1 }),
      `The file does not hold together: it has “extra” at its top, which a bench book has not. ${NOTHING}`,
    ],
    [
      'a bike twice',
      file({ bikes: [oneBike, oneBike], jobs: [] }),
      `The file holds a record twice. ${NOTHING}`,
    ],
    ['a job without its bike', file({ bikes: [oneBike] }), `whose bike it has not. ${NOTHING}`],
    [
      'a name too long',
      file({ bikes: [{ ...oneBike, name: 'x'.repeat(201) }], jobs: [] }),
      'a number or a text at “bikes › 0 › name” is outside what a bench book takes',
    ],
  ])('says what is wrong with %s', (_, text, problem) => {
    const reading = readFile(text, TODAY)
    expect('problem' in reading ? reading.problem : '').toContain(problem)
    // nothing of it reached what all objects share
    expect(Reflect.get({}, 'value')).toBeUndefined()
  })
  test('takes markup as the text that it is', () => {
    const name = '<img src=x onerror=alert(1)>'
    expect(readFile(file({ bikes: [{ ...oneBike, name }], jobs: [] }), TODAY)).toEqual({
      records: { bikes: [{ ...oneBike, name }], jobs: [] },
    })
  })
  test('counts brackets outside strings alone', () => {
    expect(depthOf('{"a":["[[[[",{"b\\"[[":1}]}')).toBe(3)
  })
})

describe('planImport(mine, theirs)', () => {
  const job = newJob('j1', { bike: 'b1', kind: 'loose', opened: TODAY })
  const mine: Records = { bikes: [oneBike], jobs: [job] }
  const changed: JobRecord = { ...job, notes: 'theirs', rev: 4 }
  const other = newBike('b2', { name: 'Tourer', like: 'loaded-tourer', made: TODAY })
  const theirs: Records = { bikes: [{ ...oneBike, rev: 9 }, other], jobs: [changed] }
  const plan = planImport(mine, theirs)
  test('says what is new, the same and in conflict; counts of changes make no difference', () => {
    expect(plan.bikes.map(({ standing }) => standing)).toEqual(['same', 'new'])
    expect(plan.jobs.map(({ standing }) => standing)).toEqual(['conflict'])
    expect([countStanding(plan, 'new'), countStanding(plan, 'conflict')]).toEqual([1, 1])
  })
  test('a conflict keeps mine, takes theirs, or keeps both under two ids', () => {
    const add = { store: 'bikes', id: 'b2', record: other }
    expect(writesOf(plan, 'mine', () => 'n1')).toEqual([add])
    expect(writesOf(plan, 'theirs', () => 'n1')).toEqual([
      add,
      { store: 'jobs', id: 'j1', record: { ...changed, rev: 5 } },
    ])
    expect(writesOf(plan, 'both', () => 'n1')).toEqual([
      add,
      { store: 'jobs', id: 'n1', record: { ...changed, id: 'n1' } },
    ])
  })
  test('a bike kept twice takes the file’s jobs with it', () => {
    const file: Records = {
      bikes: [{ ...oneBike, name: 'Theirs', job: 'j2' }],
      jobs: [{ ...job, id: 'j2' }],
    }
    const writes = writesOf(planImport(mine, file), 'both', () => 'n1')
    expect(
      writes.map(({ id, record }) => [id, record && 'bike' in record ? record.bike : record?.job]),
    ).toEqual([
      ['n1', 'j2'],
      ['j2', 'n1'],
    ])
  })
  test('a file read back into the book that it came from is the same all through', () => {
    expect(countStanding(planImport(own, own), 'same')).toBe(38)
  })
})

import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Book } from '../../src/record/book.ts'
import { migrated } from '../../src/record/migrate.ts'
import { fileText, readFile } from '../../src/record/recordFile.ts'
import { newBike, newJob } from '../../src/record/records.ts'
import type { RecordFile } from '../../src/record/records.ts'
import { GET } from '../../src/pages/record/schema.json.ts'

/* The schema that is published for other programs, against what is exported and against what is read back. */

const TODAY = '2026-03-12'
const books = JSON.parse(
  readFileSync(new URL('./fixtures/first-books.json', import.meta.url), 'utf8'),
) as Book[]
const published = (await GET().json()) as Record<string, unknown>
const isValid = new Ajv2020({ strict: false }).compile(published)

const old = books.slice(1).map((book) => migrated(book, TODAY))
const exported = (file: Parameters<typeof fileText>[0]): RecordFile =>
  JSON.parse(fileText(file, '2026-03-01', TODAY)) as RecordFile
const whole = exported({
  bikes: [
    ...old.map(({ bike }) => bike),
    {
      ...newBike('b1', { name: 'Roadster', like: 'middleweight-roadster', made: TODAY }),
      figures: {
        mass: { value: 210, plusMinus: 2, from: 'measured', date: TODAY, of: 'j1 weigh mass' },
        'fork.travel': { value: 130, from: 'manual', date: TODAY },
      },
    },
  ],
  jobs: [
    ...old.map(({ job }) => job),
    {
      ...newJob('j1', { bike: 'b1', kind: 'fork-springs', opened: TODAY }),
      closed: TODAY,
      parts: [
        {
          id: 'weigh',
          procedure: 'weigh',
          ticks: { look: { hash: 'h', at: TODAY } },
          readings: { mass: { at: TODAY, boxes: [{ typed: '210', unit: 'kg', value: 210 }] } },
        },
      ],
      answers: { fork: 'open-cartridge' },
      decisions: [{ at: TODAY, what: 'rate', from: '9.0', to: '9.5', why: 'w', agreed: 'A' }],
    },
  ],
})

type Place = readonly (string | number)[]
const at = (value: object, place: Place): object =>
  place.reduce((inside, step) => Reflect.get(inside, step) as object, value)

/** Where the objects in a value are, itself first. */
const placesIn = (value: unknown, place: Place = []): Place[] =>
  typeof value !== 'object' || value === null
    ? []
    : [
        ...(Array.isArray(value) ? [] : [place]),
        ...Object.entries(value).flatMap(([name, each]) => placesIn(each, [...place, name])),
      ]

/** The text of a file with the object at a place changed. */
function spoiltAt(file: object, place: Place, change: object): string {
  const copy = structuredClone(file)
  Object.assign(at(copy, place), change)
  return JSON.stringify(copy)
}

describe('/record/schema.json', () => {
  test('holds every export: an empty book, all earlier books, and one of everything', () => {
    expect(published['$schema']).toBe('https://json-schema.org/draft/2020-12/schema')
    for (const file of [exported({ bikes: [], jobs: [] }), whole]) {
      isValid(file)
      expect(isValid.errors).toBeNull()
    }
    expect(whole.bikes).toHaveLength(20)
  })

  test('refuses what the reader of files refuses: each field of everything in it in turn, and one more', () => {
    const wrong = [undefined, 7.5, 'not this', ['x'], { x: 1 }]
    const base = { ...whole, bikes: [whole.bikes.at(-1)!], jobs: [whole.jobs.at(-1)!] }
    const texts = placesIn(base).flatMap((place) => [
      ...Object.keys(at(base, place)).flatMap((field) =>
        wrong.map((value) => spoiltAt(base, place, { [field]: value })),
      ),
      spoiltAt(base, place, { more: 1 }),
    ])
    expect(texts.length).toBeGreaterThan(250)
    const disagreeing = texts.filter((text) => {
      const reading = readFile(text, TODAY)
      // what belongs to what is said by no schema; a file of another format or version has its own message
      const apart =
        'problem' in reading && /whose bike|twice|not a bench|of version/.test(reading.problem)
      return isValid(JSON.parse(text)) !== 'records' in reading && !apart
    })
    expect(disagreeing.map((text) => text.slice(0, 300))).toEqual([])
  })

  test('agrees with the reader of files on random names and texts', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 260 }), fc.string({ maxLength: 30 }), (name, day) => {
        const bike = { ...newBike('b1', { name, like: 'light-commuter', made: TODAY }), made: day }
        const text = fileText({ bikes: [bike], jobs: [] }, 'e', TODAY)
        expect(isValid(JSON.parse(text))).toBe('records' in readFile(text, TODAY))
      }),
      { numRuns: 200 },
    )
  })
})

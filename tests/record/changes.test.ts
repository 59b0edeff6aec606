import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { KEPT_CHANGES, undone, withChange } from '../../src/record/changes.ts'
import type { Change, Write } from '../../src/record/changes.ts'
import { newBike } from '../../src/record/records.ts'
import type { BikeRecord } from '../../src/record/records.ts'

const bike = (name: string): BikeRecord =>
  newBike('b1', { name, like: 'middleweight-roadster', made: '2026-03-12' })
const change = (key: string, at: string, was: BikeRecord | null = null): Change => ({
  at,
  what: key,
  key,
  before: [{ store: 'bikes', id: 'b1', record: was }],
})

describe('withChange(list, change)', () => {
  test('keeps the last twenty', () => {
    let list: Change[] = []
    for (let n = 0; n < 25; n++) list = withChange(list, change(`k${n}`, '2026-03-12T10:00:00Z'))
    expect(list).toHaveLength(KEPT_CHANGES)
    expect([list[0]?.key, list.at(-1)?.key]).toEqual(['k5', 'k24'])
  })
  test('joins what is typed into one box, and keeps the record from before the first letter', () => {
    const first = withChange([], change('box', '2026-03-12T10:00:00Z', bike('before')))
    const second = withChange(first, change('box', '2026-03-12T10:00:01Z', bike('b')))
    expect(second).toHaveLength(1)
    expect(second[0]?.before[0]?.record).toMatchObject({ name: 'before' })
    // after the pause, or with another change between, it is a change of its own
    expect(withChange(second, change('box', '2026-03-12T10:11:00Z', bike('be')))).toHaveLength(2)
    const other = withChange(second, change('else', '2026-03-12T10:00:02Z'))
    expect(withChange(other, change('box', '2026-03-12T10:00:03Z'))).toHaveLength(3)
    expect(withChange(first, change('', '2026-03-12T10:00:01Z'))).toHaveLength(2)
  })
})

describe('undone(list)', () => {
  test('gives nothing where nothing was changed', () => expect(undone([])).toBeNull())
  test('any row of up to twenty changes taken back one by one leaves the book as it was', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom('b1', 'b2', 'b3'), fc.option(fc.string())), {
          maxLength: KEPT_CHANGES,
        }),
        (steps) => {
          const book = new Map<string, Write['record']>()
          const put = ({ id, record }: Write): void => {
            if (record === null) book.delete(id)
            else book.set(id, record)
          }
          let list: Change[] = []
          for (const [id, name] of steps) {
            const was = (book.get(id) ?? null) as BikeRecord | null
            list = withChange(list, {
              ...change('', '2026-03-12T10:00:00Z'),
              before: [{ store: 'bikes', id, record: was }],
            })
            put({ store: 'bikes', id, record: name === null ? null : { ...bike(name), id } })
          }
          for (let back = undone(list); back; back = undone(back.rest)) {
            back.writes.forEach(put)
            list = back.rest
          }
          expect([book.size, list.length]).toEqual([0, 0])
        },
      ),
      { numRuns: 60 },
    )
  })
})

import { describe, expect, test } from 'vitest'
import { loadCalculator } from '../../src/calculators/index.ts'
import { cardStatementOf } from '../../src/machine/statement.ts'
import { workedGiven } from '../../src/record/worked.ts'
import type { Source } from '../../src/record/resultSchema.ts'
import type { ResultSpec } from '../../src/record/worked.ts'
import type { Book } from '../../src/record/book.ts'
import type { Taken } from '../../src/record/carry.ts'
import { writtenBook } from './writtenBook.ts'

const taken = (procedure: string, id: string, unit: string): Taken => ({
  procedure,
  spec: { id, label: id, quantity: 'length', unit, range: [0, 5000], repeat: 3 },
})
const ALL = [
  taken('before', 'hanging', 'mm'),
  taken('before', 'down', 'mm'),
  taken('before', 'scale', 'kg'),
  taken('before', 'force1', 'kgf'),
  taken('before', 'length1', 'mm'),
  taken('before', 'force2', 'kgf'),
  taken('before', 'length2', 'mm'),
  taken('before', 'give', 'mm'),
  taken('later', 'down', 'mm'),
]

function bookOf(values: readonly (readonly [string, string, number])[]): Book {
  return writtenBook(
    values.map(([procedure, id, value]) => {
      const { unit } = ALL.find(({ spec }) => spec.id === id)!.spec
      return [procedure, id, 0, { typed: String(value), unit, value }]
    }),
  )
}
const spec = (calculator: string, inputs: Record<string, Source>): ResultSpec => ({
  id: 'x',
  label: 'X',
  calculator,
  inputs,
  maybe: {},
  given: {},
  shows: [],
})
const sag = cardStatementOf(loadCalculator('sag'))
const scales = cardStatementOf(loadCalculator('cg-height'))
const springs = cardStatementOf(loadCalculator('spring-test'))
const rear = cardStatementOf(loadCalculator('rear-rate'))

describe('what readings come to', () => {
  test('takes the mean of a reading, this procedure’s own before another’s', () => {
    const book = bookOf([
      ['before', 'down', 110],
      ['later', 'down', 120],
    ])
    const inputs = { settledDown: 'down' }
    expect(workedGiven(spec('sag', inputs), sag, 'before', ALL, book).given).toEqual({
      settledDown: 110,
    })
    expect(workedGiven(spec('sag', inputs), sag, 'elsewhere', ALL, book).given).toEqual({
      settledDown: 120,
    })
  })
  test('puts a rear length below the end of the field, because only differences count', () => {
    const book = bookOf([
      ['before', 'hanging', 620],
      ['before', 'down', 585],
    ])
    const { given } = workedGiven(
      spec('sag', { settledDown: { less: ['down', 'hanging'], from: 400 } }),
      sag,
      'before',
      ALL,
      book,
    )
    // 400 + 585 − 620 = 365 mm
    expect(given).toEqual({ settledDown: 365 })
  })
  test('reads a scale’s kilograms as the load that they are', () => {
    expect(
      workedGiven(
        spec('cg-height', { frontLevel: 'scale' }),
        scales,
        'before',
        ALL,
        bookOf([['before', 'scale', 101.5]]),
      ).given,
    ).toEqual({ frontLevel: 101.5 })
  })
  test('gives a press’s lengths back their share of its give', () => {
    const book = bookOf([
      ['before', 'length1', 330],
      ['before', 'force1', 50],
      ['before', 'length2', 300],
      ['before', 'force2', 100],
      ['before', 'give', 2],
    ])
    const { given } = workedGiven(
      spec('spring-test', {
        rows: {
          rows: [
            ['length1', 'force1'],
            ['length2', 'force2'],
          ],
          give: 'give',
        },
      }),
      springs,
      'before',
      ALL,
      book,
    )
    const rows = given['rows'] as number[][]
    // half the load, half the give; 1 kgf = 9.80665 N by definition (CGPM 1901)
    expect(rows[0]![0]).toBeCloseTo(331, 9)
    expect(rows[1]![0]).toBeCloseTo(302, 9)
    expect(rows[1]![1]).toBeCloseTo(980.665, 6)
  })
  test('takes a motion ratio from two differences', () => {
    const book = bookOf([
      ['before', 'length1', 340],
      ['before', 'length2', 322],
      ['before', 'hanging', 620],
      ['before', 'down', 580],
    ])
    const { given } = workedGiven(
      spec('rear-rate', {
        motionRatio: {
          ratio: [
            ['length1', 'length2'],
            ['hanging', 'down'],
          ],
        },
      }),
      rear,
      'before',
      ALL,
      book,
    )
    expect(given['motionRatio']).toBeCloseTo(18 / 40, 12)
  })
  test('names what is still to be read, and what a field refuses', () => {
    expect(
      workedGiven(
        spec('sag', { extended: 'hanging', settledDown: 'down' }),
        sag,
        'before',
        ALL,
        bookOf([['before', 'down', 110]]),
      ).missing,
    ).toEqual(['hanging'])
    expect(
      workedGiven(
        spec('sag', { extended: 'hanging' }),
        sag,
        'before',
        ALL,
        bookOf([['before', 'hanging', 900]]),
      ).refused,
    ).toHaveLength(1)
  })
})

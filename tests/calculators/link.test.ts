import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import type { Given, GivenValue } from '../../src/machine/given.ts'
import type { Input } from '../../src/machine/statement.ts'
import { defaultsOf, isAsked } from '../../src/machine/evaluate.ts'
import { checkValue } from '../../src/machine/fields.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { decodeLink, LONGEST_LINK } from '../../src/machine/link.ts'
import { encodeLink } from '../../src/machine/writeLink.ts'
import { bikes } from './bikes.ts'

const ids = Object.keys(bikes)
const definitions = calculatorIds.map(loadCalculator)

function valueOf(input: Input): fc.Arbitrary<GivenValue | undefined> {
  if (input.kind === 'quantity') {
    const [low, high] = input.range
    const number: fc.Arbitrary<GivenValue | undefined> = fc
      .double({ min: low, max: high, noNaN: true, noDefaultInfinity: true })
      .map((value) => Number(value.toPrecision(12)) + 0)
    const extras = [
      ...(input.optional ? [fc.constant(undefined)] : []),
      ...(input.typical ? [fc.constant('unknown')] : []),
    ]
    return extras.length > 0 ? fc.oneof(number, ...extras) : number
  }
  if (input.kind === 'choice') return fc.constantFrom(...Object.keys(input.options))
  if (input.kind === 'bike') return fc.constantFrom(...ids)
  if (input.kind === 'table') {
    const row = fc.tuple(
      ...input.columns.map((column) =>
        fc
          .double({ min: column.range[0], max: column.range[1], noNaN: true })
          .map((value) => Number(value.toPrecision(6)) + 0),
      ),
    )
    return fc.array(row, { minLength: input.rows[0], maxLength: Math.min(20, input.rows[1]) })
  }
  return fc.constant(input.default)
}

function givenOf(definition: WholeCalculator): fc.Arbitrary<Given> {
  const values = Object.fromEntries(
    Object.entries(definition.inputs).map(([id, input]) => [id, valueOf(input)]),
  )
  return fc
    .record(values)
    .map(
      (given) =>
        Object.fromEntries(
          Object.entries(given).filter(([, value]) => value !== undefined),
        ) as Given,
    )
}

/** What a link must bring back: the values of the inputs that are asked for, the rest at their defaults. */
function expected(definition: WholeCalculator, given: Given): Given {
  const asked = Object.entries(definition.inputs).filter(([, input]) => isAsked(input, given))
  const kept = Object.fromEntries(
    asked.filter(([id]) => given[id] !== undefined).map(([id]) => [id, given[id]!]),
  )
  const absent = new Set(asked.filter(([id]) => given[id] === undefined).map(([id]) => id))
  return {
    ...Object.fromEntries(Object.entries(defaultsOf(definition)).filter(([id]) => !absent.has(id))),
    ...kept,
  }
}

/** The link's text; null where a state of many rows is too long for one, which is refused. */
function written(definition: WholeCalculator, given: Given, held: Given | null): string | null {
  try {
    return encodeLink(definition, given, held)
  } catch (error) {
    if (error instanceof RangeError && /Links hold at most 2000/.test(error.message)) return null
    throw error
  }
}

const usable = (definition: WholeCalculator, given: Given): boolean =>
  Object.entries(definition.inputs).every(
    ([id, input]) => !('problem' in checkValue(input, given[id], ids)),
  )

describe.each(definitions.map((definition) => [definition.id, definition] as const))(
  'a link of %s',
  (_id, definition) => {
    test('encodeLink and decodeLink bring back every state of the whole input space, before and now', () => {
      fc.assert(
        fc.property(givenOf(definition), fc.option(givenOf(definition)), (given, held) => {
          fc.pre(usable(definition, given) && (held === null || usable(definition, held)))
          const text = written(definition, given, held)
          fc.pre(text !== null)
          const link = decodeLink(definition, text, ids)
          expect(link.problems).toEqual([])
          expect(link.given).toEqual(expected(definition, given))
          expect(link.held).toEqual(held === null ? null : expected(definition, held))
        }),
        { numRuns: 60 },
      )
    })

    test('decodeLink of hostile text names what it cannot use and never throws', () => {
      const hostile = fc.oneof(
        fc.string(),
        fc.constantFrom(
          '<script>',
          'NaN',
          'Infinity',
          '1e999',
          '%',
          '%E0%A4%A',
          '-0',
          '9'.repeat(400),
          '__proto__',
          ':;:;',
          'unknown',
        ),
      )
      fc.assert(
        fc.property(
          fc.array(
            fc.tuple(
              fc.constantFrom('v', ...Object.keys(definition.inputs), 'before.v', '__proto__'),
              hostile,
            ),
          ),
          (pairs) => {
            const search = pairs.map(([key, value]) => `${key}=${value}`).join('&')
            const link = decodeLink(definition, search, ids)
            for (const [id, input] of Object.entries(definition.inputs))
              expect(checkValue(input, link.given[id], ids)).not.toHaveProperty('problem')
          },
        ),
        { numRuns: 100 },
      )
    })
  },
)

describe('decodeLink', () => {
  const sag = definitions.find(({ id }) => id === 'sag')!

  test('decodeLink names a value out of range and uses the rest', () => {
    const link = decodeLink(sag, 'v=1&extended=9999&settledUp=119.5', ids)
    expect(link.given['settledUp']).toBe(119.5)
    expect(link.given['extended']).toBe(defaultsOf(sag)['extended'])
    expect(link.problems.join()).toMatch(/must be between 40 and 400\smm.*9999/)
  })

  test('decodeLink of another version says so and still uses the values', () => {
    const link = decodeLink(sag, 'v=7&settledUp=119.5', ids)
    expect(link.given['settledUp']).toBe(119.5)
    expect(link.problems.join()).toMatch(/version 7.*version 1/)
  })

  test('decodeLink refuses a link of more than 2,000 characters with the reason', () => {
    const link = decodeLink(sag, `v=1&settledUp=119.5&x=${'y'.repeat(LONGEST_LINK)}`, ids)
    expect(link.given).toEqual(defaultsOf(sag))
    expect(link.problems.join()).toMatch(/at most 2000/)
  })
})

describe('decodeLink of a link that was mangled on its way', () => {
  const marks = loadCalculator('marks')
  const decode = (query: string) => decodeLink(marks, query, ids)

  test('decodeLink names every key that no field has, and uses the rest', () => {
    const { given, problems } = decode('?v=2&travel=130&travle=140&before.foo=1')
    expect(given.travel).toBe(130)
    expect(problems).toHaveLength(2)
    expect(problems[0]).toMatch(/“travle=140”, which this calculator does not ask for/)
    expect(problems[1]).toMatch(/“before.foo=1”/)
  })

  test('decodeLink reads ampersands that a page’s source writes out', () => {
    expect(decode('?v=2&amp;travel=130&amp;beforeLeft=119')).toMatchObject({
      given: { travel: 130, beforeLeft: 119 },
      problems: [],
    })
  })

  test('decodeLink takes the usual value for one that a link leaves empty, as a state before with one value given does', () => {
    const preload = loadCalculator('preload-versus-rate')
    const { held } = decodeLink(preload, '?v=1&before.rate=&before.preload=15', ids)
    expect(held).toMatchObject({ preload: 15 })
    expect(held?.rate).not.toBe('unknown')
  })

  test('decodeLink reads “I don’t know” as it is written now and as earlier editions wrote it', () => {
    for (const text of ['unknown', '?', '%3F'])
      expect(decode(`?v=2&travel=${text}`)).toMatchObject({
        given: { travel: 'unknown' },
        problems: [],
      })
  })
})

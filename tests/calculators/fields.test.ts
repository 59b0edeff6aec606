import { describe, expect, test } from 'vitest'
import { cellText } from '../../components/calculator/resultText.ts'
import type { QuantityOutput, TableInput } from '../../src/machine/statement.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { checkValue } from '../../src/machine/fields.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { decodeLink } from '../../src/machine/link.ts'
import { createSay } from '../../src/units/say.ts'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'
import { bikes } from './bikes.ts'

const definitions = calculatorIds.map(loadCalculator)
const ids = Object.keys(bikes)

/** Names that every object answers to without having them. */
const INHERITED = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf']

describe('checkValue', () => {
  test('checkValue takes its own options and bikes only, not what every object inherits', () => {
    let choices = 0
    for (const definition of definitions) {
      for (const [id, input] of Object.entries(definition.inputs)) {
        if (input.kind !== 'choice' && input.kind !== 'bike') continue
        choices++
        for (const value of INHERITED) {
          expect(checkValue(input, value, ids), `${definition.id}.${id}`).toHaveProperty('problem')
          const { now, problems, refusal } = evaluate(definition, { [id]: value }, { bikes })
          expect([now, refusal, Object.keys(problems)], `${definition.id}.${id}`).toEqual([
            null,
            null,
            [id],
          ])
          expect(
            decodeLink(definition, `v=${definition.version}&${id}=${value}`, ids).given[id],
          ).toBe(input.default)
        }
      }
    }
    expect(choices).toBeGreaterThan(15)
  })

  const table: TableInput = {
    kind: 'table',
    label: 'Readings',
    columns: [{ id: 'force', label: 'Force', quantity: 'force', unit: 'N', range: [0, 100] }],
    rows: [2, 4],
    default: [],
  }

  test('checkValue of a table names each bad row, leaves it out and keeps the rest', () => {
    expect(checkValue(table, [[1], [2]], [])).toEqual({ value: [[1], [2]] })
    expect(checkValue(table, [[1], [500], [2], [Number.NaN]], [])).toEqual({
      value: [[1], [2]],
      left: 'Readings, row 2: force must be between 0 and 100\u00a0N; row 4: enter force. Those rows are left out of the results',
    })
    expect(checkValue(table, [[1], [2], [3], [4], [5]], [])).toEqual({
      value: [[1], [2], [3], [4]],
      left: 'Readings, row 5: this table takes 4 rows at most. That row is left out of the results',
    })
    const many = checkValue(table, [[1], [2], ...Array.from({ length: 5 }, () => [500])], [])
    expect(many).toMatchObject({
      left: expect.stringMatching(/row 5: .*; and 2 more\. Those rows/) as string,
    })
  })

  test('checkValue of a table with too few rows left is a problem that says which to look at', () => {
    expect(checkValue(table, [[1], [500]], [])).toEqual({
      problem:
        'Readings: at least 2 rows needed, and 1 can be used. Look at row 2: force must be between 0 and 100\u00a0N',
    })
    expect(checkValue(table, [], [])).toEqual({
      problem: 'Readings: at least 2 rows needed, and none can be used',
    })
  })
})

describe('a table with a bad row', () => {
  const springTest = definitions.find(({ id }) => id === 'spring-test')!
  const good = [
    [330, 172],
    [310, 357],
    [290, 533],
  ]

  test('evaluate names the row and computes what is left, now and before', () => {
    const { now, before, problems } = evaluate(
      springTest,
      { rows: [...good, [2, 900]] },
      { bikes },
      { rows: [[1, 1], ...good] },
    )
    const clean = evaluate(springTest, { rows: good }, { bikes }, { rows: good })
    expect(problems.rows).toMatch(
      /row 4: length must be between 5 and 700\smm\. That row is left out/,
    )
    expect(now?.output).toEqual(clean.now?.output)
    expect(before?.output).toEqual(clean.before?.output)
    expect(
      evaluate(
        springTest,
        {
          rows: [
            [330, 172],
            [2, 900],
          ],
        },
        { bikes },
      ).now,
    ).toBeNull()
  })

  test('decodeLink keeps a row out of range as it came, drops one that is no number, and names both', () => {
    const { given, problems } = decodeLink(springTest, `v=1&rows=330:172;310:357;2:900;x:5`, ids)
    expect(given.rows).toEqual([
      [330, 172],
      [310, 357],
      [2, 900],
    ])
    expect(problems.join()).toMatch(/row 3: length must be between.*row 4: enter length/)
  })
})

describe('say', () => {
  const say = createSay(METRIC)

  test('say.range writes "to", once where both ends look alike, and so after a minus too', () => {
    expect(say.range(0.0271, 0.0364, 'mm', 0)).toBe('27 to 36\u00a0mm')
    expect(say.range(0.0271, 0.02712, 'mm', 1)).toBe('27.1\u00a0mm')
    expect(say.range(-0.007, 0.005, 'mm', 0)).toBe('−7 to 5\u00a0mm')
    expect(createSay(IMPERIAL).range(0.0254, 0.0508, 'mm', 0)).toMatch(/^1\.0+ to 2\.0+\sin$/)
  })

  test('say.moved names the direction of a change, or both where it may be either', () => {
    const words = ['lower', 'higher'] as const
    expect(say.moved(0.0034, 'mm', 1, words)).toBe('3.4\u00a0mm higher')
    expect(say.moved(-0.0034, 'mm', 1, words)).toBe('3.4\u00a0mm lower')
    expect(say.moved({ low: 0.0021, high: 0.0034 }, 'mm', 1, words)).toBe(
      '2.1 to 3.4\u00a0mm higher',
    )
    expect(say.moved({ low: -0.0034, high: -0.0021 }, 'mm', 1, words)).toBe(
      '2.1 to 3.4\u00a0mm lower',
    )
    expect(say.moved({ low: -0.0002, high: 0.0003 }, 'mm', 1, words)).toBe(
      '0.2\u00a0mm lower to 0.3\u00a0mm higher',
    )
    // what rounds to nothing has no direction of its own
    expect(say.moved({ low: -0.00001, high: 0.003 }, 'mm', 1, words)).toBe(
      '0.0 to 3.0\u00a0mm higher',
    )
    expect(say.moved({ low: -0.003, high: 0.00001 }, 'mm', 1, words)).toBe(
      '0.0 to 3.0\u00a0mm lower',
    )
  })

  test('say.span writes a measured result by its estimate and an open one by its range', () => {
    expect(say.span({ low: 1, high: 3, value: 2 }, 'N', 0)).toBe('2\u00a0N')
    expect(say.span({ low: 1, high: 3 }, 'N', 0)).toBe('1 to 3\u00a0N')
  })
})

test('cellText of a result that hangs on something unknown is a range, and of a measured one its ±', () => {
  const output: QuantityOutput = { label: 'Sag', quantity: 'length', unit: 'mm', digits: 1 }
  expect(cellText(createSay(METRIC), output, { low: 0.022, high: 0.0456 })).toBe(
    '22.0 to 45.6\u00a0mm',
  )
  expect(cellText(createSay(METRIC), output, { low: 0.032, high: 0.034, value: 0.033 })).toBe(
    '33.0 ± 1.0\u00a0mm',
  )
})

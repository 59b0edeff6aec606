import { describe, expect, test } from 'vitest'
import type { TableInput } from '../../src/machine/statement.ts'
import { readRows, LARGEST_PASTE } from '../../src/machine/paste.ts'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'

const table: TableInput = {
  kind: 'table',
  label: 'Readings',
  columns: [
    { id: 'squeeze', label: 'Squeeze', quantity: 'length', unit: 'mm', range: [0, 200] },
    { id: 'force', label: 'Force', quantity: 'force', unit: 'N', range: [0, 5000] },
  ],
  rows: [2, 40],
  default: [
    [0, 0],
    [10, 90],
  ],
}
const read = (text: string) => readRows(table, text, METRIC)

describe('readRows', () => {
  test.each([
    ['tabs', '10\t90\n20\t180'],
    ['commas', '10,90\n20,180'],
    ['semicolons', '10;90\r\n20;180'],
    ['spaces', '10 90\n20   180'],
    ['a heading', 'squeeze (mm),force (N)\n10,90\n20,180'],
    ['quotes', '"10";"90"\n"20";"180"'],
    ['blank lines and a byte-order mark', '\uFEFF\n10,90\n\n20,180\n\n'],
    ['old line ends', '10,90\r20,180'],
    ['a trailing separator', '10;90;\n20;180;'],
  ])('readRows takes %s', (_name, text) => {
    expect(read(text)).toMatchObject({
      rows: [
        [10, 90],
        [20, 180],
      ],
      problems: [],
    })
  })

  test('readRows takes commas as decimals where something else parts the values', () => {
    expect(read('10,5;90,25\n20,5;180').rows).toEqual([
      [10.5, 90.25],
      [20.5, 180],
    ])
    expect(read('10,5\t90,25').rows).toEqual([[10.5, 90.25]])
    expect(read('10,5 90,25').rows).toEqual([[10.5, 90.25]])
  })

  test('readRows converts from the reader’s units', () => {
    const { rows } = readRows(table, '1;10', IMPERIAL)
    // 1 in = 25.4 mm exactly; 10 lbf = 44.482216 N (NIST SP 811); twelve digits are kept
    expect(rows[0]![0]).toBe(25.4)
    expect(Math.abs(rows[0]![1]! - 44.4822161526)).toBeLessThan(1e-9)
  })

  const good = '\n20;180'
  test.each([
    ['', 'nothing to read'],
    ['   \n  ', 'nothing to read'],
    [`10${good}`, 'Line 1 has 1 value; 2 are needed'],
    [`10;90;5${good}`, 'Line 1 has 3 values'],
    [`abc;90${good}`, 'Line 1 – Squeeze: “abc” is not a number'],
    [`10;${good}`, 'Line 1 – Force: is empty'],
    [`;90${good}`, 'Squeeze: is empty'],
    [`10;1,234${good}`, 'two ways'],
    [`10;1.234,5${good}`, 'two ways'],
    [`-5;90${good}`, 'must be between'],
    [`10;9999${good}`, 'Force must be between 0 and 5000'],
    [`201;90${good}`, 'Squeeze must be between'],
    [`10;NaN${good}`, 'not a number'],
    [`10;Infinity${good}`, 'not a number'],
    [`10;1e3${good}`, 'not a number'],
    [`10;9O${good}`, 'not a number'],
    [`10;90N${good}`, 'not a number'],
    [`10;--90${good}`, 'not a number'],
    [`10;0x5A${good}`, 'not a number'],
    [`10;<b>90</b>${good}`, 'not a number'],
    [`=10+2;90${good}`, 'not a number'],
    [`10;٩٠${good}`, 'not a number'],
    [`#REF!;90${good}`, 'not a number'],
    [`10;9 0${good}`, 'not a number'],
    [`{"a":1};90${good}`, 'not a number'],
    [`null;90${good}`, 'not a number'],
    [`10;½${good}`, 'not a number'],
    [`10;90%${good}`, 'not a number'],
    [`10,5,90,2\n20,180`, 'separate values with semicolons'],
    [`\0;90${good}`, 'not a number'],
    ['x'.repeat(LARGEST_PASTE + 1), 'at most'],
  ])('readRows of %j names the line and the reason', (text, reason) => {
    const { rows, problems } = read(text)
    expect(problems.join(' | ')).toContain(reason)
    if (text.endsWith('20;180')) expect(rows).toEqual([[20, 180]])
  })

  test('readRows keeps the first rows when there are too many', () => {
    const { rows, problems } = read(Array.from({ length: 60 }, (_, i) => `${i};${i}`).join('\n'))
    expect(rows).toHaveLength(40)
    expect(problems).toEqual(['There are 60 rows; the first 40 were taken'])
  })
})

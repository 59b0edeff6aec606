import { expect, test } from 'vitest'
import { readingsCsv } from '../../src/record/csv.ts'
import { changedJob } from '../../src/record/jobSheets.ts'
import { newBike, newJob } from '../../src/record/records.ts'

/** A reader of RFC 4180, section 2, written from its grammar: fields in quotes may hold commas, line breaks and doubled quotes. */
function rowsOf(text: string): string[][] {
  const rows: string[][] = [[]]
  const FIELD = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/gy
  while (FIELD.lastIndex < text.length) {
    const match = FIELD.exec(text)
    if (!match) throw new Error(`no field at ${FIELD.lastIndex}`)
    rows.at(-1)!.push(match[1]?.replaceAll('""', '"') ?? match[2]!)
    if (match[3] === '\r\n') rows.push([])
  }
  return rows.filter((row) => row.length > 0)
}

test('every box is one line that a reader of RFC 4180 gives back, with its day and units', () => {
  const bike = newBike('b1', {
    name: '"Blue", the old one',
    like: 'light-commuter',
    made: '2026-03-12',
  })
  const job = newJob('j1', { bike: 'b1', kind: 'loose', opened: '2026-03-12' })
  const write = (reading: string, typed: string, unit: string, value: number | null) => ({
    do: 'write' as const,
    procedure: 'record-a-baseline',
    reading,
    box: 0,
    entry: { typed, unit, value },
    at: '2026-03-13',
  })
  const filled = [
    write('markLeft', '4,43', 'in', 112.522),
    write('notes', 'left,\r\n"right"', '', null),
    write('tubeAboveYokeLeft', '-3', 'mm', -3),
    write('useAndLoad', '=HYPERLINK("x")', '', null),
    write('bikeIdentity', ' ', '', null),
  ].reduce(changedJob, job)
  const text = readingsCsv({ bikes: [bike], jobs: [filled] }, (_, reading) =>
    reading === 'notes' ? '' : 'mm',
  )
  expect(text.endsWith('\r\n')).toBe(true)
  expect(rowsOf(text)).toEqual([
    [
      'bike',
      'job',
      'job opened',
      'part',
      'procedure',
      'reading',
      'date',
      'box',
      'typed',
      'unit typed',
      'value',
      'unit',
    ],
    [
      '"Blue", the old one',
      'loose',
      '2026-03-12',
      'record-a-baseline',
      'record-a-baseline',
      'markLeft',
      '2026-03-13',
      '1',
      '4,43',
      'in',
      '112.522',
      'mm',
    ],
    [
      '"Blue", the old one',
      'loose',
      '2026-03-12',
      'record-a-baseline',
      'record-a-baseline',
      'notes',
      '2026-03-13',
      '1',
      'left,\r\n"right"',
      '',
      '',
      '',
    ],
    [
      '"Blue", the old one',
      'loose',
      '2026-03-12',
      'record-a-baseline',
      'record-a-baseline',
      'tubeAboveYokeLeft',
      '2026-03-13',
      '1',
      '-3',
      'mm',
      '-3',
      'mm',
    ],
    // a spreadsheet must not run what a reader typed
    [
      '"Blue", the old one',
      'loose',
      '2026-03-12',
      'record-a-baseline',
      'record-a-baseline',
      'useAndLoad',
      '2026-03-13',
      '1',
      '\'=HYPERLINK("x")',
      '',
      '',
      'mm',
    ],
  ])
})

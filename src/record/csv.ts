import type { Records } from './records.ts'

/* Readings as a table for spreadsheets: RFC 4180, lines ended by CR LF, a field with a comma, quote or line break in quotes. */

const HEAD = [
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
]

/** A spreadsheet program runs what begins like a formula; with an apostrophe before it, it stays text. Numbers with a sign are left alone. */
const harmless = (text: string): string =>
  /^[=@\t\r]/.test(text) || (/^[+-]/.test(text) && !/^[+-][\d.,]+$/.test(text)) ? `'${text}` : text

function cell(value: string | number | null): string {
  if (value === null) return ''
  const text = typeof value === 'number' ? String(value) : harmless(value)
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

const line = (cells: readonly (string | number | null)[]): string => cells.map(cell).join(',')

/** All readings of a book, one box a line; boxes with nothing in them are left out. `unitOf` gives the unit of a reading's value. */
export function readingsCsv(
  { bikes, jobs }: Records,
  unitOf: (procedure: string, reading: string) => string,
): string {
  const names = new Map(bikes.map(({ id, name }) => [id, name]))
  const lines = jobs.flatMap((job) =>
    job.parts.flatMap((part) =>
      Object.entries(part.readings).flatMap(([reading, { at, boxes }]) =>
        boxes.flatMap(({ typed, unit, value }, index) =>
          typed.trim() === ''
            ? []
            : [
                line([
                  names.get(job.bike) ?? '',
                  job.kind,
                  job.opened,
                  part.id,
                  part.procedure,
                  reading,
                  at,
                  index + 1,
                  typed,
                  unit,
                  value,
                  unitOf(part.procedure, reading),
                ]),
              ],
        ),
      ),
    ),
  )
  return [line(HEAD), ...lines, ''].join('\r\n')
}

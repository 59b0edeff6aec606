import type { TableInput } from './statement.ts'
import { rangeText } from './fields.ts'
import { readNumber } from '../units/number.ts'
import type { UnitChoice } from '../units/choice.ts'
import { displayUnit } from '../units/choice.ts'
import { convert } from '../units/units.ts'
import { tidy } from './fields.ts'

/** Rows that could be read, in the definition's unit, and a sentence for each line that could not. */
export interface PasteReading {
  rows: number[][]
  problems: string[]
  /** the first line held words and was taken as a heading */
  heading: boolean
}

/** More than this many bytes is no table of readings. */
export const LARGEST_PASTE = 200_000

type Separator = '\t' | ';' | ',' | ' '

/** Tab before semicolon before comma before spaces: a comma also stands for the decimals, so it separates only when nothing else does. */
function separatorOf(lines: readonly string[]): Separator {
  const has = (mark: string): boolean => lines.some((line) => line.includes(mark))
  if (has('\t')) return '\t'
  if (has(';')) return ';'
  // "10,5 90,2": commas inside numbers, spaces between them
  if (lines.some((line) => /\d,\d+\s+[+-]?\d/.test(line.trim()))) return ' '
  return has(',') ? ',' : ' '
}

const split = (line: string, separator: Separator): string[] =>
  (separator === ' ' ? line.trim().split(/\s+/) : line.split(separator)).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, '$1')
      .trim(),
  )

function readRow(
  input: TableInput,
  cells: readonly string[],
  choice: UnitChoice,
): { row: number[] } | { reason: string } {
  if (cells.length < input.columns.length)
    return {
      reason: `has ${cells.length} ${cells.length === 1 ? 'value' : 'values'}; ${input.columns.length} are needed`,
    }
  if (cells.slice(input.columns.length).some((cell) => cell !== '')) {
    return {
      reason: `has ${cells.length} values; ${input.columns.length} are needed. Where commas mark decimals, separate values with semicolons or tabs`,
    }
  }
  const row: number[] = []
  for (const [place, column] of input.columns.entries()) {
    const typed = cells[place]!
    const reading = readNumber(typed)
    if ('problem' in reading) {
      const wrong =
        reading.problem === 'empty'
          ? 'is empty'
          : reading.problem === 'ambiguous'
            ? `“${typed}” can be read two ways; leave out the thousands mark`
            : `“${typed.slice(0, 40)}” is not a number`
      return { reason: `${column.label}: ${wrong}` }
    }
    const value = tidy(convert(reading.value, displayUnit(column.unit, choice), column.unit))
    if (value < column.range[0] || value > column.range[1])
      return { reason: `${column.label} must be ${rangeText({ ...column, step: 0.01 }, choice)}` }
    row.push(value)
  }
  return { row }
}

/**
 * Reads rows pasted or loaded from a file: values parted by tabs, semicolons, commas or spaces; decimals with a point or a comma; with a heading
 * line or without. A bad line is named with its number and reason, the others are kept. Columns are in the reader's unit.
 */
export function readRows(input: TableInput, text: string, choice: UnitChoice): PasteReading {
  if (text.length > LARGEST_PASTE)
    return {
      rows: [],
      problems: [
        `This is ${text.length} characters long; a table of readings has at most ${LARGEST_PASTE}`,
      ],
      heading: false,
    }
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/)
  const filled = lines
    .map((line, index) => ({ line, number: index + 1 }))
    .filter(({ line }) => line.trim() !== '')
  const separator = separatorOf(filled.map(({ line }) => line))
  const result: PasteReading = { rows: [], problems: [], heading: false }
  for (const [index, { line, number }] of filled.entries()) {
    const cells = split(line, separator)
    const isHeading =
      index === 0 && cells.length > 1 && cells.every((cell) => /\p{L}/u.test(cell) || cell === '')
    if (isHeading) {
      result.heading = true
      continue
    }
    const reading = readRow(input, cells, choice)
    if ('reason' in reading)
      result.problems.push(
        `Line ${number} ${reading.reason.startsWith('has') ? reading.reason : `– ${reading.reason}`}`,
      )
    else result.rows.push(reading.row)
  }
  const most = input.rows[1]
  if (result.rows.length > most) {
    result.problems.push(`There are ${result.rows.length} rows; the first ${most} were taken`)
    result.rows.length = most
  }
  if (filled.length === 0) result.problems.push('There is nothing to read: paste one row a line')
  return result
}

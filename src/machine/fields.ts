import { readBikeCode } from '../bikes/bikeCode.ts'
import { UNKNOWN } from './given.ts'
import type { GivenValue } from './given.ts'
import type { Input, QuantityInput, TableInput } from './statement.ts'
import { readNumber } from '../units/number.ts'
import { createSay } from '../units/say.ts'
import { displayUnit, METRIC } from '../units/choice.ts'
import type { UnitChoice } from '../units/choice.ts'
import { convert, toSI, units } from '../units/units.ts'

/** A value in the definition's unit, or what is wrong and how to put it right. `left` names what of it was left out. */
export type FieldReading = { value: GivenValue | undefined; left?: string } | { problem: string }

/** So many bad rows of a table are named; a reader mends them a few at a time. */
const NAMED = 3

/** Decimal places of a field's step. */
export const stepDigits = ({ step }: Pick<QuantityInput, 'step'>): number =>
  Math.max(0, Math.ceil(-Math.log10(step)))

/** The two ends of a range in the reader's unit, without decimals that say nothing. */
export function rangeEnds(
  range: readonly [number, number],
  input: Pick<QuantityInput, 'unit' | 'step'>,
  choice: UnitChoice,
): [string, string] {
  const say = createSay(choice)
  const digits = stepDigits(input)
  const plain = (text: string): string => text.replace(/\.0+(?!\d)/, '')
  return [
    plain(say.number(toSI(range[0], input.unit), input.unit, digits)),
    plain(say.quantity(toSI(range[1], input.unit), input.unit, digits)),
  ]
}

/** "between 3 and 20 N/mm", in the reader's unit. */
export const rangeText = (
  input: Pick<QuantityInput, 'range' | 'unit' | 'step'>,
  choice: UnitChoice,
): string => `between ${rangeEnds(input.range, input, choice).join(' and ')}`

/** The range allows for the rounding of a converted limit, one part in a million. */
function outside(value: number, [low, high]: readonly [number, number]): boolean {
  const slack = (high - low) * 1e-6
  return value < low - slack || value > high + slack
}

/** Twelve significant digits: a typed 1.5 in and its 38.1 mm stay the same value however often units switch. */
export const tidy = (value: number): number => Number(value.toPrecision(12))

function numberProblem(
  label: string,
  typed: string,
  problem: 'empty' | 'ambiguous' | 'nonsense',
): string {
  if (problem === 'empty') return `Enter ${lowerFirst(label)}`
  if (problem === 'ambiguous')
    return `${label}: “${typed.trim()}” can be read two ways. Leave out the thousands mark, or write more or fewer decimals`
  return `${label}: “${typed.trim()}” is not a number. Write digits with one point or comma, as 7.5 or 7,5`
}

/** Keeps abbreviations such as "ABS" as they are. */
export const lowerFirst = (text: string): string =>
  /^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text

/** Reads what was typed into a quantity's field in the reader's unit. */
export function readQuantity(
  input: QuantityInput,
  typed: string,
  choice: UnitChoice = METRIC,
): FieldReading {
  const reading = readNumber(typed)
  if ('problem' in reading) {
    if (reading.problem === 'empty' && input.optional) return { value: undefined }
    return { problem: numberProblem(input.label, typed, reading.problem) }
  }
  const value = tidy(convert(reading.value, displayUnit(input.unit, choice), input.unit))
  return checkQuantity(input, value, choice)
}

/** Checks a number in the definition's unit against its range. */
export function checkQuantity(
  input: QuantityInput,
  value: number,
  choice: UnitChoice = METRIC,
): FieldReading {
  if (!Number.isFinite(value)) return { problem: `${input.label} must be a number` }
  if (outside(value, input.range))
    return { problem: `${input.label} must be ${rangeText(input, choice)}` }
  return { value }
}

/** What is wrong with one row of a table; undefined where it can be used. */
function rowProblem(
  input: TableInput,
  row: readonly number[],
  choice: UnitChoice,
): string | undefined {
  for (const [place, column] of input.columns.entries()) {
    const cell = row[place]
    if (cell === undefined || !Number.isFinite(cell)) return `enter ${lowerFirst(column.label)}`
    if (outside(cell, column.range))
      return `${lowerFirst(column.label)} must be ${rangeText({ ...column, step: 0.01 }, choice)}`
  }
  return undefined
}

const rowsText = (count: number): string => (count === 1 ? '1 row' : `${count} rows`)

/** A table without its bad rows, which are named. Only with too few rows left is there nothing to compute with. */
function checkTable(
  input: TableInput,
  rows: readonly (readonly number[])[],
  choice: UnitChoice,
): FieldReading {
  const [fewest, most] = input.rows
  const wrong: string[] = []
  const good: (readonly number[])[] = []
  for (const [index, row] of rows.entries()) {
    const problem =
      good.length === most
        ? `this table takes ${most} rows at most`
        : rowProblem(input, row, choice)
    if (problem === undefined) good.push(row)
    else wrong.push(`row ${index + 1}: ${problem}`)
  }
  const named =
    wrong.length > NAMED
      ? `${wrong.slice(0, NAMED).join('; ')}; and ${wrong.length - NAMED} more`
      : wrong.join('; ')
  if (good.length < fewest) {
    const need = `${input.label}: at least ${rowsText(fewest)} needed, and ${good.length === 0 ? 'none' : String(good.length)} can be used`
    return { problem: named === '' ? need : `${need}. Look at ${named}` }
  }
  if (wrong.length === 0) return { value: rows }
  return {
    value: good,
    left: `${input.label}, ${named}. ${wrong.length === 1 ? 'That row is' : 'Those rows are'} left out of the results`,
  }
}

/** Checks a value of any kind of input, in the definition's unit. `bikes` are the ids that can be chosen. */
export function checkValue(
  input: Input,
  value: GivenValue | undefined,
  bikes: readonly string[],
  choice: UnitChoice = METRIC,
): FieldReading {
  if (input.kind === 'quantity') {
    if (value === undefined && input.optional) return { value: undefined }
    if (value === UNKNOWN && input.typical) return { value }
    if (typeof value !== 'number') return { problem: `Enter ${lowerFirst(input.label)}` }
    return checkQuantity(input, value, choice)
  }
  if (input.kind === 'table')
    return typeof value === 'object'
      ? checkTable(input, value, choice)
      : { problem: `Enter ${lowerFirst(input.label)}` }
  if (typeof value !== 'string') return { problem: `Choose ${lowerFirst(input.label)}` }
  if (input.kind === 'choice')
    return Object.hasOwn(input.options, value)
      ? { value }
      : {
          problem: `${input.label}: “${value.slice(0, 40)}” is not one of the choices. Choose one of the list`,
        }
  if (input.kind === 'bike')
    return readBikeCode(value, bikes)
      ? { value }
      : {
          problem: `${input.label}: this site has no bike “${value.slice(0, 40)}”. Choose one of the list`,
        }
  if (value.length > input.maxLength)
    return { problem: `${input.label} may have at most ${input.maxLength} characters` }
  const problem = input.check?.(value)
  return problem === undefined ? { value } : { problem }
}

/** The symbol behind a field, in the reader's unit. */
export const fieldSymbol = (input: QuantityInput, choice: UnitChoice): string =>
  units[displayUnit(input.unit, choice)].symbol

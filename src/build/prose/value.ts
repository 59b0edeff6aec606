import type { BikeSheets } from '../../bikes/sheet.ts'
import type { WholeCalculator } from '../../machine/calculator.ts'
import type { Cell, OutputValue } from '../../machine/cells.ts'
import type { Given } from '../../machine/given.ts'
import { isNumber } from '../../machine/statement.ts'
import type { Output, QuantityOutput } from '../../machine/statement.ts'
import { wordsOf } from '../../machine/labels.ts'
import type { WordOutput } from '../../machine/labels.ts'
import { evaluate } from '../../machine/evaluate.ts'
import { isInterval } from '../../units/interval.ts'
import { createSay, formatNumber } from '../../units/say.ts'
import { IMPERIAL, METRIC, displayUnit } from '../../units/choice.ts'
import { units } from '../../units/units.ts'
import type { Unit } from '../../units/units.ts'
import { givenProblems } from './given.ts'

export interface ValueRequest {
  given?: Given
  /** a second state to compare with */
  against?: Given
  as?: 'change' | 'percent' | 'ratio'
  output: string
  digits?: number
  only?: 'metric'
  /** row and column of a table */
  cell?: readonly [number, number]
  end?: 'low' | 'high'
}

/** A number as prose shows it: metric, and imperial where that differs. */
export interface ShownValue {
  metric: string
  imperial: string | null
}

function columnOf(
  output: Output,
  cell: readonly [number, number] | undefined,
): QuantityOutput | null {
  if (isNumber(output)) return output
  if (output.kind !== 'table' || cell === undefined) return null
  const column = output.columns[cell[1]]
  return column !== undefined && isNumber(column) ? column : null
}

function wordColumnOf(output: Output, cell: ValueRequest['cell']): WordOutput | null {
  const column = output.kind === 'table' ? output.columns[cell?.[1] ?? -1] : output
  return column === undefined || isNumber(column) ? null : column
}

function pick(value: OutputValue | undefined, request: ValueRequest): Cell | undefined {
  const picked =
    request.cell && Array.isArray(value)
      ? (value as readonly (readonly Cell[])[])[request.cell[0]]?.[request.cell[1]]
      : (value as Cell)
  return isInterval(picked)
    ? request.end
      ? picked[request.end]
      : (picked.value ?? picked.low)
    : picked
}

function read(
  definition: WholeCalculator,
  given: Given,
  request: ValueRequest,
  bikes: BikeSheets,
): Cell {
  const wrong = givenProblems(definition, given, bikes)
  const { now, problems, refusal } = evaluate(definition, given, { bikes })
  const why = [...wrong, ...Object.values(problems), ...(refusal ? [refusal] : [])]
  if (now === null || why.length > 0)
    throw new Error(`<Value calculator="${definition.id}">: ${why.join('; ')}`)
  const value = pick(now.output[request.output], request)
  if (value === undefined)
    throw new Error(`<Value calculator="${definition.id}">: no result “${request.output}”`)
  if (value === null)
    throw new Error(
      `<Value calculator="${definition.id}">: “${request.output}” does not exist for these values`,
    )
  return value
}

/** A tape reads tenths of a millimetre at best, so a length in inches has one place fewer than its millimetres have in thousandths: 35.2 mm is 1.39 in. */
const imperialDigits = (digits: number, unit: Unit): number =>
  units[unit].quantity === 'length' ? Math.max(0, digits - 1) : digits

/** Metric and imperial text of an SI value; imperial is left out where the unit is the same. */
export function showQuantity(
  si: number,
  unit: Unit,
  digits: number,
  signed: boolean,
  only?: 'metric',
): ShownValue {
  const write = (choice: typeof METRIC, places: number): string => {
    const say = createSay(choice)
    return signed ? say.change(si, unit, places) : say.quantity(si, unit, places)
  }
  const same = displayUnit(unit, METRIC) === displayUnit(unit, IMPERIAL)
  return {
    metric: write(METRIC, digits),
    imperial: only === 'metric' || same ? null : write(IMPERIAL, imperialDigits(digits, unit)),
  }
}

/** Computes the number for a `<Value>` in prose; refuses what the calculator does not know. */
export function computeValue(
  definition: WholeCalculator,
  request: ValueRequest,
  bikes: BikeSheets,
): ShownValue {
  const output = definition.outputs[request.output]
  if (output === undefined)
    throw new Error(
      `<Value calculator="${definition.id}">: no result “${request.output}”; it has ${Object.keys(definition.outputs).join(', ')}`,
    )
  const value = read(definition, request.given ?? {}, request, bikes)
  const words = wordColumnOf(output, request.cell)
  if (words !== null) return { metric: wordsOf(words, value), imperial: null }
  const column = columnOf(output, request.cell)
  if (column === null || typeof value !== 'number')
    throw new Error(
      `<Value calculator="${definition.id}">: “${request.output}” is a table; name a cell`,
    )
  const digits =
    request.digits ??
    (request.against === undefined ? column.digits : (column.changeDigits ?? column.digits))
  if (request.against === undefined)
    return showQuantity(value, column.unit, digits, column.signed === true, request.only)
  const other = read(definition, request.against, request, bikes)
  if (typeof other !== 'number')
    throw new Error(`<Value calculator="${definition.id}">: “${request.output}” can't be compared`)
  if (request.as === 'percent')
    return {
      metric: `${formatNumber((value / other - 1) * 100, request.digits ?? 0)}\u00a0%`,
      imperial: null,
    }
  if (request.as === 'ratio')
    return { metric: formatNumber(value / other, request.digits ?? 2), imperial: null }
  return showQuantity(value - other, column.unit, digits, true, request.only)
}

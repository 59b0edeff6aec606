import type { BikeSpec } from '../../src/calculators/bikes.ts'
import type { Cell, Definition, Given, Output, OutputValue, QuantityOutput } from '../../src/calculators/define.ts'
import { evaluate } from '../../src/calculators/evaluate.ts'
import { isInterval } from '../../src/calculators/interval.ts'
import { createSay, formatNumber } from '../../src/calculators/say.ts'
import { IMPERIAL, METRIC, displayUnit } from '../../src/calculators/unit-choice.ts'
import type { Unit } from '../../src/calculators/units.ts'
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

function columnOf(output: Output, cell: readonly [number, number] | undefined): QuantityOutput | null {
  if (!('kind' in output)) return output
  if (output.kind !== 'table' || cell === undefined) return null
  const column = output.columns[cell[1]]
  return column === undefined || 'kind' in column ? null : column
}

function pick(value: OutputValue | undefined, request: ValueRequest): Cell | undefined {
  const picked = request.cell && Array.isArray(value) ? (value as readonly (readonly Cell[])[])[request.cell[0]]?.[request.cell[1]] : (value as Cell)
  return isInterval(picked) ? (request.end ? picked[request.end] : (picked.value ?? picked.low)) : picked
}

function read(definition: Definition, given: Given, request: ValueRequest, bikes: Readonly<Record<string, BikeSpec>>): Cell {
  const wrong = givenProblems(definition, given, bikes)
  const { now, problems, refusal } = evaluate(definition, given, { bikes })
  const why = [...wrong, ...Object.values(problems), ...(refusal ? [refusal] : [])]
  if (now === null || why.length > 0) throw new Error(`<Value calculator="${definition.id}">: ${why.join('; ')}`)
  const value = pick(now.output[request.output], request)
  if (value === undefined) throw new Error(`<Value calculator="${definition.id}">: no result “${request.output}”`)
  if (value === null) throw new Error(`<Value calculator="${definition.id}">: “${request.output}” does not exist for these values`)
  return value
}

/** Metric and imperial text of an SI value; imperial is left out where the unit is the same. */
export function showQuantity(si: number, unit: Unit, digits: number, signed: boolean, only?: 'metric'): ShownValue {
  const write = (choice: typeof METRIC): string => {
    const say = createSay(choice)
    return signed ? say.change(si, unit, digits) : say.quantity(si, unit, digits)
  }
  const same = displayUnit(unit, METRIC) === displayUnit(unit, IMPERIAL)
  return { metric: write(METRIC), imperial: only === 'metric' || same ? null : write(IMPERIAL) }
}

/** Computes the number for a `<Value>` in prose; refuses what the calculator does not know. */
export function computeValue(definition: Definition, request: ValueRequest, bikes: Readonly<Record<string, BikeSpec>>): ShownValue {
  const output = definition.outputs[request.output]
  if (output === undefined)
    throw new Error(`<Value calculator="${definition.id}">: no result “${request.output}”; it has ${Object.keys(definition.outputs).join(', ')}`)
  const value = read(definition, request.given ?? {}, request, bikes)
  if (typeof value === 'string') return { metric: value, imperial: null }
  const column = columnOf(output, request.cell)
  if (column === null || typeof value !== 'number') throw new Error(`<Value calculator="${definition.id}">: “${request.output}” is a table; name a cell`)
  const digits = request.digits ?? column.digits
  if (request.against === undefined) return showQuantity(value, column.unit, digits, column.signed === true, request.only)
  const other = read(definition, request.against, request, bikes)
  if (typeof other !== 'number') throw new Error(`<Value calculator="${definition.id}">: “${request.output}” can't be compared`)
  if (request.as === 'percent') return { metric: `${formatNumber((value / other - 1) * 100, request.digits ?? 0)}\u00a0%`, imperial: null }
  if (request.as === 'ratio') return { metric: formatNumber(value / other, request.digits ?? 2), imperial: null }
  return showQuantity(value - other, column.unit, digits, true, request.only)
}

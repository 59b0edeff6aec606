import type { Cell, OutputValue } from '../machine/cells.ts'
import { isNumber } from '../machine/statement.ts'
import type { BikeSheets } from '../bikes/sheet.ts'
import type { WholeCalculator } from '../machine/calculator.ts'
import type { WorkedCase } from '../machine/worked.ts'
import { evaluate } from '../machine/evaluate.ts'
import { middle } from '../units/interval.ts'
import { differenceFromSI, fromSI, units } from '../units/units.ts'
import type { Unit } from '../units/units.ts'

/** One figure of a hand-worked case beside what the calculator gives, both in the definition's unit. */
export interface WorkedValue {
  label: string
  symbol: string
  wanted: number
  /** null where the calculator gives no number */
  ours: number | null
  difference: number | null
  tolerance: number
  passes: boolean
}

export interface WorkedResult {
  check: WorkedCase
  values: readonly WorkedValue[]
  /** why nothing could be computed */
  problem?: string
}

/** The hand-worked cases of one calculator. They stand apart from the definition, so that the browser does not load them. */
export async function loadWorkedChecks(id: string): Promise<readonly WorkedCase[]> {
  return ((await import(`../calculators/${id}/worked.ts`)) as { default: readonly WorkedCase[] })
    .default
}

/** Runs hand-worked cases of a definition; the middle of an interval stands for it. Nothing throws. */
export function runWorked(
  definition: WholeCalculator,
  checks: readonly WorkedCase[],
  bikes: BikeSheets,
): WorkedResult[] {
  return checks.map((check) => {
    const { now, problems, refusal } = evaluate(definition, check.given, { bikes })
    const problem = [...Object.values(problems), ...(refusal === null ? [] : [refusal])].join('; ')
    const values = Object.entries(check.expect).map(([path, { value, tolerance }]) => {
      const place = placeOf(definition, path, now?.output)
      const ours = place.si === null ? null : inUnit(place)
      return {
        label: place.label,
        symbol: units[place.unit].symbol,
        wanted: value,
        ours,
        ...apart(ours, value, tolerance),
        tolerance,
      }
    })
    return { check, values, ...(problem === '' ? {} : { problem }) }
  })
}

/** A number that a case names, in SI, and how it is told. */
interface Place {
  label: string
  unit: Unit
  difference: boolean
  si: number | null
}

/**
 * What a case names: a result (an interval by its middle), an end of one ("sag.low"), or a cell of a table by row and column ("misses.0.2").
 */
function placeOf(
  { outputs }: WholeCalculator,
  path: string,
  values: Readonly<Record<string, OutputValue>> | undefined,
): Place {
  const [id = '', first, second] = path.split('.')
  const output = outputs[id]
  const value = values?.[id] ?? null
  const nothing = { label: path, unit: '', difference: false, si: null } as const
  if (output === undefined) return nothing
  if (isNumber(output))
    return {
      label: first === undefined ? output.label : `${output.label}, ${END_NAMES[first] ?? first}`,
      unit: output.unit,
      difference: output.difference ?? false,
      si: first === undefined ? middle(value) : endOf(value, first),
    }
  const column = output.kind === 'table' ? output.columns[Number(second)] : undefined
  if (column === undefined || !isNumber(column) || !Array.isArray(value)) return nothing
  const cell = (value as readonly (readonly Cell[])[])[Number(first)]?.[Number(second)] ?? null
  return {
    label: `${output.label}: row ${Number(first) + 1}, ${column.label}`,
    unit: column.unit,
    difference: column.difference ?? false,
    si: middle(cell),
  }
}

const END_NAMES: Readonly<Record<string, string>> = { low: 'lower end', high: 'upper end' }

function endOf(value: unknown, end: string): number | null {
  const number = (value as Record<string, unknown> | null)?.[end]
  return typeof number === 'number' ? number : null
}

const inUnit = ({ si, unit, difference }: Place): number =>
  difference ? differenceFromSI(si!, unit) : fromSI(si!, unit)

function apart(
  ours: number | null,
  wanted: number,
  tolerance: number,
): { difference: number | null; passes: boolean } {
  if (ours === null || !Number.isFinite(ours)) return { difference: null, passes: false }
  return { difference: ours - wanted, passes: Math.abs(ours - wanted) <= tolerance }
}

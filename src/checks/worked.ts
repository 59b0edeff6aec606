import { isNumber } from '../machine/statement.ts'
import type { BikeSpec } from '../bikes/bikes.ts'
import type { WholeCalculator } from '../machine/calculator.ts'
import type { Output } from '../machine/statement.ts'
import type { WorkedCase } from '../machine/worked.ts'
import { evaluate } from '../machine/evaluate.ts'
import { middle } from '../units/interval.ts'
import { differenceFromSI, fromSI, units } from '../units/units.ts'

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
  bikes: Readonly<Record<string, BikeSpec>>,
): WorkedResult[] {
  return checks.map((check) => {
    const { now, problems, refusal } = evaluate(definition, check.given, { bikes })
    const problem = [...Object.values(problems), ...(refusal === null ? [] : [refusal])].join('; ')
    const values = Object.entries(check.expect).map(([id, { value, tolerance }]) => {
      const output = definition.outputs[id]
      const ours = inDefinitionUnit(output, middle(now?.output[id]))
      return {
        ...named(output, id),
        wanted: value,
        ours,
        ...apart(ours, value, tolerance),
        tolerance,
      }
    })
    return { check, values, ...(problem === '' ? {} : { problem }) }
  })
}

function named(output: Output | undefined, id: string): { label: string; symbol: string } {
  if (output === undefined) return { label: id, symbol: '' }
  return { label: output.label, symbol: isNumber(output) ? units[output.unit].symbol : '' }
}

function inDefinitionUnit(output: Output | undefined, si: number | null): number | null {
  if (si === null || output === undefined || !isNumber(output)) return null
  return output.difference ? differenceFromSI(si, output.unit) : fromSI(si, output.unit)
}

function apart(
  ours: number | null,
  wanted: number,
  tolerance: number,
): { difference: number | null; passes: boolean } {
  if (ours === null || !Number.isFinite(ours)) return { difference: null, passes: false }
  return { difference: ours - wanted, passes: Math.abs(ours - wanted) <= tolerance }
}

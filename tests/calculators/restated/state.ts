import type { WholeCalculator } from '../../../src/machine/calculator.ts'
import type { Cell, OutputValue, Results } from '../../../src/machine/cells.ts'
import type { Given } from '../../../src/machine/given.ts'
import { isNumber } from '../../../src/machine/statement.ts'
import type { TableOutputColumn } from '../../../src/machine/statement.ts'
import { ends } from '../../../src/units/interval.ts'
import { fromSI } from '../../../src/units/units.ts'
import type { Unit } from '../../../src/units/units.ts'
import { bikes } from '../bikes.ts'
import type { BikeSheet } from '../../../src/bikes/sheet.ts'

/** A number of the card with its ends; all three alike where it has no ±. */
export interface Told {
  low: number
  value: number
  high: number
}

/** One state as a card shows it: every value in the unit of its field. */
export interface State {
  /** a number entered */
  is(id: string): number
  /** a number that may be left empty */
  maybe(id: string): number | undefined
  chosen(id: string): string
  table(id: string): readonly (readonly number[])[]
  bike(id: string): BikeSheet
  /** a number of the card; null where it shows none */
  told(id: string): Told | null
  /** the cells of a table of the card: numbers, codes as they are */
  cells(id: string): (Told | string | null)[][]
}

/** What one verdict must be, from the inputs and the numbers of the card alone. */
export interface Rule {
  output: string
  /** the column of codes, where the output is a table */
  column?: number
  /** set where the verdict is of the whole range that unknowns leave, and not of each state in it */
  ofRange?: true
  must(state: State): string | null | readonly (string | null)[]
}

/** The rules of one calculator. */
export interface Restated {
  calculator: string
  rules: readonly Rule[]
}

/** What a change of unit may leave of two numbers that are one, as a share. */
const ROUNDING = 1e-9
const room = (a: number, b: number): number =>
  Number.isFinite(a + b) ? ROUNDING * Math.max(1, Math.abs(a), Math.abs(b)) : 0

/** Really above, and not by rounding. */
export const above = (a: number, b: number): boolean => a > b + room(a, b)
/** Really below, and not by rounding. */
export const below = (a: number, b: number): boolean => a < b - room(a, b)

function toldOf(cell: Cell, unit: Unit): Told | null {
  const span = ends(cell)
  if (span === null) return null
  const middle =
    typeof cell === 'object' && cell !== null && 'value' in cell ? cell.value : undefined
  return {
    low: fromSI(span[0], unit),
    high: fromSI(span[1], unit),
    value: fromSI(middle ?? (span[0] + span[1]) / 2, unit),
  }
}

const cellOf = (cell: Cell, column: TableOutputColumn): Told | string | null =>
  typeof cell === 'string' ? cell : isNumber(column) ? toldOf(cell, column.unit) : null

/** A state of a calculator as its card shows it. */
export function stateOf(
  { outputs }: Pick<WholeCalculator, 'outputs'>,
  given: Given,
  results: Results,
): State {
  return {
    is: (id) => given[id] as number,
    maybe: (id) => given[id] as number | undefined,
    chosen: (id) => given[id] as string,
    table: (id) => given[id] as readonly (readonly number[])[],
    bike: (id) => bikes[given[id] as string]!,
    told: (id) => {
      const output = outputs[id]!
      return isNumber(output) ? toldOf(results[id] as Cell, output.unit) : null
    },
    cells: (id) => {
      const output = outputs[id]!
      if (output.kind !== 'table') return []
      return (results[id] as readonly (readonly Cell[])[]).map((row) =>
        row.map((cell, place) => cellOf(cell, output.columns[place]!)),
      )
    },
  }
}

/** The cells that hold a rule's verdict. */
export function verdictCells({ output, column }: Rule, results: Results): Cell[] {
  const value = results[output] as OutputValue
  return column === undefined
    ? [value as Cell]
    : (value as readonly (readonly Cell[])[]).map((row) => row[column] ?? null)
}

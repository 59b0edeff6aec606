import { isOneOf } from '../../../src/machine/cells.ts'
import type { Cell, OutputValue } from '../../../src/machine/cells.ts'
import { isNumber } from '../../../src/machine/statement.ts'
import type { Output, TableOutputColumn } from '../../../src/machine/statement.ts'
import { isInterval } from '../../../src/units/interval.ts'
import { fromSI } from '../../../src/units/units.ts'
import type { Unit } from '../../../src/units/units.ts'
import type { Described, Told } from './outputs.ts'
import type { Pair } from './states.ts'

/** One number that is not what it was [in the output's unit], and where. */
interface Moved {
  was: number
  is: number
  at: Pair
}

/** How an output, or a column of one, compares over all states. */
export interface Row {
  name: string
  unit: string
  equal: number
  /** numbers that are not the same to the last bit */
  moved: Moved[]
  /** a result where there was none, or none where there was one */
  came: Pair[]
  went: Pair[]
  /** tables of another length */
  resized: Pair[]
  /** numbers that have a ± where they had none, or none where they had one */
  widened: Pair[]
  narrowed: Pair[]
  /** by the words of before, how often each code of now stands for them, with a state */
  words: Map<string, Map<string, { times: number; at: Pair }>>
}

/** Differences at the last digits of a double, from another order of the same sum. */
export const ROUNDING = 1e-9

export const isRounding = ({ was, is }: Moved): boolean =>
  Math.abs(is - was) <= ROUNDING * Math.max(1, Math.abs(was), Math.abs(is))

const text = (cell: Cell): string =>
  isOneOf(cell) ? cell.oneOf.join(' or ') : typeof cell === 'string' ? cell : '-'

const numbers = (cell: Cell): number[] => {
  if (typeof cell === 'number') return [cell]
  if (!isInterval(cell)) return []
  return [cell.low, cell.high, ...(cell.value === undefined ? [] : [cell.value])]
}

/** Notes a difference: whatever is noted is not equal. */
function note(how: () => unknown): false {
  how()
  return false
}

/** The number itself, without its ±. */
const estimate = (cell: Cell): number =>
  isInterval(cell) ? (cell.value ?? (cell.low + cell.high) / 2) : Number(cell)

const isNumeric = (cell: Cell): boolean => typeof cell === 'number' || isInterval(cell)

function compareCell(row: Row, unit: Unit | null, was: Cell, is: Cell, at: Pair): boolean {
  if (was === null && is === null) return true
  if (was === null) return note(() => row.came.push(at))
  if (is === null) return note(() => row.went.push(at))
  if (!isNumeric(was) || !isNumeric(is)) {
    const codes = row.words.get(text(was)) ?? new Map<string, { times: number; at: Pair }>()
    row.words.set(text(was), codes)
    const seen = codes.get(text(is))
    codes.set(text(is), { times: (seen?.times ?? 0) + 1, at: seen?.at ?? at })
    return true
  }
  if (isInterval(is) && !isInterval(was)) row.widened.push(at)
  if (isInterval(was) && !isInterval(is)) row.narrowed.push(at)
  const sized = isInterval(was) === isInterval(is)
  const [before, now] = sized ? [numbers(was), numbers(is)] : [[estimate(was)], [estimate(is)]]
  const moved = before.flatMap((value, place) => {
    const other = now[place]!
    if (Object.is(value, other)) return []
    const shown = (si: number): number => (unit === null ? si : fromSI(si, unit))
    return [{ was: shown(value), is: shown(other), at }]
  })
  row.moved.push(...moved)
  return sized && moved.length === 0
}

/** Words of before with another code of now than they mostly have: a verdict that is not what it was. */
export const verdictsMoved = ({
  words,
}: Row): { was: string; is: string; times: number; at: Pair }[] =>
  [...words].flatMap(([was, codes]) =>
    [...codes]
      .sort(([, one], [, other]) => other.times - one.times)
      .slice(1)
      .map(([is, { times, at }]) => ({ was, is, times, at })),
  )

const unitOf = (described: Output | TableOutputColumn | undefined): Unit | null =>
  described && isNumber(described) ? described.unit : null

const emptyRow = (name: string, unit: string): Row => ({
  name,
  unit,
  equal: 0,
  moved: [],
  came: [],
  went: [],
  resized: [],
  widened: [],
  narrowed: [],
  words: new Map(),
})

type Rows = readonly (readonly Cell[])[]
const isRows = (value: OutputValue | undefined): value is Rows => Array.isArray(value)

/** Compares a column by its id in both editions, over the rows that both have. */
function compareColumn(
  row: Row,
  unit: Unit | null,
  tables: [Rows, Rows],
  places: [number, number],
  at: Pair,
): boolean {
  const [was, is] = tables
  if (was.length !== is.length) return note(() => row.resized.push(at))
  return was
    .map((cells, r) =>
      compareCell(row, unit, cells[places[0]] ?? null, is[r]?.[places[1]] ?? null, at),
    )
    .every(Boolean)
}

/** The columns of a table that both have, each with its place in either; one nameless column for what is no table. */
function columnsOf(
  now: Output,
  then: Output,
): { id: string; unit: Unit | null; places: [number, number] }[] {
  if (now.kind !== 'table' || then.kind !== 'table')
    return [{ id: '', unit: unitOf(now), places: [0, 0] }]
  return now.columns.flatMap((column, place) => {
    const before = then.columns.findIndex(({ id }) => id === column.id)
    return before < 0
      ? []
      : [{ id: column.id, unit: unitOf(column), places: [before, place] as [number, number] }]
  })
}

/** Every output that both editions have, over all states that both compute. */
export function compareOutputs(
  now: Described,
  then: Described,
  states: readonly { pair: Pair; is: Told; was: Told }[],
): Row[] {
  const both = states.filter(({ is, was }) => is.output !== null && was.output !== null)
  return Object.entries(now.outputs).flatMap(([id, output]) => {
    const before = then.outputs[id]
    if (before === undefined) return []
    return columnsOf(output, before).map((column) => {
      const row = emptyRow(column.id === '' ? id : `${id}.${column.id}`, column.unit ?? '')
      for (const { pair, is, was } of both) {
        const [old, value] = [was.output![id] ?? null, is.output![id] ?? null]
        const same =
          isRows(old) && isRows(value)
            ? compareColumn(row, column.unit, [old, value], column.places, pair)
            : compareCell(row, column.unit, old as Cell, value as Cell, pair)
        if (same) row.equal++
      }
      return row
    })
  })
}

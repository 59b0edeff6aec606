import { checkValue, tidy } from '../machine/fields.ts'
import type { Given } from '../machine/given.ts'
import type { CardStatement } from '../machine/statement.ts'
import type { Unit } from '../units/units.ts'
import type { Book } from './book.ts'
import { inUnit, takenMean } from './carry.ts'
import type { Taken } from './carry.ts'
import type { ResultWritten, Source } from './resultSchema.ts'

/* What readings come to: which of them make which input of which calculator is data, and the calculator does the rest. */

/** A result that a step shows. */
export type ResultSpec = Omit<ResultWritten, 'at'>

interface Value {
  value: number
  unit: string
}

/** A reading's mean: this procedure's own first, then the latest in the order of the job. */
function valueOf(id: string, here: string, all: readonly Taken[], book: Book): Value | null {
  const named = all.filter(({ spec }) => spec.id === id)
  const order = [
    ...named.filter(({ procedure }) => procedure === here),
    ...named.filter(({ procedure }) => procedure !== here).reverse(),
  ]
  for (const taken of order) {
    const value = takenMean(book, taken)
    if (value !== null) return { value, unit: taken.spec.unit }
  }
  return null
}

type Reader = (id: string) => Value | null

const difference = (read: Reader, [more, less]: readonly [string, string]): Value | null => {
  const [a, b] = [read(more), read(less)]
  return a && b && a.unit === b.unit ? { value: tidy(a.value - b.value), unit: a.unit } : null
}

function single(source: Exclude<Source, { rows: unknown }>, read: Reader): Value | null {
  if (typeof source === 'string') return read(source)
  if ('mean' in source) {
    const values = source.mean.map(read)
    if (values.some((each) => each === null)) return null
    const sum = values.reduce((total, each) => total + each!.value, 0)
    return { value: tidy(sum / values.length), unit: values[0]!.unit }
  }
  if ('less' in source) {
    const found = difference(read, source.less)
    return found && { ...found, value: tidy((source.from ?? 0) + found.value) }
  }
  const [top, bottom] = source.ratio.map((pair) => difference(read, pair))
  return top && bottom && bottom.value !== 0
    ? { value: tidy(top.value / bottom.value), unit: '' }
    : null
}

/** Rows of a table [column units]; a press gives way by its share of `give` at each load, which is added back to the length. */
function rowsOf(
  { rows, give }: Extract<Source, { rows: unknown }>,
  columns: readonly { unit: Unit }[],
  read: Reader,
): number[][] | null {
  const found = rows.flatMap((pair) => {
    const row = pair.map((id, index) => {
      const value = read(id)
      return value && inUnit(value.value, value.unit, columns[index]!.unit)
    })
    return row.every((cell): cell is number => typeof cell === 'number') ? [row] : []
  })
  if (found.length < 2) return null
  const gives = give === undefined ? null : read(give)
  const most = Math.max(...found.map(([, force]) => force!))
  return found.map(([length, force]) => [
    tidy(length! + (gives && most > 0 ? (gives.value * force!) / most : 0)),
    force!,
  ])
}

/** The readings that a source needs. */
export const readingsOf = (source: Source): string[] => {
  if (typeof source === 'string') return [source]
  if ('mean' in source) return [...source.mean]
  if ('less' in source) return [...source.less]
  if ('ratio' in source) return source.ratio.flat()
  return source.rows.flat()
}

/** What the readings of a book give the calculator of a result; what is missing is named by its readings. */
export function workedGiven(
  spec: ResultSpec,
  statement: CardStatement,
  here: string,
  all: readonly Taken[],
  book: Book,
): { given: Given; missing: readonly string[]; refused: readonly string[] } {
  const read: Reader = (id) => valueOf(id, here, all, book)
  const given: Record<string, Given[string]> = { ...spec.given }
  const missing: string[] = []
  const refused: string[] = []
  const take = (id: string, source: Source, needed: boolean): void => {
    const input = statement.inputs[id]
    if (input?.kind === 'table' && typeof source === 'object' && 'rows' in source) {
      const rows = rowsOf(source, input.columns, read)
      if (rows) given[id] = rows
      else if (needed) missing.push(...readingsOf(source).slice(0, 4))
      return
    }
    if (input?.kind !== 'quantity' || (typeof source === 'object' && 'rows' in source)) return
    const found = single(source, read)
    const value = found && inUnit(found.value, found.unit, input.unit)
    if (value === null) {
      if (needed) missing.push(...readingsOf(source).filter((each) => read(each) === null))
      return
    }
    const checked = checkValue(input, value, [])
    if ('problem' in checked) refused.push(checked.problem)
    else given[id] = value
  }
  for (const [id, source] of Object.entries(spec.inputs)) take(id, source, true)
  for (const [id, source] of Object.entries(spec.maybe)) take(id, source, false)
  return { given, missing: [...new Set(missing)], refused }
}

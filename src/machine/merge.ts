import { cellOf, codesOf } from './cells.ts'
import type { Cell, OutputValue, Results } from './cells.ts'
import type { Interval } from '../units/interval.ts'
import { ends, isInterval } from '../units/interval.ts'

/** The codes among the cells of all possible states, each once, from the low ends of what is not known to the high ends: the first state is their middle. */
function codesAmong(all: readonly Cell[]): string[] {
  const [middle = null, ...others] = all
  const half = others.length >> 1
  const inOrder = [...others.slice(0, half), middle, ...others.slice(half)]
  return [...new Set(inOrder.flatMap(codesOf))]
}

const isRows = (value: OutputValue | undefined): value is readonly (readonly Cell[])[] =>
  Array.isArray(value)

/** One cell over all possible states: a number that they share, the range that they span, the codes that they reach; null where none has it. */
function mergeCell(all: readonly Cell[]): Cell {
  const codes = codesAmong(all)
  if (codes.length > 0) return cellOf(codes)
  const [first] = all
  const spans = all.flatMap((cell) => ends(cell) ?? [])
  if (spans.length === 0) return null
  const [low, high] = [Math.min(...spans), Math.max(...spans)]
  // what an unknown does not touch stays as it is, with its own ±
  if (first !== undefined && all.every((cell) => same(cell, first))) return first
  return { low, high }
}

/** What two ways of reckoning one value may differ by, as a share of it: what an unknown cancels out of is not touched by it. */
const ROUNDING = 1e-9

const alike = (one: number | undefined, other: number | undefined): boolean =>
  one === other ||
  (one !== undefined &&
    other !== undefined &&
    Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other)))

function same(one: Cell, other: Cell): boolean {
  if (typeof one === 'number' && typeof other === 'number') return alike(one, other)
  if (isInterval(one) && isInterval(other))
    return alike(one.low, other.low) && alike(one.high, other.high) && alike(one.value, other.value)
  return one === other
}

/** Results over all possible states, the first of which gives a table its rows. */
export function mergeResults(all: readonly Results[]): Results {
  const merged = Object.entries(all[0] ?? {}).map(([id, value]): [string, OutputValue] => {
    if (!isRows(value)) return [id, mergeCell(all.map((results) => results[id] as Cell))]
    const cell = (results: Results, r: number, c: number): Cell => {
      const rows = results[id]
      return (isRows(rows) ? rows[r]?.[c] : undefined) ?? null
    }
    return [
      id,
      value.map((row, r) =>
        row.map((_, c) => mergeCell(all.map((results) => cell(results, r, c)))),
      ),
    ]
  })
  return Object.fromEntries(merged)
}

/** Every code that each verdict may have. */
export function verdictsIn(all: readonly Results[]): Readonly<Record<string, readonly string[]>> {
  const verdicts = Object.entries(all[0] ?? {}).flatMap(([id, value]): [string, string[]][] => {
    if (isRows(value)) return []
    const codes = codesAmong(all.map((results) => results[id] as Cell))
    return codes.length > 0 ? [[id, codes]] : []
  })
  return Object.fromEntries(verdicts)
}

/** A number, or the estimate of a measured one; a result that is a range by itself has none. */
const estimate = (value: OutputValue | undefined): number | null =>
  typeof value === 'number' ? value : isInterval(value) ? (value.value ?? null) : null

type Moves = Readonly<Record<string, number | Interval>>

/** Compares every number of two lists of results for the same possible states, one by one, so that what is not known cancels where it can. */
function compared(
  before: readonly Results[],
  now: readonly Results[],
  compare: (is: number, was: number) => number | null,
): Moves {
  const moves = Object.keys(now[0] ?? {}).flatMap((id): [string, number | Interval][] => {
    const all = now.map((results, place) => {
      const [is, was] = [estimate(results[id]), estimate(before[place]?.[id])]
      return is === null || was === null ? null : compare(is, was)
    })
    if (!all.every((move) => move !== null)) return []
    const [low, high] = [Math.min(...all), Math.max(...all)]
    return [[id, alike(low, high) ? low : { low, high }]]
  })
  return Object.fromEntries(moves)
}

/** How far each number moved. */
export const changesBetween = (before: readonly Results[], now: readonly Results[]): Moves =>
  compared(before, now, (is, was) => is - was)

/** The same as a share of what it was; none where it was 0. */
export const changeSharesBetween = (before: readonly Results[], now: readonly Results[]): Moves =>
  compared(before, now, (is, was) => (was === 0 ? null : (is - was) / Math.abs(was)))

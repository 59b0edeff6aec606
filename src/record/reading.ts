import { tidy } from '../machine/fields.ts'
import { readNumber } from '../units/number.ts'
import { formatNumber, withSymbol } from '../units/say.ts'
import { displayUnit } from '../units/choice.ts'
import type { UnitChoice } from '../units/choice.ts'
import { convert, units } from '../units/units.ts'
import type { Unit } from '../units/units.ts'
import type { ReadingText } from './procedureSchema.ts'

/** A reading as browsers need it, or a value that a reader sets beside a calculator. `range` is in `unit`. */
export type ReadingSpec = Omit<ReadingText, 'hint' | 'quantity'> & {
  quantity: ReadingText['quantity'] | 'share'
}

/** One box of a reading as the book keeps it: what was typed, in which unit, and its value in the reading's unit (null where it can't be read as a number in range). */
export interface Entry {
  typed: string
  unit: string
  value: number | null
}

/** What a box says: nothing, words, a number in the reading's unit, or what is wrong and how to put it right. */
export type BoxReading =
  | { kind: 'empty' }
  | { kind: 'text' }
  | { kind: 'number'; value: number }
  | { kind: 'problem'; problem: string }

const isUnit = (unit: string): unit is Unit => unit in units

/** The unit in which a reader with this choice writes a reading down. A scale reads kilograms, so a force in kgf is not asked for in newtons. */
export function readingUnit(unit: string, choice: UnitChoice): string {
  if (!isUnit(unit)) return unit
  if (unit === 'kgf') return choice.force === 'lbf' ? 'lbf' : 'kgf'
  return displayUnit(unit, choice)
}

/** What is printed behind the box: "mm", "turns", or nothing. */
export const unitSymbol = (unit: string): string => (isUnit(unit) ? units[unit].symbol : unit)

/** `value` [from] in the unit `to`; the same where one of them is no unit that converts. */
function converted(value: number, from: string, to: string): number {
  if (from === to || !isUnit(from) || !isUnit(to) || units[from].quantity !== units[to].quantity)
    return value
  return tidy(convert(value, from, to))
}

/** Decimal places that keep a tenth of a millimetre, and its like in other units. */
const digitsIn = (unit: string): number => ({ in: 3, bar: 2, st: 2 })[unit] ?? 1

/** A value [unit] written for a reader: "112.5 mm". Whole numbers stay whole. */
export function showValue(value: number, unit: string, shown: string): string {
  const there = converted(value, unit, shown)
  const text = formatNumber(there, digitsIn(shown))
  return withSymbol(text.replace(/\.0+$/, ''), unitSymbol(shown))
}

function rangeProblem(spec: ReadingSpec, shown: string): string {
  const [low, high] = spec.range ?? [0, 0]
  const bare = (value: number): string => showValue(value, spec.unit, shown)
  return `${spec.label} must be between ${bare(low)} and ${bare(high)}`
}

/** Reads one box, typed in the unit `shown`. */
export function readBox(spec: ReadingSpec, typed: string, shown: string): BoxReading {
  if (typed.trim() === '') return { kind: 'empty' }
  if (spec.quantity === 'text') return { kind: 'text' }
  const reading = readNumber(typed)
  if ('problem' in reading) {
    const what = `${spec.label}: “${typed.trim()}”`
    if (reading.problem === 'ambiguous')
      return {
        kind: 'problem',
        problem: `${what} can be read two ways. Leave out the thousands mark, or write more or fewer decimals`,
      }
    return {
      kind: 'problem',
      problem: `${what} is not a number. Write digits with one point or comma, as 7.5 or 7,5`,
    }
  }
  const value = converted(reading.value, shown, spec.unit)
  if (spec.range) {
    const [low, high] = spec.range
    const slack = (high - low) * 1e-6
    if (value < low - slack || value > high + slack)
      return { kind: 'problem', problem: rangeProblem(spec, shown) }
  }
  return { kind: 'number', value }
}

/** What the book keeps of a box. */
export function entryOf(spec: ReadingSpec, typed: string, shown: string): Entry {
  const reading = readBox(spec, typed, shown)
  return { typed, unit: shown, value: reading.kind === 'number' ? reading.value : null }
}

/** What stands in a box for a reader who sees `shown`: the typed text as it was, or its value converted. */
export function boxText(spec: ReadingSpec, entry: Entry, shown: string): string {
  if (entry.unit === shown || entry.typed.trim() === '') return entry.typed
  const reading = readBox(spec, entry.typed, entry.unit)
  if (reading.kind !== 'number') return entry.typed
  return formatNumber(converted(reading.value, spec.unit, shown), digitsIn(shown)).replace('−', '-')
}

/** Lengths of one reading further apart than this are read again [mm]: common practice, no source. */
const MOST_APART = 3

/** What the boxes of a reading come to, in the reading's unit. */
export interface Mean {
  mean: number
  count: number
  spread: number
  /** whether they lie so far apart that the mean must wait for another reading */
  apart: boolean
}

/** The mean of the boxes that hold a number, with how many there are and how far they spread; null while there is none. */
export function meanOf(spec: ReadingSpec, entries: readonly (Entry | undefined)[]): Mean | null {
  const values = entries.flatMap((entry) => {
    const reading = entry && readBox(spec, entry.typed, entry.unit)
    return reading?.kind === 'number' ? [reading.value] : []
  })
  if (values.length === 0) return null
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  const spread = Math.max(...values) - Math.min(...values)
  const isLength = isUnit(spec.unit) && units[spec.unit].quantity === units.mm.quantity
  // a millionth allows for the rounding of converted readings
  return {
    mean,
    count: values.length,
    spread,
    apart: isLength && converted(spread, spec.unit, 'mm') > MOST_APART + 1e-6,
  }
}

/** What to do with readings that lie apart: "These are 8 mm apart: read once more." Nothing for those that agree. */
export const apartText = (mean: Mean | null, spec: ReadingSpec, shown: string): string =>
  mean?.apart ? `These are ${showValue(mean.spread, spec.unit, shown)} apart: read once more.` : ''

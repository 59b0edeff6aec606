import type { Interval } from './interval.ts'
import { displayDigits, displayUnit } from './choice.ts'
import type { UnitChoice } from './choice.ts'
import { differenceFromSI, fromSI, units } from './units.ts'
import type { Unit } from './units.ts'

/** Writes numbers for people, in the units they chose. */
export interface Say {
  /** "38.9 mm": `si` [SI], given the definition's unit and its decimal places there */
  quantity(si: number, unit: Unit, digits: number): string
  /** "+2.5 mm" or "−2.5 mm": a change, with its sign and without a temperature's offset */
  change(si: number, unit: Unit, digits: number): string
  /** "27 to 36 %", or the one value where both ends look alike */
  range(low: number, high: number, unit: Unit, digits: number): string
  /** a result in words: its estimate where it was measured, its range where it hangs on something that is not known */
  span(value: number | Interval, unit: Unit, digits: number): string
  /** "2.1 to 3.4 mm higher", "0.2 mm lower to 0.1 mm higher": a change in words, given the words for less and for more */
  moved(
    change: number | Interval,
    unit: Unit,
    digits: number,
    words: readonly [less: string, more: string],
  ): string
  /** "38.9": the number alone, in the reader's unit */
  number(si: number, unit: Unit, digits: number): string
  /** the symbol of the reader's unit, for a column head or an axis */
  symbol(unit: Unit): string
  /** the value as a number in the reader's unit, for an axis */
  value(si: number, unit: Unit): number
  choice: UnitChoice
}

const MINUS = '−'

/** `value` with `digits` decimal places, a true minus sign, and no "−0". */
export function formatNumber(value: number, digits: number): string {
  const text = value.toFixed(digits)
  const zero = Number(text) === 0
  return zero ? text.replace('-', '') : text.replace('-', MINUS)
}

/** Number and symbol with the space that keeps them on one line; degrees and per cent follow their own custom. */
export function withSymbol(number: string, symbol: string): string {
  if (symbol === '') return number
  return symbol === '°' ? `${number}°` : `${number}\u00a0${symbol}`
}

/** A sayer for one choice of units. */
export function createSay(choice: UnitChoice): Say {
  const shown = (unit: Unit): Unit => displayUnit(unit, choice)
  const number = (si: number, unit: Unit, digits: number): string =>
    formatNumber(fromSI(si, shown(unit)), displayDigits(digits, unit, shown(unit)))
  const quantity = (si: number, unit: Unit, digits: number): string =>
    withSymbol(number(si, unit, digits), units[shown(unit)].symbol)
  const range = (low: number, high: number, unit: Unit, digits: number): string => {
    const [first, last] = [number(low, unit, digits), quantity(high, unit, digits)]
    return quantity(low, unit, digits) === last ? last : `${first} to ${last}`
  }
  return {
    choice,
    number,
    quantity,
    range,
    span(value, unit, digits) {
      if (typeof value === 'number') return quantity(value, unit, digits)
      return value.value === undefined
        ? range(value.low, value.high, unit, digits)
        : quantity(value.value, unit, digits)
    },
    moved(change, unit, digits, [less, more]) {
      const [low, high] = typeof change === 'number' ? [change, change] : [change.low, change.high]
      const size = (si: number): string => number(Math.abs(si), unit, digits)
      // what rounds to nothing has no direction of its own
      const none = size(0)
      if (low >= 0 || size(low) === none)
        return `${range(Math.max(0, low), Math.abs(high), unit, digits)} ${high < 0 ? less : more}`
      if (high <= 0 || size(high) === none)
        return `${range(Math.max(0, -high), -low, unit, digits)} ${less}`
      return `${quantity(-low, unit, digits)} ${less} to ${quantity(high, unit, digits)} ${more}`
    },
    change(si, unit, digits) {
      const text = formatNumber(
        differenceFromSI(si, shown(unit)),
        displayDigits(digits, unit, shown(unit)),
      )
      return withSymbol(
        text.startsWith(MINUS) || Number(text) === 0 ? text : `+${text}`,
        units[shown(unit)].symbol,
      )
    },
    symbol: (unit) => units[shown(unit)].symbol,
    value: (si, unit) => fromSI(si, shown(unit)),
  }
}

import { displayDigits, displayUnit } from './unit-choice.ts'
import type { UnitChoice } from './unit-choice.ts'
import { differenceFromSI, fromSI, units } from './units.ts'
import type { Unit } from './units.ts'

/** Writes numbers for people, in the units they chose. */
export interface Say {
  /** "38.9 mm": `si` [SI], given the definition's unit and its decimal places there */
  quantity(si: number, unit: Unit, digits: number): string
  /** "+2.5 mm" or "−2.5 mm": a change, with its sign and without a temperature's offset */
  change(si: number, unit: Unit, digits: number): string
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
  const number = (si: number, unit: Unit, digits: number): string => formatNumber(fromSI(si, shown(unit)), displayDigits(digits, unit, shown(unit)))
  return {
    choice,
    number,
    quantity: (si, unit, digits) => withSymbol(number(si, unit, digits), units[shown(unit)].symbol),
    change(si, unit, digits) {
      const text = formatNumber(differenceFromSI(si, shown(unit)), displayDigits(digits, unit, shown(unit)))
      return withSymbol(text.startsWith(MINUS) || Number(text) === 0 ? text : `+${text}`, units[shown(unit)].symbol)
    },
    symbol: (unit) => units[shown(unit)].symbol,
    value: (si, unit) => fromSI(si, shown(unit)),
  }
}

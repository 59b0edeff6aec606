import { unitNamed } from './units.ts'

/** A number as it is printed, with its unit. */
export interface Printed {
  value: number
  unit: string
}

const NUMBER = /^([+\-−]?\d+(?:\.\d*)?(?:e[+-]?\d+)?)(?:\s+(\S.*))?$/i

/** Reads "4.13 lbf/in", "0.5" or a plain number; null for a text that does not begin with a number. */
export function readPrinted(text: unknown): Printed | null {
  if (typeof text === 'number') return { value: text, unit: '' }
  const [, number, unit = ''] = NUMBER.exec(String(text).trim()) ?? []
  return number === undefined ? null : { value: Number(number.replace('−', '-')), unit }
}

/** SI value of a printed quantity. */
export function printedToSI({ value, unit }: Printed): number {
  const { factor, zero } = unitNamed(unit)
  return value * factor + zero
}

/** A value [SI] in the unit that a published value is printed in. */
export function inUnitOf(si: number, { unit }: Printed): number {
  const { factor, zero } = unitNamed(unit)
  return (si - zero) / factor
}

/**
 * Turns the inputs of a check into SI: "0.037 in" becomes metres, "25 lbf / 32.2 ft/s²" a mass, "2 × 35 mm" a length; lists and groups entry by entry.
 * A plain number is a count, a ratio, or SI. A text that is no quantity stays as it is. Refuses a unit that no table holds.
 */
export function inputToSI(input: unknown): unknown {
  if (Array.isArray(input)) return input.map(inputToSI)
  if (typeof input === 'object' && input !== null)
    return Object.fromEntries(Object.entries(input).map(([key, value]) => [key, inputToSI(value)]))
  return typeof input === 'string' ? textToSI(input) : input
}

function textToSI(text: string): string | number {
  const quotient = text.split(' / ')
  const [above = Number.NaN, ...below] = quotient.map((part) =>
    part.split(' × ').reduce((product, factor) => product * termToSI(factor), 1),
  )
  const value = below.reduce((result, divisor) => result / divisor, above)
  return Number.isNaN(value) ? text : value
}

function termToSI(text: string): number {
  const printed = readPrinted(text)
  return printed === null ? Number.NaN : printedToSI(printed)
}

import { readNumber } from './number.ts'
import { fromSI, toSI, units } from './units.ts'
import type { Unit } from './units.ts'

/** A number as it was typed, in the unit that was meant; `typed` is that unit where one was written behind the number. */
export type UnitReading =
  | { value: number; typed?: Unit }
  | { problem: 'empty' | 'ambiguous' | 'nonsense' }
  /** a unit that is known, of something else: "95 kg" where a rate belongs */
  | { problem: 'other'; typed: Unit }

/** A spelling is compared in small letters, without spaces, full stops and plural signs that people leave out. */
type Spelling = readonly [unit: Unit, times: number, ...spellings: readonly string[]]

/** What people write behind a number. `times` is how many of the unit the written one is: a centimetre is ten millimetres. */
const SPELLINGS: readonly Spelling[] = [
  ['N/mm', 1, 'n/mm', 'nmm', 'newton/mm', 'newtonpermm'],
  ['N/mm', 1e-3, 'n/m'],
  ['kgf/mm', 1, 'kg/mm', 'kgf/mm', 'kgs/mm', 'kp/mm', 'kilo/mm', 'kilos/mm', 'kgmm'],
  ['lbf/in', 1, 'lb/in', 'lbs/in', 'lbf/in', '#/in', 'lb/inch', 'lbs/inch', 'lbf/inch', 'lb/"'],
  ['mm', 1, 'mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters', 'mil', 'mils'],
  ['mm', 10, 'cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  ['mm', 1000, 'm', 'metre', 'metres', 'meter', 'meters'],
  ['in', 1, 'in', 'ins', 'inch', 'inches', '"', '″', '”', "''"],
  ['in', 12, 'ft', 'foot', 'feet', "'", '′', '’'],
  ['cm³', 1, 'cm³', 'cm3', 'cc', 'ccm', 'ml'],
  ['cm³', 1000, 'l', 'litre', 'litres', 'liter', 'liters'],
  ['in³', 1, 'in³', 'in3', 'cuin'],
  ['N', 1, 'n', 'newton', 'newtons'],
  ['kgf', 1, 'kgf', 'kp'],
  ['lbf', 1, 'lbf'],
  ['kg', 1, 'kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  ['lb', 1, 'lb', 'lbs', 'pound', 'pounds', '#'],
  ['st', 1, 'st', 'stone', 'stones'],
  ['°', 1, '°', 'deg', 'degs', 'degree', 'degrees'],
  ['bar', 1, 'bar', 'bars'],
  ['kPa', 1, 'kpa'],
  ['psi', 1, 'psi', 'lb/in²', 'lb/in2', 'lbs/in2', 'pounds/in2'],
  ['°C', 1, '°c', 'c', 'celsius', 'degc'],
  ['°F', 1, '°f', 'f', 'fahrenheit', 'degf'],
  ['km/h', 1, 'km/h', 'kmh', 'kph', 'kmph'],
  ['mph', 1, 'mph', 'mi/h'],
  ['g', 1, 'g'],
  ['%', 1, '%', 'percent', 'pct', 'percents'],
  ['mm²/s', 1, 'mm²/s', 'mm2/s', 'cst'],
  ['turns', 1, 'turn', 'turns', 'rev', 'revs'],
  ['clicks', 1, 'click', 'clicks'],
  ['coils', 1, 'coil', 'coils'],
]

const KNOWN: ReadonlyMap<string, readonly [Unit, number]> = new Map(
  SPELLINGS.flatMap(([unit, times, ...words]) =>
    words.map((word) => [word, [unit, times]] as const),
  ),
)

/** Quantities whose SI unit is the same and that people write alike: a load on a scale is read in kilograms as a mass is. */
const ALIKE: Readonly<Record<string, readonly string[]>> = {
  load: ['load', 'force'],
  force: ['force', 'load'],
  distance: ['distance', 'length'],
}

/** kg and lb behind a load or a force are what a scale shows, not a mass. */
const AS_LOAD: Partial<Record<Unit, Unit>> = { kg: 'kg load', lb: 'lb load', st: 'lb load' }
const STONE = 14

const plain = (text: string): string => text.toLowerCase().replace(/[\s.]/g, '')

/** The unit that `written` means where the field's own is `own`, and how many of it one written is. */
function unitOf(
  written: string,
  own: Unit,
): readonly [unit: Unit, times: number] | { other: Unit } | null {
  const known = KNOWN.get(plain(written))
  if (known === undefined) return null
  const [unit, times] = known
  const wanted = units[own].quantity
  const accepted = ALIKE[wanted] ?? [wanted]
  if (accepted.includes(units[unit].quantity)) return [unit, times]
  const load = AS_LOAD[unit]
  if (load !== undefined && accepted.includes('load'))
    return [load, unit === 'st' ? times * STONE : times]
  return { other: unit }
}

/** 5'9", 5 ft 9 in, 11 st 4 lb: a number of the larger unit, and of the smaller. */
const TWO_PARTS = /^(\d+)\s*('|′|’|ft|feet|foot|st|stone)\s*(\d+(?:[.,]\d+)?)\s*([^\d\s].*)?$/i
const ONE_PART = /^([+\-−]?[\d.,]+)\s*([^\d\s.,+\-−].*)$/

function twoParts(text: string, own: Unit): UnitReading | null {
  const match = TWO_PARTS.exec(text)
  if (match === null) return null
  const [, whole, larger, rest, smaller = ''] = match
  const feet = /^['′’f]/i.test(larger!)
  const small = feet ? 'in' : 'lb'
  if (smaller !== '' && KNOWN.get(plain(smaller))?.[0] !== small) return null
  const part = readNumber(rest!)
  if ('problem' in part) return part
  const count = Number(whole) * (feet ? 12 : STONE) + part.value
  const unit = unitOf(small, own)
  if (unit === null) return null
  return 'other' in unit
    ? { problem: 'other', typed: unit.other }
    : { value: inOwn(count, unit, own), typed: unit[0] }
}

const inOwn = (value: number, [unit, times]: readonly [Unit, number], own: Unit): number =>
  unit === own ? value * times : fromSI(toSI(value * times, unit), own)

/**
 * Reads a number with or without a unit behind it, for a field that shows `own`: "95", "95 kg", "0,95 kg/mm", "5 ft 9", "36psi". The value is
 * in `own`. A unit of another quantity and text that is no number are problems; a bare number means the field's own unit.
 */
export function readWithUnit(text: string, own: Unit): UnitReading {
  const bare = readNumber(text)
  if (!('problem' in bare) || bare.problem !== 'nonsense') return bare
  const trimmed = text.trim()
  const two = twoParts(trimmed, own)
  if (two !== null) return two
  const match = ONE_PART.exec(trimmed)
  if (match === null) return bare
  const number = readNumber(match[1]!)
  if ('problem' in number) return number
  const unit = unitOf(match[2]!, own)
  if (unit === null) return bare
  if ('other' in unit) return { problem: 'other', typed: unit.other }
  return { value: inOwn(number.value, unit, own), typed: unit[0] }
}

import { units } from './units.ts'
import type { Unit } from './units.ts'

/** The reader's units: one choice for the whole site. */
export interface UnitChoice {
  length: 'mm' | 'in'
  force: 'N' | 'kgf' | 'lbf'
  rate: 'N/mm' | 'kgf/mm' | 'lbf/in'
  mass: 'kg' | 'lb' | 'st'
  pressure: 'bar' | 'kPa' | 'psi'
  temperature: '°C' | '°F'
  speed: 'km/h' | 'mph'
}

export const METRIC: UnitChoice = {
  length: 'mm',
  force: 'N',
  rate: 'N/mm',
  mass: 'kg',
  pressure: 'bar',
  temperature: '°C',
  speed: 'km/h',
}
export const IMPERIAL: UnitChoice = {
  length: 'in',
  force: 'lbf',
  rate: 'lbf/in',
  mass: 'lb',
  pressure: 'psi',
  temperature: '°F',
  speed: 'mph',
}

/** What can be chosen, in the order in which it is offered. */
export const unitOptions: { [K in keyof UnitChoice]: readonly UnitChoice[K][] } = {
  length: ['mm', 'in'],
  force: ['N', 'kgf', 'lbf'],
  rate: ['N/mm', 'kgf/mm', 'lbf/in'],
  mass: ['kg', 'lb', 'st'],
  pressure: ['bar', 'kPa', 'psi'],
  temperature: ['°C', '°F'],
  speed: ['km/h', 'mph'],
}

/** The unit in which a reader with this choice sees a value that is defined in `unit`. */
export function displayUnit(unit: Unit, choice: UnitChoice): Unit {
  const quantity = units[unit].quantity
  if (quantity in choice) return choice[quantity as keyof UnitChoice]
  if (quantity === 'load') return choice.mass === 'kg' ? 'kg load' : 'lb load'
  if (quantity === 'distance') return choice.length === 'in' ? 'ft' : 'm'
  if (quantity === 'volume') return choice.length === 'in' ? 'in³' : 'cm³'
  if (quantity === 'moment') return choice.force === 'lbf' ? 'lbf·ft' : 'N·m'
  return unit
}

/** Decimal places that keep the precision of `digits` places in `unit` when shown in `shown`. */
export function displayDigits(digits: number, unit: Unit, shown: Unit): number {
  const ratio = units[shown].factor / units[unit].factor
  return Math.min(6, Math.max(0, digits + Math.ceil(Math.log10(ratio) - 0.35)))
}

/** Reads a stored choice, keeping only what is known; anything else falls back to metric. */
export function readUnitChoice(stored: unknown): UnitChoice {
  if (typeof stored !== 'object' || stored === null) return METRIC
  const choice = { ...METRIC }
  for (const [quantity, options] of Object.entries(unitOptions))
    for (const option of options)
      if (Reflect.get(stored, quantity) === option) Object.assign(choice, { [quantity]: option })
  return choice
}

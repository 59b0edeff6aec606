import type { Write } from '../machine/question.ts'
import type { Given, GivenValue } from '../machine/given.ts'
import type { CardStatement } from '../machine/statement.ts'
import { displayUnit } from '../units/choice.ts'
import type { UnitChoice } from '../units/choice.ts'
import { formatNumber, withSymbol } from '../units/say.ts'
import { convert, units } from '../units/units.ts'
import type { Unit } from '../units/units.ts'

/* Numbers as the bench gives them: to the step of the rule, calliper or scale that they would be read with. */

/** From which size on, in the unit itself, a value is read to which step; the first that fits. */
type Steps = readonly (readonly [from: number, step: number])[]

/** Common practice, no published source: half a millimetre or a hundredth of an inch on a rule, calliper readings below, half a kilogram or a pound on a wheel scale. */
const STEPS: Partial<Record<Unit, Steps>> = {
  mm: [
    [60, 0.5],
    [10, 0.1],
    [0, 0.01],
  ],
  in: [
    [0.2, 0.01],
    [0, 0.001],
  ],
  kg: [
    [2, 0.5],
    [0, 0.1],
  ],
  'kg load': [
    [2, 0.5],
    [0, 0.1],
  ],
  lb: [
    [5, 1],
    [0, 0.1],
  ],
  'lb load': [
    [5, 1],
    [0, 0.1],
  ],
  N: [[0, 1]],
  kgf: [[0, 0.1]],
  lbf: [
    [100, 1],
    [0, 0.1],
  ],
  'N/mm': [[0, 0.01]],
  'kgf/mm': [[0, 0.01]],
  'lbf/in': [[0, 0.1]],
  bar: [[0, 0.05]],
  psi: [[0, 0.5]],
  'km/h': [[0, 0.1]],
  mph: [[0, 0.1]],
  '°C': [[0, 1]],
  '°F': [[0, 1]],
}

const decimals = (step: number): number => Math.max(0, Math.ceil(-Math.log10(step) - 1e-9))

/** The step of a reading of this size [the unit itself]; none where the unit is not read off a scale. */
export const stepOf = (value: number, unit: Unit): number | undefined =>
  STEPS[unit]?.find(([from]) => Math.abs(value) >= from)?.[1]

/** The nearest reading of a scale, without the tails of binary sums. */
function onScale(value: number, unit: Unit): number {
  const step = stepOf(value, unit)
  if (step === undefined) return value
  return Number((Math.round(value / step) * step).toFixed(decimals(step)))
}

/** A value [its unit] as the class would read it, in the same unit again. */
export function benchValue(value: number, unit: Unit, choice: UnitChoice): number {
  const shown = displayUnit(unit, choice)
  // what stays in its own unit was drawn as a reading already
  if (shown === unit) return value
  return convert(onScale(convert(value, unit, shown), shown), shown, unit)
}

/** Every number of a state as the class would read it: what is solved is then what stands on the sheet. */
export function onBench({ inputs }: CardStatement, given: Given, choice: UnitChoice): Given {
  const read = (id: string, value: GivenValue): GivenValue => {
    const input = inputs[id]
    if (input?.kind === 'quantity' && typeof value === 'number')
      return benchValue(value, input.unit, choice)
    if (input?.kind === 'table' && typeof value === 'object')
      return value.map((row) =>
        row.map((cell, place) => benchValue(cell, input.columns[place]!.unit, choice)),
      )
    return value
  }
  return Object.fromEntries(Object.entries(given).map(([id, value]) => [id, read(id, value)]))
}

/** How many decimal places a number was given with, at most three. */
const placesOf = (value: number): number => (/\.(\d{1,3})/.exec(String(value))?.[1] ?? '').length

/** Writes values for a class with these units. */
export const writerFor =
  (choice: UnitChoice): Write =>
  (value, unit) => {
    const shown = displayUnit(unit, choice)
    const number = Number(value)
    const read = shown === unit ? number : onScale(convert(number, unit, shown), shown)
    const step = stepOf(read, shown)
    const places = shown === unit || step === undefined ? placesOf(read) : decimals(step)
    return withSymbol(formatNumber(read, places), units[shown].symbol)
  }

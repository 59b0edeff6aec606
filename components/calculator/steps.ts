import { displayDigits, displayUnit } from '../../src/units/choice.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { tidy } from '../../src/machine/fields.ts'
import { convert } from '../../src/units/units.ts'

/** Limits and step of a slider in the reader's unit, on round numbers. */
export interface SliderScale {
  low: number
  high: number
  step: number
  digits: number
}

const DECIMALS = 10

function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step))
  const lead = step / power
  return (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10) * power
}

/** The scale on which a quantity moves in the reader's unit. */
export function sliderScale(input: QuantityInput, choice: UnitChoice): SliderScale {
  const unit = displayUnit(input.unit, choice)
  const inUnit = (value: number): number => convert(value, input.unit, unit)
  const [first, last] = [inUnit(input.range[0]), inUnit(input.range[1])]
  const own = unit === input.unit
  const step = own ? input.step : roundStep(Math.abs(inUnit(input.step) - inUnit(0)))
  const low = own ? first : Math.ceil(first / step - 1e-9) * step
  const high = own ? last : Math.floor(last / step + 1e-9) * step
  return { low: tidy(low), high: tidy(high), step: tidy(step), digits: decimalsOf(step) }
}

function decimalsOf(step: number): number {
  for (let digits = 0; digits < DECIMALS; digits++)
    if (Math.abs(step * 10 ** digits - Math.round(step * 10 ** digits)) < 1e-9) return digits
  return DECIMALS
}

/** The value as the field shows it: as many decimals as it has, up to two more than the step needs. */
export function fieldText(input: QuantityInput, value: number, choice: UnitChoice): string {
  const unit = displayUnit(input.unit, choice)
  const shown = convert(value, input.unit, unit)
  const digits =
    unit === input.unit
      ? decimalsOf(input.step) + 2
      : displayDigits(decimalsOf(input.step), input.unit, unit)
  return String(Number(shown.toFixed(Math.min(DECIMALS, digits))))
}

/** One step up or down from a value, on the scale's own steps and within its limits; in the definition's unit. */
export function stepped(
  input: QuantityInput,
  value: number,
  direction: 1 | -1,
  choice: UnitChoice,
): number {
  const unit = displayUnit(input.unit, choice)
  const { low, high, step } = sliderScale(input, choice)
  const shown = convert(value, input.unit, unit)
  const places = (shown - low) / step
  const next = direction === 1 ? Math.floor(places + 1e-6) + 1 : Math.ceil(places - 1e-6) - 1
  return tidy(convert(Math.min(high, Math.max(low, tidy(low + next * step))), unit, input.unit))
}

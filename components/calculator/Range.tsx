import type { JSX } from 'preact'
import { tidy } from '../../src/machine/fields.ts'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { displayUnit } from '../../src/units/choice.ts'
import { convert, toSI, units } from '../../src/units/units.ts'
import type { FieldProps } from './fieldProps.ts'
import { sliderScale } from './steps.ts'

/** A native slider of a quantity, in the reader's unit: that of its row, and that within its handle on the drawing. `value` is in the definition's unit. */
export function Range({
  id,
  input,
  state,
  value,
  label,
}: Omit<FieldProps<QuantityInput>, 'prefix'> & { value: number; label: string }): JSX.Element {
  const unit = displayUnit(input.unit, state.choice)
  const scale = sliderScale(input, state.choice)
  return (
    <input
      type="range"
      min={scale.low}
      max={scale.high}
      step={scale.step}
      value={convert(value, input.unit, unit)}
      aria-label={label}
      aria-valuetext={`${state.say.number(toSI(value, input.unit), input.unit, 2).replace(/\.?0+$/, '')} ${units[unit].spoken}`}
      onInput={(event) =>
        state.set(id, tidy(convert(Number(event.currentTarget.value), unit, input.unit)))
      }
    />
  )
}

import type { JSX } from 'preact'
import type { QuantityInput } from '../../src/calculators/define.ts'
import { fieldSymbol, tidy } from '../../src/calculators/fields.ts'
import { displayUnit } from '../../src/calculators/unit-choice.ts'
import { convert, toSI, units } from '../../src/calculators/units.ts'
import { describedBy, FieldNotes } from './FieldNotes.tsx'
import type { FieldProps } from './field-props.ts'
import { fieldText, sliderScale, stepped } from './steps.ts'
import { Unknown } from './Unknown.tsx'

/** A number with its unit: text box, − and + for exact steps, and a slider for the feel of it. */
export function QuantityField({ id, input, state, prefix }: FieldProps<QuantityInput>): JSX.Element {
  const value = state.given[id]
  if (value === '?') return <Unknown id={id} input={input} state={state} prefix={prefix} />
  const number = typeof value === 'number' ? value : undefined
  const text = state.typed[id] ?? (number === undefined ? '' : fieldText(input, number, state.choice))
  const error = state.errors[id] ?? state.evaluation.problems[id]
  const field = `${prefix}-${id}`
  const symbol = fieldSymbol(input, state.choice)
  const step = (direction: 1 | -1): void => state.set(id, stepped(input, number ?? input.range[0], direction, state.choice))
  return (
    <div class="field" data-field={id}>
      <label for={field}>
        {input.label}
        {symbol && <span class="unit"> ({symbol})</span>}
      </label>
      <div class="stepper">
        <button type="button" class="step needs-script" aria-label={`${input.label}: less`} onClick={() => step(-1)}>
          −
        </button>
        <input
          id={field}
          name={id}
          type="text"
          inputMode={input.range[0] < 0 ? 'text' : 'decimal'}
          autocomplete="off"
          value={text}
          placeholder={input.optional ? input.empty : undefined}
          aria-invalid={error ? 'true' : undefined}
          aria-describedby={describedBy(field, input.hint, error)}
          onInput={(event) => state.type(id, event.currentTarget.value)}
          onBlur={() => state.leave(id)}
          onKeyDown={(event) => {
            if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
              event.preventDefault()
              step(event.key === 'ArrowUp' ? 1 : -1)
            }
            if (event.key === 'Enter') state.leave(id)
          }}
        />
        <button type="button" class="step needs-script" aria-label={`${input.label}: more`} onClick={() => step(1)}>
          +
        </button>
      </div>
      {number !== undefined && !input.more && <Slider id={id} input={input} state={state} value={number} />}
      <FieldNotes field={field} hint={input.hint} error={error} />
      {input.typical && (
        <button type="button" class="plain needs-script" onClick={() => state.set(id, '?')}>
          I don’t know this one
        </button>
      )}
    </div>
  )
}

function Slider({ id, input, state, value }: Omit<FieldProps<QuantityInput>, 'prefix'> & { value: number }): JSX.Element {
  const unit = displayUnit(input.unit, state.choice)
  const scale = sliderScale(input, state.choice)
  const shown = convert(value, input.unit, unit)
  return (
    <input
      type="range"
      class="needs-script"
      min={scale.low}
      max={scale.high}
      step={scale.step}
      value={shown}
      aria-label={input.label}
      aria-valuetext={`${state.say.number(toSI(value, input.unit), input.unit, 2).replace(/\.?0+$/, '')} ${units[unit].spoken}`}
      onInput={(event) => state.set(id, tidy(convert(Number(event.currentTarget.value), unit, input.unit)))}
    />
  )
}

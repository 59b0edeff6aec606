import { UNKNOWN } from '../../src/machine/given.ts'
import type { JSX } from 'preact'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { fieldSymbol } from '../../src/machine/fields.ts'
import { displayUnit } from '../../src/units/choice.ts'
import { convert } from '../../src/units/units.ts'
import { describedBy, FieldNotes, Offers, OriginMark } from './FieldNotes.tsx'
import type { FieldProps } from './fieldProps.ts'
import { Range } from './Range.tsx'
import { fieldText, sliderScale, stepped } from './steps.ts'
import { Unknown } from './Unknown.tsx'

/** A number with its unit: text box, − and + for exact steps, and a slider for the feel of it. */
export function QuantityField({
  id,
  input,
  state,
  prefix,
}: FieldProps<QuantityInput>): JSX.Element {
  const value = state.given[id]
  if (value === UNKNOWN) return <Unknown id={id} input={input} state={state} prefix={prefix} />
  const number = typeof value === 'number' ? value : undefined
  const text =
    state.typed[id] ?? (number === undefined ? '' : fieldText(input, number, state.choice))
  const error = state.errors[id] ?? state.evaluation.problems[id]
  const field = `${prefix}-${id}`
  const { note, offers = [] } = state.asked[id] ?? {}
  const notes = { field, hint: input.hint, error, note, origin: state.origins[id] }
  const symbol = fieldSymbol(input, state.choice)
  const step = (direction: 1 | -1): void =>
    state.set(id, stepped(input, number ?? input.range[0], direction, state.choice))
  return (
    <div class="field row" data-field={id}>
      <label for={field}>
        {input.label}
        {symbol && <span class="unit"> ({symbol})</span>}
        <OriginMark {...notes} />
      </label>
      <div class="stepper">
        <StepButton label={`${input.label}: less`} sign="−" press={() => step(-1)} />
        <input
          id={field}
          name={id}
          type="text"
          inputMode={input.range[0] < 0 ? 'text' : 'decimal'}
          autocomplete="off"
          value={text}
          placeholder={input.optional ? input.empty : undefined}
          aria-invalid={error ? 'true' : undefined}
          aria-describedby={describedBy(notes)}
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
        <StepButton label={`${input.label}: more`} sign="+" press={() => step(1)} />
      </div>
      {number !== undefined && !input.more && !state.readings.includes(id) && (
        <Slider id={id} input={input} state={state} value={number} />
      )}
      <FieldNotes {...notes} />
      {offers.length > 0 && (
        <Offers offers={offers} take={(other) => (state.set(id, other), state.focus(field))} />
      )}
      {input.typical && <NotKnown id={id} input={input} state={state} field={field} />}
    </div>
  )
}

function StepButton({
  label,
  sign,
  press,
}: {
  label: string
  sign: string
  press(): void
}): JSX.Element {
  return (
    <button type="button" class="step needs-script" aria-label={label} onClick={press}>
      {sign}
    </button>
  )
}

function NotKnown({
  id,
  input,
  state,
  field,
}: Omit<FieldProps<QuantityInput>, 'prefix'> & { field: string }): JSX.Element {
  const press = (): void => {
    state.set(id, UNKNOWN)
    state.focus(`${field}-known`)
  }
  return (
    <button type="button" class="plain needs-script" onClick={press}>
      I don’t know this one<span class="hidden">: {input.label}</span>
    </button>
  )
}

function Slider({
  id,
  input,
  state,
  value,
}: Omit<FieldProps<QuantityInput>, 'prefix'> & { value: number }): JSX.Element {
  const unit = displayUnit(input.unit, state.choice)
  const { low, high } = sliderScale(input, state.choice)
  const from = state.from?.[id]
  return (
    <div class="bar needs-script">
      {typeof from === 'number' && (
        <Tick share={(convert(from, input.unit, unit) - low) / (high - low)} />
      )}
      <Range id={id} input={input} state={state} value={value} label={input.label} />
    </div>
  )
}

/** The mark across a slider: where it stood before. */
function Tick({ share }: { share: number }): JSX.Element {
  const x = `${(Math.min(1, Math.max(0, share)) * 100).toFixed(2)}%`
  return (
    <svg class="tick" aria-hidden="true">
      <line x1={x} x2={x} y1="0" y2="100%" />
    </svg>
  )
}

import { Component } from 'preact'
import type { JSX } from 'preact'
import type { BikeInput, ChoiceInput, Input, TextInput } from '../../src/machine/statement.ts'
import { describedBy, FieldNotes, OriginMark } from './FieldNotes.tsx'
import type { FieldProps } from './fieldProps.ts'
import { QuantityField } from './QuantityField.tsx'
import { TableField } from './TableField.tsx'
import type { CalculatorState } from './useCalculator.ts'

/** Few choices stand side by side; more become a list. */
const SEGMENTS = 4

function ChoiceField({ id, input, state, prefix }: FieldProps<ChoiceInput>): JSX.Element {
  const options = Object.entries(input.options)
  const field = `${prefix}-${id}`
  const notes = { field, hint: input.hint, origin: state.origins[id] }
  if (options.length > SEGMENTS)
    return (
      <ListField
        field={field}
        id={id}
        label={input.label}
        hint={input.hint}
        options={options}
        state={state}
      />
    )
  return (
    <fieldset class="field choice" data-field={id} aria-describedby={describedBy(notes)}>
      <legend>
        {input.label}
        <OriginMark {...notes} />
      </legend>
      <div class="segments">
        {options.map(([value, label]) => (
          <label key={value}>
            <input
              type="radio"
              name={id}
              value={value}
              checked={state.given[id] === value}
              onChange={() => state.set(id, value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
      <FieldNotes field={field} hint={input.hint} />
    </fieldset>
  )
}

interface ListFieldProps {
  field: string
  id: string
  label: string
  hint: string | undefined
  options: (readonly [string, string])[]
  state: CalculatorState
  /** what choosing does besides setting the value; absent: it sets the value */
  choose?(value: string): void
  error?: string | undefined
}

function ListField({
  field,
  id,
  label,
  hint,
  options,
  state,
  ...rest
}: ListFieldProps): JSX.Element {
  const { choose = (value) => state.set(id, value), error } = rest
  const notes = { field, hint, error, origin: state.origins[id] }
  return (
    <div class="field" data-field={id}>
      <label for={field}>
        {label}
        <OriginMark {...notes} />
      </label>
      <select
        id={field}
        name={id}
        aria-describedby={describedBy(notes)}
        onChange={(event) => choose(event.currentTarget.value)}
      >
        {options.map(([value, text]) => (
          <option key={value} value={value} selected={state.given[id] === value}>
            {text}
          </option>
        ))}
      </select>
      <FieldNotes field={field} hint={hint} error={error} />
    </div>
  )
}

function BikeField({ id, input, state, prefix }: FieldProps<BikeInput>): JSX.Element {
  const invented = Object.values(state.bikes).map((bike) => [bike.id, bike.name] as const)
  const own = state.ownBikes.map(({ code, name }) => [code, name] as const)
  const now = String(state.given[id])
  const sent =
    [...own, ...invented].some(([code]) => code === now) || !now.includes(';')
      ? []
      : [[now, 'A bike from a link'] as const]
  const options = [...own, ...sent, ...invented]
  const choose = (code: string): void => {
    const mine = state.ownBikes.find((bike) => bike.code === code)
    if (mine) mine.use()
    else state.set(id, code)
  }
  return (
    <ListField
      field={`${prefix}-${id}`}
      id={id}
      label={input.label}
      hint={input.hint}
      options={options}
      state={state}
      choose={choose}
      error={state.evaluation.problems[id]}
    />
  )
}

function TextField({ id, input, state, prefix }: FieldProps<TextInput>): JSX.Element {
  const field = `${prefix}-${id}`
  const error = state.errors[id] ?? state.evaluation.problems[id]
  const notes = { field, hint: input.hint, error, origin: state.origins[id] }
  return (
    <div class="field" data-field={id}>
      <label for={field}>
        {input.label}
        <OriginMark {...notes} />
      </label>
      <input
        id={field}
        name={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={state.typed[id] ?? String(state.given[id] ?? '')}
        aria-invalid={error ? 'true' : undefined}
        aria-describedby={describedBy(notes)}
        onInput={(event) => state.type(id, event.currentTarget.value)}
        onBlur={() => state.leave(id)}
      />
      <FieldNotes field={field} hint={input.hint} error={error} />
    </div>
  )
}

function AnyField({ id, input, state, prefix }: FieldProps<Input>): JSX.Element {
  const common = { id, state, prefix }
  if (input.kind === 'quantity') return <QuantityField {...common} input={input} />
  if (input.kind === 'choice') return <ChoiceField {...common} input={input} />
  if (input.kind === 'bike') return <BikeField {...common} input={input} />
  if (input.kind === 'table') return <TableField {...common} input={input} />
  return <TextField {...common} input={input} />
}

/** All that a field shows; while none of it changes, a moving slider elsewhere need not render it anew. */
const shown = ({ id, state }: FieldProps<Input>): unknown[] => [
  state.given[id],
  state.typed[id],
  state.errors[id],
  state.asked[id],
  state.origins[id],
  state.evaluation.problems[id],
  state.choice,
  state.bikes,
  state.ownBikes,
  state.from?.[id],
]

/** The field for one input, whatever its kind. */
export class Field extends Component<FieldProps<Input>> {
  override shouldComponentUpdate(next: FieldProps<Input>): boolean {
    const before = shown(this.props)
    return (
      this.props.input !== next.input || shown(next).some((value, index) => value !== before[index])
    )
  }

  override render(props: FieldProps<Input>): JSX.Element {
    return <AnyField {...props} />
  }
}

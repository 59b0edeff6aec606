import { Component } from 'preact'
import type { JSX } from 'preact'
import type { BikeInput, ChoiceInput, Input, QuantityInput, TableInput, TextInput } from '../../src/calculators/define.ts'
import { describedBy, FieldNotes } from './FieldNotes.tsx'
import type { FieldProps } from './field-props.ts'
import { QuantityField } from './QuantityField.tsx'
import { TableField } from './TableField.tsx'
import type { CalculatorState } from './useCalculator.ts'

/** Few choices stand side by side; more become a list. */
const SEGMENTS = 4

function ChoiceField({ id, input, state, prefix }: FieldProps<ChoiceInput>): JSX.Element {
  const options = Object.entries(input.options)
  const field = `${prefix}-${id}`
  if (options.length > SEGMENTS) return <ListField field={field} id={id} label={input.label} hint={input.hint} options={options} state={state} />
  return (
    <fieldset class="field choice" data-field={id} aria-describedby={describedBy(field, input.hint, undefined)}>
      <legend>{input.label}</legend>
      <div class="segments">
        {options.map(([value, label]) => (
          <label key={value}>
            <input type="radio" name={id} value={value} checked={state.given[id] === value} onChange={() => state.set(id, value)} />
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
}

function ListField({ field, id, label, hint, options, state }: ListFieldProps): JSX.Element {
  return (
    <div class="field" data-field={id}>
      <label for={field}>{label}</label>
      <select id={field} name={id} aria-describedby={describedBy(field, hint, undefined)} onChange={(event) => state.set(id, event.currentTarget.value)}>
        {options.map(([value, text]) => (
          <option key={value} value={value} selected={state.given[id] === value}>
            {text}
          </option>
        ))}
      </select>
      <FieldNotes field={field} hint={hint} />
    </div>
  )
}

function BikeField({ id, input, state, prefix }: FieldProps<BikeInput>): JSX.Element {
  const options = Object.values(state.bikes).map((bike) => [bike.id, bike.name] as const)
  return <ListField field={`${prefix}-${id}`} id={id} label={input.label} hint={input.hint} options={options} state={state} />
}

function TextField({ id, input, state, prefix }: FieldProps<TextInput>): JSX.Element {
  const field = `${prefix}-${id}`
  const error = state.errors[id] ?? state.evaluation.problems[id]
  return (
    <div class="field" data-field={id}>
      <label for={field}>{input.label}</label>
      <input
        id={field}
        name={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={state.typed[id] ?? String(state.given[id] ?? '')}
        aria-invalid={error ? 'true' : undefined}
        aria-describedby={describedBy(field, input.hint, error)}
        onInput={(event) => state.type(id, event.currentTarget.value)}
        onBlur={() => state.leave(id)}
      />
      <FieldNotes field={field} hint={input.hint} error={error} />
    </div>
  )
}

function AnyField({ id, input, state, prefix }: FieldProps<Input>): JSX.Element {
  const common = { id, state, prefix }
  if (input.kind === 'quantity') return <QuantityField {...common} input={input as QuantityInput} />
  if (input.kind === 'choice') return <ChoiceField {...common} input={input as ChoiceInput} />
  if (input.kind === 'bike') return <BikeField {...common} input={input as BikeInput} />
  if (input.kind === 'table') return <TableField {...common} input={input as TableInput} />
  return <TextField {...common} input={input as TextInput} />
}

/** All that a field shows; while none of it changes, a moving slider elsewhere need not render it anew. */
const shown = ({ id, state }: FieldProps<Input>): unknown[] => [
  state.given[id],
  state.typed[id],
  state.errors[id],
  state.evaluation.problems[id],
  state.choice,
  state.bikes,
]

/** The field for one input, whatever its kind. */
export class Field extends Component<FieldProps<Input>> {
  override shouldComponentUpdate(next: FieldProps<Input>): boolean {
    const before = shown(this.props)
    return this.props.input !== next.input || shown(next).some((value, index) => value !== before[index])
  }

  override render(props: FieldProps<Input>): JSX.Element {
    return <AnyField {...props} />
  }
}

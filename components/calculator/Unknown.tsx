import type { JSX } from 'preact'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { rangeEnds } from '../../src/machine/fields.ts'
import type { FieldProps } from './fieldProps.ts'

/** A field answered with "I don't know": the range that stands in for it, where that comes from, and how to measure it. */
export function Unknown({ id, input, state, prefix }: FieldProps<QuantityInput>): JSX.Element {
  const [low, high] = input.typical ?? input.range
  const field = `${prefix}-${id}`
  const bounds = rangeEnds([low, high], input, state.choice).join(' to ')
  return (
    <div class="field" data-field={id}>
      <span class="label" id={`${field}-unknown`}>
        {input.label}
      </span>
      <p class="unknown" id={`${field}-range`} role="group" aria-labelledby={`${field}-unknown`}>
        Not known: worked with {bounds}
        {input.typicalFrom ? ` (${input.typicalFrom})` : ''}. Results are ranges.
        <input type="hidden" name={id} value="?" />
      </p>
      {state.evaluation.problems[id] && <p class="error">{state.evaluation.problems[id]}</p>}
      {input.procedure && (
        <a class="measure" href={`${state.base}procedures/${input.procedure}/`}>
          How to measure it<span class="hidden">: {input.label}</span>
        </a>
      )}
      <button
        type="button"
        class="plain"
        id={`${field}-known`}
        aria-describedby={`${field}-range`}
        onClick={() => {
          state.know(id)
          state.focus(field)
        }}
      >
        Enter a value<span class="hidden">: {input.label}</span>
      </button>
    </div>
  )
}

import type { JSX } from 'preact'
import type { QuantityInput } from '../../src/calculators/define.ts'
import { rangeEnds } from '../../src/calculators/fields.ts'
import type { FieldProps } from './field-props.ts'

/** A field answered with "I don't know": the range that stands in for it, where that comes from, and how to measure it. */
export function Unknown({ id, input, state, prefix }: FieldProps<QuantityInput>): JSX.Element {
  const [low, high] = input.typical ?? input.range
  const bounds = rangeEnds([low, high], input, state.choice).join(' to ')
  return (
    <div class="field" data-field={id}>
      <span class="label" id={`${prefix}-${id}-unknown`}>
        {input.label}
      </span>
      <p class="unknown" role="group" aria-labelledby={`${prefix}-${id}-unknown`}>
        Not known: worked with {bounds}
        {input.typicalFrom ? ` (${input.typicalFrom})` : ''}. Results are ranges.
        <input type="hidden" name={id} value="?" />
      </p>
      {input.procedure && (
        <a class="measure" href={`${state.base}procedures/${input.procedure}/`}>
          How to measure it
        </a>
      )}
      <button type="button" class="plain" onClick={() => state.set(id, input.default ?? (low + high) / 2)}>
        Enter a value
      </button>
    </div>
  )
}

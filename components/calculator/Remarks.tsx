import type { JSX } from 'preact'
import type { Remark } from '../../src/machine/remark.ts'
import type { CalculatorState } from './useCalculator.ts'

const HEADS: Record<Remark['kind'], string> = {
  reading: '',
  next: 'Next: ',
  limit: 'Limit: ',
  caution: 'Caution: ',
}

/** What the numbers mean, what to do next, and where they stop being true. */
export function Remarks({
  state,
  remarks,
}: {
  state: CalculatorState
  remarks: readonly Remark[]
}): JSX.Element | null {
  if (remarks.length === 0) return null
  return (
    <div class="remarks">
      {remarks.map((remark) => (
        <p key={remark.text} class={`remark ${remark.kind}`}>
          {HEADS[remark.kind] && <b>{HEADS[remark.kind]}</b>}
          {remark.text}
          {remark.caution && (
            <>
              {' '}
              <a href={`${state.base}cautions/${remark.caution}/`}>Read the caution</a>
            </>
          )}
        </p>
      ))}
    </div>
  )
}

import type { JSX } from 'preact'
import type { Remark } from '../../src/calculators/define.ts'
import type { CalculatorState } from './useCalculator.ts'
import { useRemarks } from './useRemarks.ts'

const HEADS: Record<Remark['kind'], string> = { reading: '', next: 'Next: ', limit: 'Limit: ', caution: 'Caution: ' }

/** What the numbers mean, what to do next, and where they stop being true. */
export function Remarks({ state, told }: { state: CalculatorState; told: readonly Remark[] }): JSX.Element | null {
  const remarks = useRemarks(state, told)
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

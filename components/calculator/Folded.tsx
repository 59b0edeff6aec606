import type { JSX } from 'preact'
import { useMemo, useState } from 'preact/hooks'
import type { Evaluation } from '../../src/calculators/evaluate.ts'
import { PAUSE } from '../figures/kit/useFollowed.ts'
import { useSettled } from '../figures/kit/useSettled.ts'
import type { CalculatorState } from './useCalculator.ts'

interface FoldedProps {
  summary: string
  class?: string
  state: CalculatorState
  draw(evaluation: Evaluation): JSX.Element | JSX.Element[] | null
}

/** Results that are folded away: unfolded they move with the rest, folded they follow once the values stand still. */
export function Folded({ summary, class: name, state: { evaluation }, draw }: FoldedProps): JSX.Element {
  const [open, setOpen] = useState(false)
  const settled = useSettled(evaluation, { start: evaluation, pause: PAUSE, firstAtOnce: true })
  const shown = open ? evaluation : settled
  const drawn = useMemo(() => draw(shown), [shown])
  return (
    <details class={name} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {drawn}
    </details>
  )
}

import type { ComponentChildren, JSX } from 'preact'
import { useMemo, useState } from 'preact/hooks'
import { PAUSE } from './useFollowed.ts'
import { useSettled } from './useSettled.ts'

interface FoldedProps<T> {
  summary: string
  class?: string
  value: T
  draw(value: T): ComponentChildren
}

/** Numbers that are folded away: unfolded they move with the rest, folded they follow once the value stands still, since dozens of cells that nobody sees would cost as much as a chart at every move of a slider. */
export function Folded<T>({ summary, class: name, value, draw }: FoldedProps<T>): JSX.Element {
  const [open, setOpen] = useState(false)
  const settled = useSettled(value, { start: value, pause: PAUSE, firstAtOnce: true })
  const shown = open ? value : settled
  // eslint-disable-next-line react-hooks/exhaustive-deps -- `draw` is made anew for each drawing; what it draws is not
  const drawn = useMemo(() => draw(shown), [shown])
  return (
    <details class={name} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {drawn}
    </details>
  )
}

import { round } from './state.ts'
import type { Spot } from './state.ts'

/** The reference mark: a short bar across a part, centred on `at`, at right angles to `along` (the part's direction, a unit vector). */
export function Mark({
  at: [x, y],
  along: [ux, uy] = [0, 1],
  width,
  state = 'now',
}: {
  at: Spot
  along?: Spot
  width: number
  state?: 'now' | 'before'
}) {
  const half = width / 2
  return (
    <line
      class={state === 'before' ? 'mark before' : 'mark'}
      x1={round(x - uy * half)}
      y1={round(y + ux * half)}
      x2={round(x + uy * half)}
      y2={round(y - ux * half)}
    />
  )
}

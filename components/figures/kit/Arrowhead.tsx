import { spots } from './state.ts'
import type { Spot } from './state.ts'

/** A slim arrowhead whose tip is at `at` and which points along `along` (a unit vector). */
export function Arrowhead({ at: [x, y], along: [ux, uy], size = 6 }: { at: Spot; along: Spot; size?: number }) {
  const half = size * 0.3
  const base: Spot = [x - ux * size, y - uy * size]
  return (
    <polygon
      class="head"
      points={spots([
        [x, y],
        [base[0] - uy * half, base[1] + ux * half],
        [base[0] + uy * half, base[1] - ux * half],
      ])}
    />
  )
}

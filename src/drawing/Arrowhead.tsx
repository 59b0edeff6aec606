import { round } from './state.ts'
import type { Spot } from './state.ts'

/** The outline of a slim arrowhead whose tip is at `at` and which points along `along` (a unit vector). */
export function arrowhead([x, y]: Spot, [ux, uy]: Spot, size = 6): string {
  const half = size * 0.3
  const [bx, by] = [x - ux * size, y - uy * size]
  return `M${round(x)} ${round(y)}L${round(bx - uy * half)} ${round(by + ux * half)}L${round(bx + uy * half)} ${round(by - ux * half)}Z`
}

/** A slim arrowhead on its own. */
export function Arrowhead({ at, along, size }: { at: Spot; along: Spot; size?: number }) {
  return <path class="head" d={arrowhead(at, along, size)} />
}

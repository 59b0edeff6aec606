import { round } from './state.ts'
import type { Spot } from './state.ts'

/** The centre of gravity, in the drawing office's quartered circle; hollow for the state before. */
export function CentreOfGravity({
  at: [x, y],
  r = 5,
  state = 'now',
}: {
  at: Spot
  r?: number
  state?: 'now' | 'before'
}) {
  if (state === 'before') return <circle class="before" cx={round(x)} cy={round(y)} r={r} />
  const quarter = (dx: number, dy: number): string =>
    `M${round(x)} ${round(y)} L${round(x + dx * r)} ${round(y)} A${r} ${r} 0 0 ${dx * dy > 0 ? 1 : 0} ${round(x)} ${round(y + dy * r)} Z`
  return (
    <g class="cg">
      <circle cx={round(x)} cy={round(y)} r={r} />
      <path d={`${quarter(1, -1)} ${quarter(-1, 1)}`} />
    </g>
  )
}

import { Arrowhead } from './Arrowhead.tsx'
import { round } from './state.ts'
import type { Spot } from './state.ts'

interface LoadArrowProps {
  /** where the arrow's tip pushes */
  tip: Spot
  /** load [N] */
  load: number
  /** viewBox units per newton */
  scale: number
  text?: string
  state?: 'now' | 'before'
  /** the way the arrow points */
  points?: 'up' | 'down' | 'right' | 'left'
}

/** An arrow as long as its load, with the load at its tail. A load below 0 would be a pull: it is drawn as none. */
export function LoadArrow({
  tip: [x, y],
  load,
  scale,
  text,
  state = 'now',
  points = 'up',
}: LoadArrowProps) {
  const length = Math.max(0, load) * scale
  const [ux, uy]: Spot =
    points === 'up' ? [0, -1] : points === 'down' ? [0, 1] : points === 'right' ? [1, 0] : [-1, 0]
  const tail: Spot = [x - ux * length, y - uy * length]
  const head = Math.min(7, length)
  return (
    <g class={state === 'now' ? 'load' : 'load before'}>
      {length > 0.5 && (
        <>
          <line
            class="shaft"
            x1={round(tail[0])}
            y1={round(tail[1])}
            x2={round(x - ux * head * 0.8)}
            y2={round(y - uy * head * 0.8)}
          />
          <Arrowhead at={[x, y]} along={[ux, uy]} size={head} />
        </>
      )}
      {text !== undefined && (
        <text
          class="middle"
          x={round(tail[0])}
          y={round(tail[1])}
          dy={points === 'down' ? '-0.45em' : '1em'}
        >
          {text}
        </text>
      )}
    </g>
  )
}

import { arrowhead } from './Arrowhead.tsx'
import { textWidth } from './lettering.ts'
import { direction, round } from './state.ts'
import type { Spot, State } from './state.ts'

type Place = 'middle' | 'under' | 'within' | 'before' | 'after'

interface DimensionProps {
  /** the two places measured between, in viewBox units */
  from: Spot
  to: Spot
  /** the value with its unit */
  text: string
  state?: State
  /** how far the dimension line stands off the part; positive is to the right of the way from → to (below, when that way runs to the right) */
  offset?: number
  /** where the value stands: over the middle, under it, in a gap of a level line (past the end of one that is too short), or past either end */
  place?: Place
  /** an upright line's value turned along it, read from the right */
  turned?: boolean
}

/** Shorter than this, two arrowheads would meet: they then point inwards from outside. */
const ROOM_FOR_HEADS = 15

function Value({
  text,
  at,
  place,
  upright,
}: {
  text: string
  at: Spot
  place: Place
  upright: boolean
}) {
  const [x, y] = at
  if (place === 'within')
    return (
      <text class="middle" x={round(x)} y={round(y)} dy="0.35em">
        {text}
      </text>
    )
  if (upright && (place === 'middle' || place === 'under'))
    return (
      <text class="start" x={round(x + 5)} y={round(y)} dy="0.35em">
        {text}
      </text>
    )
  if (place === 'middle' || place === 'under')
    return (
      <text class="middle" x={round(x)} y={round(y)} dy={place === 'under' ? '1.1em' : '-0.35em'}>
        {text}
      </text>
    )
  if (upright)
    return (
      <text class="middle" x={round(x)} y={round(y)} dy={place === 'before' ? '-0.5em' : '1.1em'}>
        {text}
      </text>
    )
  return (
    <text class={place === 'before' ? 'end' : 'start'} x={round(x)} y={round(y)} dy="0.35em">
      {text}
    </text>
  )
}

const segment = ([x1, y1]: Spot, [x2, y2]: Spot): string =>
  `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}`

/** A dimension line with extension lines, arrowheads and its value; `before` is dashed with hollow heads. */
export function Dimension({
  from,
  to,
  text,
  state = 'plain',
  offset = 0,
  place: wanted = 'middle',
  turned = false,
}: DimensionProps) {
  const [ux, uy] = direction(from, to)
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const half = textWidth(text) / 2 + 4
  const place = wanted === 'within' && length < 2 * half ? 'after' : wanted
  const shift = ([x, y]: Spot, by: number): Spot => [x - uy * by, y + ux * by]
  const a = shift(from, offset)
  const b = shift(to, offset)
  const past = Math.sign(offset) * 3
  const tight = length < ROOM_FOR_HEADS
  const reach = tight ? 9 : 0
  const upright = Math.abs(uy) > Math.abs(ux)
  const middle: Spot = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]
  const gap = reach + 4
  // "before" and "after" run with the drawing, left to right or top to bottom, whichever way the line was given
  const along = upright ? uy : ux
  const first = along >= 0 ? a : b
  const last = along >= 0 ? b : a
  const step: Spot = upright ? [0, gap] : [gap, 0]
  const at: Spot =
    place === 'middle' || place === 'under' || place === 'within'
      ? middle
      : place === 'before'
        ? [first[0] - step[0], first[1] - step[1]]
        : [last[0] + step[0], last[1] + step[1]]
  const extensions = offset === 0 ? '' : segment(from, shift(a, past)) + segment(to, shift(b, past))
  const start: Spot = [a[0] - ux * reach, a[1] - uy * reach]
  const stop: Spot = [b[0] + ux * reach, b[1] + uy * reach]
  const measured =
    place === 'within'
      ? segment(start, [middle[0] - ux * half, middle[1] - uy * half]) +
        segment([middle[0] + ux * half, middle[1] + uy * half], stop)
      : segment(start, stop)
  const [atA, atB]: [Spot, Spot] = tight
    ? [
        [ux, uy],
        [-ux, -uy],
      ]
    : [
        [-ux, -uy],
        [ux, uy],
      ]
  // lines and heads in one part each: there are many dimensions, and all of them move with a slider
  return (
    <g class={state === 'plain' ? 'dim' : `dim ${state}`}>
      {length > 0.5 && <path class="measure" d={extensions + measured} />}
      {length > 0.5 && <path class="head" d={arrowhead(a, atA) + arrowhead(b, atB)} />}
      {text === '' ? null : turned ? (
        <text
          class="middle"
          transform={`translate(${round(middle[0])} ${round(middle[1])}) rotate(-90)`}
          dy="-0.35em"
        >
          {text}
        </text>
      ) : (
        <Value text={text} at={at} place={place} upright={upright} />
      )}
    </g>
  )
}

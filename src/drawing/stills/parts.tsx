import type { ComponentChildren } from 'preact'
import { Arrowhead } from '../Arrowhead.tsx'
import { direction, round } from '../state.ts'
import type { Spot } from '../state.ts'

/** A still picture's frame: 360 units wide, so that its lettering stays legible on a phone. */
export function Frame({
  height,
  label,
  children,
}: {
  height: number
  label: string
  children: ComponentChildren
}) {
  return (
    <div class="fig still-fig">
      <svg viewBox={`0 0 360 ${height}`} role="img" aria-label={label}>
        {children}
      </svg>
    </div>
  )
}

type Anchor = 'start' | 'middle' | 'end'

/** Words beside a part, in one or more lines. */
export function Words({
  at: [x, y],
  lines,
  anchor = 'start',
  tone = '',
}: {
  at: Spot
  lines: readonly string[]
  anchor?: Anchor
  tone?: string
}) {
  return (
    <>
      {lines.map((line, index) => (
        <text
          key={line}
          class={`halo ${anchor} ${tone}`}
          x={round(x)}
          y={round(y)}
          dy={`${index * 1.2}em`}
        >
          {line}
        </text>
      ))}
    </>
  )
}

/** Words with a thin line to the part that they name. The line starts at `from`, beside the words. */
export function Call({
  at,
  from,
  to,
  lines,
  anchor = 'start',
}: {
  at: Spot
  from: Spot
  to: Spot
  lines: readonly string[]
  anchor?: Anchor
}) {
  return (
    <g>
      <line
        class="leader"
        x1={round(from[0])}
        y1={round(from[1])}
        x2={round(to[0])}
        y2={round(to[1])}
      />
      <circle class="leader-end" cx={round(to[0])} cy={round(to[1])} r="2" />
      <Words at={at} lines={lines} anchor={anchor} />
    </g>
  )
}

/** A movement: a line with an arrowhead at its end. */
export function Move({ from, to, tone = 'now' }: { from: Spot; to: Spot; tone?: string }) {
  return (
    <g class={`move ${tone}`}>
      <line
        class="shaft"
        x1={round(from[0])}
        y1={round(from[1])}
        x2={round(to[0])}
        y2={round(to[1])}
      />
      <Arrowhead at={to} along={direction(from, to)} size={8} />
    </g>
  )
}

/** A number in a ring, for a place that the legend names. */
export function Ring({ at: [x, y], number }: { at: Spot; number: number }) {
  return (
    <g class="ring">
      <circle cx={round(x)} cy={round(y)} r="9.5" />
      <text class="middle" x={round(x)} y={round(y)} dy="0.35em">
        {number}
      </text>
    </g>
  )
}

/** A spirit level, its bubble in the middle. */
export function Level({ at: [x, y], width }: { at: Spot; width: number }) {
  return (
    <g>
      <rect
        class="metal"
        x={round(x - width / 2)}
        y={round(y - 9)}
        width={round(width)}
        height="9"
      />
      <rect
        class="now fill thin"
        x={round(x - 10)}
        y={round(y - 7.5)}
        width="20"
        height="5"
        rx="2.5"
      />
      <ellipse class="paper bubble" cx={round(x)} cy={round(y - 5)} rx="4" ry="2" />
      <path
        class="detail"
        d={`M${round(x - 5)} ${round(y - 7.5)}v5M${round(x + 5)} ${round(y - 7.5)}v5`}
      />
    </g>
  )
}

/** Hatching under a floor line. */
export function Floor({ from, to, y }: { from: number; to: number; y: number }) {
  const strokes = Array.from(
    { length: Math.floor((to - from) / 12) },
    (_, index) => `M${round(from + 8 + index * 12)} ${y}l-6 6`,
  )
  return (
    <g>
      <line class="ground" x1={from} x2={to} y1={y} y2={y} />
      <path class="detail" d={strokes.join('')} />
    </g>
  )
}

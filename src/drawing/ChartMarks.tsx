import { area, line } from 'd3-shape'
import type { JSX } from 'preact'
import { useMemo } from 'preact/hooks'
import { LETTER } from './lettering.ts'
import type { Layout } from './chartScale.ts'
import type { Band, Curve, Frame, Point, Rule, Span, XY } from './chartTypes.ts'

const round = (value: number): number => Math.round(value * 100) / 100

/** Ticks, grid and the names of both axes. */
export function Axes({ layout }: { layout: Layout }): JSX.Element {
  const { left, right, top, bottom } = layout.frame
  return (
    <g class="chart-axes" aria-hidden="true">
      {layout.yTicks.map(({ at, text }) => (
        <g key={text}>
          <line class="chart-grid" x1={left} x2={right} y1={round(at)} y2={round(at)} />
          <text class="chart-tick" x={left - 6} y={round(at) + 4} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
      {layout.xTicks.map(({ at, text }) => (
        <g key={text}>
          <line class="chart-grid" x1={round(at)} x2={round(at)} y1={bottom} y2={bottom + 4} />
          <text class="chart-tick" x={round(at)} y={bottom + 19} text-anchor="middle">
            {text}
          </text>
        </g>
      ))}
      <path class="chart-axis" d={`M${left} ${top}V${bottom}H${right}`} />
      <text class="chart-name" x={2} y={14}>
        {layout.yName}
      </text>
      <text class="chart-name" x={right} y={bottom + 37} text-anchor="end">
        {layout.xName}
      </text>
    </g>
  )
}

const pathOf = (frame: Frame, points: readonly XY[]): string =>
  line<XY>(
    ([x]) => round(frame.x(x)),
    ([, y]) => round(frame.y(y)),
  )([...points]) ?? ''

/** A curve; `scale` tells whether the axes are still those of the last drawing, so that a curve that stays is not written anew. */
export function CurveLine({
  frame,
  scale,
  curve,
}: {
  frame: Frame
  scale: string
  curve: Curve
}): JSX.Element {
  // eslint-disable-next-line react-hooks/exhaustive-deps -- the frame is made anew for each drawing; its key is not
  const d = useMemo(() => pathOf(frame, curve.points), [scale, curve.points])
  return <path class={`chart-curve ${curve.as}`} d={d} />
}

/** The two edges may have different abscissas: the area is closed from one to the other. */
export function BandArea({ frame, band }: { frame: Frame; band: Band }): JSX.Element {
  const shared =
    band.low.length === band.high.length &&
    band.low.every(([x], index) => x === band.high[index]![0])
  const smooth = area<number>(
    (i) => round(frame.x(band.low[i]![0])),
    (i) => round(frame.y(band.low[i]![1])),
    (i) => round(frame.y(band.high[i]![1])),
  )
  const d = shared
    ? smooth(band.low.map((_, index) => index))
    : `${pathOf(frame, [...band.low, ...[...band.high].reverse()])}Z`
  return <path class={`chart-band ${band.as}`} d={d ?? ''} />
}

export function SpanArea({ frame, span }: { frame: Frame; span: Span }): JSX.Element {
  const { left, right, top, bottom } = frame
  const [a, b] = [span.from, span.to].map((si) =>
    span.axis === 'x' ? frame.x(si) : frame.y(si),
  ) as [number, number]
  const [low, high] = [Math.min(a, b), Math.max(a, b)]
  const box =
    span.axis === 'x'
      ? { x: low, width: high - low, y: top, height: bottom - top }
      : { x: left, width: right - left, y: low, height: high - low }
  const labelled =
    span.axis === 'x'
      ? { x: (low + high) / 2, y: top + LETTER - 1, 'text-anchor': 'middle' as const }
      : { x: right - 4, y: low + LETTER, 'text-anchor': 'end' as const }
  return (
    <g>
      <rect
        class={`chart-span ${span.as}`}
        x={round(box.x)}
        y={round(box.y)}
        width={round(Math.max(1, box.width))}
        height={round(Math.max(1, box.height))}
      />
      {span.label && (
        <text class={`chart-label ${span.as}`} {...labelled}>
          {span.label}
        </text>
      )}
    </g>
  )
}

/** Its label is placed with the others, see `placeLabels`. */
export function RuleLine({ frame, rule }: { frame: Frame; rule: Rule }): JSX.Element {
  const { left, right, top, bottom } = frame
  const at = round(rule.axis === 'x' ? frame.x(rule.at) : frame.y(rule.at))
  const ends =
    rule.axis === 'x'
      ? { x1: at, x2: at, y1: top, y2: bottom }
      : { x1: left, x2: right, y1: at, y2: at }
  return <line class={`chart-rule ${rule.as}`} {...ends} />
}

function ErrorBars({ frame, point }: { frame: Frame; point: Point }): JSX.Element | null {
  const { xRange, yRange } = point
  const [x, y] = [round(frame.x(point.x)), round(frame.y(point.y))]
  const cap = 4
  const across = xRange?.map((si) => round(frame.x(si)))
  const upright = yRange?.map((si) => round(frame.y(si)))
  if (!across && !upright) return null
  const d = [
    across &&
      `M${across[0]} ${y}H${across[1]}M${across[0]} ${y - cap}v${2 * cap}M${across[1]} ${y - cap}v${2 * cap}`,
    upright &&
      `M${x} ${upright[0]}V${upright[1]}M${x - cap} ${upright[0]}h${2 * cap}M${x - cap} ${upright[1]}h${2 * cap}`,
  ]
  return <path class={`chart-error ${point.as}`} d={d.filter(Boolean).join('')} />
}

/** A marker that keyboard and pointer can reach; its numbers then stand in the line under the plot, where they cover nothing. */
export function PointMark({
  frame,
  point,
  readout,
}: {
  frame: Frame
  point: Point
  readout: { x: number; y: number }
}): JSX.Element {
  const [x, y] = [round(frame.x(point.x)), round(frame.y(point.y))]
  return (
    <g class={`chart-point ${point.as}`} tabindex={0} role="img" aria-label={point.says}>
      <ErrorBars frame={frame} point={point} />
      <circle class="chart-reach" cx={x} cy={y} r={14} />
      <circle class="chart-dot" cx={x} cy={y} r={5} />
      <text class="chart-readout" {...readout} aria-hidden="true">
        {point.says}
      </text>
    </g>
  )
}

import type { JSX } from 'preact'
import { useMemo } from 'preact/hooks'
import { placeLabels } from './chartLabels.ts'
import { layOut, scaleKey, WIDTH } from './chartScale.ts'
import type { ChartProps } from './chartTypes.ts'
import { Axes, BandArea, CurveLine, PointMark, RuleLine, SpanArea } from './ChartMarks.tsx'
import { ChartTable } from './ChartTable.tsx'
import { followed } from './followed.tsx'

export type {
  Axis,
  Band,
  ChartProps,
  ChartTableData,
  Curve,
  Frame,
  Look,
  Point,
  Rule,
  Span,
  XY,
} from './chartTypes.ts'

function DrawnChart(props: ChartProps): JSX.Element {
  const {
    prefix,
    takeaway,
    caption,
    curves = [],
    bands = [],
    spans = [],
    rules = [],
    points = [],
    table,
    children,
  } = props
  const layout = layOut(props)
  const { frame, height } = layout
  const scale = scaleKey(layout)
  // eslint-disable-next-line react-hooks/exhaustive-deps -- the key holds all that axes are drawn from
  const axes = useMemo(() => <Axes layout={layout} />, [scale])
  const clip = `${prefix}-plot`
  const readout = { x: 2, y: height - 6 }
  return (
    <>
      <figure class="fig fig-chart">
        <svg
          class="chart"
          viewBox={`0 0 ${WIDTH} ${height}`}
          role={points.length > 0 ? 'group' : 'img'}
          aria-label={takeaway}
        >
          <clipPath id={clip}>
            <rect
              x={frame.left}
              y={frame.top - 4}
              width={frame.right - frame.left + 4}
              height={frame.bottom - frame.top + 6}
            />
          </clipPath>
          <g clip-path={`url(#${clip})`}>
            {spans.map((span, index) => (
              <SpanArea key={index} frame={frame} span={span} />
            ))}
            {bands.map((band, index) => (
              <BandArea key={index} frame={frame} band={band} />
            ))}
          </g>
          {axes}
          {rules.map((rule, index) => (
            <RuleLine key={index} frame={frame} rule={rule} />
          ))}
          <g clip-path={`url(#${clip})`}>
            {curves.map((curve, index) => (
              <CurveLine key={index} frame={frame} scale={scale} curve={curve} />
            ))}
          </g>
          {children?.(frame)}
          <g aria-hidden="true">
            {placeLabels(props, frame).map(({ text, as, x, y, anchor }, index) => (
              <text
                key={index}
                class={`chart-label ${as}`}
                x={Math.round(x)}
                y={Math.round(y)}
                text-anchor={anchor}
              >
                {text}
              </text>
            ))}
          </g>
          {points.length > 0 && (
            <text class="chart-hint" {...readout} aria-hidden="true">
              Tap or tab to a point for its numbers.
            </text>
          )}
          {points.map((point, index) => (
            <PointMark key={index} frame={frame} point={point} readout={readout} />
          ))}
        </svg>
        <figcaption>{caption}</figcaption>
      </figure>
      <ChartTable table={table} />
    </>
  )
}

/**
 * A chart: axes in the reader's units, labels on the curves themselves, points that can be focused, a caption that states
 * the point, and the same numbers in a table. It draws what it is given, in SI; it computes nothing.
 */
export const Chart = followed(DrawnChart)

import { ticks } from 'd3-array'
import type { JSX } from 'preact'
import { readingUnit, showValue } from '../../src/record/reading.ts'
import type { Series } from '../../src/record/series.ts'
import type { Say } from '../../src/units/say.ts'
import { dayText } from './data.ts'

const WIDTH = 360
const HEIGHT = 150
const [LEFT, RIGHT, TOP, BOTTOM] = [48, 344, 14, 112]

/** A reading over time: a dot for the middle, a bar for its band. In the order in which it was taken, since months apart would leave the plot empty. */
export function ReadingChart({ series, say }: { series: Series; say: Say }): JSX.Element {
  const { points, unit, label } = series
  const low = Math.min(...points.map((point) => point.low))
  const high = Math.max(...points.map((point) => point.high))
  const room = Math.max((high - low) * 0.15, Math.abs(high) * 0.01, 0.5)
  const y = (value: number): number =>
    BOTTOM - ((value - low + room) / (high - low + 2 * room)) * (BOTTOM - TOP)
  const x = (index: number): number =>
    LEFT + 26 + (index * (RIGHT - LEFT - 52)) / Math.max(1, points.length - 1)
  const shown = readingUnit(unit, say.choice)
  const write = (value: number): string => showValue(value, unit, shown)
  const [first, last] = [points[0]!, points.at(-1)!]
  const title = `${label}: ${write(first.mean)} on ${dayText(first.at)}, ${write(last.mean)} on ${dayText(last.at)}`
  // no more days than there is room for
  const every = Math.ceil(points.length / 4)
  return (
    <figure class="fig fig-chart reading-chart" data-series={series.id}>
      <svg class="chart" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={title}>
        {ticks(low - room, high + room, 3).map((tick) => (
          <g key={tick}>
            <line class="grid" x1={LEFT} x2={RIGHT} y1={y(tick)} y2={y(tick)} />
            <text class="axis" x={LEFT - 6} y={y(tick) + 4} text-anchor="end">
              {write(tick).replace(/\s.*$/, '')}
            </text>
          </g>
        ))}
        <path
          class="thread"
          fill="none"
          d={points
            .map((point, index) => `${index === 0 ? 'M' : 'L'}${x(index)} ${y(point.mean)}`)
            .join('')}
        />
        {points.map((point, index) => (
          <g
            key={`${point.job} ${point.part}`}
            class={index === points.length - 1 ? 'now' : 'before'}
          >
            {point.high > point.low && (
              <path
                class="band-bar"
                d={`M${x(index)} ${y(point.low)}V${y(point.high)}M${x(index) - 5} ${y(point.low)}h10M${x(index) - 5} ${y(point.high)}h10`}
              />
            )}
            <circle cx={x(index)} cy={y(point.mean)} r="4.5" />
            {index % every === 0 && (
              <text class="axis" x={x(index)} y={HEIGHT - 18} text-anchor="middle">
                {dayText(point.at).replace(/ \d{4}$/, '')}
              </text>
            )}
          </g>
        ))}
      </svg>
      <figcaption>
        {label}, {say.choice.length === 'in' && unit === 'mm' ? 'in' : unit}.{' '}
        {title.slice(label.length + 2)}.
      </figcaption>
    </figure>
  )
}

import type { ComponentChildren } from 'preact'
import type { Say } from '../units/say.ts'
import type { Unit } from '../units/units.ts'

/** How a mark is drawn: `before` dashed and hollow, `now` solid and filled, `plain` thin ink for what belongs to neither, `soft` dotted for help. */
export type Look = 'before' | 'now' | 'plain' | 'soft'

/** A point in SI. */
export type XY = readonly [x: number, y: number]

/** One axis. `domain` [SI] is taken as it is; without one the axis holds the data and ends on round numbers. */
export interface Axis {
  label: string
  unit: Unit
  domain?: readonly [number, number]
  /** values the axis must reach besides the data [SI] */
  include?: readonly number[]
  scale?: 'linear' | 'log'
  /** how many ticks to aim for */
  ticks?: number
}

export interface Curve {
  points: readonly XY[]
  as: Look
  /** stands beside the curve */
  label?: string
}

/** The area between two curves: an interval. */
export interface Band {
  low: readonly XY[]
  high: readonly XY[]
  as: Look
  label?: string
}

/** A stretch of one axis, shaded across the plot. */
export interface Span {
  axis: 'x' | 'y'
  from: number
  to: number
  as: Look
  label?: string
}

/** A line across the plot at one value of an axis. */
export interface Rule {
  axis: 'x' | 'y'
  at: number
  as: Look
  label?: string
}

/** A marker that can be focused. `says` is read aloud and shown in the line below the plot; it holds the numbers with their units. */
export interface Point {
  x: number
  y: number
  as: Look
  says: string
  /** stands beside the marker */
  label?: string
  /** error bars, as ends in SI */
  xRange?: readonly [number, number]
  yRange?: readonly [number, number]
}

/** What stands in the table beside the chart: text as the reader should see it. The first column heads its row. */
export interface ChartTableData {
  caption: string
  columns: readonly string[]
  rows: readonly (readonly string[])[]
}

/** From SI to the place in the drawing. */
export interface Frame {
  x(si: number): number
  y(si: number): number
  left: number
  right: number
  top: number
  bottom: number
}

export interface ChartProps {
  /** starts every id inside; two charts of one figure need two */
  prefix: string
  say: Say
  /** the takeaway with its numbers, for readers who don't see the picture */
  takeaway: string
  /** the sentence under the picture that states the point */
  caption: ComponentChildren
  x: Axis
  y: Axis
  curves?: readonly Curve[]
  bands?: readonly Band[]
  spans?: readonly Span[]
  rules?: readonly Rule[]
  points?: readonly Point[]
  table: ChartTableData
  /** units of the drawing, 360 wide; 250 unless given */
  height?: number
  /** anything more, drawn over the plot from the frame */
  children?: (frame: Frame) => ComponentChildren
}

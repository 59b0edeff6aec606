import { scaleLinear, scaleLog } from 'd3-scale'
import type { Say } from '../../../src/calculators/say.ts'
import { formatNumber } from '../../../src/calculators/say.ts'
import type { Axis, ChartProps, Frame, XY } from './chart-types.ts'

export const WIDTH = 360
/** Lettering in units of the drawing at phone width, and the mean width of a character of it. */
export const LETTER = 14
export const CHARACTER = 7.4

/** Width that a text takes, estimated: the drawing is made without measuring. */
export const textWidth = (text: string): number => text.length * CHARACTER

export interface Tick {
  at: number
  text: string
}
interface Scaled {
  place(si: number): number
  ticks: readonly Tick[]
}

/** Everything placed: the frame, the ticks, and the axes' names with their units. */
export interface Layout {
  frame: Frame
  xTicks: readonly Tick[]
  yTicks: readonly Tick[]
  xName: string
  yName: string
  height: number
}

function decimalsOf(ticks: readonly number[]): number {
  const step = ticks.length > 1 ? Math.abs(ticks[1]! - ticks[0]!) : Math.abs(ticks[0] ?? 1)
  return step === 0 ? 0 : Math.min(6, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)))
}

function extent(values: readonly number[]): [number, number] {
  const finite = values.filter((value) => Number.isFinite(value))
  if (finite.length === 0) return [0, 1]
  const low = Math.min(...finite)
  const high = Math.max(...finite)
  return low === high ? [low - Math.max(Math.abs(low) * 0.1, 1e-9), high + Math.max(Math.abs(high) * 0.1, 1e-9)] : [low, high]
}

function linear(axis: Axis, values: readonly number[], say: Say, range: [number, number]): Scaled {
  const inUnit = (si: number): number => say.value(si, axis.unit)
  const scale = scaleLinear((axis.domain ?? extent([...values, ...(axis.include ?? [])])).map(inUnit), range)
  if (!axis.domain) scale.nice(axis.ticks ?? 5)
  const ticks = scale.ticks(axis.ticks ?? 5)
  const digits = decimalsOf(ticks)
  return { place: (si) => scale(inUnit(si)), ticks: ticks.map((tick) => ({ at: scale(tick), text: formatNumber(tick, digits) })) }
}

function logarithmic(axis: Axis, values: readonly number[], say: Say, range: [number, number]): Scaled {
  const inUnit = (si: number): number => say.value(si, axis.unit)
  const scale = scaleLog((axis.domain ?? extent([...values, ...(axis.include ?? [])])).map(inUnit), range)
  // 1, 2 and 5 of each decade: the rest would print over one another
  const ticks = scale.ticks(10).filter((tick) => [1, 2, 5].includes(Math.round(tick / 10 ** Math.floor(Math.log10(tick) + 1e-9))))
  const text = (tick: number): string => formatNumber(tick, Math.max(0, -Math.floor(Math.log10(tick) + 1e-9)))
  return { place: (si) => scale(inUnit(si)), ticks: ticks.map((tick) => ({ at: scale(tick), text: text(tick) })) }
}

const scaled = (axis: Axis, values: readonly number[], say: Say, range: [number, number]): Scaled =>
  axis.scale === 'log' ? logarithmic(axis, values, say, range) : linear(axis, values, say, range)

function named(axis: Axis, say: Say): string {
  const symbol = say.symbol(axis.unit)
  return symbol === '' ? axis.label : `${axis.label}, ${symbol}`
}

function dataOf({ curves = [], bands = [], points = [], rules = [], spans = [] }: ChartProps): { x: number[]; y: number[] } {
  const drawn: XY[] = [
    ...curves.flatMap((curve) => curve.points),
    ...bands.flatMap((band) => [...band.low, ...band.high]),
    ...points.map(({ x, y }): XY => [x, y]),
  ]
  const across = (axis: 'x' | 'y'): number[] => [
    ...rules.flatMap((rule) => (rule.axis === axis ? [rule.at] : [])),
    ...spans.flatMap((span) => (span.axis === axis ? [span.from, span.to] : [])),
    ...points.flatMap((point) => (axis === 'x' ? point.xRange : point.yRange) ?? []),
  ]
  return { x: [...drawn.map(([x]) => x), ...across('x')], y: [...drawn.map(([, y]) => y), ...across('y')] }
}

/** Lays a chart out: the left margin is as wide as the widest number on the y axis needs. */
export function layOut(props: ChartProps): Layout {
  const { say, x, y, height = 250 } = props
  const data = dataOf(props)
  const top = 26
  const bottom = height - (props.points?.length ? 60 : 40)
  const upright = scaled(y, data.y, say, [bottom, top])
  const left = Math.max(20, 12 + Math.max(...upright.ticks.map(({ text }) => textWidth(text)), 0))
  const right = WIDTH - 12
  const along = scaled({ ticks: 6, ...x }, data.x, say, [left, right])
  const frame: Frame = { x: along.place, y: upright.place, left, right, top, bottom }
  return { frame, xTicks: along.ticks, yTicks: upright.ticks, xName: named(x, say), yName: named(y, say), height }
}

import { nice, ticks } from 'd3-array'
import type { Say } from '../units/say.ts'
import { formatNumber } from '../units/say.ts'
import type { Axis, ChartProps, Frame, XY } from './chartTypes.ts'
import { textWidth } from './lettering.ts'

export const WIDTH = 360
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
  return low === high
    ? [low - Math.max(Math.abs(low) * 0.1, 1e-9), high + Math.max(Math.abs(high) * 0.1, 1e-9)]
    : [low, high]
}

const decadeOf = (tick: number): number => Math.floor(Math.log10(tick) + 1e-9)

function linear(
  axis: Axis,
  values: readonly number[],
  say: Say,
  [from, to]: [number, number],
): Scaled {
  const count = axis.ticks ?? 5
  const inUnit = (si: number): number => say.value(si, axis.unit)
  const given = (axis.domain ?? extent([...values, ...(axis.include ?? [])])).map(inUnit) as [
    number,
    number,
  ]
  const [low, high] = axis.domain ? given : nice(...given, count)
  const at = (value: number): number => from + ((value - low) / (high - low)) * (to - from)
  const marks = ticks(low, high, count)
  const digits = decimalsOf(marks)
  return {
    place: (si) => at(inUnit(si)),
    ticks: marks.map((tick) => ({ at: at(tick), text: formatNumber(tick, digits) })),
  }
}

/** 1, 2 and 5 of each decade between two values above zero: all nine would print over one another. */
function decadeTicks(low: number, high: number): number[] {
  const [first, last] = [Math.floor(Math.log10(low)), Math.ceil(Math.log10(high))]
  const all = Array.from({ length: last - first + 1 }, (_, index) =>
    [1, 2, 5].map((digit) => Number(`${digit}e${first + index}`)),
  ).flat()
  return all.filter((tick) => tick >= low && tick <= high)
}

function logarithmic(
  axis: Axis,
  values: readonly number[],
  say: Say,
  [from, to]: [number, number],
): Scaled {
  const inUnit = (si: number): number => say.value(si, axis.unit)
  const [low, high] = (axis.domain ?? extent([...values, ...(axis.include ?? [])])).map(inUnit) as [
    number,
    number,
  ]
  const at = (value: number): number =>
    from + (Math.log(value / low) / Math.log(high / low)) * (to - from)
  const text = (tick: number): string => formatNumber(tick, Math.max(0, -decadeOf(tick)))
  return {
    place: (si) => at(inUnit(si)),
    ticks: decadeTicks(low, high).map((tick) => ({ at: at(tick), text: text(tick) })),
  }
}

const scaled = (
  axis: Axis,
  values: readonly number[],
  say: Say,
  range: [number, number],
): Scaled =>
  axis.scale === 'log' ? logarithmic(axis, values, say, range) : linear(axis, values, say, range)

function named(axis: Axis, say: Say): string {
  const symbol = say.symbol(axis.unit)
  return symbol === '' ? axis.label : `${axis.label}, ${symbol}`
}

function dataOf({ curves = [], bands = [], points = [], rules = [], spans = [] }: ChartProps): {
  x: number[]
  y: number[]
} {
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
  return {
    x: [...drawn.map(([x]) => x), ...across('x')],
    y: [...drawn.map(([, y]) => y), ...across('y')],
  }
}

/** Lays a chart out: the left margin is as wide as the widest number on the y axis needs. */
export function layOut(props: ChartProps): Layout {
  const { say, x, y, height = 250 } = props
  const data = dataOf(props)
  const top = 26
  const bottom = height - (props.points?.length ? 60 : 40)
  const upright = scaled(y, data.y, say, [bottom, top])
  const left = Math.max(20, 9 + Math.max(...upright.ticks.map(({ text }) => textWidth(text)), 0))
  // half of the last number on the x axis stands past the plot
  const last = scaled({ ticks: 6, ...x }, data.x, say, [left, WIDTH]).ticks.at(-1)?.text ?? ''
  const right = WIDTH - Math.max(12, 2 + textWidth(last) / 2)
  const along = scaled({ ticks: 6, ...x }, data.x, say, [left, right])
  const frame: Frame = { x: along.place, y: upright.place, left, right, top, bottom }
  return {
    frame,
    xTicks: along.ticks,
    yTicks: upright.ticks,
    xName: named(x, say),
    yName: named(y, say),
    height,
  }
}

/** Two layouts with the same key place and name everything alike. */
export const scaleKey = ({ xTicks, yTicks, xName, yName, height, frame }: Layout): string =>
  JSON.stringify([xTicks, yTicks, xName, yName, height, frame])

import type oilViscosity from './statement.ts'
import type { Picture } from './solve.ts'
import type { Interval } from '../../units/interval.ts'
import { placeOnChart } from '../../drawing/handles.ts'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { ChartProps, Curve, Point } from '../../drawing/Chart.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof oilViscosity, Picture>

const middleOf = (value: number | Interval | null): number =>
  typeof value === 'number'
    ? value
    : value === null
      ? 0
      : (value.value ?? (value.low + value.high) / 2)

function pointsOf({ now, before, say }: Props): Point[] {
  const thick = (value: number): string => say.quantity(value, 'mm²/s', 1)
  const warm = (value: number): string => say.quantity(value, '°C', 0)
  const readings = (['one', 'two'] as const).flatMap((oil) =>
    now.picture.readings[oil].map(({ temperature, viscosity }): Point => ({
      x: temperature,
      y: viscosity,
      as: 'plain',
      says: `Data sheet, oil ${oil}: ${thick(viscosity)} at ${warm(temperature)}`,
    })),
  )
  const fork = ({ input, output }: typeof now, as: 'now' | 'before'): Point => {
    const viscosity = middleOf(output.viscosity)
    return {
      x: input.temperature,
      y: viscosity,
      as,
      says: `In the fork ${as}: ${thick(viscosity)} at ${warm(input.temperature)}`,
      ...(as === 'now' ? { label: say.number(viscosity, 'mm²/s', 0) } : {}),
    }
  }
  return [...readings, ...(before ? [fork(before, 'before')] : []), fork(now, 'now')]
}

/** Viscosity against temperature, both oils and what is in the fork, on a log axis, with the figures of the data sheets marked. */
function viscosityChart(props: Props): ChartProps {
  const { now, before, say, prefix } = props
  const thick = (value: number): string => say.number(value, 'mm²/s', 1)
  const mixed = now.input.share > 0 && now.input.share < 1
  const curves: Curve[] = [
    { points: now.picture.one, as: 'plain', label: 'oil one' },
    { points: now.picture.two, as: 'plain', label: 'oil two' },
    ...(before ? [{ points: before.picture.mix, as: 'before' as const, label: 'before' }] : []),
    { points: now.picture.mix, as: 'now', label: mixed ? 'mixed' : 'now' },
  ]
  const all = [now.picture.one, now.picture.two, before?.picture.mix ?? []].flat().map(([, y]) => y)
  // an axis of more than three decades would flatten everything that matters
  const low = Math.max(1e-6, Math.min(...all) * 0.7)
  return {
    prefix,
    say,
    takeaway: `In the fork ${say.quantity(middleOf(now.output.viscosity), 'mm²/s', 1)} at ${say.quantity(now.input.temperature, '°C', 0)}${before ? `, before ${say.quantity(middleOf(before.output.viscosity), 'mm²/s', 1)}` : ''}.`,
    caption:
      'Each step up this axis multiplies. An oil is two readings and the line that the standard draws through them.',
    x: { label: 'temperature', unit: '°C', domain: [258.15, 376.15] },
    y: {
      label: 'viscosity',
      unit: 'mm²/s',
      scale: 'log',
      domain: [low, Math.min(Math.max(...all) * 1.1, low * 2000)],
    },
    curves,
    points: pointsOf(props),
    height: 300,
    table: {
      caption: 'Viscosity by temperature',
      columns: [
        'Temperature',
        'Oil one',
        'Oil two',
        `In the fork, ${say.symbol('mm²/s')}`,
        ...(before ? ['Before'] : []),
      ],
      rows: now.picture.rows.map(([temperature, one, two, mix], place) => [
        say.quantity(temperature, '°C', 0),
        thick(one),
        thick(two),
        thick(mix),
        ...(before ? [thick(before.picture.rows[place]![3])] : []),
      ]),
    },
  }
}

export default function OilViscosityFigure(props: Props) {
  return (
    <View id="all">
      <Chart {...viscosityChart(props)} />
    </View>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
OilViscosityFigure.views = [{ id: 'all', name: 'Viscosity' }] satisfies readonly ViewName[]

/** What can be pulled: the temperature of the oil in the fork. */
OilViscosityFigure.handles = [
  {
    input: 'temperature',
    view: 'all',
    axis: 'x',
    side: 'above',
    part: 'the point',
    at(props) {
      const { input, output } = props.now
      return placeOnChart(viscosityChart(props), 'x', [
        input.temperature,
        middleOf(output.viscosity),
      ])
    },
  },
] satisfies readonly Handle<Props>[]

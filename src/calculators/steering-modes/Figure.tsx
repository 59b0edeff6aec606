import { formatNumber } from '../../units/say.ts'
import type steeringModes from './statement.ts'
import type { Picture } from './solve.ts'
import { placeOnChart } from '../../drawing/handles.ts'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { ChartProps, Curve, Point, XY } from '../../drawing/Chart.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof steeringModes, Picture>
type State = Props['now']

/** What is drawn of a motion that dies out in a fifth of a second: no more than that it leaves the picture. */
const FLOOR = -6
const ROOF = 6

const LABELS = {
  weave: 'weaves',
  fall: 'rolls and falls slowly',
  back: 'steers itself back',
} as const

function curvesOf({ picture }: State, as: 'now' | 'before'): Curve[] {
  const shown = (points: readonly XY[]): XY[] => points.filter(([, y]) => y >= FLOOR * 1.6)
  return [
    { points: shown(picture.weave), as, label: as === 'now' ? LABELS.weave : 'before' },
    { points: picture.other, as },
    { points: shown(picture.fall), as, ...(as === 'now' ? { label: LABELS.fall } : {}) },
    {
      points: shown(picture.back),
      as,
      ...(as === 'now' && picture.back.some(([, y]) => y >= FLOOR) ? { label: LABELS.back } : {}),
    },
  ]
}

function pointsOf({ input, output }: State, as: 'now' | 'before', { say }: Props): Point[] {
  return (['weave', 'fall', 'back'] as const).flatMap((motion): Point[] => {
    const growth = output[motion]
    if (typeof growth !== 'number' || growth < FLOOR || growth > ROOF) return []
    return [
      {
        x: input.speed,
        y: growth,
        as,
        says: `${LABELS[motion]}, ${as}: ${say.change(growth, '1/s', 2)} at ${say.quantity(input.speed, 'km/h', 0)}`,
      },
    ]
  })
}

/** Where the growth of a curve stands at a speed. */
function at(points: readonly XY[], speed: number): string {
  const near = points.filter(([x]) => Math.abs(x - speed) < 0.051)[0]
  return near ? formatNumber(near[1], 2) : '—'
}

/** Growth of each motion against speed: above the line it grows, below it dies out. */
function growthChart(props: Props): ChartProps {
  const { now, before, say, prefix } = props
  const speeds = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]
  const weave = typeof now.output.weave === 'number' ? now.output.weave : 0
  return {
    prefix,
    say,
    takeaway: `The published bicycle with ${say.quantity(now.input.trail, 'mm', 0)} of trail at ${say.quantity(now.input.speed, 'km/h', 0)}: its weave ${weave > 0 ? 'grows' : 'dies out'} at ${say.change(weave, '1/s', 2)}.`,
    caption:
      'A bicycle, not a motorcycle. Above the line a motion grows, below it dies out; the further, the faster. The one that steers itself back is mostly too quick for this sheet.',
    x: { label: 'speed', unit: 'km/h', domain: [0, 10] },
    y: { label: 'growth', unit: '1/s', domain: [FLOOR, ROOF] },
    rules: [
      { axis: 'y', at: 0, as: 'plain' },
      { axis: 'x', at: now.input.speed, as: 'soft' },
    ],
    curves: [...(before ? curvesOf(before, 'before') : []), ...curvesOf(now, 'now')],
    points: [...(before ? pointsOf(before, 'before', props) : []), ...pointsOf(now, 'now', props)],
    height: 300,
    table: {
      caption: 'Growth by speed',
      columns: [
        'Speed',
        'Weaves',
        'Falls slowly',
        `Steers back, ${say.symbol('1/s')}`,
        ...(before ? ['Weaves, before'] : []),
      ],
      rows: speeds.map((speed) => [
        say.quantity(speed, 'km/h', 1),
        at(now.picture.weave, speed),
        at(now.picture.fall, speed),
        at(now.picture.back, speed),
        ...(before ? [at(before.picture.weave, speed)] : []),
      ]),
    },
  }
}

export default function SteeringModesFigure(props: Props) {
  return (
    <View id="all">
      <Chart {...growthChart(props)} />
    </View>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
SteeringModesFigure.views = [{ id: 'all', name: 'Growth' }] satisfies readonly ViewName[]

/** What can be pulled: the speed, along its axis. */
SteeringModesFigure.handles = [
  {
    input: 'speed',
    view: 'all',
    axis: 'x',
    side: 'above',
    part: 'the line',
    at: (props) => placeOnChart(growthChart(props), 'x', [props.now.input.speed, ROOF]),
  },
] satisfies readonly Handle<Props>[]

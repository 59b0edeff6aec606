import { formatNumber } from '../../units/say.ts'
import type rearRate from './statement.ts'
import type { Picture } from './solve.ts'
import type { Interval } from '../../units/interval.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { Point, XY } from '../../drawing/Chart.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof rearRate, Picture>
type State = FigureProps<typeof rearRate, Picture>['now']

function rangeOf(value: number | Interval | null): { at: number; ends: readonly [number, number] } {
  if (value === null || typeof value === 'number')
    return { at: value ?? 0, ends: [value ?? 0, value ?? 0] }
  return { at: value.value ?? (value.low + value.high) / 2, ends: [value.low, value.high] }
}

function settledPoints(state: State, as: 'now' | 'before', { say }: Props): Point[] {
  return (['staticSag', 'riderSag'] as const).map((id): Point => {
    const { at, ends } = rangeOf(state.output[id])
    const who = id === 'staticSag' ? 'bike alone' : 'with rider'
    return {
      x: at,
      y: id === 'staticSag' ? state.picture.staticForce : state.picture.riderForce,
      as,
      xRange: ends,
      says: `${who} ${as}: ${say.number(ends[0], 'mm', 1)} to ${say.quantity(ends[1], 'mm', 1)}`,
      ...(as === 'now' ? { label: who } : {}),
    }
  })
}

const every = (points: readonly XY[], count: number): XY[] =>
  Array.from(
    { length: count },
    (_, place) => points[Math.round((place / (count - 1)) * (points.length - 1))]!,
  )

/** Force at the wheel along its travel, with the places where the bike settles and their ±. */
function WheelForce(props: Props) {
  const { now, before, say, prefix } = props
  const sag = rangeOf(now.output.riderSag)
  const rate = rangeOf(now.output.wheelRate).at
  const stations = every(now.picture.force, 7)
  const was = before && every(before.picture.force, 7)
  return (
    <Chart
      prefix={`${prefix}-force`}
      say={say}
      takeaway={`The rider settles at ${say.number(sag.ends[0], 'mm', 1)} to ${say.quantity(sag.ends[1], 'mm', 1)} of travel, on ${say.quantity(rate, 'N/mm', 1)} at the wheel.`}
      caption="The same two loads on the curve before and now. Preload lifts the curve; the rate is its slope. Bars: about 95 %."
      x={{ label: 'wheel travel used', unit: 'mm' }}
      y={{ label: 'force at the wheel', unit: 'N', include: [0] }}
      curves={[
        ...(before
          ? [{ points: before.picture.force, as: 'before' as const, label: 'before' }]
          : []),
        { points: now.picture.force, as: 'now', label: 'now' },
      ]}
      points={[
        ...(before ? settledPoints(before, 'before', props) : []),
        ...settledPoints(now, 'now', props),
      ]}
      table={{
        caption: 'Force and rate at the wheel',
        columns: [
          'Travel',
          `Force, ${say.symbol('N')}`,
          `Rate, ${say.symbol('N/mm')}`,
          ...(was ? ['Force before'] : []),
        ],
        rows: stations.map(([x, force], row) => [
          say.quantity(x, 'mm', 0),
          say.number(force, 'N', 0),
          say.number(every(now.picture.rate, 7)[row]![1], 'N/mm', 1),
          ...(was ? [say.number(was[row]![1], 'N', 0)] : []),
        ]),
      }}
    />
  )
}

/** The ratio along the travel, the way round in which it was given. */
function Leverage({ now, before, say, prefix }: Props) {
  const inverse = now.input.ratioAs === 'leverage'
  const asGiven = (points: readonly XY[]): XY[] =>
    inverse ? points.map(([x, m]): XY => [x, 1 / m]) : [...points]
  const curve = asGiven(now.picture.ratio)
  const [first, last] = [curve[0]![1], curve.at(-1)![1]]
  const name = inverse ? 'leverage: travel ÷ stroke' : 'motion ratio: stroke ÷ travel'
  const changed =
    before &&
    before.picture.ratio.some(
      ([, m], place) => Math.abs(m - (now.picture.ratio[place]?.[1] ?? m)) > 1e-9,
    )
  return (
    <Chart
      prefix={`${prefix}-ratio`}
      say={say}
      takeaway={`${name}, ${formatNumber(first, 3)} at full extension and ${formatNumber(last, 3)} at full travel.`}
      caption={
        Math.abs(last - first) < 1e-9
          ? 'The same ratio all the way: a straight spring stays straight at the wheel.'
          : 'The ratio counts twice in the rate: once for force, once for travel.'
      }
      x={{ label: 'wheel travel used', unit: 'mm' }}
      y={{
        label: name,
        unit: '',
        domain: [
          Math.min(first, last, ...curve.map(([, m]) => m)) * 0.85,
          Math.max(...curve.map(([, m]) => m)) * 1.15,
        ],
      }}
      curves={[
        ...(changed
          ? [{ points: asGiven(before.picture.ratio), as: 'before' as const, label: 'before' }]
          : []),
        { points: curve, as: 'now', label: 'now' },
      ]}
      height={190}
      table={{
        caption: 'Ratio along the travel',
        columns: ['Travel', 'Motion ratio', 'Leverage'],
        rows: every(now.picture.ratio, 7).map(([x, m]) => [
          say.quantity(x, 'mm', 0),
          formatNumber(m, 3),
          formatNumber(1 / m, 2),
        ]),
      }}
    />
  )
}

/** The rear spring as the wheel feels it. */
export default function RearRateFigure(props: Props) {
  return (
    <>
      <View id="force">
        <WheelForce {...props} />
      </View>
      <View id="leverage">
        <Leverage {...props} />
      </View>
    </>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
RearRateFigure.views = [
  { id: 'force', name: 'Force' },
  {
    id: 'leverage',
    name: 'Leverage',
    shows: ['leverage', 'ratioAs', 'linkage', 'endRatio', 'endLeverage'],
  },
] satisfies readonly ViewName[]

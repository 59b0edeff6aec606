import type damping from './statement.ts'
import type { Picture } from './solve.ts'
import type { Interval } from '../../units/interval.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { Curve, XY } from '../../drawing/Chart.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof damping, Picture>

/** Every fifth sample, 12.5 ms apart, draws a wheel's hop in five points. */
const THIN = 5
const SHOWN = 2

const middleOf = (value: number | Interval | null): number | null =>
  value === null || typeof value === 'number'
    ? value
    : (value.value ?? (value.low + value.high) / 2)

const trace = (time: readonly number[], values: readonly number[]): XY[] =>
  time.flatMap((t, place): XY[] =>
    t <= SHOWN && (place % THIN === 0 || t === 0) ? [[t, values[place]!]] : [],
  )

function heightAt(time: readonly number[], values: readonly number[], at: number): number {
  const place = time.findIndex((t) => t >= at - 1e-9)
  return values[place === -1 ? values.length - 1 : place]!
}

/** Body and wheel over the road against time, before and now. */
function Motion({ now, before, say, prefix }: Props) {
  const { time, body, wheel, road } = now.picture
  const peak = middleOf(now.output.peakTravel) ?? 0
  const most = say.quantity(peak, 'mm', 1)
  const was = before ? (middleOf(before.output.peakTravel) ?? 0) : null
  const curves: Curve[] = [
    { points: trace(time, road), as: 'plain', label: 'road' },
    { points: trace(time, wheel), as: 'soft', label: 'wheel now' },
    ...(before
      ? [
          {
            points: trace(before.picture.time, before.picture.body),
            as: 'before' as const,
            label: 'body before',
          },
        ]
      : []),
    { points: trace(time, body), as: 'now', label: 'body now' },
  ]
  const stations = [0, 0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1, 1.5, 2]
  const height = (value: number): string => say.number(value, 'mm', 1)
  return (
    <Chart
      prefix={`${prefix}-time`}
      say={say}
      takeaway={`Body and wheel over ${SHOWN} seconds. Most travel used ${most}${was === null ? '' : `, before ${say.quantity(was, 'mm', 1)}`}.`}
      caption="The wheel follows the road at once; the body comes after, and swings until the damper has taken its energy."
      x={{ label: 'time', unit: 's', domain: [0, SHOWN] }}
      y={{ label: 'height against rest', unit: 'mm' }}
      curves={curves}
      height={270}
      table={{
        caption: 'Heights by time',
        columns: [
          'Time',
          'Road',
          'Wheel',
          'Body',
          ...(before ? [`Body before, ${say.symbol('mm')}`] : []),
        ],
        rows: stations.map((at) => [
          say.quantity(at, 's', 1),
          height(heightAt(time, road, at)),
          height(heightAt(time, wheel, at)),
          height(heightAt(time, body, at)),
          ...(before ? [height(heightAt(before.picture.time, before.picture.body, at))] : []),
        ]),
      }}
    />
  )
}

/** The damper's two laws: force against speed, compression to the right. */
function Laws({ now, before, say, prefix }: Props) {
  const at = (curve: readonly XY[], speed: number): number =>
    curve.reduce((best, point) =>
      Math.abs(point[0] - speed) < Math.abs(best[0] - speed) ? point : best,
    )[1]
  const speeds = [-0.8, -0.4, -0.2, -0.1, 0, 0.1, 0.2, 0.4, 0.8]
  const force = (value: number): string => say.number(value, 'N', 0)
  return (
    <Chart
      prefix={`${prefix}-law`}
      say={say}
      takeaway={`Damper force at 0.4 m/s: compression ${say.quantity(at(now.picture.force, 0.4), 'N', 0)}, rebound ${say.quantity(-at(now.picture.force, -0.4), 'N', 0)}; at rest 0.`}
      caption="At speed zero the force is zero, whatever the clicks: at rest a damper carries nothing. Rebound lies to the left of zero, compression to the right."
      x={{ label: 'speed at the wheel', unit: 'm/s', domain: [-0.8, 0.8] }}
      y={{ label: 'damper force', unit: 'N' }}
      rules={[{ axis: 'x', at: 0, as: 'soft' }]}
      curves={[
        ...(before
          ? [{ points: before.picture.force, as: 'before' as const, label: 'before' }]
          : []),
        { points: now.picture.force, as: 'now', label: 'now' },
      ]}
      height={230}
      table={{
        caption: 'Damper force by speed',
        columns: ['Speed', `Now, ${say.symbol('N')}`, ...(before ? ['Before'] : [])],
        rows: speeds.map((speed) => [
          say.quantity(speed, 'm/s', 1),
          force(at(now.picture.force, speed)),
          ...(before ? [force(at(before.picture.force, speed))] : []),
        ]),
      }}
    />
  )
}

/** What the end of the bike does over the road, and the damper that makes it so. */
export default function DampingFigure(props: Props) {
  return (
    <>
      <View id="motion">
        <Motion {...props} />
      </View>
      <View id="laws">
        <Laws {...props} />
      </View>
    </>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
DampingFigure.views = [
  { id: 'motion', name: 'Motion' },
  { id: 'laws', name: 'Damping', shows: ['law', 'knee', 'after'] },
] satisfies readonly ViewName[]

import type brakingDive from './statement.ts'
import type { Picture } from './solve.ts'
import { placeOnChart } from '../../drawing/handles.ts'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Aboard } from '../../drawing/Aboard.tsx'
import { Chart } from '../../drawing/Chart.tsx'
import type { ChartProps } from '../../drawing/Chart.tsx'
import { LoadArrow } from '../../drawing/LoadArrow.tsx'
import { SideView } from '../../drawing/SideView.tsx'
import { LOAD_SCALE } from '../../drawing/sideViewScale.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof brakingDive, Picture>

/** Every so many points of the curve make a row of the table. */
const ROW = 4
/** Room above the highest line for its label. */
const HEADROOM = 1.12

function tableOf({ now, say }: Props): ChartProps['table'] {
  const { curve, limit } = now.picture
  const rows = curve.filter((_, index) => index % ROW === 0)
  return {
    caption: 'Front travel used against deceleration',
    columns: ['Deceleration', 'Settled', 'Quick brake', 'Left beyond that'],
    rows: rows.map(({ deceleration, settled, peak }) => [
      say.quantity(deceleration, 'g', 2),
      say.quantity(settled, 'mm', 1),
      `${say.number(peak[0], 'mm', 0)} to ${say.quantity(peak[1], 'mm', 0)}`,
      `${say.number(limit - peak[1], 'mm', 0)} to ${say.quantity(limit - peak[0], 'mm', 0)}`,
    ]),
  }
}

/** Travel against deceleration, and where the bike is on it. */
function diveChart(props: Props): ChartProps {
  const { now, before, say, prefix } = props
  const { curve, limit, lift } = now.picture
  const { deceleration } = now.input
  const travel = Number(now.output.frontTravel)
  const point = (a: number, x: number, as: 'now' | 'before') => ({
    x: a,
    y: x,
    as,
    label: as,
    says: `${as}: at ${say.quantity(a, 'g', 2)} the front settles at ${say.quantity(x, 'mm', 1)}`,
  })
  const told = `At ${say.quantity(deceleration, 'g', 2)} the front settles at ${say.quantity(travel, 'mm', 1)} of ${say.quantity(limit, 'mm', 0)}.`
  return {
    prefix: `${prefix}-dive`,
    say,
    takeaway: told,
    caption: `${told} The shaded band is how deep a quick brake goes before the front settles.`,
    x: { label: 'deceleration', unit: 'g', include: [0] },
    y: {
      label: 'front travel used',
      unit: 'mm',
      domain: [0, Math.max(limit, ...curve.map(({ peak }) => peak[1])) * HEADROOM],
    },
    curves: [
      {
        points: curve.map((at) => [at.deceleration, at.settled] as const),
        as: 'now',
        label: 'settled',
      },
    ],
    bands: [
      {
        low: curve.map((at) => [at.deceleration, at.peak[0]] as const),
        high: curve.map((at) => [at.deceleration, at.peak[1]] as const),
        as: 'now',
        label: 'quick brake',
      },
    ],
    rules: [
      { axis: 'y', at: limit, as: 'plain', label: 'end of travel' },
      ...(lift === null
        ? []
        : [{ axis: 'x' as const, at: lift, as: 'soft' as const, label: 'rear lifts' }]),
    ],
    points: [
      ...(before
        ? [point(before.input.deceleration, Number(before.output.frontTravel), 'before')]
        : []),
      point(deceleration, travel, 'now'),
    ],
    table: tableOf(props),
  }
}

/** Travel used against deceleration with its band, and the bike as it stands on the brakes. */
export default function BrakingDiveFigure(props: Props) {
  const { now, before, say, prefix } = props
  const { bike, brakeForce } = now.picture
  const trail = say.quantity(bike.pose.trail, 'mm', 1)
  return (
    <div class="figs">
      <View id="bike">
        <SideView
          now={bike}
          before={before && before.picture.bike}
          say={say}
          prefix={prefix}
          small={false}
          label={`The bike on the brakes at ${say.quantity(now.input.deceleration, 'g', 2)}, from the side: trail ${trail}.`}
          caption={`To scale, on the brakes. Arrows below the ground: wheel loads; along it: brake force.${before ? ' Dashed: before.' : ''}`}
        >
          {(view) => (
            <g>
              <Aboard places={bike.aboard ?? []} projection={view} say={say} />
              <LoadArrow
                tip={[
                  view.spot({ x: bike.pose.wheelbase, z: 0 })[0] - brakeForce.front * LOAD_SCALE,
                  view.ground - 4,
                ]}
                load={brakeForce.front}
                scale={LOAD_SCALE}
                points="left"
              />
              {brakeForce.rear > 0 && (
                <LoadArrow
                  tip={[
                    view.spot({ x: 0, z: 0 })[0] - brakeForce.rear * LOAD_SCALE,
                    view.ground - 4,
                  ]}
                  load={brakeForce.rear}
                  scale={LOAD_SCALE}
                  points="left"
                />
              )}
            </g>
          )}
        </SideView>
      </View>
      <View id="chart">
        <Chart {...diveChart(props)} />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
BrakingDiveFigure.views = [
  { id: 'bike', name: 'Bike', shows: ['deceleration', 'rider', 'passenger', 'luggage', 'bike'] },
  {
    id: 'chart',
    name: 'Dive',
    shows: ['quickest', 'slowest', 'dampingLow', 'dampingHigh', 'exponent'],
  },
] satisfies readonly ViewName[]

/** What can be pulled: the point along its curve. */
BrakingDiveFigure.handles = [
  {
    input: 'deceleration',
    view: 'chart',
    axis: 'x',
    side: 'below',
    part: 'the point',
    at(props) {
      const { input, output } = props.now
      return placeOnChart(diveChart(props), 'x', [input.deceleration, Number(output.frontTravel)])
    },
  },
] satisfies readonly Handle<Props>[]

import { middle } from '../../units/interval.ts'
import type { Cell } from '../../machine/cells.ts'
import type progressive from './statement.ts'
import type { Picture } from './solve.ts'
import type { Say } from '../../units/say.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { Point } from '../../drawing/Chart.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof progressive, Picture>['now']

interface Place {
  name: string
  load: number
  travel: number
  rate: number
}

function placesOf({ input, output }: State): Place[] {
  const place = (name: string, load: number, travel: Cell, rate: Cell): Place => ({
    name,
    load,
    travel: middle(travel) ?? 0,
    rate: middle(rate) ?? 0,
  })
  return [
    place('bike alone', input.staticLoad, output.staticTravel, output.staticRate),
    place('with rider', input.riderLoad, output.riderTravel, output.riderRate),
    place('braking', input.brakingLoad, output.brakingTravel, output.brakingRate),
  ]
}

/** On a stop the fork does not carry the load by its spring: the marker then stands on the curve, not at the load. */
const forcePoints = (state: State, as: 'now' | 'before', say: Say): Point[] =>
  placesOf(state).map(({ name, load, travel, rate }) => ({
    x: travel,
    y: load,
    as,
    label: as === 'now' ? name : undefined,
    says: `${name}: ${say.quantity(load, 'N', 0)}, ${say.quantity(travel, 'mm', 1)}, ${say.quantity(rate, 'N/mm', 1)}`,
  }))

const ratePoints = (state: State, as: 'now' | 'before', say: Say): Point[] =>
  placesOf(state).map(({ name, travel, rate }) => ({
    x: travel,
    y: rate,
    as,
    label: as === 'now' ? name : undefined,
    says: `${name}: ${say.quantity(rate, 'N/mm', 1)} at ${say.quantity(travel, 'mm', 1)}`,
  }))

function cornerPoints({ picture }: State, say: Say): Point[] {
  return picture.corners.map(([x, y], index) => ({
    x,
    y,
    as: 'soft',
    label: index === 0 ? 'coils touch' : undefined,
    says: `coils touch at ${say.quantity(x, 'mm', 1)}, ${say.quantity(y, 'N', 0)}`,
  }))
}

function tableOf(now: State, say: Say) {
  return {
    caption: 'Force and slope at each place',
    columns: [
      'where',
      `load, ${say.symbol('N')}`,
      `travel, ${say.symbol('mm')}`,
      `slope, ${say.symbol('N/mm')}`,
    ],
    rows: placesOf(now).map(({ name, load, travel, rate }) => [
      name,
      say.number(load, 'N', 0),
      say.number(travel, 'mm', 1),
      say.number(rate, 'N/mm', 1),
    ]),
  }
}

function Slope({ now, before, say, prefix }: FigureProps<typeof progressive, Picture>) {
  const highest = Math.max(
    ...[now, before].flatMap((state) => state?.picture.rate.map(([, rate]) => rate) ?? []),
  )
  const rides = say.quantity(middle(now.output.riderRate) ?? 0, 'N/mm', 1)
  return (
    <Chart
      prefix={`${prefix}-slope`}
      say={say}
      takeaway={`Slope against travel: ${rides} with the rider.`}
      caption="The slope of that curve: what the next millimetre takes, both legs. It steps up where coils touch."
      height={210}
      x={{ label: 'travel used', unit: 'mm', domain: [0, now.input.travel] }}
      y={{ label: 'slope', unit: 'N/mm', domain: [0, highest * 1.2], ticks: 4 }}
      curves={[
        ...(before
          ? [{ points: before.picture.rate, as: 'before' as const, label: 'before' }]
          : []),
        { points: now.picture.rate, as: 'now' },
      ]}
      points={[
        ...(before ? ratePoints(before, 'before', say) : []),
        ...ratePoints(now, 'now', say),
      ]}
      table={{ ...tableOf(now, say), caption: 'The slopes as a table' }}
    />
  )
}

/** Force and slope of a spring in lengths, with the corners where coils touch and the three places where the bike stands. */
export default function ProgressiveSpringFigure({
  now,
  before,
  say,
  prefix,
}: FigureProps<typeof progressive, Picture>) {
  const { picture, input } = now
  const corner = picture.corners[0]
  const touches = corner
    ? `coils touch at ${say.quantity(corner[0], 'mm', 1)}`
    : 'no coils touch within the travel'
  return (
    <div class="figs">
      <View id="chart">
        <Chart
          prefix={prefix}
          say={say}
          takeaway={`Force against travel: ${touches}; with the rider ${say.quantity(middle(now.output.riderTravel) ?? 0, 'mm', 1)} down.`}
          caption={`Force of both legs: ${touches}.${picture.linear.length > 0 && input.groups.length > 1 ? ' Dotted: a spring of one rate that rides at the same height.' : ''}`}
          x={{ label: 'travel used', unit: 'mm', domain: [0, input.travel] }}
          y={{ label: 'force', unit: 'N', include: [0, input.brakingLoad] }}
          curves={[
            ...(before
              ? [{ points: before.picture.force, as: 'before' as const, label: 'before' }]
              : []),
            { points: picture.force, as: 'now' },
            ...(input.groups.length > 1
              ? [{ points: picture.linear, as: 'soft' as const, label: 'one rate' }]
              : []),
          ]}
          points={[
            ...(before ? forcePoints(before, 'before', say) : []),
            ...cornerPoints(now, say),
            ...forcePoints(now, 'now', say),
          ]}
          table={tableOf(now, say)}
        />
      </View>
      <View id="slope">
        <Slope now={now} before={before} say={say} prefix={prefix} />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
ProgressiveSpringFigure.views = [
  { id: 'chart', name: 'Force' },
  { id: 'slope', name: 'Steepness' },
] satisfies readonly ViewName[]

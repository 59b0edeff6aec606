import type chainSlack from './statement.ts'
import type { Picture } from './solve.ts'
import { ends } from '../../units/interval.ts'
import { Chart } from '../../drawing/Chart.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'
import type { ChartProps, Point } from '../../drawing/Chart.tsx'
import { placeOnChart } from '../../drawing/handles.ts'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { round } from '../../drawing/state.ts'
import type { Spot } from '../../drawing/state.ts'

type Props = FigureProps<typeof chainSlack, Picture>

const WIDTH = 360
const MARGIN = 14

/** From metres about the pivot to the drawing: x forwards runs to the right, z up runs up. */
function frameOf({ sprocket, radii, hanging, tightest }: Picture) {
  const lowest = Math.min(hanging.axle.z, tightest.axle.z, 0) - radii.rear
  const highest = Math.max(hanging.axle.z, tightest.axle.z, sprocket.z, 0) + radii.rear
  const left = Math.min(hanging.axle.x, tightest.axle.x) - radii.rear
  const right = Math.max(sprocket.x + radii.front, 0.06)
  const scale = (WIDTH - 2 * MARGIN) / (right - left)
  return {
    scale,
    height: Math.ceil((highest - lowest) * scale + 2 * MARGIN + 22),
    spot: (x: number, z: number): Spot => [
      MARGIN + (x - left) * scale,
      MARGIN + (highest - z) * scale,
    ],
  }
}

type Frame = ReturnType<typeof frameOf>

/** Both straight runs, from where they leave the rear sprocket to where they meet the engine's. */
function runsOf(
  { sprocket, radii }: Picture,
  station: Picture['hanging'],
  { spot }: Frame,
): string {
  const { axle, upperRunAngle, lowerRunAngle } = station
  const from = (
    place: { x: number; z: number },
    radius: number,
    angle: number,
    side: 1 | -1,
  ): string =>
    spot(place.x - side * radius * Math.sin(angle), place.z + side * radius * Math.cos(angle))
      .map(round)
      .join(' ')
  return [
    `M${from(axle, radii.rear, upperRunAngle, 1)}L${from(sprocket, radii.front, upperRunAngle, 1)}`,
    `M${from(axle, radii.rear, lowerRunAngle, -1)}L${from(sprocket, radii.front, lowerRunAngle, -1)}`,
  ].join('')
}

function Station({
  picture,
  station,
  frame,
  as,
}: {
  picture: Picture
  station: Picture['hanging']
  frame: Frame
  as: 'now' | 'detail'
}) {
  const [x, y] = frame.spot(station.axle.x, station.axle.z).map(round) as [number, number]
  const [px, py] = frame.spot(0, 0).map(round) as [number, number]
  return (
    <g>
      <circle class={as} cx={x} cy={y} r={round(picture.radii.rear * frame.scale)} />
      <path class={as} d={runsOf(picture, station, frame)} />
      <path class={`${as} thin`} d={`M${x} ${y}L${px} ${py}`} />
      <circle class={as === 'now' ? 'now solid' : 'detail'} cx={x} cy={y} r={3} />
    </g>
  )
}

/** The drive to scale: with the wheel hanging, and where the chain is tightest. */
function Drive({ now, say }: Pick<Props, 'now' | 'say'>) {
  const { picture } = now
  const frame = frameOf(picture)
  const [sx, sy] = frame.spot(picture.sprocket.x, picture.sprocket.z).map(round) as [number, number]
  const [px, py] = frame.spot(0, 0).map(round) as [number, number]
  const place = say.span(now.output.tightestAt ?? 0, 'mm', 0)
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${frame.height}`}
        role="img"
        aria-label={`The chain drive from the side, to scale, with the wheel hanging and with ${place} of travel used, where the chain is tightest.`}
      >
        <Station picture={picture} station={picture.hanging} frame={frame} as="detail" />
        <Station picture={picture} station={picture.tightest} frame={frame} as="now" />
        <circle class="now" cx={sx} cy={sy} r={round(picture.radii.front * frame.scale)} />
        <circle class="now solid" cx={sx} cy={sy} r={3} />
        <circle class="mark" cx={px} cy={py} r={4.5} />
        <text class="start halo" x={MARGIN} y={frame.height - 6}>
          thin: hanging, bold: tightest, ring: pivot
        </text>
      </svg>
      <figcaption>
        Engine sprocket, swing arm and rear sprocket to scale, seen with the front to the right. The
        way about both sprockets is longest where the three centres come nearest to one line.
      </figcaption>
    </figure>
  )
}

function readingOf({ now, before, say }: Props): Point[] {
  const of = (state: NonNullable<Props['before']>, as: 'now' | 'before'): Point => {
    const { travel, slack } = state.picture.reading
    return {
      x: travel,
      y: slack,
      as,
      says: `${as === 'now' ? 'reading now' : 'as read before'}: ${say.quantity(slack, 'mm', 0)} at ${say.quantity(travel, 'mm', 0)} of travel used`,
      ...(as === 'now' ? { label: 'reading' } : {}),
    }
  }
  return [...(before ? [of(before, 'before')] : []), of(now, 'now')]
}

/** Slack along the travel, with the reading. */
function slackChart(props: Props): ChartProps {
  const { now, before, say, prefix } = props
  const rows = now.picture.curve.filter((_, place) => place % 5 === 0)
  const was = before?.picture.curve.filter((_, place) => place % 5 === 0)
  const [low, high] = ends(now.output.tightest) ?? [0, 0]
  return {
    prefix: `${prefix}-slack`,
    say,
    takeaway:
      high <= 0
        ? 'The chain is tight before the travel ends.'
        : `Where it is tightest, ${say.range(low, high, 'mm', 0)} of slack is left.`,
    caption:
      'Slack at the middle of the lower run, by hand, along the travel. The chain’s length never changes.',
    x: { label: 'wheel travel used', unit: 'mm' },
    y: { label: 'slack at mid-run', unit: 'mm', include: [0] },
    curves: [
      ...(before ? [{ points: before.picture.curve, as: 'before' as const, label: 'before' }] : []),
      { points: now.picture.curve, as: 'now', label: 'now' },
    ],
    points: readingOf(props),
    table: {
      caption: 'Slack along the travel',
      columns: ['Travel', `Slack, ${say.symbol('mm')}`, ...(was ? ['Slack before'] : [])],
      rows: rows.map(([x, slack], row) => [
        say.quantity(x, 'mm', 0),
        say.number(slack, 'mm', 0),
        ...(was ? [say.number(was[row]?.[1] ?? 0, 'mm', 0)] : []),
      ]),
    },
  }
}

/** A chain drive through the travel of its wheel. */
export default function ChainSlackFigure(props: Props) {
  return (
    <>
      <View id="slack">
        <Chart {...slackChart(props)} />
      </View>
      <View id="drive">
        <Drive {...props} />
      </View>
    </>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
ChainSlackFigure.views = [
  { id: 'slack', name: 'Slack' },
  {
    id: 'drive',
    name: 'Drive',
    shows: [
      'armLength',
      'axleBelow',
      'sprocketAhead',
      'sprocketAbove',
      'frontTeeth',
      'rearTeeth',
      'pitch',
    ],
  },
] satisfies readonly ViewName[]

/** What can be pulled: the reading, along the travel at which it was taken. */
ChainSlackFigure.handles = [
  {
    input: 'at',
    view: 'slack',
    axis: 'x',
    side: 'below',
    part: 'the reading',
    at(props) {
      const { travel, slack } = props.now.picture.reading
      return placeOnChart(slackChart(props), 'x', [travel, slack])
    },
  },
] satisfies readonly Handle<Props>[]

import { middle } from '../../units/interval.ts'
import type sag from './statement.ts'
import type { Say } from '../../units/say.ts'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { apart } from '../../drawing/apart.ts'
import { Dimension } from '../../drawing/Dimension.tsx'
import { Leg } from '../../drawing/Leg.tsx'
import { LETTER } from '../../drawing/lettering.ts'
import { round } from '../../drawing/state.ts'
import { atMark, AtMark } from './AtMark.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof sag>['now']

const TUBE = 0.043
const TOP = 70
const DRAWN = 150
/** No leg is drawn larger than this [units per metre]: a short one would fill the drawing with its tube. */
const LARGEST = 700
const HANGING = 42
const SETTLED = 164
const TRAVEL = 308

const settledOf = ({ input }: State): number => (input.settledDown + input.settledUp) / 2

/** Full travel as a strip from the hanging mark down, with the window and where the bike sits in it. */
function TravelStrip({
  now,
  before,
  y,
  say,
}: {
  now: State
  before: State | null
  y: (drop: number) => number
  say: Say
}) {
  const { travel, windowLow, windowHigh } = now.input
  const at = middle(now.output.sag) ?? 0
  const was = before ? middle(before.output.sag) : null
  // the share above its bar, the window's name below its middle; moved apart where one would stand on the other
  const [share, aim] = apart(
    [y(at) - 9, (y(windowLow * travel) + y(windowHigh * travel)) / 2 + 15].map((wanted) => ({
      at: wanted,
      size: LETTER,
    })),
    TOP - 24,
    y(travel),
  ) as [number, number]
  return (
    <g>
      <rect
        class="metal"
        x={TRAVEL - 9}
        width={18}
        y={round(y(0))}
        height={round(y(travel) - y(0))}
      />
      <rect
        class="now fill thin"
        x={TRAVEL - 9}
        width={18}
        y={round(y(windowLow * travel))}
        height={round(y(windowHigh * travel) - y(windowLow * travel))}
      />
      <text class="start quiet" x={TRAVEL + 12} y={round(aim)} dy="0.35em">
        aim
      </text>
      {was !== null && <circle class="before hollow" cx={TRAVEL} cy={round(y(was))} r={5} />}
      <line
        class="now thick"
        x1={TRAVEL - 13}
        x2={TRAVEL + 13}
        y1={round(y(at))}
        y2={round(y(at))}
      />
      <text class="now start" x={TRAVEL + 15} y={round(share)} dy="0.35em">
        {say.quantity(middle(now.output.share) ?? 0, '%', 0)}
      </text>
      <text class="middle quiet" x={TRAVEL} y={round(y(travel))} dy="1.2em">
        travel
      </text>
    </g>
  )
}

/** The leg hanging and settled on one seal line, the friction band shaded on the tube, and the sag against the travel. */
export default function SagFigure(props: FigureProps<typeof sag>) {
  return (
    <>
      <View id="all">
        <Legs {...props} />
      </View>
      <View id="mark" closeUp>
        <AtMark {...props} />
      </View>
    </>
  )
}

function Legs({ now, before, say }: FigureProps<typeof sag>) {
  const { extended, settledDown, settledUp, travel } = now.input
  const settled = settledOf(now)
  const scale = Math.min(LARGEST, DRAWN / Math.max(extended, travel))
  const seal = TOP + extended * scale
  const drop = (si: number): number => TOP + si * scale
  const height = Math.max(seal + 56, drop(travel) + 24)
  const sagged = middle(now.output.sag) ?? 0
  const band = say.quantity(settledUp - settledDown, 'mm', 1)
  const takeaway = `Sag ${say.quantity(sagged, 'mm', 1)} of ${say.quantity(travel, 'mm', 0)} travel, friction band ${band}.`
  return (
    <figure class="fig">
      <svg viewBox={`0 0 360 ${round(height)}`} role="img" aria-label={takeaway}>
        <line class="axis ink" x1={HANGING} x2={TRAVEL + 10} y1={TOP} y2={TOP} />
        <Leg
          x={HANGING}
          seal={seal}
          scale={scale}
          exposed={extended}
          tubeDiameter={TUBE}
          state="now"
          text={say.number(extended, 'mm', 1)}
          label="hanging"
        />
        {before && (
          <Leg
            x={SETTLED}
            seal={seal}
            scale={scale}
            exposed={settledOf(before)}
            tubeDiameter={TUBE}
            state="before"
            text={say.number(settledOf(before), 'mm', 1)}
            label=""
            side="left"
          />
        )}
        <Leg
          x={SETTLED}
          seal={seal}
          scale={scale}
          exposed={settled}
          tubeDiameter={TUBE}
          state="now"
          text={say.number(settled, 'mm', 1)}
          label="settled"
        />
        <rect
          class="friction"
          x={round(SETTLED - (TUBE * scale) / 2)}
          width={round(TUBE * scale)}
          y={round(seal - settledUp * scale)}
          height={round((settledUp - settledDown) * scale)}
        />
        <Dimension
          from={[TRAVEL - 26, TOP]}
          to={[TRAVEL - 26, round(drop(sagged))]}
          text=""
          state="now"
        />
        <text class="now end halo" x={TRAVEL - 33} y={round(drop(sagged / 2))} dy="0.35em">
          {say.quantity(sagged, 'mm', 1)}
        </text>
        <TravelStrip now={now} before={before} y={drop} say={say} />
      </svg>
      <figcaption>
        Hanging and settled, to scale, lengths in {say.symbol('mm')}. The mark drops by the sag. The
        dark part of the tube: the {band} within which friction can hold the mark. Shaded on the
        strip: the window aimed at.
      </figcaption>
    </figure>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
SagFigure.views = [
  { id: 'all', name: 'Leg', shows: ['travel', 'windowLow', 'windowHigh'] },
  { id: 'mark', name: 'At the mark', shows: ['settledDown', 'settledUp', 'extended'] },
] satisfies readonly ViewName[]

/** What can be pulled: the edge of the yoke on the tube, as each reading has it. */
SagFigure.handles = [
  {
    input: 'settledDown',
    view: 'mark',
    axis: 'y',
    side: 'left',
    part: 'a reading',
    at: ({ now }) => atMark(now, now.input.settledDown, 'left'),
  },
  {
    input: 'settledUp',
    view: 'mark',
    axis: 'y',
    side: 'right',
    part: 'a reading',
    at: ({ now }) => atMark(now, now.input.settledUp, 'right'),
  },
  {
    input: 'extended',
    view: 'mark',
    axis: 'y',
    side: 'right',
    part: 'a reading',
    at: ({ now }) => atMark(now, now.input.extended, 'right'),
  },
] satisfies readonly Handle<FigureProps<typeof sag>>[]

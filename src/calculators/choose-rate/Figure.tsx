import type chooseRate from './statement.ts'
import type { Picture } from './solve.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { apart } from '../../drawing/apart.ts'
import { textWidth } from '../../drawing/lettering.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof chooseRate, Picture>
type Row = FigureProps<typeof chooseRate, Picture>['now']['picture']['rows'][number]

const LEFT = 60
const RIGHT = 308
/** Middle of the first strip; between strips, no more than so much, and no more than so much for all of them. */
const TOP = 58
const STEP = 30
const ALL = 164
const round = (value: number): number => Math.round(value * 10) / 10

interface Head {
  name: string
  tone: string
  at: number
}

interface StripProps {
  row: Row
  before: Row | undefined
  y: number
  at(travel: number): number
  say: Props['say']
}

/** One spring: the fork's travel as a bar, where the bike stands in it, and how far a quick brake takes it. */
function Strip({ row, before, y, at, say }: StripProps) {
  const fits = row.misses.length === 0
  const [low, high] = row.overshoot
  const brake = at(row.brakingTravel)
  return (
    <g class={fits ? 'spring-bar fits' : 'spring-bar'}>
      <text class={fits ? 'now end' : 'quiet end'} x={LEFT - 10} y={y + 5}>
        {say.number(row.rate, 'N/mm', 1)}
      </text>
      <rect class="metal" x={LEFT} y={y - 6} width={RIGHT - LEFT} height={12} />
      <rect
        class="strip-over"
        x={round(brake)}
        y={y - 6}
        width={round(Math.max(0, at(row.brakingTravel + high) - brake))}
        height={12}
      />
      <rect
        class="strip-over sure"
        x={round(brake)}
        y={y - 6}
        width={round(Math.max(0, at(row.brakingTravel + low) - brake))}
        height={12}
      />
      {before && (
        <path
          class="before"
          d={`M${round(at(before.staticSag))} ${y - 9}v18M${round(at(before.brakingTravel))} ${y - 9}v18`}
        />
      )}
      <circle class="strip-static" cx={round(at(row.staticSag))} cy={y} r={4.5} />
      <line
        class="mark"
        x1={round(at(row.riderSag))}
        x2={round(at(row.riderSag))}
        y1={y - 9}
        y2={y + 9}
      />
      <path class="strip-brake" d={`M${round(brake)} ${y - 6}l6 6l-6 6z`} />
      <text class={fits ? 'now end' : 'quiet end'} x={357} y={y + 5}>
        {say.number(row.reserve[0], 'mm', say.symbol('mm') === 'in' ? 1 : 0)}
      </text>
    </g>
  )
}

/** What the columns hold, above them, and between them what the marks are. */
function Heads({ say, marks }: Pick<Props, 'say'> & { marks: readonly Head[] }) {
  const over = apart(
    marks.map(({ name, at }) => ({ at, size: textWidth(name) })),
    LEFT,
    RIGHT,
  )
  return (
    <>
      <text class="quiet start" x={2} y={14}>
        {say.symbol('N/mm')}
      </text>
      <text class="quiet end" x={358} y={14}>
        in hand, {say.symbol('mm')}
      </text>
      {marks.map(({ name, tone }, place) => (
        <text key={name} class={`middle ${tone}`} x={round(over[place]!)} y={TOP - 21}>
          {name}
        </text>
      ))}
    </>
  )
}

/** The axis below the strips. */
function Axis({ y, say, travel }: { y: number; say: Props['say']; travel: number }) {
  return (
    <>
      <text class="quiet middle" x={LEFT} y={y}>
        0
      </text>
      <text class="quiet middle" x={(LEFT + RIGHT) / 2 - 10} y={y}>
        travel used
      </text>
      <text class="quiet end" x={RIGHT + 22} y={y}>
        {say.quantity(travel, 'mm', 0)}
      </text>
    </>
  )
}

/** Small multiples: one strip a spring, all at the sag wanted, on one scale of travel. */
export default function ChooseRateFigure({ now, before, say }: Props) {
  const { rows, travel, staticWindow, reserve } = now.picture
  const at = (x: number): number =>
    LEFT + (Math.min(Math.max(x, 0), travel * 1.06) / travel) * (RIGHT - LEFT)
  const middleOf = ([low, high]: readonly [number, number]): number => (at(low) + at(high)) / 2
  const marks: Head[] = [
    { name: 'static', tone: 'quiet', at: middleOf(staticWindow) },
    { name: 'rider', tone: '', at: at(now.picture.riderSag) },
    { name: 'braking', tone: '', at: at(rows[0]?.brakingTravel ?? travel) },
  ]
  const step = Math.min(STEP, ALL / (rows.length - 1))
  const bottom = TOP + (rows.length - 1) * step + 14
  const fitting = rows.filter((row) => row.misses.length === 0)
  const names = fitting.map((row) => say.number(row.rate, 'N/mm', 1)).join(', ')
  const takeaway =
    fitting.length === 0
      ? 'No spring of these meets everything asked for.'
      : `These meet everything asked for: ${names} ${say.symbol('N/mm')}.`
  return (
    <View id="all">
      <figure class="fig">
        <svg viewBox={`0 0 360 ${Math.ceil(bottom) + 22}`} role="img" aria-label={takeaway}>
          <Heads say={say} marks={marks} />
          <rect
            class="band"
            x={round(at(staticWindow[0]))}
            y={TOP - 14}
            width={round(at(staticWindow[1]) - at(staticWindow[0]))}
            height={bottom - TOP + 14}
          />
          <line
            class="guide"
            x1={round(at(travel - reserve))}
            x2={round(at(travel - reserve))}
            y1={TOP - 14}
            y2={bottom}
          />
          <line class="ground" x1={RIGHT} x2={RIGHT} y1={TOP - 14} y2={bottom} />
          {rows.map((row, place) => (
            <Strip
              key={place}
              row={row}
              before={before?.picture.rows.find((other) => other.rate === row.rate)}
              y={TOP + place * step}
              at={at}
              say={say}
            />
          ))}
          <Axis y={bottom + 16} say={say} travel={travel} />
          {before && (
            <text class="before middle" x={(LEFT + RIGHT) / 2 - 20} y={14}>
              dashed: before
            </text>
          )}
        </svg>
        <figcaption>
          {now.picture.rows.length === 0
            ? ''
            : fitting.length === 0
              ? 'None of these meets everything asked for. '
              : `${names} ${say.symbol('N/mm')} ${fitting.length === 1 ? 'meets' : 'meet'} everything asked for: bold. `}
          Circle: bike alone, the window shaded. Bar: with the rider. Triangle: settled on the
          brakes; the shaded stretch is what a quick brake adds.
        </figcaption>
      </figure>
    </View>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
ChooseRateFigure.views = [{ id: 'all', name: 'Springs' }] satisfies readonly ViewName[]

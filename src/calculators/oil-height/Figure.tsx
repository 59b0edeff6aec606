import type oilHeight from './statement.ts'
import type { Picture } from './solve.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { Band, Curve, XY } from '../../drawing/Chart.tsx'
import { apart } from '../../drawing/apart.ts'
import { Dimension } from '../../drawing/Dimension.tsx'
import ForkSection from '../../drawing/ForkSection.tsx'
import { textWidth } from '../../drawing/lettering.ts'
import { Level, levelPlace } from './Level.tsx'
import { openLeg } from './openLeg.ts'
import type { Handle } from '../../drawing/handles.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof oilHeight, Picture>['now']
type Props = FigureProps<typeof oilHeight, Picture>

/** Where caps seat, and how far the drawing reaches below them. */
const TOP = 40
const DRAWN = 148
/** Two rows of letters below it. */
const ROWS = [18, 36] as const

/** The middle of the first column of air, and from each to the next. */
const COLUMNS = 204
const APART = 62
const NAMES = {
  extended: ['fully', 'extended'],
  settled: ['with', 'rider'],
  full: ['full', 'travel'],
} as const

interface ColumnProps {
  x: number
  name: readonly string[]
  /** the middle of its name, which may have to stand aside */
  named: number
  now: number
  before: number | null
  scale: number
  bottom: number
  width: number
}

/** The air as a column as wide as the tube: cap on top, oil coming up from below as the fork goes down. */
function AirColumn({ x, name, named, now, before, scale, bottom, width }: ColumnProps) {
  const level = Math.min(bottom, TOP + now * scale)
  return (
    <g>
      <g class="fork-section now">
        <rect class="oil" x={x} y={level} width={width} height={Math.max(0, bottom - level)} />
        <line class="oil-line" x1={x} x2={x + width} y1={level} y2={level} />
      </g>
      {before !== null && (
        <line
          class="before thick"
          x1={x - 3}
          x2={x + width + 3}
          y1={TOP + before * scale}
          y2={TOP + before * scale}
        />
      )}
      <path class="detail" d={`M${x} ${bottom} V${TOP} H${x + width} V${bottom}`} />
      <line class="mark" x1={x - 2} x2={x + width + 2} y1={TOP} y2={TOP} />
      {name.map((word, row) => (
        <text key={word} class="middle quiet" x={named} y={bottom + ROWS[row]!}>
          {word}
        </text>
      ))}
    </g>
  )
}

/** Where a leg stands in the drawing, and its dimension line. */
const PLACES = { before: { leg: 42, line: 68 }, now: { leg: 122, line: 96 } }

/** One leg as its oil height is read: collapsed, spring out. */
function Reading({
  state,
  as,
  scale,
  cut,
  text,
}: {
  state: State
  as: 'before' | 'now'
  scale: number
  cut: number
  text: string
}) {
  const place = PLACES[as]
  return (
    <>
      <ForkSection
        leg={openLeg(state, cut)}
        state={as}
        x={place.leg}
        top={TOP}
        scale={scale}
        across={scale}
        cut={cut}
      />
      <Dimension
        from={[place.line, TOP + Number(state.output.effective) * scale]}
        to={[place.line, TOP]}
        text=""
        state={as}
      />
      <text class={`${as} middle`} x={place.leg} y={TOP + DRAWN + ROWS[0]}>
        {as}
      </text>
      <text class={`${as} middle`} x={place.leg} y={TOP + DRAWN + ROWS[1]}>
        {text}
      </text>
    </>
  )
}

/** As a height is read, and what becomes of the air: one scale for all, lengths true, widths with them. */
function Chamber({ now, before, say }: Props) {
  const cut =
    Math.max(
      now.picture.columns.extended,
      Number(now.output.effective),
      before ? Math.max(before.picture.columns.extended, Number(before.output.effective)) : 0,
    ) + 0.03
  const scale = DRAWN / cut
  const bottom = TOP + DRAWN
  const wide = Math.min(44, now.input.bike.fork.tubeDiameter * scale)
  const height = (state: State): string => say.quantity(Number(state.output.effective), 'mm', 1)
  const left = (state: State): string => say.quantity(Number(state.output.airFull), 'cm³', 0)
  const columns = (['extended', 'settled', 'full'] as const).map((at) => ({
    at,
    now: now.picture.columns[at],
    before: before ? before.picture.columns[at] : null,
  }))
  const middles = apart(
    columns.map(({ at }, place) => ({
      at: COLUMNS + place * APART,
      size: Math.max(...NAMES[at].map(textWidth)),
    })),
    166,
    358,
    6,
  )
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${bottom + ROWS[1] + 5}`}
        role="img"
        aria-label={`Oil height ${height(now)}${before ? `, before ${height(before)}` : ''}. At full travel ${left(now)} of air are left in each leg${before ? `, before ${left(before)}` : ''}.`}
      >
        <text class="quiet" x={2} y={14}>
          as you read it
        </text>
        <text class="quiet" x={190} y={14}>
          the air, cap on
        </text>
        {before && (
          <Reading state={before} as="before" scale={scale} cut={cut} text={height(before)} />
        )}
        <Reading state={now} as="now" scale={scale} cut={cut} text={height(now)} />
        {columns.map(({ at, now: is, before: was }, place) => (
          <AirColumn
            key={at}
            x={COLUMNS + place * APART - wide / 2}
            width={wide}
            name={NAMES[at]}
            named={middles[place]!}
            now={is}
            before={was}
            scale={scale}
            bottom={bottom}
          />
        ))}
        <text class="now middle halo" x={COLUMNS + 2 * APART} y={TOP - 8}>
          {left(now)}
        </text>
      </svg>
      <figcaption>
        {now.picture.columns.full > 0
          ? `At full travel ${left(now)} of air are left in each leg${before ? `; before, ${left(before)}` : ''}. The dashed line is the oil before. To scale.`
          : 'The oil has taken all the room before full travel. To scale.'}
      </figcaption>
    </figure>
  )
}

const bandOf = (
  { slow, fast }: { slow: readonly XY[]; fast: readonly XY[] },
  as: 'now' | 'before',
): Band => ({ low: slow, high: fast, as })

function curvesOf(state: State, as: 'now' | 'before'): Curve[] {
  const { gas, whole } = state.picture
  return [
    { points: whole.fast, as, label: as === 'now' ? 'spring and gas' : 'before' },
    { points: gas.fast, as, ...(as === 'now' ? { label: 'gas alone' } : {}) },
  ]
}

/** The oil as it is measured, the air it leaves, and the force that the air makes along the travel. */
export default function OilHeightFigure(props: Props) {
  const { now, before, say, prefix } = props
  const end = now.picture.travel
  const most = Math.max(
    ...[now, ...(before ? [before] : [])].map((state) =>
      Math.max(...state.picture.whole.fast.map(([, force]) => force)),
    ),
  )
  // near a lock the gas outgrows any axis: three times the spring at full travel shows where it turns up
  const roof = Math.min(
    most,
    3 *
      Math.max(
        ...now.picture.whole.slow.map(
          ([, force], place) => force - now.picture.gas.slow[place]![1],
        ),
      ),
  )
  const force = (value: unknown): string => {
    if (typeof value !== 'object' || value === null || !('low' in value)) return '—'
    const { low, high } = value as { low: number; high: number }
    return `${say.number(low, 'N', 0)} to ${say.quantity(high, 'N', 0)}`
  }
  const rows = now.output.stations.map((row, place) => [
    say.quantity(Number(row[0]), 'mm', 0),
    force(row[1]),
    force(row[2]),
    ...(before
      ? [force(before.output.stations[place]?.[1]), force(before.output.stations[place]?.[2])]
      : []),
  ])
  return (
    <>
      <View id="leg">
        <Chamber {...props} />
      </View>
      <View id="level" closeUp>
        <Level {...props} prefix={`${prefix}-close`} />
      </View>
      <View id="force">
        <Chart
          prefix={`${prefix}-force`}
          say={say}
          takeaway={`Gas at full travel ${force(now.output.gasAtFull)}${before ? `, before ${force(before.output.gasAtFull)}` : ''}, both legs.`}
          caption="The lower edge of each band is a slow stroke, the line a fast one. The air hardly counts where the bike sits; it works at the end."
          x={{ label: 'travel used', unit: 'mm', domain: [0, end] }}
          y={{
            label: 'force, both legs',
            unit: 'N',
            domain: [Math.min(0, now.picture.gas.fast[0]![1]), roof],
          }}
          bands={[
            ...(before
              ? [bandOf(before.picture.gas, 'before'), bandOf(before.picture.whole, 'before')]
              : []),
            bandOf(now.picture.gas, 'now'),
            bandOf(now.picture.whole, 'now'),
          ]}
          curves={[...(before ? curvesOf(before, 'before') : []), ...curvesOf(now, 'now')]}
          rules={[{ axis: 'x', at: now.picture.settled, as: 'soft', label: 'sits here' }]}
          table={{
            caption: 'Forces along the travel',
            columns: [
              'Travel',
              'Gas',
              'Spring and gas',
              ...(before ? ['Gas before', 'Both before'] : []),
            ],
            rows,
          }}
        />
      </View>
    </>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
OilHeightFigure.views = [
  { id: 'leg', name: 'Oil and air', shows: ['airHeight', 'oilAdded', 'oilVolume'] },
  { id: 'level', name: 'Level', shows: ['airHeight', 'oilAdded'] },
  { id: 'force', name: 'Force', shows: ['temperature', 'altitude', 'gaugePressure'] },
] satisfies readonly ViewName[]

/** What can be pulled: the surface of the oil. */
OilHeightFigure.handles = [
  { input: 'airHeight', view: 'level', axis: 'y', side: 'right', part: 'the oil', at: levelPlace },
] satisfies readonly Handle<Props>[]

import type { Cell } from '../../machine/cells.ts'
import { ends, middle } from '../../units/interval.ts'
import type rateFromSag from './statement.ts'
import type { Picture } from './solve.ts'
import type { Say } from '../../units/say.ts'
import { Tube, tubePlace } from './Tube.tsx'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { Point, XY } from '../../drawing/Chart.tsx'
import { round } from '../../drawing/state.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof rateFromSag, Picture>['now']

function readingsOf({ picture }: State, as: 'now' | 'before', say: Say): Point[] {
  const { length, force } = picture.limits
  const reading = (name: string, { sag, force: at }: { sag: number; force: number }): Point => ({
    x: sag,
    y: at,
    as,
    label: as === 'now' ? name : undefined,
    says: `${name}: ${say.quantity(at, 'N', 0)} at ${say.quantity(sag, 'mm', 1)} of sag`,
    xRange: [sag - length, sag + length],
    yRange: [at - force, at + force],
  })
  return [reading('bike alone', picture.static), reading('with rider', picture.rider)]
}

const lineOf = ({ picture }: State): XY[] => picture.line.map(({ sag, force }): XY => [sag, force])

/** At most so many springs are marked on the strip: more would print over one another. */
const MOST = 7
const LEFT = 12
const WIDE = 336

interface Row {
  name: string
  value: Cell
}

/** The rates found, with their ±, above the springs on offer. */
function Shelf({ now, say }: { now: State; say: Say }) {
  const { output, input } = now
  const rows: Row[] = [
    { name: 'fork as it stands', value: output.perLeg },
    { name: 'spring, air taken out', value: output.springPerLeg },
  ].filter(({ value }) => value !== null)
  const known = rows.flatMap(({ value }) => ends(value) ?? [])
  const [low, high] = [Math.min(...known) - input.step, Math.max(...known) + input.step]
  const x = (rate: number): number => round(LEFT + ((rate - low) / (high - low)) * WIDE)
  const every = input.step * Math.max(1, Math.ceil((high - low) / input.step / MOST))
  const first = Math.ceil(low / every)
  const shelf = Array.from(
    { length: Math.max(0, Math.floor(high / every) - first + 1) },
    (_, index) => (first + index) * every,
  )
  const foot = 26 + 44 * rows.length
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${foot + 46}`}
        role="img"
        aria-label={`${rows.map(({ name, value }) => `${name} ${say.quantity(middle(value) ?? 0, 'N/mm', 2)}`).join(', ')} each leg, give or take ${say.quantity(middle(output.within) ?? 0, 'N/mm', 2)}.`}
      >
        {shelf.map((rate) => (
          <g key={rate}>
            <line class="shelf" x1={x(rate)} x2={x(rate)} y1={12} y2={foot} />
            <text class="middle quiet" x={x(rate)} y={foot + 17}>
              {say.number(rate, 'N/mm', 1)}
            </text>
          </g>
        ))}
        <line class="ground" x1={LEFT} x2={LEFT + WIDE} y1={foot} y2={foot} />
        {rows.map(({ name, value }, index) => (
          <Found key={name} name={name} value={value} x={x} y={44 + 44 * index} say={say} />
        ))}
        <text class="end quiet" x={LEFT + WIDE} y={foot + 36}>
          springs on offer, each leg, {say.symbol('N/mm')}
        </text>
      </svg>
      <figcaption>
        What the readings allow, about 95 %, above the springs on offer. A bar that covers several
        can’t name yours.
      </figcaption>
    </figure>
  )
}

function Found({
  name,
  value,
  x,
  y,
  say,
}: Row & { x: (rate: number) => number; y: number; say: Say }) {
  const [low, high] = ends(value) ?? [0, 0]
  const at = middle(value) ?? 0
  return (
    <g>
      <text class="now halo" x={LEFT} y={y - 12}>{`${name}: ${say.quantity(at, 'N/mm', 2)}`}</text>
      <line class="now thick" x1={x(low)} x2={x(high)} y1={y} y2={y} />
      <path class="now thick" d={`M${x(low)} ${y - 6}v12M${x(high)} ${y - 6}v12`} />
      <circle class="now solid" cx={x(at)} cy={y} r={5} />
    </g>
  )
}

/** The line through two readings, how far their ± lets it swing, and the springs on offer that it would have to tell apart. */
export default function RateFromSagFigure(props: FigureProps<typeof rateFromSag, Picture>) {
  const { now, before, say, prefix } = props
  const { picture, output } = now
  const rate = say.quantity(middle(output.perLeg) ?? 0, 'N/mm', 2)
  const top = Math.max(...picture.line.map(({ force, error }) => force + error))
  return (
    <div class="figs">
      <View id="springs">
        <Shelf now={now} say={say} />
      </View>
      <View id="tube" closeUp>
        <Tube {...props} />
      </View>
      <View id="chart">
        <Chart
          prefix={prefix}
          say={say}
          takeaway={`Two readings and the line through them, ${rate} each leg, give or take ${say.quantity(middle(output.within) ?? 0, 'N/mm', 2)}.`}
          caption="The line through the two readings: its steepness is the rate of both legs together. Shaded: where it may lie, about 95 %."
          height={280}
          x={{ label: 'sag', unit: 'mm', domain: [0, picture.line.at(-1)!.sag] }}
          y={{ label: 'load along the fork', unit: 'N', domain: [0, top * 1.02] }}
          bands={[
            {
              low: picture.line.map(({ sag, force, error }): XY => [sag, force - error]),
              high: picture.line.map(({ sag, force, error }): XY => [sag, force + error]),
              as: 'now',
            },
          ]}
          curves={[
            ...(before ? [{ points: lineOf(before), as: 'before' as const, label: 'before' }] : []),
            { points: lineOf(now), as: 'now', label: `${rate} each leg` },
          ]}
          points={[
            ...(before ? readingsOf(before, 'before', say) : []),
            ...readingsOf(now, 'now', say),
          ]}
          table={{
            caption: 'The readings, as loads and sags',
            columns: ['reading', `sag, ${say.symbol('mm')}`, `load, ${say.symbol('N')}`],
            rows: [
              ['bike alone', picture.static] as const,
              ['with rider', picture.rider] as const,
            ].map(([name, { sag, force }]) => [
              name,
              say.number(sag, 'mm', 1),
              say.number(force, 'N', 0),
            ]),
          }}
        />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
RateFromSagFigure.views = [
  { id: 'chart', name: 'Line', shows: ['staticLoad', 'riderLoad', 'gas', 'airHeight'] },
  { id: 'springs', name: 'Springs', shows: ['step'] },
  { id: 'tube', name: 'Tube', shows: ['staticReading', 'riderReading', 'extended'] },
] satisfies readonly ViewName[]

const pulled = (
  input: 'staticReading' | 'riderReading' | 'extended',
  side: 'left' | 'right',
): Handle<FigureProps<typeof rateFromSag, Picture>> => ({
  input,
  view: 'tube',
  axis: 'y',
  side,
  part: 'a reading',
  at: ({ now }) => tubePlace(now, now.input[input], side),
})

/** What can be pulled: the edge of the yoke on the tube, as each reading has it. */
RateFromSagFigure.handles = [
  pulled('staticReading', 'left'),
  pulled('riderReading', 'right'),
  pulled('extended', 'right'),
] satisfies readonly Handle<FigureProps<typeof rateFromSag, Picture>>[]

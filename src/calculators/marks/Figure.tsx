import { ends, middle } from '../../units/interval.ts'
import type marks from './statement.ts'
import type { Say } from '../../units/say.ts'
import { readingPlace, Readings, sideOf } from './Readings.tsx'
import type { Reading } from './Readings.tsx'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Leg } from '../../drawing/Leg.tsx'
import { round } from '../../drawing/state.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Now = FigureProps<typeof marks>['now']

/** A common road fork's tube, for looks: no result depends on it. */
const TUBE = 0.043
const TALLEST = 190
const SEAL = 236
/** No leg may be wider than this [units], however short its exposed tube. */
const WIDEST = 60

interface Side {
  name: string
  before: number
  after: number
  change: number
}

function sidesOf({ input, output }: Now): [Side, Side] {
  return [
    {
      name: 'left leg',
      before: input.beforeLeft,
      after: input.afterLeft,
      change: middle(output.leftChange) ?? 0,
    },
    {
      name: 'right leg',
      before: input.beforeRight,
      after: input.afterRight,
      change: middle(output.rightChange) ?? 0,
    },
  ]
}

function Legs({ now, say }: { now: Now; say: Say }) {
  const sides = sidesOf(now)
  const scale = Math.min(
    TALLEST / (Math.max(...sides.flatMap(({ before, after }) => [before, after])) + 0.02),
    WIDEST / (1.3 * TUBE),
  )
  const label = sides
    .map(
      ({ name, before, after }) =>
        `${name} from ${say.quantity(before, 'mm', 1)} to ${say.quantity(after, 'mm', 1)}`,
    )
    .join(', ')
  return (
    <figure class="fig">
      <svg viewBox="0 0 360 300" role="img" aria-label={`Exposed tube, to scale: ${label}.`}>
        {sides.map(({ name, before, after }, index) => (
          <g key={name}>
            <Leg
              x={90 + 180 * index}
              seal={SEAL}
              scale={scale}
              exposed={before}
              tubeDiameter={TUBE}
              state="before"
              text={say.number(before, 'mm', 1)}
              label=""
              side="left"
            />
            <Leg
              x={90 + 180 * index}
              seal={SEAL}
              scale={scale}
              exposed={after}
              tubeDiameter={TUBE}
              state="now"
              text={say.number(after, 'mm', 1)}
              label={name}
              side="right"
            />
            <text class="before end" x={90 + 180 * index - 42} y={SEAL + 38}>
              before
            </text>
            <text class="now start" x={90 + 180 * index + 42} y={SEAL + 38}>
              now
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        Exposed tube in {say.symbol('mm')}, to scale: before dashed, now solid. The bar across each
        leg is its mark.
      </figcaption>
    </figure>
  )
}

/** Half the height there is for the larger of change and band [units]. */
const ROOM = 70
const MIDDLE = 96
function Column({
  x,
  name,
  change,
  y,
  say,
  range,
}: {
  x: number
  name: string
  change: number
  y: (si: number) => number
  say: Say
  range?: readonly [number, number]
}) {
  const at = round(y(change))
  return (
    <g>
      <line class="mark" x1={x - 30} x2={x + 30} y1={MIDDLE} y2={MIDDLE} />
      <line class="now thick" x1={x - 24} x2={x + 24} y1={at} y2={at} />
      {range && (
        <path
          class="now"
          d={`M${x} ${round(y(range[0]))}V${round(y(range[1]))}M${x - 5} ${round(y(range[0]))}h10M${x - 5} ${round(y(range[1]))}h10`}
        />
      )}
      <circle class="now solid" cx={x} cy={at} r={4} />
      <text class="now middle halo" x={x} y={at} dy={change >= 0 ? '-0.7em' : '1.45em'}>
        {say.change(change, 'mm', 1)}
      </text>
      <text class="middle quiet" x={x} y={202}>
        {name}
      </text>
    </g>
  )
}

function AtTheMark({ now, say }: { now: Now; say: Say }) {
  const { heightChange, against } = now.output
  const change = middle(heightChange) ?? 0
  // what a change has to exceed: the friction band, or what readings of a fork settled alike can hide
  const [, band] = ends(against) ?? [0, 0]
  const friction = now.input.settled === 'different'
  const [left, right] = sidesOf(now)
  const largest = Math.max(band, ...[left.change, right.change, change].map(Math.abs))
  const scale = largest > 0 ? ROOM / largest : 1
  const y = (si: number): number => MIDDLE - si * scale
  const range =
    typeof heightChange === 'object' && heightChange
      ? ([heightChange.low, heightChange.high] as const)
      : undefined
  return (
    <figure class="fig">
      <svg
        viewBox="0 0 360 212"
        role="img"
        aria-label={`At the mark. Mean change ${say.change(change, 'mm', 1)}, ${friction ? 'friction band' : 'too small to tell up to'} ${say.span(against ?? 0, 'mm', 1)}.`}
      >
        <rect class="band" x={8} width={344} y={round(y(band))} height={round(2 * band * scale)} />
        <Column x={56} name="left" change={left.change} y={y} say={say} />
        <Column
          x={150}
          name="mean ±"
          change={change}
          y={y}
          say={say}
          {...(range ? { range } : {})}
        />
        <Column x={244} name="right" change={right.change} y={y} say={say} />
        <text class="start" x={288} y={MIDDLE} dy="0.35em">
          mark
        </text>
        {(friction ? ['friction', 'band'] : ['too small', 'to tell']).map((word, line) => (
          <text key={word} class="quiet start" x={288} y={MIDDLE} dy={`${1.7 + 1.15 * line}em`}>
            {word}
          </text>
        ))}
      </svg>
      <figcaption>
        The same, magnified at the mark. Inside the shaded band,{' '}
        {friction
          ? 'friction alone could have made the change'
          : 'a change is too small to tell by these readings'}
        .
      </figcaption>
    </figure>
  )
}

/** Both legs with their marks before and after, and the change magnified against the friction band. */
export default function MarksFigure(props: FigureProps<typeof marks>) {
  const { now, say } = props
  return (
    <div class="figs">
      <View id="legs">
        <Legs now={now} say={say} />
      </View>
      <View id="mark">
        <AtTheMark now={now} say={say} />
      </View>
      <View id="readings" closeUp>
        <Readings {...props} />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
MarksFigure.views = [
  { id: 'legs', name: 'Both legs' },
  { id: 'mark', name: 'Change', shows: ['frictionBand', 'spread', 'readingPlusMinus'] },
  {
    id: 'readings',
    name: 'Readings',
    shows: ['beforeLeft', 'beforeRight', 'afterLeft', 'afterRight'],
  },
] satisfies readonly ViewName[]

const pulled = (input: Reading): Handle<FigureProps<typeof marks>> => ({
  input,
  view: 'readings',
  axis: 'y',
  side: sideOf(input),
  part: 'a reading',
  at: ({ now }) => readingPlace(now, input),
})

/** What can be pulled: the edge of the yoke on each tube, before and now. */
MarksFigure.handles = [
  pulled('afterLeft'),
  pulled('afterRight'),
  pulled('beforeLeft'),
  pulled('beforeRight'),
] satisfies readonly Handle<FigureProps<typeof marks>>[]

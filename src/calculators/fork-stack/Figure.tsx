import { formatNumber } from '../../units/say.ts'
import type { Say } from '../../units/say.ts'
import type forkStack from './statement.ts'
import type { Picture } from './solve.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { apart } from '../../drawing/apart.ts'
import { Dimension } from '../../drawing/Dimension.tsx'
import { layoutFork } from '../../drawing/forkLayout.ts'
import type { ForkLeg } from '../../drawing/forkLayout.ts'
import ForkSection from '../../drawing/ForkSection.tsx'
import { textWidth } from '../../drawing/lettering.ts'
import { round } from '../../drawing/state.ts'
import { Held, spacerPlace, springPlace } from './Held.tsx'
import { legOf } from './legOf.ts'
import type { Handle } from '../../drawing/handles.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof forkStack, Picture>['now']

/** The cap's seat, where depths begin, and the end of the drawing. The legs lie on their sides: cap on the left, foot on the right. */
const SEAT_X = 36
const END_X = 352
/** Where lettering may stand. */
const EDGES = [2, 358] as const
/** Shown below the spring's seat [m], above the break line. */
const BELOW = 0.05
/** Widths are enlarged, or a tube of 43 mm would be a sliver beside its 480 mm; no leg is wider than so many units. */
const WIDER = 1.7
const WIDEST = 54
/** From the line of a leg's preload, above it, to its centre line; to the lengths below it; and from the first leg to the second. */
const ABOVE = 11
const CENTRE = ABOVE + WIDEST / 2
const BELOW_LEG = CENTRE + WIDEST / 2 + 11
const NEXT = 82

/** Between which depths the preload lies [m]: from the free spring's end to where it is held; for a loose spring, the gap above it. */
function preloadStretch(leg: ForkLeg, preload: number): readonly [number, number] {
  const { spring, seat } = layoutFork(leg)
  const held = spring?.from ?? seat
  return preload < 0 ? [held + preload, held] : [seat - (leg.spring?.freeLength ?? 0), held]
}

interface Scales {
  /** viewBox units per metre along a leg and across it */
  along: number
  across: number
}
const depthAt =
  ({ along }: Scales) =>
  (depth: number): number =>
    SEAT_X + depth * along

/** One leg on its side, its preload measured above it. */
function Lying({
  state,
  as,
  line,
  scales,
  say,
}: {
  state: State
  as: 'now' | 'before'
  line: number
  scales: Scales
  say: Say
}) {
  const leg = legOf(state)
  const { preload } = state.picture
  const at = depthAt(scales)
  // the end of a spring that is far longer than its room would lie outside of the drawing
  const [from, to] = preloadStretch(leg, preload).map((depth) =>
    Math.max(at(depth), EDGES[0] + textWidth(as) + 8),
  ) as [number, number]
  const text = `${preload < 0 ? 'gap' : 'preload'} ${say.quantity(Math.abs(preload), 'mm', 1)}`
  const width = textWidth(text)
  // in the line where it is long enough, else past the end that has more room
  const within = to - from > width + 8
  const after = EDGES[1] - to > from - EDGES[0]
  return (
    <g>
      <g transform={`matrix(0 -1 1 0 ${SEAT_X} ${line + CENTRE})`}>
        <ForkSection
          leg={leg}
          state={as}
          x={0}
          top={0}
          scale={scales.along}
          across={scales.across}
          cut={leg.tubeDepth + BELOW}
        />
      </g>
      <Dimension
        from={[from, line]}
        to={[to, line]}
        text={text}
        state={as}
        place={within ? 'within' : after ? 'after' : 'before'}
      />
      <text class={`${as} start`} x={EDGES[0]} y={line + 5}>
        {as}
      </text>
    </g>
  )
}

/** What the stack is made of, measured below the leg: spacer and spring side by side, and the depth that they have to fill. */
function Lengths({
  leg,
  line,
  scales,
  say,
}: {
  leg: ForkLeg
  line: number
  scales: Scales
  say: Say
}) {
  const { spacer, spring, seat } = layoutFork(leg)
  const at = depthAt(scales)
  const stretches = [
    ...(spacer ? [{ name: 'spacer', ...spacer }] : []),
    { name: 'spring', from: spring?.from ?? 0, to: seat },
  ].map(({ name, from, to }) => ({
    from: at(from),
    to: at(to),
    text: `${name} ${say.quantity(to - from, 'mm', 1)}`,
  }))
  const middles = apart(
    stretches.map(({ from, to, text }) => ({ at: (from + to) / 2, size: textWidth(text) })),
    ...EDGES,
    10,
  )
  return (
    <g>
      {stretches.map(({ from, to, text }, index) => (
        <g key={text}>
          <Dimension from={[from, line]} to={[to, line]} text="" />
          <text class="middle" x={round(middles[index]!)} y={line + 17}>
            {text}
          </text>
        </g>
      ))}
      <Dimension
        from={[at(0), line + 32]}
        to={[at(seat), line + 32]}
        text={`depth ${say.quantity(leg.tubeDepth, 'mm', 1)}`}
        place="within"
      />
    </g>
  )
}

/** Spacer and washers, spring and its preload, before and now on one common cap seat, drawn to scale from their lengths. */
export default function ForkStackFigure(props: FigureProps<typeof forkStack, Picture>) {
  return (
    <>
      <View id="all">
        <Legs {...props} />
      </View>
      <View id="held" closeUp>
        <Held {...props} prefix={`${props.prefix}-close`} />
      </View>
    </>
  )
}

function Legs({ now, before, say }: FigureProps<typeof forkStack, Picture>) {
  const deepest = Math.max(now.input.tubeDepth, before?.input.tubeDepth ?? 0) + BELOW
  const leg = legOf(now)
  const along = (END_X - SEAT_X) / deepest
  const wider = Math.min(WIDER, WIDEST / (leg.tubeDiameter + 0.01) / along)
  const scales = { along, across: along * wider }
  const length = (value: number): string => say.quantity(value, 'mm', 1)
  const takeaway = `${now.picture.preload < 0 ? `Spring loose by ${length(-now.picture.preload)}` : `Preload ${length(now.picture.preload)}`}${before ? `, before ${length(before.picture.preload)}` : ''}. Depth ${length(now.input.tubeDepth)}, spring ${length(now.input.springLength)}, spacer ${length(now.input.spacerLength)}.`
  const line = before ? 10 + NEXT : 10
  const bottom = line + BELOW_LEG + 40
  return (
    <figure class="fig">
      <svg viewBox={`0 0 360 ${bottom}`} role="img" aria-label={takeaway}>
        <line class="guide" x1={SEAT_X} x2={SEAT_X} y1={18} y2={bottom - 4} />
        {before && <Lying state={before} as="before" line={10} scales={scales} say={say} />}
        <Lying state={now} as="now" line={line} scales={scales} say={say} />
        <Lengths leg={leg} line={line + BELOW_LEG} scales={scales} say={say} />
      </svg>
      <figcaption>
        {now.picture.preload < 0
          ? `The stack is too short: the spring stands free, ${length(-now.picture.preload)} from it. `
          : `The cap holds the spring ${length(now.picture.preload)} shorter than it is free. `}
        The leg lies on its side; the dotted line is the cap’s seat. Lengths to scale; widths{' '}
        {formatNumber(wider, 1)} times as large.
      </figcaption>
    </figure>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
ForkStackFigure.views = [
  { id: 'all', name: 'Leg' },
  { id: 'held', name: 'Preload', shows: ['spacerLength', 'springLength'] },
] satisfies readonly ViewName[]

/** What can be pulled: the spacer by the end that holds the spring, and the spring by its free end. */
ForkStackFigure.handles = [
  {
    input: 'spacerLength',
    view: 'held',
    axis: 'x',
    side: 'below',
    part: 'the spacer',
    at: spacerPlace,
  },
  {
    input: 'springLength',
    view: 'held',
    axis: 'x',
    side: 'above',
    part: 'the spring',
    at: springPlace,
  },
] satisfies readonly Handle<FigureProps<typeof forkStack, Picture>>[]

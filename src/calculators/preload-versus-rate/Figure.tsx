import { ends, middle } from '../../units/interval.ts'
import type preload from './statement.ts'
import type { Picture } from './solve.ts'
import type { Say } from '../../units/say.ts'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { Curve, Point, XY } from '../../drawing/Chart.tsx'
import { round } from '../../drawing/state.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof preload, Picture>['now']
type Look = 'before' | 'now'

/** A leg that locks has no force at full travel: its curve is shown up to this many times the load. */
const LOCKED = 3

const used = ({ output }: State): number => middle(output.travelUsed) ?? 0

const curveOf = ({ picture, input }: State, as: Look, say: Say): Curve => ({
  points: picture.curve,
  as,
  label: `${as === 'now' ? 'now' : 'before'}: preload ${say.quantity(input.preload, 'mm', 0)}`,
})

function pointsOf(state: State, as: Look, say: Say): Point[] {
  return state.picture.heights.map(([load, travel]) => ({
    x: travel,
    y: load,
    as,
    says: `${as}: ${say.quantity(load, 'N', 0)} at ${say.quantity(travel, 'mm', 1)} of travel`,
  }))
}

function tableOf(now: State, before: State | null, say: Say) {
  const cells = (state: State, row: number): string[] => {
    const [, travel, slope] = state.picture.heights[row]!
    return [say.number(travel, 'mm', 1), say.number(slope, 'N/mm', 1)]
  }
  const columns = (as: string): string[] => [
    `travel ${as}, ${say.symbol('mm')}`,
    `slope ${as}, ${say.symbol('N/mm')}`,
  ]
  const loads = now.picture.heights.map(([load]) => say.number(load, 'N', 0))
  return {
    caption: 'Height and slope under each load',
    columns: [`load, ${say.symbol('N')}`, ...(before ? columns('before') : []), ...columns('now')],
    rows: loads.map((load, row) => [
      load,
      ...(before ? cells(before, row) : []),
      ...cells(now, row),
    ]),
  }
}

/** What the springs are squeezed by, in all: the part that preload makes and the part that travel makes. */
function Squeeze({
  state,
  as,
  y,
  scale,
  say,
}: {
  state: State
  as: Look
  y: number
  scale: number
  say: Say
}) {
  const preloaded = state.input.preload * scale
  const whole = (middle(state.output.squeeze) ?? 0) * scale
  const inner = as === 'now' ? 'now solid' : 'before'
  const label = (width: number, text: string): string => (width > text.length * 7.5 ? text : '')
  return (
    <g>
      <rect
        class={as === 'now' ? 'now fill' : 'before'}
        x={10}
        y={y}
        width={round(whole)}
        height={26}
      />
      <rect class={inner} x={10} y={y} width={round(preloaded)} height={26} />
      <text
        class={`middle ${as === 'before' ? 'before' : 'on-now'}`}
        x={round(10 + preloaded / 2)}
        y={y + 17.5}
      >
        {label(preloaded, say.number(state.input.preload, 'mm', 0))}
      </text>
      <text class={`middle ${as}`} x={round(10 + (preloaded + whole) / 2)} y={y + 17.5}>
        {label(whole - preloaded, `travel ${say.number(used(state), 'mm', 1)}`)}
      </text>
      <text
        class={as}
        x={10}
        y={y - 5}
      >{`${as}: squeezed ${say.quantity(middle(state.output.squeeze) ?? 0, 'mm', 1)} in all`}</text>
    </g>
  )
}

/** Preload moves nothing but the boundary where springs alone carry the load; air, a top-out spring or a stop take a share that changes with the height. */
function whatSets(now: State, before: State | null): string {
  const states = before ? [now, before] : [now]
  if (states.some(({ output }) => output.where !== 'between'))
    return 'A stop or the top-out spring has a share in the whole length here.'
  return states.some(({ input }) => input.gas === 'sealed')
    ? 'The rate, the load and the air’s share of it set the whole length. Preload moves the boundary, and the length a little, because the air pushes less as the fork rises.'
    : 'The load and the rate set the whole length; preload only moves the boundary.'
}

/** Viewbox units per metre of squeeze: the longer one is as long as the drawing. */
function squeezeScale(now: State, before: State | null): number {
  const squeezes = [now, before].map((state) => (state && middle(state.output.squeeze)) ?? 0)
  return 340 / Math.max(...squeezes, 1e-6)
}

/** Where the bar of what is now begins. */
const rowOf = (before: State | null): number => (before ? 80 : 24)

function SqueezeFigure({ now, before, say }: Omit<FigureProps<typeof preload, Picture>, 'prefix'>) {
  const scale = squeezeScale(now, before)
  const told = (state: State, as: string): string =>
    `${as}, preload ${say.quantity(state.input.preload, 'mm', 0)} and travel ${say.quantity(used(state), 'mm', 1)}`
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${rowOf(before) + 36}`}
        role="img"
        aria-label={`The squeeze of each spring in two parts: ${before ? `${told(before, 'before')}; ` : ''}${told(now, 'now')}.`}
      >
        {before && <Squeeze state={before} as="before" y={22} scale={scale} say={say} />}
        <Squeeze state={now} as="now" y={rowOf(before)} scale={scale} say={say} />
      </svg>
      <figcaption>
        Each spring’s squeeze under the load: preload first, then travel. {whatSets(now, before)}
      </figcaption>
    </figure>
  )
}

const steepness = ({ input }: State): string =>
  input.gas === 'sealed'
    ? 'the line is as steep as springs and air together, and steeper as the air is squeezed'
    : 'the steepness of the line is the rate'

function takeawayOf(now: State, before: State | null, say: Say): string {
  const at = (state: State): string =>
    `${say.quantity(used(state), 'mm', 1)} of travel at ${say.quantity(middle(state.output.rateHere) ?? 0, 'N/mm', 1)}`
  return `Force against travel. Under ${say.quantity(now.input.load, 'N', 0)} the fork stands ${before ? `before at ${at(before)}, ` : ''}now at ${at(now)}.`
}

/** Both force curves with the same loads marked, and each spring's squeeze divided into preload and travel. */
export default function PreloadVersusRateFigure({
  now,
  before,
  say,
  prefix,
}: FigureProps<typeof preload, Picture>) {
  const curves = [...(before ? [curveOf(before, 'before', say)] : []), curveOf(now, 'now', say)]
  const points = [...(before ? pointsOf(before, 'before', say) : []), ...pointsOf(now, 'now', say)]
  const highest = Math.max(
    ...[now, before].flatMap((state) =>
      state
        ? [ends(state.output.forceAtFullTravel)?.[0] ?? LOCKED * state.input.load, state.input.load]
        : [],
    ),
  )
  const last = (points_: readonly XY[]): number => points_.at(-1)![0]
  return (
    <div class="figs">
      <View id="spring">
        <SqueezeFigure now={now} before={before} say={say} />
      </View>
      <View id="chart">
        <Chart
          prefix={prefix}
          say={say}
          takeaway={takeawayOf(now, before, say)}
          caption={
            before
              ? `Force of both legs against travel. The same load is met at another height; ${steepness(now)}.`
              : `Force of both legs against travel; ${steepness(now)}.`
          }
          x={{
            label: 'travel used',
            unit: 'mm',
            domain: [0, Math.max(now.input.travel, last(now.picture.curve))],
          }}
          y={{ label: 'force', unit: 'N', domain: [0, Math.max(highest * 1.05, 1)] }}
          curves={curves}
          rules={[{ axis: 'y', at: now.input.load, as: 'plain', label: 'the load' }]}
          points={points.filter(({ y }) => y <= highest * 1.05)}
          table={tableOf(now, before, say)}
        />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
PreloadVersusRateFigure.views = [
  { id: 'chart', name: 'Force' },
  { id: 'spring', name: 'Spring' },
] satisfies readonly ViewName[]

/** What can be pulled: the boundary between the part of the squeeze that preload makes and the part that travel makes. */
PreloadVersusRateFigure.handles = [
  {
    input: 'preload',
    view: 'spring',
    axis: 'x',
    side: 'below',
    part: 'the boundary',
    at({ now, before }) {
      const scale = squeezeScale(now, before)
      return { spot: [10 + now.input.preload * scale, rowOf(before) + 26], perUnit: scale }
    },
  },
] satisfies readonly Handle<FigureProps<typeof preload, Picture>>[]

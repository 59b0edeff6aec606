import { ends, middle } from '../../src/calculators/interval.ts'
import type preload from '../../src/calculators/preload-versus-rate.ts'
import type { Say } from '../../src/calculators/say.ts'
import type { FigureProps } from './props.ts'
import { Chart } from './kit/Chart.tsx'
import type { Curve, Point, XY } from './kit/Chart.tsx'
import { round } from './kit/state.ts'

type State = FigureProps<typeof preload>['now']
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
  const columns = (as: string): string[] => [`travel ${as}, ${say.symbol('mm')}`, `slope ${as}, ${say.symbol('N/mm')}`]
  const loads = now.picture.heights.map(([load]) => say.number(load, 'N', 0))
  return {
    caption: 'Height and slope under each load',
    columns: [`load, ${say.symbol('N')}`, ...(before ? columns('before') : []), ...columns('now')],
    rows: loads.map((load, row) => [load, ...(before ? cells(before, row) : []), ...cells(now, row)]),
  }
}

/** What the springs are squeezed by, in all: the part that preload makes and the part that travel makes. */
function Squeeze({ state, as, y, scale, say }: { state: State; as: Look; y: number; scale: number; say: Say }) {
  const preloaded = state.input.preload * scale
  const whole = (middle(state.output.squeeze) ?? 0) * scale
  const inner = as === 'now' ? 'now solid' : 'before'
  const label = (width: number, text: string): string => (width > text.length * 7.5 ? text : '')
  return (
    <g>
      <rect class={as === 'now' ? 'now fill' : 'before'} x={10} y={y} width={round(whole)} height={26} />
      <rect class={inner} x={10} y={y} width={round(preloaded)} height={26} />
      <text class={`middle ${as === 'before' ? 'before' : 'on-now'}`} x={round(10 + preloaded / 2)} y={y + 17.5}>
        {label(preloaded, say.number(state.input.preload, 'mm', 0))}
      </text>
      <text class={`middle ${as}`} x={round(10 + (preloaded + whole) / 2)} y={y + 17.5}>
        {label(whole - preloaded, `travel ${say.number(used(state), 'mm', 1)}`)}
      </text>
      <text class={as} x={10} y={y - 5}>{`${as}: squeezed ${say.quantity(middle(state.output.squeeze) ?? 0, 'mm', 1)} in all`}</text>
    </g>
  )
}

function SqueezeFigure({ now, before, say }: Omit<FigureProps<typeof preload>, 'prefix'>) {
  const longest = Math.max(middle(now.output.squeeze) ?? 0, before ? (middle(before.output.squeeze) ?? 0) : 0, 1e-6)
  const scale = 340 / longest
  const told = (state: State, as: string): string =>
    `${as}, preload ${say.quantity(state.input.preload, 'mm', 0)} and travel ${say.quantity(used(state), 'mm', 1)}`
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${before ? 116 : 60}`}
        role="img"
        aria-label={`The squeeze of each spring in two parts: ${before ? `${told(before, 'before')}; ` : ''}${told(now, 'now')}.`}
      >
        {before && <Squeeze state={before} as="before" y={22} scale={scale} say={say} />}
        <Squeeze state={now} as="now" y={before ? 80 : 24} scale={scale} say={say} />
      </svg>
      <figcaption>
        Each spring’s squeeze under the load: preload first, then travel. The load and the rate set the whole length; preload only moves the boundary.
      </figcaption>
    </figure>
  )
}

function takeawayOf(now: State, before: State | null, say: Say): string {
  const at = (state: State): string => `${say.quantity(used(state), 'mm', 1)} of travel at ${say.quantity(middle(state.output.rateHere) ?? 0, 'N/mm', 1)}`
  return `Force against travel. Under ${say.quantity(now.input.load, 'N', 0)} the fork stands ${before ? `before at ${at(before)}, ` : ''}now at ${at(now)}.`
}

/** Both force curves with the same loads marked, and each spring's squeeze divided into preload and travel. */
export default function PreloadVersusRateFigure({ now, before, say, prefix }: FigureProps<typeof preload>) {
  const curves = [...(before ? [curveOf(before, 'before', say)] : []), curveOf(now, 'now', say)]
  const points = [...(before ? pointsOf(before, 'before', say) : []), ...pointsOf(now, 'now', say)]
  const highest = Math.max(
    ...[now, before].flatMap((state) => (state ? [ends(state.output.forceAtFullTravel)?.[0] ?? LOCKED * state.input.load, state.input.load] : [])),
  )
  const last = (points_: readonly XY[]): number => points_.at(-1)![0]
  return (
    <div class="figs">
      <SqueezeFigure now={now} before={before} say={say} />
      <Chart
        prefix={prefix}
        say={say}
        takeaway={takeawayOf(now, before, say)}
        caption={
          before
            ? 'Force of both legs against travel. The same load is met at another height; the steepness of the line is the rate.'
            : 'Force of both legs against travel. The steepness of the line is the rate.'
        }
        x={{ label: 'travel used', unit: 'mm', domain: [0, Math.max(now.input.travel, last(now.picture.curve))] }}
        y={{ label: 'force', unit: 'N', domain: [0, Math.max(highest * 1.05, 1)] }}
        curves={curves}
        rules={[{ axis: 'y', at: now.input.load, as: 'plain', label: 'the load' }]}
        points={points.filter(({ y }) => y <= highest * 1.05)}
        table={tableOf(now, before, say)}
      />
    </div>
  )
}

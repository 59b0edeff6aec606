import type leanClearance from './statement.ts'
import type { Picture } from './solve.ts'
import { heightPlace, outPlace, Part } from './Part.tsx'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'
import { round } from '../../drawing/state.ts'
import type { Spot } from '../../drawing/state.ts'

type Props = FigureProps<typeof leanClearance, Picture>
type State = FigureProps<typeof leanClearance, Picture>['now']

const WIDTH = 360
const HEIGHT = 240
const GROUND = 212
/** How high the drawing shows the bike’s middle plane [m], and what fits beside it. */
const TALL = 0.68
const SCALE = 285
/** Where the tyre’s crown has its centre while the bike is upright [viewBox units]. */
const MIDDLE = 84

/** Puts a place on the bike (out to its right and up, upright [m]) into the drawing, rolled to the right about the crown’s centre. */
function placing(roll: number, crown: number): (out: number, up: number) => Spot {
  const [sin, cos] = [Math.sin(roll), Math.cos(roll)]
  return (out, up) => [
    round(MIDDLE + (out * cos + (up - crown) * sin) * SCALE),
    round(GROUND - (crown + (up - crown) * cos - out * sin) * SCALE),
  ]
}

/** Tyre, middle plane, and the part on its bracket, seen from behind. */
function Behind({ state, as }: { state: State; as: 'now' | 'before' }) {
  const { crown, halfWidth } = state.input
  const { roll, height, wheelRadius } = state.picture
  const at = placing(roll ?? 0, crown)
  const path = (spots: readonly Spot[]): string =>
    `M${spots.map(([x, y]) => `${x} ${y}`).join('L')}`
  const width = Math.max(crown, 0.012)
  const [px, py] = at(halfWidth, height)
  const top = 2 * wheelRadius - crown
  const reach = round(width * SCALE)
  const [right, overTop] = [at(width, top), at(-width, top)]
  const wheel = `M${at(-width, crown).join(' ')}A${reach} ${reach} 0 0 0 ${at(width, crown).join(' ')}L${right.join(' ')}A${reach} ${reach} 0 0 0 ${overTop.join(' ')}Z`
  return (
    <g>
      <path class={as} d={wheel} />
      <path class={`${as} thin`} d={path([at(0, 0), at(0, TALL)])} />
      <path class={as} d={path([at(0, height), [px, py]])} />
      <circle class={as === 'now' ? 'now solid' : 'before'} cx={px} cy={py} r={4} />
    </g>
  )
}

/** The bike from behind at the lean at which the part touches, before and now. */
export default function LeanClearanceFigure(props: Props) {
  return (
    <>
      <View id="lean">
        <Leaning {...props} />
      </View>
      <View id="part" closeUp>
        <Part {...props} />
      </View>
    </>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
LeanClearanceFigure.views = [
  { id: 'lean', name: 'Leaning' },
  { id: 'part', name: 'Part', shows: ['height', 'halfWidth'] },
] satisfies readonly ViewName[]

/** What can be pulled: the part, up and down and out from the middle. */
LeanClearanceFigure.handles = [
  { input: 'height', view: 'part', axis: 'y', side: 'left', part: 'the part', at: heightPlace },
  { input: 'halfWidth', view: 'part', axis: 'x', side: 'right', part: 'the part', at: outPlace },
] satisfies readonly Handle<Props>[]

function Leaning({ now, before, say }: Props) {
  const { roll } = now.output
  const lean = (state: State): string =>
    state.output.roll === null ? 'clear up to 70°' : say.span(state.output.roll, '°', 1)
  const told =
    roll === null
      ? 'The part stays clear up to 70° of lean.'
      : `The part touches at ${lean(now)}${before ? `, before at ${lean(before)}` : ''}.`
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={`The bike from behind, to scale, leaning to its right. ${told}`}
      >
        <line class="mark" x1="8" x2={WIDTH - 8} y1={GROUND} y2={GROUND} />
        {before && <Behind state={before} as="before" />}
        <Behind state={now} as="now" />
        <text class="now end" x={WIDTH - 10} y="22">
          {lean(now)}
        </text>
        {before && (
          <text class="before end" x={WIDTH - 10} y="42">
            {`before ${lean(before)}`}
          </text>
        )}
        <text class="start quiet" x="8" y={GROUND + 20}>
          road
        </text>
      </svg>
      <figcaption>
        From behind, to scale, pressed down as in that bend.{' '}
        {before ? 'Solid: now. Dashed: the rider alone, nothing changed. ' : ''}
        {told}
      </figcaption>
    </figure>
  )
}

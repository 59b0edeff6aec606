import type { JSX } from 'preact'
import type rideHeight from './statement.ts'
import type { Picture } from './solve.ts'
import { Dimension } from '../../drawing/Dimension.tsx'
import type { HandlePlace } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import SpringCoils from '../../drawing/SpringCoils.tsx'
import { round } from '../../drawing/state.ts'

type Props = FigureProps<typeof rideHeight, Picture>
type State = Props['now']
type By = State['input']['by']
type Look = 'now' | 'before'

/** Viewbox units per metre: a millimetre is wide enough for a finger, and 20 either way fit. */
const SCALE = 2600
const MIDDLE = 176
/** Where the part's edge is with nothing changed, and where the drawing ends. */
const EDGE = 96
const FOOT = 206
const HEIGHT = 230

/** For each part that can be changed: what it is called, the way it goes as the amount grows, and how it looks with its edge at a height. */
const PARTS: Record<
  By,
  {
    name: string
    way: 1 | -1
    wide: number
    Moving: (props: { edge: number; look: Look }) => JSX.Element
  }
> = {
  tubes: {
    name: 'tube in the upper yoke',
    way: -1,
    wide: 104,
    Moving: ({ edge, look }) => (
      <>
        <Block y={edge + 12} to={FOOT} wide={104} name={fill(look)} />
        <Block y={edge} to={edge + 12} wide={80} name={look === 'now' ? 'metal' : 'before'} />
      </>
    ),
  },
  preload: {
    name: 'spring under its cap',
    way: 1,
    wide: 84,
    Moving: ({ edge, look }) => (
      <>
        <Block y={34} to={edge} wide={84} name={look === 'now' ? 'now solid' : 'before'} />
        <g class="coil-drawing">
          <SpringCoils x={MIDDLE} radius={38} from={edge} to={FOOT} wire={9} coils={4} />
        </g>
      </>
    ),
  },
  shock: {
    name: 'eye of the shock',
    way: -1,
    wide: 46,
    Moving: ({ edge, look }) => (
      <>
        <Block y={edge + 40} to={FOOT} wide={22} name={look === 'now' ? 'metal' : 'before'} />
        <Block y={edge} to={edge + 46} wide={46} name={fill(look)} round={23} />
        <Block y={edge + 12} to={edge + 34} wide={22} name={fill(look)} round={11} />
      </>
    ),
  },
  tyre: {
    name: 'front axle over the ground',
    way: -1,
    wide: 44,
    Moving: ({ edge, look }) => (
      <>
        <Block y={edge + 44} to={FOOT} wide={3} name={fill(look)} />
        <Block y={edge} to={edge + 44} wide={44} name={fill(look)} round={22} />
        <Block y={edge + 12} to={edge + 32} wide={20} name={fill(look)} round={10} />
      </>
    ),
  },
}

const fill = (look: Look): string => (look === 'now' ? 'now fill' : 'before')

function Block({
  y,
  to,
  wide,
  name,
  round: rx = 2,
}: {
  y: number
  to: number
  wide: number
  name: string
  round?: number
}) {
  return (
    <rect
      class={name}
      x={MIDDLE - wide / 2}
      y={round(y)}
      width={wide}
      height={round(Math.max(0, to - y))}
      rx={rx}
    />
  )
}

const edgeOf = ({ input: { by, amount } }: State): number => EDGE + PARTS[by].way * amount * SCALE

/** Where the amount can be pulled: at the right end of the part's edge. */
export function amountPlace({ now }: Props): HandlePlace {
  const { way, wide } = PARTS[now.input.by]
  return { spot: [MIDDLE + wide / 2, edgeOf(now)], perUnit: way * SCALE }
}

/** The part that is changed, enlarged: its left half as it was before, its right half as it is now. */
export function Amount({ now, before, say, prefix }: Props) {
  const { by, amount } = now.input
  const { name, Moving, wide } = PARTS[by]
  const was = before?.input.by === by ? before : null
  const moved = say.change(amount, 'mm', 1)
  const [id, left] = [`${prefix}-half`, MIDDLE - wide / 2 - 16]
  const half = (which: string, x: number) => (
    <clipPath id={`${id}-${which}`}>
      <rect x={x} y={0} width={180} height={HEIGHT} />
    </clipPath>
  )
  return (
    <figure class="fig">
      <svg viewBox={`0 0 360 ${HEIGHT}`} role="img" aria-label={`The ${name}, enlarged: ${moved}.`}>
        {half('before', MIDDLE - 180)}
        {half('now', MIDDLE)}
        <text class="quiet" x={2} y={14}>
          {name}
        </text>
        {was && (
          <g clip-path={`url(#${id}-before)`}>
            <Moving edge={edgeOf(was)} look="before" />
          </g>
        )}
        <g clip-path={was ? `url(#${id}-now)` : undefined}>
          <Moving edge={edgeOf(now)} look="now" />
        </g>
        {by === 'tubes' && <Block y={EDGE + 57} to={FOOT - 6} wide={150} name="metal" />}
        {by === 'tyre' && <line class="ground" x1={40} x2={320} y1={FOOT} y2={FOOT} />}
        <line class="guide" x1={left - 20} x2={MIDDLE + wide / 2 + 20} y1={EDGE} y2={EDGE} />
        <Dimension from={[left, EDGE]} to={[left, round(edgeOf(now))]} text="" state="now" />
        <text class="now end" x={left - 24} y={EDGE} dy="0.35em">
          {moved}
        </text>
        {was && (
          <text class="before end" x={MIDDLE - 8} y={FOOT + 18}>
            before
          </text>
        )}
        <text class="now start" x={MIDDLE + 8} y={FOOT + 18}>
          now
        </text>
      </svg>
      <figcaption>
        The {name}, heights to one scale. The dotted line is where its edge was with nothing
        changed.
      </figcaption>
    </figure>
  )
}

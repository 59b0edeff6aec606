import type leanClearance from './statement.ts'
import type { Picture } from './solve.ts'
import { apart } from '../../drawing/apart.ts'
import type { HandlePlace } from '../../drawing/handles.ts'
import { LETTER } from '../../drawing/lettering.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { round } from '../../drawing/state.ts'
import { RULED, ruledIn, stretchAbout } from '../../drawing/stretch.ts'
import type { Stretch } from '../../drawing/stretch.ts'

type Props = FigureProps<typeof leanClearance, Picture>
type Input = Props['now']['input']

/** The drawing of the part: its stretch of height, and of the way out from the middle. */
const TOP = 10
const FOOT = 190
const WIDE = 360
const TALL = 0.1
const LONG = 0.19
/** The end of the peg that is drawn [viewBox units]. */
const PEG = { wide: 46, tall: 24 }

const heightNow = ({ output }: Props['now']): number => Number(output.heightNow)
/** The stretch of height holds the part as it was read and as it stands with its load. */
const upOf = (now: Props['now']): Stretch =>
  stretchAbout((now.input.height + heightNow(now)) / 2, TALL)
const outOf = ({ halfWidth }: Input): Stretch => stretchAbout(halfWidth, LONG)

const yOf = ({ high, scale }: Stretch, height: number): number => TOP + (high - height) * scale
const xOf = ({ low, scale }: Stretch, out: number): number => 9 + (out - low) * scale

/** Where the part can be pulled up and down. */
export function heightPlace({ now }: Props): HandlePlace | null {
  const [up, out] = [upOf(now), outOf(now.input)]
  if (!up.holds(now.input.height)) return null
  const spot = [
    xOf(out, now.input.halfWidth) - PEG.wide,
    yOf(up, now.input.height) - PEG.tall / 2,
  ] as const
  return { spot: [...spot], perUnit: -up.scale }
}

/** Where the part can be pulled out and in. */
export function outPlace({ now }: Props): HandlePlace | null {
  const [up, out] = [upOf(now), outOf(now.input)]
  if (!up.holds(now.input.height)) return null
  const spot = [xOf(out, now.input.halfWidth), yOf(up, now.input.height) - PEG.tall / 2] as const
  return { spot: [...spot], perUnit: out.scale }
}

/** The end of the part, in section: a peg with its rubber. */
function Peg({ x, y, as }: { x: number; y: number; as: 'now' | 'before' }) {
  const name = as === 'now' ? 'now fill' : 'before'
  return (
    <rect
      class={name}
      x={round(x - PEG.wide)}
      y={round(y - PEG.tall)}
      width={PEG.wide}
      height={PEG.tall}
      rx="5"
    />
  )
}

/** The part with the bike upright, enlarged: as it was read, and where it stands loaded and set as it is now. */
export function Part({ now, say, prefix }: Props) {
  const { height, halfWidth } = now.input
  const [up, out] = [upOf(now), outOf(now.input)]
  const x = xOf(out, halfWidth)
  const levels = [
    { at: height, as: 'before', text: `read ${say.quantity(height, 'mm', 0)}` },
    { at: heightNow(now), as: 'now', text: `now ${say.quantity(heightNow(now), 'mm', 0)}` },
  ].filter(({ at }) => up.holds(at))
  const middles = apart(
    levels.map(({ at }) => ({ at: yOf(up, at), size: LETTER })),
    2,
    FOOT,
  )
  // the lettering stands on the side that has more room
  const right = x < WIDE / 2
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 ${WIDE} 226`}
        role="img"
        aria-label={`The part from behind with the bike upright, enlarged: read at ${say.quantity(height, 'mm', 0)}, ${say.quantity(halfWidth, 'mm', 0)} out; now at ${say.quantity(heightNow(now), 'mm', 0)}.`}
      >
        <clipPath id={`${prefix}-part`}>
          <rect x="0" y={TOP} width={WIDE} height={FOOT - TOP} />
        </clipPath>
        <path
          class="detail"
          d={[
            ...ruledIn(up)
              .filter((at) => at >= 0)
              .map((at) => `M${right ? WIDE - 10 : 0} ${round(yOf(up, at))}h10`),
            ...ruledIn(out).map((at) => `M${round(xOf(out, at))} ${FOOT + 4}v10`),
          ].join('')}
        />
        <path class="ground" d={`M0 ${FOOT + 4}H${WIDE}`} />
        <g clip-path={`url(#${prefix}-part)`}>
          {levels.map(({ at, as }) => (
            <Peg key={as} x={x} y={yOf(up, at)} as={as === 'now' ? 'now' : 'before'} />
          ))}
        </g>
        {levels.map(({ as, text }, index) => (
          <text
            key={as}
            class={`${as === 'now' ? 'now' : 'before'} ${right ? 'end' : 'start'}`}
            x={right ? WIDE - 16 : 16}
            y={round(middles[index]!)}
            dy="0.35em"
          >
            {text}
          </text>
        ))}
        <text class="middle quiet" x={WIDE / 2} y={FOOT + 32}>
          {`out from the middle ${say.quantity(halfWidth, 'mm', 0)}`}
        </text>
      </svg>
      <figcaption>
        The end of the part from behind, bike upright, enlarged. Dashed: as it was read, the rider
        alone. Solid: loaded and set as it is now. A line every {say.quantity(RULED, 'mm', 0)}, up
        from the road and out from the middle of the tyre.
      </figcaption>
    </figure>
  )
}

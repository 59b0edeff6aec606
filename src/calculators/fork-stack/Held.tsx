import type forkStack from './statement.ts'
import type { Picture } from './solve.ts'
import { layoutFork } from '../../drawing/forkLayout.ts'
import ForkSection from '../../drawing/ForkSection.tsx'
import type { HandlePlace } from '../../drawing/handles.ts'
import { LETTER, textWidth } from '../../drawing/lettering.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { round } from '../../drawing/state.ts'
import { stretchAbout } from '../../drawing/stretch.ts'
import type { Stretch } from '../../drawing/stretch.ts'
import { legOf } from './legOf.ts'

type Props = FigureProps<typeof forkStack, Picture>
type State = Props['now']

/** The leg's centre line, its stretch from end to end, and the drawing about them. */
const CENTRE = 112
const LEFT = 9
const LONG = 0.19
const HEIGHT = 226
/** Half of what a grip takes, with room: lettering stands clear of it. */
const CLEAR = 34

/** Where the spring ends with nothing on it, and where spacer and washers hold it [m below the cap's seat]. */
function endsOf(state: State): { free: number; held: number } {
  const leg = legOf(state)
  const { seat } = layoutFork(leg)
  const free = seat - (leg.spring?.freeLength ?? 0)
  return { free, held: free + state.picture.preload }
}

const stretchOf = (state: State): Stretch => {
  const { free, held } = endsOf(state)
  return stretchAbout((free + held) / 2, LONG)
}
const along = ({ low, scale }: Stretch, depth: number): number => LEFT + (depth - low) * scale
const edgeOf = ({ input }: State, { scale }: Stretch): number =>
  (input.bike.fork.tubeDiameter * scale) / 2 + 12

/** Where the spacer can be pulled, by the end that holds the spring. */
export function spacerPlace({ now }: Props): HandlePlace | null {
  const stretch = stretchOf(now)
  const { held } = endsOf(now)
  if (!stretch.holds(held)) return null
  return {
    spot: [along(stretch, held), CENTRE + edgeOf(now, stretch)],
    perUnit: stretch.scale,
  }
}

/** Where the spring can be pulled, by the end that it would have with nothing on it. */
export function springPlace({ now }: Props): HandlePlace | null {
  const stretch = stretchOf(now)
  const { free } = endsOf(now)
  if (!stretch.holds(free)) return null
  return {
    spot: [along(stretch, free), CENTRE - edgeOf(now, stretch)],
    perUnit: -stretch.scale,
  }
}

/** The place where the spring is held, enlarged: how far it is squeezed from its free end. */
export function Held({ now, before, say, prefix }: Props) {
  const stretch = stretchOf(now)
  const { low, high, scale, holds } = stretch
  const { free, held } = endsOf(now)
  const [atFree, atHeld] = [along(stretch, free), along(stretch, held)]
  const edge = edgeOf(now, stretch)
  const preload = now.picture.preload
  const told = `${preload < 0 ? 'gap' : 'preload'} ${say.quantity(Math.abs(preload), 'mm', 1)}`
  const was = before && endsOf(before).held
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${HEIGHT}`}
        role="img"
        aria-label={`Where the spring is held, enlarged: ${told}.`}
      >
        <clipPath id={`${prefix}-held`}>
          <rect x={LEFT} y={0} width={round((high - low) * scale)} height={HEIGHT} />
        </clipPath>
        <g clip-path={`url(#${prefix}-held)`}>
          <g transform={`matrix(0 -1 1 0 ${round(LEFT - low * scale)} ${CENTRE})`}>
            <ForkSection
              leg={legOf(now)}
              state="now"
              x={0}
              top={0}
              scale={scale}
              across={scale}
              cut={high + 0.01}
            />
          </g>
          {was !== null && (
            <path
              class="before thick"
              d={`M${round(along(stretch, was))} ${CENTRE - edge}v${2 * edge}`}
            />
          )}
          <path class="guide" d={`M${round(atFree)} ${CENTRE - edge}v${2 * edge}`} />
          <path class="now thick" d={`M${round(atHeld)} ${CENTRE - edge}v${2 * edge}`} />
        </g>
        {holds(held) && (
          <text
            class="now start"
            x={round(Math.min(Math.max(atHeld, atFree + CLEAR), 356 - textWidth(told)))}
            y={LETTER}
          >
            {told}
          </text>
        )}
        {holds(free) && (
          <text
            class="quiet end"
            x={round(Math.max(Math.min(atFree, atHeld - CLEAR), 4 + textWidth('free end')))}
            y={HEIGHT - 20}
          >
            free end
          </text>
        )}
      </svg>
      <figcaption>
        Where the spring is held, enlarged, cap to the left. Dotted: where its end would stand with
        nothing on it. The bold line is where spacer and washers hold it.
      </figcaption>
    </figure>
  )
}

import type oilHeight from './statement.ts'
import type { Picture } from './solve.ts'
import { apart } from '../../drawing/apart.ts'
import { openLeg } from './openLeg.ts'
import ForkSection from '../../drawing/ForkSection.tsx'
import type { HandlePlace } from '../../drawing/handles.ts'
import { LETTER } from '../../drawing/lettering.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { round } from '../../drawing/state.ts'
import { ruledIn, RULED, stretchAbout } from '../../drawing/stretch.ts'
import type { Stretch } from '../../drawing/stretch.ts'

type Props = FigureProps<typeof oilHeight, Picture>
type State = Props['now']

/** The tube's centre line, and where the stretch begins on the drawing. */
const MIDDLE = 176
const TOP = 16
/** From the bore to the lettering on the left. */
const ASIDE = 34

const stretchOf = ({ input }: State): Stretch => stretchAbout(input.airHeight)
const heightOf = ({ low, scale }: Stretch, depth: number): number => TOP + (depth - low) * scale
const boreOf = ({ input }: State, { scale }: Stretch): number =>
  input.bike.fork.boreDiameter * scale

/** Where the oil can be pulled: its surface, as the height is read. */
export function levelPlace({ now }: Props): HandlePlace {
  const stretch = stretchOf(now)
  const wall = (now.input.bike.fork.tubeDiameter * stretch.scale) / 2 + 12
  return {
    spot: [MIDDLE + wall, heightOf(stretch, now.input.airHeight)],
    perUnit: stretch.scale,
  }
}

/** The levels there are to tell, on the left of the tube: as read, with the oil added, before. */
function levelsOf({ now, before, say }: Props) {
  const read = now.input.airHeight
  const left = Number(now.output.effective)
  const was = before ? Number(before.output.effective) : null
  const tell = (name: string, depth: number, state: 'now' | 'before' | 'quiet') => ({
    depth,
    state,
    text: `${name} ${say.quantity(depth, 'mm', 1)}`,
  })
  return [
    tell('now', left, 'now'),
    ...(Math.abs(left - read) > 5e-5 ? [tell('read', read, 'quiet')] : []),
    ...(was !== null && Math.abs(was - left) > 5e-5 ? [tell('before', was, 'before')] : []),
  ]
}

/** The surface of the oil in its tube, enlarged. */
export function Level(props: Props) {
  const { now, say, prefix } = props
  const stretch = stretchOf(now)
  const { low, high, scale, holds } = stretch
  const foot = TOP + (high - low) * scale
  const half = boreOf(now, stretch) / 2
  const levels = levelsOf(props).filter(({ depth }) => holds(depth))
  const middles = apart(
    levels.map(({ depth }) => ({ at: heightOf(stretch, depth), size: LETTER })),
    2,
    foot + 8,
  )
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${foot + 16}`}
        role="img"
        aria-label={`The oil in its tube, enlarged: ${say.quantity(now.input.airHeight, 'mm', 1)} below the top of the tube as read.`}
      >
        <clipPath id={`${prefix}-level`}>
          <rect x={0} y={TOP - 6} width={360} height={round(foot - TOP + 16)} />
        </clipPath>
        <g clip-path={`url(#${prefix}-level)`}>
          <ForkSection
            leg={openLeg(now, high)}
            state="now"
            x={MIDDLE}
            top={TOP - low * scale}
            scale={scale}
            across={scale}
            cut={high}
          />
        </g>
        <path
          class="detail"
          d={ruledIn(stretch)
            .filter((at) => at >= 0)
            .map((at) => `M${round(MIDDLE - half)} ${round(heightOf(stretch, at))}h9`)
            .join('')}
        />
        {levels.map(({ depth, state }) => (
          <line
            key={state}
            class={state === 'quiet' ? 'guide' : `${state} thick`}
            x1={round(MIDDLE - half)}
            x2={round(MIDDLE + half)}
            y1={round(heightOf(stretch, depth))}
            y2={round(heightOf(stretch, depth))}
          />
        ))}
        {levels.map(({ state, text }, index) => (
          <text
            key={state}
            class={`${state} end`}
            x={round(MIDDLE - half - ASIDE)}
            y={round(middles[index]!)}
            dy="0.35em"
          >
            {text}
          </text>
        ))}
      </svg>
      <figcaption>
        The surface of the oil, enlarged, down from the top of the tube. A line every{' '}
        {say.quantity(RULED, 'mm', 0)}.
      </figcaption>
    </figure>
  )
}

import { apart } from './apart.ts'
import { Break } from './Break.tsx'
import type { HandlePlace } from './handles.ts'
import { LETTER } from './lettering.ts'
import { round } from './state.ts'
import { ruledIn } from './stretch.ts'
import type { Stretch } from './stretch.ts'

/** Where the stretch begins on the drawing, and how high the drawing is, feet included. */
const TOP = 16
export const tubeFoot = (stretch: Stretch): number =>
  TOP + (stretch.high - stretch.low) * stretch.scale

/** A place on the exposed tube: where the yoke's edge is. */
export interface TubeMark {
  /** exposed tube, seal to the edge [m] */
  exposed: number
  state: 'now' | 'before'
  /** what it is and how long, in two short lines; none: not lettered */
  lines: readonly string[]
  side: 'left' | 'right'
}

interface TubeProps {
  /** the tube's centre line, and its width [viewBox units] */
  x: number
  width: number
  stretch: Stretch
  marks: readonly TubeMark[]
  /** from the tube's edge to the lettering of its marks [viewBox units]: a grip stands between */
  aside?: number
}

const heightOf = ({ high, scale }: Stretch, exposed: number): number =>
  TOP + (high - exposed) * scale

/** Where a mark can be pulled, at an edge of its tube; null where it lies past the stretch. */
export function markPlace(
  { x, width, stretch }: Pick<TubeProps, 'x' | 'width' | 'stretch'>,
  exposed: number,
  side: 'left' | 'right',
): HandlePlace | null {
  if (!stretch.holds(exposed)) return null
  const edge = x + (side === 'left' ? -1 : 1) * (width / 2 + 8)
  return { spot: [edge, heightOf(stretch, exposed)], perUnit: -stretch.scale }
}

/** What is written on one side, a pair of lines a mark, moved apart where two would meet. */
function Lettering({ x, width, stretch, marks, aside = 66 }: TubeProps) {
  const sides = (['left', 'right'] as const).map((side) => {
    const all = marks.filter((mark) => mark.side === side && mark.lines.length > 0)
    const middles = apart(
      all.map(({ exposed, lines }) => ({
        at: heightOf(stretch, exposed),
        size: lines.length * LETTER,
      })),
      2,
      tubeFoot(stretch) + 8,
    )
    return { side, all, middles }
  })
  return (
    <>
      {sides.flatMap(({ side, all, middles }) =>
        all.flatMap(({ lines, state }, index) =>
          lines.map((line, row) => (
            <text
              key={`${side} ${line}`}
              class={`${state} ${side === 'left' ? 'end' : 'start'}`}
              x={x + (side === 'left' ? -1 : 1) * (width / 2 + aside)}
              y={round(middles[index]! + (row - (lines.length - 1) / 2) * LETTER)}
              dy="0.35em"
            >
              {line}
            </text>
          )),
        ),
      )}
    </>
  )
}

/** A stretch of a fork's tube above its seal, enlarged: the yoke's edge as it was read each time, and a line every ten millimetres. */
export function TubeAtMark(props: TubeProps) {
  const { x, width, stretch } = props
  const marks = props.marks.filter(({ exposed }) => stretch.holds(exposed))
  const foot = tubeFoot(stretch)
  const seal = stretch.low < 0 ? heightOf(stretch, 0) : null
  const left = x - width / 2
  return (
    <g>
      <rect
        class="now fill thin"
        x={left}
        y={TOP}
        width={width}
        height={round((seal ?? foot) - TOP)}
      />
      <path
        class="detail"
        d={ruledIn(stretch)
          .filter((at) => at > 0)
          .map((at) => `M${left} ${round(heightOf(stretch, at))}h9`)
          .join('')}
      />
      <Break x={x} y={TOP} width={width} />
      {seal === null ? (
        <Break x={x} y={foot} width={width} />
      ) : (
        <rect
          class="now solid"
          x={left - 8}
          y={round(seal)}
          width={width + 16}
          height={round(foot - seal)}
        />
      )}
      {marks.map(({ exposed, state }) => (
        <line
          key={`${state} ${exposed}`}
          class={state === 'now' ? 'mark' : 'before thick'}
          x1={left - 8}
          x2={left + width + 8}
          y1={round(heightOf(stretch, exposed))}
          y2={round(heightOf(stretch, exposed))}
        />
      ))}
      <Lettering {...props} marks={marks} />
    </g>
  )
}

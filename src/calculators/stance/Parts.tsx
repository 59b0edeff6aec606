import type stance from './statement.ts'
import type { Picture } from './solve.ts'
import type { Handle } from '../../drawing/handles.ts'
import { PART_FOOT, PartMoved, partPlace } from '../../drawing/PartMoved.tsx'
import type { PartKind } from '../../drawing/PartMoved.tsx'
import type { FigureProps } from '../../drawing/props.ts'

type Props = FigureProps<typeof stance, Picture>

/** The parts beside each other: each so slim that its grip stands between it and the next. */
const COLUMNS = [
  { input: 'forkPreloadChange', kind: 'preload', name: 'fork preload', x: 38, slim: 0.56 },
  { input: 'tubeRaise', kind: 'tubes', name: 'tubes', x: 158, slim: 0.5 },
  { input: 'rearPreloadChange', kind: 'preload', name: 'shock preload', x: 278, slim: 0.66 },
] as const satisfies readonly {
  input: keyof Props['now']['input']
  kind: PartKind
  name: string
  x: number
  slim: number
}[]

/** What can be pulled: the spring of the fork under its cap, its tubes in the yokes, and the spring of the shock under its collar. */
export const partHandles: readonly Handle<Props>[] = COLUMNS.map(({ input, kind, x, slim }) => ({
  input,
  view: 'parts',
  axis: 'y',
  side: 'right',
  part: 'a part',
  at: ({ now }) => partPlace(kind, now.input[input], x, slim),
}))

/** The parts that a spanner moves, enlarged. */
export function Parts({ now, before, say, prefix }: Props) {
  const moved = (input: (typeof COLUMNS)[number]['input']): string =>
    say.change(now.input[input], 'mm', 1)
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${PART_FOOT + 40}`}
        role="img"
        aria-label={`The parts that are moved, enlarged: ${COLUMNS.map(({ name, input }) => `${name} ${moved(input)}`).join(', ')}.`}
      >
        {COLUMNS.map(({ input, kind, name, x, slim }) => (
          <g key={input}>
            <PartMoved
              kind={kind}
              amount={now.input[input]}
              before={before && before.input[input]}
              x={x}
              slim={slim}
              prefix={`${prefix}-${input}`}
            />
            <text class="quiet start" x={x - 36} y={PART_FOOT + 18}>
              {name}
            </text>
            <text class="now start" x={x - 36} y={PART_FOOT + 35}>
              {moved(input)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        What a spanner moves, heights to one scale: left half before, right half now. The dotted
        line is where the edge was with nothing changed.
      </figcaption>
    </figure>
  )
}

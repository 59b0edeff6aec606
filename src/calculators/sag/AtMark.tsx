import type sag from './statement.ts'
import type { HandlePlace } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { RULED, stretchAbout } from '../../drawing/stretch.ts'
import type { Stretch } from '../../drawing/stretch.ts'
import { markPlace, TubeAtMark, tubeFoot } from '../../drawing/TubeAtMark.tsx'
import type { TubeMark } from '../../drawing/TubeAtMark.tsx'

type Props = FigureProps<typeof sag>
type State = Props['now']

/** The tube's centre line, and its width: it is a reader's own, of no known diameter. */
const PLACE = { x: 176, width: 56 }

const stretchOf = ({ input: { extended, settledDown } }: State): Stretch =>
  stretchAbout((extended + settledDown) / 2)

/** Where a reading can be pulled. */
export const atMark = (now: State, exposed: number, side: 'left' | 'right'): HandlePlace | null =>
  markPlace({ ...PLACE, stretch: stretchOf(now) }, exposed, side)

/** The tube where the yoke's edge stood at each reading, enlarged. */
export function AtMark({ now, before, say }: Props) {
  const { extended, settledDown, settledUp } = now.input
  const stretch = stretchOf(now)
  const mark = (name: string, exposed: number, side: TubeMark['side']): TubeMark => ({
    exposed,
    state: 'now',
    lines: [name, say.quantity(exposed, 'mm', 1)],
    side,
  })
  const was = before ? [before.input.settledDown, before.input.settledUp] : []
  const readings = `hanging ${say.quantity(extended, 'mm', 1)}, lifted ${say.quantity(settledUp, 'mm', 1)}, pushed down ${say.quantity(settledDown, 'mm', 1)}`
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${tubeFoot(stretch) + 16}`}
        role="img"
        aria-label={`The exposed tube, enlarged: ${readings}.`}
      >
        <TubeAtMark
          {...PLACE}
          stretch={stretch}
          marks={[
            ...was.map((exposed): TubeMark => ({
              exposed,
              state: 'before',
              lines: [],
              side: 'left',
            })),
            mark('hanging', extended, 'right'),
            mark('lifted', settledUp, 'right'),
            mark('pushed down', settledDown, 'left'),
          ]}
        />
      </svg>
      <figcaption>
        The same tube, enlarged: where the edge of the yoke stood at each reading. A line every{' '}
        {say.quantity(RULED, 'mm', 0)} above the seal.
      </figcaption>
    </figure>
  )
}

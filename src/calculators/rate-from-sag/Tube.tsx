import type rateFromSag from './statement.ts'
import type { Picture } from './solve.ts'
import type { HandlePlace } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { RULED, stretchAbout } from '../../drawing/stretch.ts'
import type { Stretch } from '../../drawing/stretch.ts'
import { markPlace, TubeAtMark, tubeFoot } from '../../drawing/TubeAtMark.tsx'
import type { TubeMark } from '../../drawing/TubeAtMark.tsx'

type Props = FigureProps<typeof rateFromSag, Picture>
type State = Props['now']

/** The tube's centre line and its width. */
const PLACE = { x: 176, width: 56 }

const stretchOf = ({ input: { extended, riderReading } }: State): Stretch =>
  stretchAbout((extended + riderReading) / 2)

/** Where a reading can be pulled. */
export const tubePlace = (
  now: State,
  exposed: number,
  side: 'left' | 'right',
): HandlePlace | null => markPlace({ ...PLACE, stretch: stretchOf(now) }, exposed, side)

/** The tube where the yoke's edge stood at each reading, enlarged. */
export function Tube({ now, say }: Props) {
  const { extended, staticReading, riderReading } = now.input
  const stretch = stretchOf(now)
  const mark = (lines: string[], exposed: number, side: TubeMark['side']): TubeMark => ({
    exposed,
    state: 'now',
    lines: [...lines, say.quantity(exposed, 'mm', 1)],
    side,
  })
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${tubeFoot(stretch) + 16}`}
        role="img"
        aria-label={`The exposed tube, enlarged: hanging ${say.quantity(extended, 'mm', 1)}, bike alone ${say.quantity(staticReading, 'mm', 1)}, with rider ${say.quantity(riderReading, 'mm', 1)}.`}
      >
        <TubeAtMark
          {...PLACE}
          stretch={stretch}
          marks={[
            mark(['hanging'], extended, 'right'),
            mark(['bike', 'alone'], staticReading, 'left'),
            mark(['with', 'rider'], riderReading, 'right'),
          ]}
        />
      </svg>
      <figcaption>
        The exposed tube, enlarged: where the edge of the yoke stood at each reading. A line every{' '}
        {say.quantity(RULED, 'mm', 0)} above the seal.
      </figcaption>
    </figure>
  )
}

import type marks from './statement.ts'
import type { HandlePlace } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { RULED, stretchAbout } from '../../drawing/stretch.ts'
import type { Stretch } from '../../drawing/stretch.ts'
import { markPlace, TubeAtMark, tubeFoot } from '../../drawing/TubeAtMark.tsx'

type Props = FigureProps<typeof marks>
type Input = Props['now']['input']

/** Each tube stands so far from its neighbour that the grips between them do too. */
const LEGS = [
  { leg: 'left', before: 'beforeLeft', after: 'afterLeft', x: 84 },
  { leg: 'right', before: 'beforeRight', after: 'afterRight', x: 276 },
] as const
const WIDE = 36
const PLACES = {
  beforeLeft: 'right',
  afterLeft: 'left',
  beforeRight: 'left',
  afterRight: 'right',
} as const
export type Reading = keyof typeof PLACES

/** Both tubes are drawn at one height, so that they can be compared. */
const stretchOf = ({ beforeLeft, beforeRight, afterLeft, afterRight }: Input): Stretch =>
  stretchAbout((beforeLeft + beforeRight + afterLeft + afterRight) / 4)

/** On which side of its tube a reading is pulled. */
export const sideOf = (reading: Reading): 'left' | 'right' => PLACES[reading]

/** Where a reading can be pulled. */
export function readingPlace({ input }: Props['now'], reading: Reading): HandlePlace | null {
  const { x } = LEGS.find(({ before, after }) => before === reading || after === reading)!
  const tube = { x, width: WIDE, stretch: stretchOf(input) }
  return markPlace(tube, input[reading], sideOf(reading))
}

/** Both tubes where the yoke's edge stood before and after, enlarged. */
export function Readings({ now: { input }, say }: Props) {
  const stretch = stretchOf(input)
  const foot = tubeFoot(stretch)
  const told = LEGS.map(
    ({ leg, before, after }) =>
      `${leg} leg from ${say.quantity(input[before], 'mm', 1)} to ${say.quantity(input[after], 'mm', 1)}`,
  )
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${foot + 42}`}
        role="img"
        aria-label={`The exposed tubes, enlarged: ${told.join(', ')}.`}
      >
        {LEGS.map(({ leg, before, after, x }) => (
          <g key={leg}>
            <TubeAtMark
              x={x}
              width={WIDE}
              stretch={stretch}
              marks={[
                { exposed: input[before], state: 'before', lines: [], side: 'left' },
                { exposed: input[after], state: 'now', lines: [], side: 'left' },
              ]}
            />
            <text class="before middle" x={x} y={foot + 20}>
              before {say.number(input[before], 'mm', 1)}
            </text>
            <text class="now middle" x={x} y={foot + 37}>
              {leg} {say.quantity(input[after], 'mm', 1)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        Both tubes, enlarged: the edge of the yoke before, dashed, and now. A line every{' '}
        {say.quantity(RULED, 'mm', 0)} above the seal.
      </figcaption>
    </figure>
  )
}

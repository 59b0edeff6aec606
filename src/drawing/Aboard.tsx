import { PART_LABELS } from '../bikes/aboard.ts'
import type { BikePicture } from '../bikes/picture.ts'
import type { Say } from '../units/say.ts'
import { apart } from './apart.ts'
import { LETTER, textWidth } from './lettering.ts'
import type { Projection } from './projection.ts'
import { round } from './state.ts'

const ARM = 5
/** The first baseline inside the frame. */
const FIRST = 13

/** Where each person or load aboard acts: a cross, its name and mass, and the plumb line to the ground. */
export function Aboard({
  places,
  projection,
  say,
}: {
  places: NonNullable<BikePicture['aboard']>
  projection: Projection
  say: Say
}) {
  const marks = places.map((place) => {
    const [x, y] = projection.spot(place)
    const text = `${PART_LABELS[place.part]} ${say.quantity(place.mass, 'kg', 0)}`
    return { x, y, text, width: textWidth(text) }
  })
  const foremost = Math.max(...marks.map(({ x }) => x))
  // the foremost is named ahead of its cross; the others behind theirs, one below the other
  const behind = marks.filter(({ x }) => x < foremost)
  const baselines = apart(
    behind.map(({ y }) => ({ at: y, size: LETTER })),
    FIRST - LETTER / 2,
    projection.ground,
    1,
  )
  return (
    <g>
      {marks.map(({ x, y, text, width }) => {
        const row = behind.findIndex((mark) => mark.x === x && mark.y === y)
        const ahead = row < 0
        return (
          <g key={text}>
            <line class="plumb" x1={round(x)} x2={round(x)} y1={round(y)} y2={projection.ground} />
            <path
              class="now thick"
              d={`M${round(x - ARM)} ${round(y)} H${round(x + ARM)} M${round(x)} ${round(y - ARM)} V${round(y + ARM)}`}
            />
            <text
              class={ahead ? 'start halo' : 'end halo'}
              x={round(ahead ? x + 8 : Math.max(x - 8, width + 2))}
              y={round(ahead ? Math.max(FIRST, y - 6) : baselines[row]!)}
            >
              {text}
            </text>
          </g>
        )
      })}
    </g>
  )
}

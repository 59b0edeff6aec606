import type { BikePicture } from '../bikes/picture.ts'
import type { Say } from '../units/say.ts'
import { Dimension } from './Dimension.tsx'
import { textWidth } from './lettering.ts'
import { LoadArrow } from './LoadArrow.tsx'
import type { Projection } from './projection.ts'
import { round } from './state.ts'
import { LOAD_SCALE, ROWS } from './sideViewScale.ts'

const TRAIL = 'trail'

/** Where the trail is, ahead of the front contact. Its length is told with the ground magnified, where it can be read. */
function Trail({ from, to, y, right }: { from: number; to: number; y: number; right: number }) {
  const width = textWidth(TRAIL)
  // right of the load's arrow, and inside the frame
  const middle = Math.min(Math.max((from + to) / 2, from + 8 + width / 2), right - width / 2)
  return (
    <g>
      <Dimension from={[from, y + 3]} to={[to, y + 3]} offset={ROWS.trail - 3} text="" />
      <text class="middle" x={round(middle)} y={y + ROWS.letters}>
        {TRAIL}
      </text>
    </g>
  )
}

/** Below the ground: the wheelbase between the contacts, loads as arrows under them, the trail ahead of the front one. */
export function SideDimensions({
  now,
  before,
  projection,
  say,
  right,
}: {
  now: BikePicture
  before: BikePicture | null
  projection: Projection
  say: Say
  /** where lettering has to end [viewBox units] */
  right: number
}) {
  const { spot, ground } = projection
  const { wheelbase, trail } = now.pose
  const [rear, front, foot] = [
    spot({ x: 0, z: 0 })[0],
    spot({ x: wheelbase, z: 0 })[0],
    spot({ x: wheelbase + trail, z: 0 })[0],
  ]
  // a value stands beside its arrow, towards the middle of the bike: before is drawn on the outer side
  const arrows = now.loads
    ? ([
        ['rear', rear, 1],
        ['front', front, -1],
      ] as const)
    : []
  const across = ground + ROWS.wheelbase
  return (
    <g>
      <Dimension
        from={[rear, across]}
        to={[front, across]}
        text={`wheelbase ${say.quantity(wheelbase, 'mm', 1)}`}
        place="within"
      />
      {arrows.map(([end, x, inward]) => (
        <g key={end} class="load">
          {before?.loads && (
            <LoadArrow
              tip={[x - 6 * inward, ground + 2]}
              load={before.loads[end]}
              scale={LOAD_SCALE}
              state="before"
            />
          )}
          <LoadArrow tip={[x, ground + 2]} load={now.loads![end]} scale={LOAD_SCALE} />
          <text
            class={inward > 0 ? 'start' : 'end'}
            x={round(x + 9 * inward)}
            y={ground + ROWS.letters}
          >
            {say.quantity(now.loads![end], 'kg load', 1)}
          </text>
        </g>
      ))}
      <Trail from={front} to={foot} y={ground} right={right} />
    </g>
  )
}

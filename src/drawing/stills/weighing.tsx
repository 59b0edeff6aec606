import { bikeShape } from '../bikeShape.ts'
import { Dimension } from '../Dimension.tsx'
import { projection } from '../projection.ts'
import { lifted } from '../side/lifted.ts'
import { chassisPoint, POINTS, SideBike } from '../side/SideBike.tsx'
import { round } from '../state.ts'
import { STATIC } from './bike.tsx'
import { Call, Floor, Words } from './parts.tsx'

/** Height of the scale, and of the boards that match it [m]. */
const BOARD = 0.06
const RISE = 0.3
/** A finger's width between tyre and stop [m]. */
const CLEAR = 0.015
const LEVEL = bikeShape(STATIC)
const RAISED = lifted(LEVEL, 'frontAxle', RISE)

/** Height of a stop [m], and how far from the tyre's contact it stands: where the tyre is as high as the stop, and clear of that. */
const STOP = 0.1
const reachOf = (radius: number, scale: number): number =>
  (Math.sqrt(2 * radius * STOP - STOP * STOP) + CLEAR) * scale

/** A platform as long as the wheel, its stops fore and aft a finger's width clear of the tyre. `depth` below its top, units. */
function Platform({
  x,
  top,
  depth,
  radius,
  scale,
  name,
}: {
  x: number
  top: number
  depth: number
  radius: number
  scale: number
  name: string
}) {
  const half = radius * scale
  const stop = STOP * scale
  const reach = reachOf(radius, scale)
  return (
    <g>
      <rect
        class={name}
        x={round(x - half)}
        y={round(top)}
        width={round(2 * half)}
        height={round(depth)}
      />
      <path
        class="support-pad"
        d={`M${round(x - reach)} ${round(top)}v${round(-stop)}h${round(-stop * 0.6)}v${round(stop)}z`}
      />
      <path
        class="support-pad"
        d={`M${round(x + reach)} ${round(top)}v${round(-stop)}h${round(stop * 0.6)}v${round(stop)}z`}
      />
    </g>
  )
}

/** A strap that is hooked on and slack. */
function SlackStrap({
  from: [x, y],
  floor,
  away,
}: {
  from: readonly [number, number]
  floor: number
  away: number
}) {
  const d = `M${round(x)} ${round(y)}C${round(x + away * 0.1)} ${round(floor - 6)} ${round(x + away * 0.5)} ${round(floor + 4)} ${round(x + away)} ${floor}`
  return (
    <g class="webbing">
      <path class="webbing-edge" d={d} />
      <path class="webbing-weave" d={d} />
      <circle class="webbing-end" cx={round(x)} cy={round(y)} r="3" />
      <circle class="webbing-end" cx={round(x + away)} cy={floor - 2} r="3" />
    </g>
  )
}

/** Both wheels equally high: the front on the scale, the rear on boards. */
export function LevelOnScale({
  scale,
  left,
  floor,
}: {
  scale: number
  left: number
  floor: number
}) {
  const top = floor - BOARD * scale
  const view = projection(scale, [left, top])
  const front = view.spot(LEVEL.frontAxle)[0]
  const grip = view.spot(chassisPoint(LEVEL, POINTS.grip))
  const stop = left + reachOf(LEVEL.rearRadius, scale)
  return (
    <g>
      <Platform
        x={left}
        top={top}
        depth={BOARD * scale}
        radius={LEVEL.rearRadius}
        scale={scale}
        name="metal"
      />
      <Platform
        x={front}
        top={top}
        depth={BOARD * scale}
        radius={LEVEL.frontRadius}
        scale={scale}
        name="now solid"
      />
      <SideBike shape={LEVEL} projection={view} />
      <Floor from={0} to={360} y={floor} />
      <Words
        at={[left + 4, floor + 22]}
        anchor="middle"
        lines={['boards as high', 'as the scale']}
      />
      <Words
        at={[front, floor + 22]}
        anchor="middle"
        lines={['scale, with', 'its own stops']}
        tone="now"
      />
      <Call
        at={[(left + front) / 2, floor + 22]}
        anchor="middle"
        from={[(left + front) / 2 - 10, floor + 9]}
        to={[stop + 3, top - 7]}
        lines={['stops, just', 'clear']}
      />
      <Call
        at={[6, 20]}
        from={[104, 36]}
        to={[grip[0] - 4, grip[1] - 3]}
        lines={['a hand at the', 'front brake']}
      />
    </g>
  )
}

/** The rear wheel on a platform, the front wheel on the scale. */
export function RaisedOnPlatform({
  scale,
  left,
  floor,
}: {
  scale: number
  left: number
  floor: number
}) {
  const view = projection(scale, [left, floor - BOARD * scale])
  const [rear, front] = [view.spot(RAISED.rearAxle), view.spot(RAISED.frontAxle)]
  const top = rear[1] + RAISED.rearRadius * scale
  const held = view.spot(chassisPoint(RAISED, POINTS.seatJunction))
  const grip = view.spot(chassisPoint(RAISED, POINTS.grip))
  const level = floor - BOARD * scale - LEVEL.rearRadius * scale
  const beside = rear[0] - 0.42 * scale
  return (
    <g>
      <Platform
        x={rear[0]}
        top={top}
        depth={floor - top}
        radius={RAISED.rearRadius}
        scale={scale}
        name="metal"
      />
      <Platform
        x={front[0]}
        top={floor - BOARD * scale}
        depth={BOARD * scale}
        radius={RAISED.frontRadius}
        scale={scale}
        name="now solid"
      />
      <SideBike shape={RAISED} projection={view} />
      <SlackStrap from={held} floor={floor} away={0.42 * scale} />
      <Floor from={0} to={360} y={floor} />
      {[level, rear[1]].map((y) => (
        <line
          key={y}
          class="guide"
          x1={round(beside - 6)}
          x2={round(rear[0])}
          y1={round(y)}
          y2={round(y)}
        />
      ))}
      <Words
        at={[front[0] + 10, floor + 22]}
        anchor="middle"
        lines={['scale, with', 'its own stops']}
        tone="now"
      />
      <Words
        at={[rear[0] + 4, floor + 22]}
        anchor="middle"
        lines={['platform, stops', 'fore and aft']}
      />
      <Call
        at={[186, floor + 22]}
        anchor="middle"
        from={[184, floor + 10]}
        to={[held[0] + 0.3 * scale, floor - 2]}
        lines={['side straps,', 'slack']}
      />
      <Call
        at={[354, 34]}
        anchor="end"
        from={[318, 60]}
        to={[grip[0] + 2, grip[1] - 2]}
        lines={['a hand at the', 'front brake']}
      />
      <Dimension
        from={[beside, level]}
        to={[beside, rear[1]]}
        text="lift"
        state="now"
        place="before"
      />
    </g>
  )
}

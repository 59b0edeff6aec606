import { Dimension } from './Dimension.tsx'
import { round } from './state.ts'
import type { Spot } from './state.ts'

interface Steering {
  trail: number
  rake: number
}

interface ContactPatchProps {
  now: Steering
  before?: Steering | null
  /** front tyre radius [m]: how the tread curves away from the contact */
  radius: number
  /** where the contact stands on the drawing, and how much room is to its right; an axis that meets the road behind the contact moves it to the right */
  contact: Spot
  room: number
  /** the normal trail, written: it is drawn as well, from the contact to the axis */
  normal?: string
  /** viewBox units per metre of the drawing that this one magnifies */
  scale: number
  /** it is drawn for trails up to this at least [m], so that its scale stays while one moves */
  reach?: number
  /** writes a trail */
  say: (trail: number) => string
}

const STEPS = [2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20]

/** How far these trails reach behind the contact [m], at most; 0 where all lie ahead of it. */
const behind = (trails: readonly number[]): number => Math.max(0, ...trails.map((trail) => -trail))

/** The largest tidy magnification at which these trails fit into `room` [viewBox units]. */
export function patchMagnification(trails: readonly number[], scale: number, room: number): number {
  const reach = Math.max(behind(trails) + Math.max(0, ...trails), 1e-3)
  return STEPS.filter((times) => reach * scale * times <= room).at(-1) ?? 1
}

/** How far the axis is drawn above the ground and below it, and the height of the two rows of letters over a normal trail [viewBox units]. */
const AXIS = 46
const UNDER = 12
const OVER = [84, 67] as const

/** The trail at right angles to the axis, from the contact up to it, and its value over both. */
function Normal({
  from: [x, y],
  to,
  left,
  text,
}: {
  from: Spot
  to: Spot
  left: number
  text: string
}) {
  return (
    <g>
      <line class="now thin" x1={round(x)} y1={y} x2={round(to[0])} y2={round(to[1])} />
      {['normal trail', text].map((line, row) => (
        <text key={line} class="start" x={left} y={y - OVER[row]!}>
          {line}
        </text>
      ))}
    </g>
  )
}

function Foot({
  x,
  y,
  rake,
  state,
  up = AXIS,
  down = UNDER,
}: {
  x: number
  y: number
  rake: number
  state: 'now' | 'before'
  up?: number
  down?: number
}) {
  return (
    <>
      <line
        class={`${state} axis`}
        x1={round(x - Math.tan(rake) * up)}
        y1={round(y - up)}
        x2={round(x + Math.tan(rake) * down)}
        y2={round(y + down)}
      />
      <circle
        class={state === 'now' ? 'now solid' : 'before hollow'}
        cx={round(x)}
        cy={round(y)}
        r="2.4"
      />
    </>
  )
}

/** A trail's dimension, `y` where its lines to the ground begin; the value stands under its line, where no line of the other crosses it. */
function Measured({
  from,
  to,
  y,
  text,
  state,
}: {
  from: number
  to: number
  y: number
  text: string
  state: 'now' | 'before'
}) {
  return (
    <Dimension
      from={[from, y]}
      to={[to, y]}
      offset={from <= to ? 20 : -20}
      text={text}
      state={state}
      place="under"
    />
  )
}

/** The ground at the front wheel, magnified: from the tyre's contact to where the steering axis meets the road, before and now. */
export function ContactPatch({
  now,
  before,
  radius,
  contact: [left, y],
  room,
  normal,
  scale,
  reach = 0,
  say,
}: ContactPatchProps) {
  const trails = [now.trail, ...(before ? [before.trail] : [])]
  const magnified = scale * patchMagnification([...trails, reach], scale, room)
  const x = left + behind(trails) * magnified
  const r = radius * magnified
  const spread = Math.min(34, r * 0.5)
  const rise = r - Math.sqrt(r * r - spread * spread)
  const foot = (trail: number): number => x + trail * magnified
  // along the axis from the road to where the normal trail meets it
  const up = now.trail * Math.sin(now.rake) * magnified
  const meets: Spot = [foot(now.trail) - up * Math.sin(now.rake), y - up * Math.cos(now.rake)]
  // a trail behind the contact has its normal below the road
  const rises = normal === undefined ? 0 : y - meets[1]
  return (
    <g>
      <line class="ground" x1={round(left - 34)} x2={round(left + room + 10)} y1={y} y2={y} />
      <path
        class="now fill"
        d={`M${round(x - spread)} ${round(y - rise)} A${round(r)} ${round(r)} 0 0 0 ${round(x + spread)} ${round(y - rise)}`}
      />
      <line class="axis ink" x1={round(x)} x2={round(x)} y1={y - AXIS} y2={y + UNDER} />
      {before && <Foot x={foot(before.trail)} y={y} rake={before.rake} state="before" />}
      <Foot
        x={foot(now.trail)}
        y={y}
        rake={now.rake}
        state="now"
        up={Math.max(AXIS, rises + 5)}
        down={Math.max(UNDER, 5 - rises)}
      />
      {normal !== undefined && <Normal from={[x, y]} to={meets} left={left - 8} text={normal} />}
      {before && (
        <Measured
          from={x}
          to={foot(before.trail)}
          y={y + 4}
          text={`before ${say(before.trail)}`}
          state="before"
        />
      )}
      <Measured
        from={x}
        to={foot(now.trail)}
        y={y + (before ? 44 : 4)}
        text={`now ${say(now.trail)}`}
        state="now"
      />
    </g>
  )
}

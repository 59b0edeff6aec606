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
  /** where the contact stands on the drawing, and how much room is to its right */
  contact: Spot
  room: number
  /** viewBox units per metre of the drawing that this one magnifies */
  scale: number
  /** writes a trail */
  say: (trail: number) => string
}

const STEPS = [2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20]

/** The largest tidy magnification at which these trails fit into `room` [viewBox units]. */
export function patchMagnification(trails: readonly number[], scale: number, room: number): number {
  const longest = Math.max(...trails.map(Math.abs), 1e-3)
  return STEPS.filter((times) => longest * scale * times <= room).at(-1) ?? 1
}

function Foot({ x, y, rake, state, room }: { x: number; y: number; rake: number; state: 'now' | 'before'; room: number }) {
  const [up, down] = [room, 12]
  return (
    <>
      <line class={`${state} axis`} x1={round(x - Math.tan(rake) * up)} y1={round(y - up)} x2={round(x + Math.tan(rake) * down)} y2={round(y + down)} />
      <circle class={state === 'now' ? 'now solid' : 'before hollow'} cx={round(x)} cy={round(y)} r="2.4" />
    </>
  )
}

/** The ground at the front wheel, magnified: from the tyre's contact to where the steering axis meets the road, before and now. */
export function ContactPatch({ now, before, radius, contact: [x, y], room, scale, say }: ContactPatchProps) {
  const magnified = scale * patchMagnification([now.trail, ...(before ? [before.trail] : [])], scale, room)
  const r = radius * magnified
  const spread = Math.min(34, r * 0.5)
  const rise = r - Math.sqrt(r * r - spread * spread)
  const foot = (trail: number): number => x + trail * magnified
  return (
    <g>
      <line class="ground" x1={round(x - 34)} x2={round(x + room + 10)} y1={y} y2={y} />
      <path class="now fill" d={`M${round(x - spread)} ${round(y - rise)} A${round(r)} ${round(r)} 0 0 0 ${round(x + spread)} ${round(y - rise)}`} />
      <line class="axis ink" x1={x} x2={x} y1={y - 46} y2={y + 12} />
      {before && <Foot x={foot(before.trail)} y={y} rake={before.rake} state="before" room={46} />}
      <Foot x={foot(now.trail)} y={y} rake={now.rake} state="now" room={46} />
      {before && <Dimension from={[x, y + 4]} to={[foot(before.trail), y + 4]} offset={24} text={`before ${say(before.trail)}`} state="before" />}
      <Dimension from={[x, y + 4]} to={[foot(now.trail), y + 4]} offset={before ? 50 : 24} text={`now ${say(now.trail)}`} state="now" />
    </g>
  )
}

import { direction, round } from '../state.ts'
import type { Spot } from '../state.ts'

/** A support stand from the side: feet, post, and a pad whose top is at `at`. */
export function SupportStand({
  at: [x, y],
  floor,
  half = 15,
}: {
  at: Spot
  floor: number
  half?: number
}) {
  const post = y + 7
  return (
    <g class="support">
      <path
        class="support-metal"
        d={`M${round(x - half)} ${floor}L${round(x - 4)} ${round(post + 8)}H${round(x + 4)}L${round(x + half)} ${floor}Z`}
      />
      <path
        class="support-hole"
        d={`M${round(x - half * 0.5)} ${floor}L${round(x)} ${round((post + 8) * 0.35 + floor * 0.65)}L${round(x + half * 0.5)} ${floor}Z`}
      />
      <rect class="support-metal" x={round(x - 2.6)} y={round(post - 4)} width="5.2" height={14} />
      <path class="support-pad" d={`M${round(x - 9)} ${round(y)}h18v4.6l-4 2.6h-10l-4 -2.6z`} />
    </g>
  )
}

/** A strap pulled straight between two places, with the hook or loop at its first end. */
export function Strap({ from, to }: { from: Spot; to: Spot }) {
  const d = `M${round(from[0])} ${round(from[1])}L${round(to[0])} ${round(to[1])}`
  return (
    <g class="webbing">
      <path class="webbing-edge" d={d} />
      <path class="webbing-weave" d={d} />
      <circle class="webbing-end" cx={round(from[0])} cy={round(from[1])} r="3" />
    </g>
  )
}

/** A paddock stand from the side, down on its feet: the cradle under the axle, the wheels that it was levered over, and a wedge ahead of them and behind. */
export function PaddockStand({ axle: [x, y], floor }: { axle: Spot; floor: number }) {
  const wheel: Spot = [x + 16, floor - 5]
  return (
    <g class="support">
      <path
        class="paddock-edge"
        d={`M${round(x)} ${round(y + 6)}L${wheel[0]} ${wheel[1]}L${round(x - 34)} ${floor - 3}L${round(x)} ${round(y + 6)}`}
      />
      <path
        class="paddock"
        d={`M${round(x)} ${round(y + 6)}L${wheel[0]} ${wheel[1]}L${round(x - 34)} ${floor - 3}L${round(x)} ${round(y + 6)}`}
      />
      <path class="support-pad" d={`M${round(x - 7)} ${round(y + 3)}q7 6 14 0v4q-7 5 -14 0z`} />
      <circle class="support-metal" cx={wheel[0]} cy={wheel[1]} r="5" />
      <Chock x={wheel[0] + 6} floor={floor} towards="left" size={9} />
      <Chock x={wheel[0] - 6} floor={floor} towards="right" size={9} />
    </g>
  )
}

/** The strong point overhead: a beam with its hatching above. */
export function Beam({ from, to, y }: { from: number; to: number; y: number }) {
  const strokes = Array.from(
    { length: Math.floor((to - from) / 10) },
    (_, index) => `M${round(from + 6 + index * 10)} ${y - 5}l-5 -5`,
  )
  return (
    <g>
      <rect class="support-metal" x={from} y={y - 5} width={round(to - from)} height="5" />
      <path class="detail" d={strokes.join('')} />
    </g>
  )
}

/** A wedge against a tyre, its slope towards `towards`. */
export function Chock({
  x,
  floor,
  towards,
  size = 15,
}: {
  x: number
  floor: number
  towards: 'left' | 'right'
  size?: number
}) {
  const way = towards === 'right' ? 1 : -1
  return (
    <path
      class="support-pad"
      d={`M${round(x)} ${floor}h${round(-way * size)}v${round(-size * 0.78)}q${round(way * size * 0.45)} ${round(size * 0.3)} ${round(way * size)} ${round(size * 0.78)}z`}
    />
  )
}

/** Both wedges of a wheel that stands on the floor. */
export function Chocks({ x, radius, floor }: { x: number; radius: number; floor: number }) {
  const reach = radius * 0.36
  return (
    <>
      <Chock x={x - reach} floor={floor} towards="right" />
      <Chock x={x + reach} floor={floor} towards="left" />
    </>
  )
}

/** "Not here": a cross over a place, told by its shape. */
export function Cross({ at: [x, y], size = 7 }: { at: Spot; size?: number }) {
  const d = `M${round(x - size)} ${round(y - size)}L${round(x + size)} ${round(y + size)}M${round(x + size)} ${round(y - size)}L${round(x - size)} ${round(y + size)}`
  return (
    <g>
      <path class="cross-halo" d={d} />
      <path class="cross" d={d} />
    </g>
  )
}

/** A support that must not be there: its outline in dots, crossed out. */
export function WrongStand({
  at: [x, y],
  floor,
  half = 12,
}: {
  at: Spot
  floor: number
  half?: number
}) {
  return (
    <g>
      <path
        class="wrong"
        d={`M${round(x - 8)} ${round(y)}h16M${round(x)} ${round(y)}L${round(x - half)} ${floor}M${round(x)} ${round(y)}L${round(x + half)} ${floor}`}
      />
      <Cross at={[x, (y + floor) / 2 + 2]} />
    </g>
  )
}

/** The place a distance along a line from one spot towards another. */
export function towards(from: Spot, to: Spot, distance: number): Spot {
  const [ux, uy] = direction(from, to)
  return [from[0] + ux * distance, from[1] + uy * distance]
}

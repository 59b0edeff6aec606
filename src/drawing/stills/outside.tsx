import type { ComponentChildren } from 'preact'
import { round } from '../state.ts'
import type { Spot } from '../state.ts'

/** Corners of a hexagon, flats up and down. */
function hexagon([x, y]: Spot, r: number): string {
  return [0, 1, 2, 3, 4, 5]
    .map(
      (corner) =>
        `${round(x + r * Math.cos((corner * Math.PI) / 3))},${round(y + r * Math.sin((corner * Math.PI) / 3))}`,
    )
    .join(' ')
}

/** A slotted screw from its end. */
export function Slotted({ at: [x, y], r, turn = 25 }: { at: Spot; r: number; turn?: number }) {
  return (
    <g>
      <circle class="outside-screw" cx={x} cy={y} r={r} />
      <path
        class="outside-slot"
        transform={`rotate(${turn} ${x} ${y})`}
        d={`M${x - r * 0.72} ${y}h${round(r * 1.44)}`}
      />
    </g>
  )
}

/** A small cross-headed screw from its end, such as bleeds air or drains oil. */
export function CrossHead({ at: [x, y], r }: { at: Spot; r: number }) {
  return (
    <g>
      <circle class="outside-screw" cx={x} cy={y} r={r} />
      <path
        class="outside-slot"
        transform={`rotate(45 ${x} ${y})`}
        d={`M${x - r * 0.6} ${y}h${round(r * 1.2)}M${x} ${y - r * 0.6}v${round(r * 1.2)}`}
      />
    </g>
  )
}

/** A socket bolt from its end: round head, hexagon hole. */
export function Socket({ at, r }: { at: Spot; r: number }) {
  return (
    <g>
      <circle class="outside-screw" cx={at[0]} cy={at[1]} r={r} />
      <polygon class="outside-hole" points={hexagon(at, r * 0.56)} />
    </g>
  )
}

/** A nut or a cap's hexagon from its end. */
export function Hex({ at, r, name = 'outside-part' }: { at: Spot; r: number; name?: string }) {
  return <polygon class={name} points={hexagon(at, r)} />
}

/** A valve from its end: stem, core. */
export function ValveEnd({ at: [x, y], r }: { at: Spot; r: number }) {
  return (
    <g>
      <circle class="outside-screw" cx={x} cy={y} r={r} />
      <circle class="outside-thread" cx={x} cy={y} r={r - 2} />
      <circle class="outside-core" cx={x} cy={y} r={r * 0.3} />
    </g>
  )
}

/** The upper end of a leg from the side, its tube ending in a break: `wide` is the tube's width, the cap's seat at `y`. What stands on the cap comes as children. */
export function CapSide({
  x,
  y,
  wide = 56,
  down = 40,
  children,
}: {
  x: number
  y: number
  wide?: number
  down?: number
  children?: ComponentChildren
}) {
  return (
    <g>
      <path
        class="outside-tube"
        d={`M${x - wide / 2} ${y}h${wide}v${down}q${-wide / 4} 6 ${-wide / 2} 0t${-wide / 2} 0z`}
      />
      <rect
        class="outside-part"
        x={x - wide / 2 - 2}
        y={y - 6}
        width={wide + 4}
        height="6"
        rx="1.5"
      />
      <path
        class="outside-part"
        d={`M${x - 20} ${y - 18}h40v12h-40zM${x - 10} ${y - 18}v12M${x + 10} ${y - 18}v12`}
      />
      {children}
    </g>
  )
}

/** A preload adjuster on a cap from the side: a smaller hexagon on a stem with counted rings. */
export function PreloadSide({ x, y }: { x: number; y: number }) {
  return (
    <g>
      <path class="outside-part" d={`M${x - 10} ${y - 34}h20v16h-20z`} />
      <path
        class="outside-line"
        d={`M${x - 10} ${y - 22}h20M${x - 10} ${y - 26}h20M${x - 10} ${y - 30}h20`}
      />
      <path
        class="outside-part"
        d={`M${x - 12} ${y - 44}h24v10h-24zM${x - 6} ${y - 44}v10M${x + 6} ${y - 44}v10`}
      />
    </g>
  )
}

/** The lower end of a leg from the side: the foot with the axle's hole. */
export function FootSide({
  x,
  y,
  bright = false,
  children,
}: {
  x: number
  y: number
  bright?: boolean
  children?: ComponentChildren
}) {
  return (
    <g>
      {bright ? (
        <>
          <path class="outside-tube" d={`M${x - 23} ${y - 50}q11 -6 23 0t23 0v36h-46z`} />
          <path
            class="outside-part"
            d={`M${x - 32} ${y - 16}h64v44q0 12 -12 12h-40q-12 0 -12 -12z`}
          />
        </>
      ) : (
        <path
          class="outside-part"
          d={`M${x - 32} ${y - 50}q16 -6 32 0t32 0v54q0 22 -16 36h-32q-16 -14 -16 -36z`}
        />
      )}
      <circle class="outside-hole" cx={x} cy={y + 14} r="13" />
      {children}
    </g>
  )
}

/** A leg's end from above or below: its round outline. */
export function EndView({
  at,
  r,
  children,
}: {
  at: Spot
  r: number
  children?: ComponentChildren
}) {
  return (
    <g>
      <circle class="outside-part" cx={at[0]} cy={at[1]} r={r} />
      {children}
    </g>
  )
}

/** A wire: along its path, with clips at places. */
export function Wire({ d, clips = [] }: { d: string; clips?: readonly Spot[] }) {
  return (
    <g>
      <path class="outside-wire" d={d} />
      {clips.map(([x, y]) => (
        <rect
          key={`${x} ${y}`}
          class="outside-part"
          x={x - 5}
          y={y - 3}
          width="10"
          height="6"
          rx="2"
        />
      ))}
    </g>
  )
}

import type { BikeShape } from './bikeShape.ts'
import type { Projection } from './projection.ts'
import { direction, round, spots } from './state.ts'
import type { Spot } from './state.ts'

/** A shock: rod, body and the coils of its spring, between its two eyes. */
export function Shock({ foot, head, scale }: { foot: Spot; head: Spot; scale: number }) {
  const [ux, uy] = direction(foot, head)
  const length = Math.hypot(head[0] - foot[0], head[1] - foot[1])
  const half = 0.034 * scale
  const coils = 7
  const [start, end] = [length * 0.16, length * 0.8]
  const at = (distance: number, aside: number): Spot => [foot[0] + ux * distance - uy * aside, foot[1] + uy * distance + ux * aside]
  const zigzag = Array.from({ length: coils * 2 + 1 }, (_, index) => at(start + ((end - start) * index) / (coils * 2), index % 2 === 0 ? -half : half))
  return (
    <g>
      <line class="now thick" x1={round(foot[0])} y1={round(foot[1])} x2={round(head[0])} y2={round(head[1])} />
      <polyline class="now" points={spots(zigzag)} />
      <polyline class="now" points={spots([at(start, -half * 1.2), at(start, half * 1.2)])} />
      <polyline class="now" points={spots([at(end, -half * 1.2), at(end, half * 1.2)])} />
      <circle class="now paper" cx={round(foot[0])} cy={round(foot[1])} r={round(0.012 * scale)} />
      <circle class="now paper" cx={round(head[0])} cy={round(head[1])} r={round(0.012 * scale)} />
    </g>
  )
}

/** The swing arm, from the pivot to the rear axle, tapering. */
export function SwingArm({ pivot, axle, scale }: { pivot: Spot; axle: Spot; scale: number }) {
  const [ux, uy] = direction(pivot, axle)
  const corner = ([x, y]: Spot, half: number, past: number): Spot => [x - uy * half * scale + ux * past * scale, y + ux * half * scale + uy * past * scale]
  return (
    <g>
      <polygon
        class="now fill"
        points={spots([corner(pivot, 0.042, -0.03), corner(axle, 0.02, 0.045), corner(axle, -0.02, 0.045), corner(pivot, -0.042, -0.03)])}
      />
      <circle class="now paper" cx={round(pivot[0])} cy={round(pivot[1])} r={round(0.02 * scale)} />
    </g>
  )
}

const STYLE: readonly (readonly [part: string, style: string])[] = [
  ['subframe', 'rail-edge'],
  ['subframe', 'rail'],
  ['plate', 'detail'],
  ['downTube', 'rail-edge'],
  ['downTube', 'rail'],
  ['frame', 'metal'],
  ['sump', 'metal'],
  ['cylinder', 'metal'],
  ['headCover', 'metal'],
  ['fins', 'detail'],
  ['crankcase', 'metal'],
  ['lampBracket', 'detail'],
  ['lamp', 'now fill thin'],
  ['lens', 'detail'],
  ['clock', 'metal'],
  ['tail', 'now thin'],
  ['tank', 'now fill'],
  ['tankSeam', 'detail'],
  ['seat', 'now fill'],
  ['peg', 'detail'],
  ['bars', 'now'],
  ['grip', 'now thick'],
]

/** Frame, engine, tank, seat and lamp: what rides on the springs. */
export function Body({ shape, projection }: { shape: BikeShape; projection: Projection }) {
  const covers = [
    { x: 0.16, z: -0.075, r: 0.082 },
    { x: 0.335, z: -0.07, r: 0.066 },
  ]
  const [pivot, head] = [shape.pivot, shape.upperYoke]
  const turn = Math.atan2(head.z - pivot.z, head.x - pivot.x) - Math.atan2(523, 591)
  return (
    <g>
      {STYLE.map(([part, style], index) => (
        <path key={index} class={style} d={projection.path(shape.body[part]!)} />
      ))}
      {covers.map(({ x, z, r }, index) => {
        const [cx, cy] = projection.spot({ x: pivot.x + x * Math.cos(turn) - z * Math.sin(turn), z: pivot.z + x * Math.sin(turn) + z * Math.cos(turn) })
        return <circle key={index} class="detail" cx={round(cx)} cy={round(cy)} r={round(r * projection.scale)} />
      })}
    </g>
  )
}

/** Header pipe and silencer, drawn in front of engine and swing arm. */
export function Exhaust({ shape, projection }: { shape: BikeShape; projection: Projection }) {
  return (
    <g>
      <path class="pipe-edge" d={projection.path(shape.body['exhaust']!)} />
      <path class="pipe" d={projection.path(shape.body['exhaust']!)} />
      <path class="metal" d={projection.path(shape.body['silencer']!)} />
    </g>
  )
}

/** The front mudguard, which moves with the axle. */
export function Mudguard({ axle: [x, y], radius, scale }: { axle: Spot; radius: number; scale: number }) {
  const r = radius + 0.02 * scale
  const at = (degrees: number, reach: number): string => {
    const angle = (degrees * Math.PI) / 180
    return `${round(x + reach * Math.cos(angle))} ${round(y - reach * Math.sin(angle))}`
  }
  return (
    <path
      class="now fill thin"
      d={`M${at(44, r)} A${round(r)} ${round(r)} 0 0 0 ${at(158, r)} L${at(158, r + 0.01 * scale)} A${round(r + 0.022 * scale)} ${round(r + 0.022 * scale)} 0 0 1 ${at(44, r + 0.01 * scale)} Z`}
    />
  )
}

import { useMemo } from 'preact/hooks'
import type { BikeShape } from './bikeShape.ts'
import type { Bodywork } from './bodywork.ts'
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
  const at = (distance: number, aside: number): Spot => [
    foot[0] + ux * distance - uy * aside,
    foot[1] + uy * distance + ux * aside,
  ]
  const zigzag = Array.from({ length: coils * 2 + 1 }, (_, index) =>
    at(start + ((end - start) * index) / (coils * 2), index % 2 === 0 ? -half : half),
  )
  const cap = (distance: number): Spot[] => [at(distance, -half * 1.2), at(distance, half * 1.2)]
  return (
    <g>
      <line
        class="now thick"
        x1={round(foot[0])}
        y1={round(foot[1])}
        x2={round(head[0])}
        y2={round(head[1])}
      />
      <path
        class="now"
        d={[zigzag, cap(start), cap(end)].map((points) => `M${spots(points)}`).join('')}
      />
      <circle class="now paper" cx={round(foot[0])} cy={round(foot[1])} r={round(0.012 * scale)} />
      <circle class="now paper" cx={round(head[0])} cy={round(head[1])} r={round(0.012 * scale)} />
    </g>
  )
}

/** The swing arm, from the pivot to the rear axle, tapering. */
export function SwingArm({ pivot, axle, scale }: { pivot: Spot; axle: Spot; scale: number }) {
  const [ux, uy] = direction(pivot, axle)
  const corner = ([x, y]: Spot, half: number, past: number): Spot => [
    x - uy * half * scale + ux * past * scale,
    y + ux * half * scale + uy * past * scale,
  ]
  return (
    <g>
      <polygon
        class="now fill"
        points={spots([
          corner(pivot, 0.042, -0.03),
          corner(axle, 0.02, 0.045),
          corner(axle, -0.02, 0.045),
          corner(pivot, -0.042, -0.03),
        ])}
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

const COVERS = [
  { x: 0.16, z: -0.075, r: 0.082 },
  { x: 0.335, z: -0.07, r: 0.066 },
]

/** Round covers stay round, however the outlines are stretched. */
function Covers({ body: { pivot, head }, scale }: { body: Bodywork; scale: number }) {
  const turn = Math.atan2(head.z - pivot.z, head.x - pivot.x) - Math.atan2(523, 591)
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  return (
    <>
      {COVERS.map(({ x, z, r }, index) => (
        <circle
          key={index}
          class="detail"
          cx={round((pivot.x + x * cos - z * sin) * scale)}
          cy={round(-(pivot.z + x * sin + z * cos) * scale)}
          r={round(r * scale)}
        />
      ))}
    </>
  )
}

/** Frame, engine, tank, seat and lamp: what rides on the springs. Drawn once; a bike that moves moves the whole. */
export function Body({
  shape: { body, chassis },
  projection,
}: {
  shape: BikeShape
  projection: Projection
}) {
  const { path, scale, stand } = projection
  const parts = useMemo(
    () => (
      <>
        {STYLE.map(([part, style], index) => (
          <path key={index} class={style} d={path(body.outlines[part]!)} />
        ))}
        <Covers body={body} scale={scale} />
      </>
    ),
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the path of a body hangs on the scale alone
    [body, scale],
  )
  return <g transform={stand(chassis)}>{parts}</g>
}

/** Header pipe and silencer, drawn in front of engine and swing arm. */
export function Exhaust({
  shape: { body, chassis },
  projection,
}: {
  shape: BikeShape
  projection: Projection
}) {
  const { path, scale, stand } = projection
  const parts = useMemo(
    () => (
      <>
        <path class="pipe-edge" d={path(body.outlines['exhaust']!)} />
        <path class="pipe" d={path(body.outlines['exhaust']!)} />
        <path class="metal" d={path(body.outlines['silencer']!)} />
      </>
    ),
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the path of a body hangs on the scale alone
    [body, scale],
  )
  return <g transform={stand(chassis)}>{parts}</g>
}

/** The front mudguard, which moves with the axle. */
export function Mudguard({
  axle: [x, y],
  radius,
  scale,
}: {
  axle: Spot
  radius: number
  scale: number
}) {
  const part = useMemo(() => {
    const r = radius + 0.02 * scale
    const at = (degrees: number, reach: number): string => {
      const angle = (degrees * Math.PI) / 180
      return `${round(reach * Math.cos(angle))} ${round(-reach * Math.sin(angle))}`
    }
    const d = `M${at(44, r)} A${round(r)} ${round(r)} 0 0 0 ${at(158, r)} L${at(158, r + 0.01 * scale)} A${round(r + 0.022 * scale)} ${round(r + 0.022 * scale)} 0 0 1 ${at(44, r + 0.01 * scale)} Z`
    return <path class="now fill thin" d={d} />
  }, [radius, scale])
  return <g transform={`translate(${round(x)} ${round(y)})`}>{part}</g>
}

import type { ComponentChildren } from 'preact'
import { bikePicture } from '../../bikes/picture.ts'
import type { BikePicture } from '../../bikes/picture.ts'
import { geometryOf } from '../../bikes/bikes.ts'
import type { Frame } from '../../bikes/bikes.ts'
import { bikeShape } from '../bikeShape.ts'
import type { BikeShape } from '../bikeShape.ts'
import { projection } from '../projection.ts'
import type { Projection } from '../projection.ts'
import { SideBike } from '../side/SideBike.tsx'
import type { Spot } from '../state.ts'

// Invented: the middleweight roadster of the examples, of which only what a drawing needs.
const FRAME: Frame = {
  quotedAt: { frontTravel: 0, rearTravel: 0 },
  wheelbase: 1.45,
  rake: (25 * Math.PI) / 180,
  forkOffset: 0.03,
  frontRadius: 0.3,
  rearRadius: 0.312,
  pivot: { x: 0.54, z: 0.39 },
}
const PARTS = {
  fork: { kind: 'conventional', travel: 0.12, tubeDiameter: 0.043, exposedTube: 0.15 },
  rear: { shocks: 1 },
} as const

/** The drawn bike with its travels used [m]; no loads, no centre of gravity. */
export function bikeAt(frontTravel: number, rearTravel: number): BikePicture {
  const drawn = bikePicture(PARTS, geometryOf(FRAME), {
    frontTravel,
    rearTravel,
    frontLoad: 0,
    rearLoad: 0,
    centreOfGravity: { x: 0, z: 0 },
  })
  return { ...drawn, loads: undefined, centreOfGravity: undefined }
}

export const STATIC = bikeAt(0.03, 0.02)

interface Drawn {
  picture?: BikePicture
  /** viewBox units per metre */
  scale: number
  /** where the rear tyre would touch the ground */
  origin: Spot
  children?: (projection: Projection, shape: BikeShape) => ComponentChildren
}

/** The bike from the side, and what is drawn on it in the same projection. */
export function Bike({ picture = STATIC, scale, origin, children }: Drawn) {
  const view = projection(scale, origin)
  const shape = bikeShape(picture)
  return (
    <g>
      <SideBike shape={shape} projection={view} />
      {children?.(view, shape)}
    </g>
  )
}

/** Cuts a drawing to a box. */
export function Window({
  id,
  x,
  y,
  width,
  height,
  children,
}: {
  id: string
  x: number
  y: number
  width: number
  height: number
  children: ComponentChildren
}) {
  return (
    <>
      <clipPath id={id}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <g clip-path={`url(#${id})`}>{children}</g>
    </>
  )
}

import type { ComponentChildren } from 'preact'
import { pose } from '../../../src/core/index.ts'
import type { BikePicture } from '../../../src/calculators/bike-picture.ts'
import { bikeShape } from '../kit/bikeShape.ts'
import type { BikeShape } from '../kit/bikeShape.ts'
import { BikeNow } from '../kit/BikeNow.tsx'
import { projection } from '../kit/projection.ts'
import type { Projection } from '../kit/projection.ts'
import type { Spot } from '../kit/state.ts'

// Invented: the middleweight roadster of the examples, drawn without its figures.
const radii = { frontRadius: 0.3, rearRadius: 0.312 }
const geometry = { wheelbase: 1.45, rake: (25 * Math.PI) / 180, pivot: { x: 0.54, z: 0.39 }, ...radii, forkOffset: 0.03, datum: { frontTravel: 0, rearTravel: 0, ...radii, forkOffset: 0.03 } }

/** The drawn bike with its travels used [m]. */
export function bikeAt(frontTravel: number, rearTravel: number): BikePicture {
  return {
    pose: pose(geometry, frontTravel, rearTravel),
    geometry,
    frontTravel,
    rearTravel,
    fork: { upsideDown: false, travel: 0.12, tubeDiameter: 0.043, exposedTube: 0.15 },
    shocks: 1,
  }
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
      <BikeNow picture={picture} shape={shape} projection={view} />
      {children?.(view, shape)}
    </g>
  )
}

/** Cuts a drawing to a box. */
export function Window({ id, x, y, width, height, children }: { id: string; x: number; y: number; width: number; height: number; children: ComponentChildren }) {
  return (
    <>
      <clipPath id={id}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <g clip-path={`url(#${id})`}>{children}</g>
    </>
  )
}

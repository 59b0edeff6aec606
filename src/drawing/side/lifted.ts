import type { BikeShape } from '../bikeShape.ts'

interface Point {
  x: number
  z: number
}

/** Places of a bike's shape that are points of the ground frame. */
const PLACES = [
  'frontAxle',
  'rearAxle',
  'axisTop',
  'axisFoot',
  'seal',
  'lowerYoke',
  'upperYoke',
  'tubeTop',
  'pivot',
  'shockFoot',
  'shockHead',
] as const

/** The same bike as a whole higher by `by` [m], as on a stand under its axle. */
export function raised(shape: BikeShape, by: number): BikeShape {
  const up = <P extends Point>(point: P): P => ({ ...point, z: point.z + by })
  const moved = Object.fromEntries(PLACES.map((name) => [name, up(shape[name])])) as Pick<
    BikeShape,
    (typeof PLACES)[number]
  >
  return { ...shape, ...moved, chassis: up(shape.chassis) }
}

/** The same bike turned about one axle until the other has risen by `by` [m]: lifted by its frame at one end, the other wheel on the floor. */
export function lifted(shape: BikeShape, about: 'frontAxle' | 'rearAxle', by: number): BikeShape {
  const centre = shape[about]
  const other = shape[about === 'rearAxle' ? 'frontAxle' : 'rearAxle']
  const angle = Math.asin(by / (other.x - centre.x))
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const turned = ({ x, z }: Point): Point => ({
    x: centre.x + (x - centre.x) * cos - (z - centre.z) * sin,
    z: centre.z + (x - centre.x) * sin + (z - centre.z) * cos,
  })
  const { chassis } = shape
  const moved = Object.fromEntries(PLACES.map((name) => [name, turned(shape[name])])) as Pick<
    BikeShape,
    (typeof PLACES)[number]
  >
  return {
    ...shape,
    ...moved,
    chassis: {
      ...turned(chassis),
      cos: chassis.cos * cos - chassis.sin * sin,
      sin: chassis.sin * cos + chassis.cos * sin,
    },
  }
}

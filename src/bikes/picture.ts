import type { Part } from './aboard.ts'
import { pose } from '../core/index.ts'
import type { Geometry, Pose } from '../core/index.ts'
import type { BikeSpec } from './bikes.ts'

interface Place {
  x: number
  z: number
}

/** What a side view is drawn from [SI]: the pose, what is fitted, and the parts' sizes. Points are in the ground frame. */
export interface BikePicture {
  pose: Pose
  geometry: Geometry
  frontTravel: number
  rearTravel: number
  fork: { upsideDown: boolean; travel: number; tubeDiameter: number; exposedTube: number }
  shocks: number
  /** wheel loads [N], drawn as arrows */
  loads?: { front: number; rear: number }
  centreOfGravity?: Place
  /** people and luggage, by where they sit */
  aboard?: readonly (Place & { part: Part; mass: number })[]
}

/** What a stance gives a picture. */
interface Stood {
  frontTravel: number
  rearTravel: number
  frontLoad: number
  rearLoad: number
  centreOfGravity: Place
}

const MM = 1e-3

/** The side view of an invented bike with a geometry [SI] as it stands; loads and centre of gravity are those of the stance. */
export function bikePicture(spec: BikeSpec, geometry: Geometry, stood: Stood): BikePicture {
  const { frontTravel, rearTravel, frontLoad, rearLoad, centreOfGravity } = stood
  return {
    pose: pose(geometry, frontTravel, rearTravel),
    geometry,
    frontTravel,
    rearTravel,
    fork: {
      upsideDown: spec.fork.kind.startsWith('upside-down'),
      travel: spec.fork.travel * MM,
      tubeDiameter: spec.fork.tubeDiameter * MM,
      exposedTube: spec.fork.exposedTube * MM,
    },
    shocks: spec.rear.shocks,
    loads: { front: frontLoad, rear: rearLoad },
    centreOfGravity,
  }
}

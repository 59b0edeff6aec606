import type { Part } from './aboard.ts'
import { pose } from '../core/index.ts'
import type { Geometry, Pose } from '../core/index.ts'
import type { BikeSpec } from './inSI.ts'

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

/** What of a bike is drawn besides its geometry. */
interface Drawn {
  fork: Pick<BikeSpec['fork'], 'kind' | 'travel' | 'tubeDiameter' | 'exposedTube'>
  rear: Pick<BikeSpec['rear'], 'shocks'>
}

/** The side view of an invented bike with a geometry [SI] as it stands; loads and centre of gravity are those of the stance. */
export function bikePicture(spec: Drawn, geometry: Geometry, stood: Stood): BikePicture {
  const { kind, travel, tubeDiameter, exposedTube } = spec.fork
  const { frontTravel, rearTravel, frontLoad, rearLoad, centreOfGravity } = stood
  return {
    pose: pose(geometry, frontTravel, rearTravel),
    geometry,
    frontTravel,
    rearTravel,
    fork: { upsideDown: kind === 'upside-down', travel, tubeDiameter, exposedTube },
    shocks: spec.rear.shocks,
    loads: { front: frontLoad, rear: rearLoad },
    centreOfGravity,
  }
}

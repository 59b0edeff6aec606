import type { Bike, LoadCase, PointMass } from './bike.ts'
import { type Chassis, chassis } from './chassis.ts'
import { STANDARD_GRAVITY } from './constants.ts'
import { between, finite, list, nonNegative, positive, record, within } from './domain.ts'
import { type ForkCurve, forkCurve } from './fork.ts'
import { type RearCurve, rearCurve } from './rear.ts'

/** A bike under a load case with everything worked out that does not change from one pair of travels to the next. */
export interface Scene {
  body: Chassis
  fork: ForkCurve
  rear: RearCurve
  /** Sprung mass and payload as one mass [kg] at its centre in the chassis frame [m], and all masses [kg]. */
  carried: PointMass
  frontMass: number
  rearMass: number
  total: number
  /** Gravity [m/s²] in the plane of the bike, more than standard when it leans. */
  gravity: number
  deceleration: number
  frontBrake: number
  rearBrake: number
  /** What slowing the masses at axle height does to the front load, as a moment [N m]. */
  axleInertia: number
  /** Brake force less what slows the wheel itself [N]: along the ground, at each axle. */
  frontDrag: number
  rearDrag: number
  /** Friction that helps the springs [N]: negative when it holds the bike down. */
  frontFriction: number
  rearFriction: number
}

/** Sets a scene; refuses what makes no sense in bike or load case. `settle` is +1 rising out of compression, −1 sinking, 0 without friction. */
export function setScene(bike: Bike, loadCase: LoadCase, settle: number): Scene {
  const { payload = [], deceleration: a = 0, frontBrakeShare = 1, lean = 0, gasState } = record('loadCase', loadCase)
  const body = chassis(record('bike', bike).geometry)
  const carried = together(bike.sprung, payload)
  const frontMass = nonNegative('frontUnsprungMass', bike.frontUnsprungMass)
  const rearMass = nonNegative('rearUnsprungMass', bike.rearUnsprungMass)
  const total = carried.mass + frontMass + rearMass
  const frontBrake = within('frontBrakeShare', frontBrakeShare, 0, 1) * total * nonNegative('deceleration', a)
  const rearBrake = total * a - frontBrake
  return {
    body,
    fork: forkCurve(bike.fork, gasState),
    rear: rearCurve(bike.rear),
    carried,
    frontMass,
    rearMass,
    total,
    gravity: STANDARD_GRAVITY / Math.cos(between('lean', lean, -Math.PI / 2, Math.PI / 2)),
    deceleration: a,
    frontBrake,
    rearBrake,
    axleInertia: a * (frontMass * body.frontRadius + (carried.mass + rearMass) * body.rearRadius),
    frontDrag: frontBrake - frontMass * a,
    rearDrag: rearBrake - rearMass * a,
    frontFriction: -within('settle', settle, -1, 1) * (bike.fork.friction ?? 0),
    rearFriction: -settle * (bike.rear.friction ?? 0),
  }
}

function together(sprung: PointMass, payload: readonly PointMass[]): PointMass {
  let mass = positive('sprung.mass', record('sprung', sprung).mass)
  let x = mass * finite('sprung.x', sprung.x)
  let z = mass * finite('sprung.z', sprung.z)
  for (const part of list('payload', payload)) {
    mass += nonNegative('payload.mass', record('payload', part).mass)
    x += part.mass * finite('payload.x', part.x)
    z += part.mass * finite('payload.z', part.z)
  }
  return { mass, x: x / mass, z: z / mass }
}

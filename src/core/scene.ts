import type { Bike, LoadCase, PointMass } from './bike.ts'
import { type Chassis, chassis } from './chassis.ts'
import { STANDARD_GRAVITY } from './constants.ts'
import {
  between,
  DomainError,
  finite,
  list,
  nonNegative,
  positive,
  record,
  within,
} from './domain.ts'
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
  /** Gravity square to the ground [m/s²] in the plane of the bike, more than standard when it leans, less on a slope. */
  gravity: number
  /** Deceleration [m/s²] with the part of gravity that pulls down the slope: what the brakes have to hold, for each kilogram. */
  deceleration: number
  frontBrake: number
  rearBrake: number
  /** What slowing the masses at axle height, and the turning of both wheels, does to the front load, as a moment [N m]. */
  axleInertia: number
  /** What slowing the turning of each wheel takes, as a moment [N m]. */
  frontSpin: number
  rearSpin: number
  /** Brake force less what slows the wheel itself [N]: along the ground, at each axle. */
  frontDrag: number
  rearDrag: number
  /** Friction that helps the springs [N]: negative when it holds the bike down. */
  frontFriction: number
  rearFriction: number
}

/** Sets a scene; refuses what makes no sense in bike or load case. `settle` is +1 rising out of compression, −1 sinking, 0 without friction. */
export function setScene(bike: Bike, loadCase: LoadCase, settle: number): Scene {
  const { payload = [], frontBrakeShare = 1, lean = 0, gasState } = record('loadCase', loadCase)
  const body = chassis(record('bike', bike).geometry)
  const carried = lumped(bike.sprung, payload)
  const frontMass = nonNegative('frontUnsprungMass', bike.frontUnsprungMass)
  const rearMass = nonNegative('rearUnsprungMass', bike.rearUnsprungMass)
  const total = carried.mass + frontMass + rearMass
  const { slowing, held, square } = alongGround(loadCase)
  const frontBrake = within('frontBrakeShare', frontBrakeShare, 0, 1) * total * held
  const rearBrake = total * held - frontBrake
  const { front = 0, rear = 0 } = record('wheelInertia', bike.wheelInertia ?? {})
  const scene = {
    body,
    fork: forkCurve(bike.fork, gasState),
    rear: rearCurve(bike.rear),
    carried,
    frontMass,
    rearMass,
    total,
    gravity: square / Math.cos(between('lean', lean, -Math.PI / 2, Math.PI / 2)),
    deceleration: held,
    frontBrake,
    rearBrake,
    axleInertia: 0,
    frontSpin: (nonNegative('wheelInertia.front', front) * slowing) / body.frontRadius,
    rearSpin: (nonNegative('wheelInertia.rear', rear) * slowing) / body.rearRadius,
    frontDrag: frontBrake - frontMass * held,
    rearDrag: rearBrake - rearMass * held,
    frontFriction: -within('settle', settle, -1, 1) * (bike.fork.friction ?? 0),
    rearFriction: -settle * (bike.rear.friction ?? 0),
  }
  return { ...scene, axleInertia: axleInertia(scene) }
}

// Gravity on a slope has a part along the ground, which a bike at rest on its brakes has to hold as if it slowed down.
function alongGround({ deceleration = 0, slope = 0 }: LoadCase): {
  slowing: number
  held: number
  square: number
} {
  const slowing = nonNegative('deceleration', deceleration)
  const held =
    slowing + STANDARD_GRAVITY * Math.sin(between('slope', slope, -Math.PI / 2, Math.PI / 2))
  if (held < 0)
    throw new DomainError(
      'slope',
      slope,
      'must not rise more steeply than the deceleration: driving uphill needs the pull of the chain',
    )
  return { slowing, held, square: STANDARD_GRAVITY * Math.cos(slope) }
}

function axleInertia(scene: Scene): number {
  const { body, carried, frontMass, rearMass, deceleration: a, frontSpin, rearSpin } = scene
  return (
    a * (frontMass * body.frontRadius + (carried.mass + rearMass) * body.rearRadius) +
    (frontSpin + rearSpin)
  )
}

/** The same scene on wheels of other radii [m], the datum pose unchanged: what a tyre that squashes makes of it. */
export function withRadii(scene: Scene, frontRadius: number, rearRadius: number): Scene {
  const changed = {
    ...scene,
    body: { ...scene.body, frontRadius, rearRadius },
    frontSpin: (scene.frontSpin * scene.body.frontRadius) / frontRadius,
    rearSpin: (scene.rearSpin * scene.body.rearRadius) / rearRadius,
  }
  return { ...changed, axleInertia: axleInertia(changed) }
}

function lumped(sprung: PointMass, payload: readonly PointMass[]): PointMass {
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

import { type Attitude, blankAttitude, takeAttitude } from './chassis.ts'
import { forkCurveForce, forkCurveRate } from './fork.ts'
import { rearCurveForce, rearCurveRate } from './rear.ts'
import type { Scene } from './scene.ts'

/** Loads and forces of a scene at one pair of travels: one object that a search writes into again and again. */
export interface Balance {
  at: Attitude
  /** Centre of the carried mass, and pivot, in ground directions from the rear axle [m]. */
  carriedX: number
  carriedZ: number
  pivotX: number
  pivotZ: number
  /** Wheel loads beyond the weight of the wheels themselves [N]. */
  frontBeyond: number
  rearBeyond: number
  /** Moment about the pivot that the rear spring has to hold [N m]. */
  rearMoment: number
  forkForce: number
  rearForce: number
  /** Force that no spring or friction carries [N]: along the steering axis, and vertical at the rear axle. */
  front: number
  rear: number
  /** Change of `front` and `rear` per metre of front and rear travel [N/m]. */
  frontPerFront: number
  frontPerRear: number
  rearPerFront: number
  rearPerRear: number
}

/** A balance to write into. */
export function blankBalance(): Balance {
  return {
    at: blankAttitude(),
    carriedX: 0,
    carriedZ: 0,
    pivotX: 0,
    pivotZ: 0,
    frontBeyond: 0,
    rearBeyond: 0,
    rearMoment: 0,
    forkForce: 0,
    rearForce: 0,
    front: 0,
    rear: 0,
    frontPerFront: 0,
    frontPerRear: 0,
    rearPerFront: 0,
    rearPerRear: 0,
  }
}

/** Loads and unbalanced forces of a scene at used travels [m], written into `out`: moments about the rear contact, the axle and the pivot. */
export function balanceAt(
  scene: Scene,
  frontTravel: number,
  rearTravel: number,
  out: Balance,
): void {
  const { body, carried, gravity: g, deceleration: a } = scene
  const at = takeAttitude(body, frontTravel, rearTravel, out.at)
  const { arm, sinPitch, cosPitch } = at
  const x = carried.x - at.rearX
  const z = carried.z - at.rearZ
  const pivotZ = body.pivot.z - at.rearZ
  out.carriedX = x * cosPitch - z * sinPitch
  out.carriedZ = x * sinPitch + z * cosPitch
  out.pivotX = arm * cosPitch - pivotZ * sinPitch
  out.pivotZ = arm * sinPitch + pivotZ * cosPitch
  out.frontBeyond =
    (carried.mass * (g * out.carriedX + a * out.carriedZ) + scene.axleInertia) / at.wheelbase
  out.rearBeyond = carried.mass * g - out.frontBeyond
  out.rearMoment =
    out.pivotX * out.rearBeyond +
    out.pivotZ * scene.rearDrag +
    (body.rearRadius * scene.rearBrake + scene.rearSpin)
  out.forkForce = forkCurveForce(scene.fork, frontTravel)
  out.rearForce = rearCurveForce(scene.rear, rearTravel)
  out.front =
    out.frontBeyond * at.cosRake +
    scene.frontDrag * at.sinRake -
    out.forkForce -
    scene.frontFriction
  out.rear = out.rearMoment / arm - out.rearForce - scene.rearFriction
}

/** The changes of the unbalanced forces with each travel, written into an `out` that holds the balance at the same travels. */
export function balanceSlopes(
  scene: Scene,
  frontTravel: number,
  rearTravel: number,
  out: Balance,
): void {
  const { body } = scene
  loadSlopes(scene, out, 0, 0, -body.sinRake, body.cosRake)
  out.frontPerFront = slopes.front - forkCurveRate(scene.fork, frontTravel)
  out.rearPerFront = slopes.rear
  const slide = (out.at.rearZ - body.pivot.z) / out.at.arm
  loadSlopes(scene, out, slide, 1, -slide, -1)
  out.frontPerRear = slopes.front
  out.rearPerRear = slopes.rear - rearCurveRate(scene.rear, rearTravel)
}

const slopes = { front: 0, rear: 0 }

// What the springs must hold, differentiated by one travel: `slide` is how the rear axle moves in the chassis per metre of it, `stretch`
// how the line from rear to front axle changes.
function loadSlopes(
  scene: Scene,
  now: Balance,
  slideX: number,
  slideZ: number,
  stretchX: number,
  stretchZ: number,
): void {
  const { body, carried, gravity, deceleration } = scene
  const { vx, vz, wheelbase, arm, sinPitch, cosPitch, sinRake, cosRake } = now.at
  const span = vx * vx + vz * vz
  const along = vx * stretchX + vz * stretchZ
  const turn =
    ((body.rearRadius - body.frontRadius) * along) / (span * wheelbase) -
    (vx * stretchZ - vz * stretchX) / span
  const shiftX = slideX * cosPitch - slideZ * sinPitch
  const shiftZ = slideX * sinPitch + slideZ * cosPitch
  const moved =
    gravity * (-now.carriedZ * turn - shiftX) + deceleration * (now.carriedX * turn - shiftZ)
  const load = (carried.mass * moved - (now.frontBeyond * along) / wheelbase) / wheelbase
  const moment =
    (-now.pivotZ * turn - shiftX) * now.rearBeyond -
    now.pivotX * load +
    (now.pivotX * turn - shiftZ) * scene.rearDrag
  slopes.front = load * cosRake + (scene.frontDrag * cosRake - now.frontBeyond * sinRake) * turn
  slopes.rear = (moment + (now.rearMoment / arm) * slideX) / arm
}

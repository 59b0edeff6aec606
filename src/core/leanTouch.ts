import type { Bike, LoadCase } from './bike.ts'
import type { Point } from './chassis.ts'
import { finite, nonNegative, positive, record } from './domain.ts'
import { bracketedRoot } from './root.ts'
import { sample } from './sample.ts'
import { solveStance, type Stance, type StanceOptions } from './stance.ts'

/**
 * Height above the ground [m] of a point on a bike rolled over by an angle [rad]: `height` above
 * the ground [m] and `halfWidth` from the middle plane [m], both upright, on tyres of a crown
 * radius [m] that roll on the crown: ρ + (z − ρ) cos φ − y sin φ. Refuses a crown or half-width
 * below 0. Source: a circle rolling on a plane.
 */
export function rolledHeight(
  point: { height: number; halfWidth: number; crownRadius: number },
  roll: number,
): number {
  const { height, halfWidth, crownRadius } = record('point', point)
  const crown = nonNegative('crownRadius', crownRadius)
  return (
    crown +
    (finite('height', height) - crown) * Math.cos(finite('roll', roll)) -
    nonNegative('halfWidth', halfWidth) * Math.sin(roll)
  )
}

/**
 * Roll angle [rad] at which a point of a rigid bike first touches level ground: `rolledHeight` is
 * 0; 0 for a point that is on or below the ground upright, null for one that a bike lying at a
 * right angle still holds clear. Refuses what `rolledHeight` refuses. Source: as `rolledHeight`,
 * solved for φ.
 */
export function touchAngle(point: {
  height: number
  halfWidth: number
  crownRadius: number
}): number | null {
  if (rolledHeight(point, 0) <= 0) return 0
  const { height, halfWidth, crownRadius } = point
  const up = height - crownRadius
  const reach = Math.hypot(up, halfWidth)
  // a point within the tyre's own round never gets there
  if (reach <= crownRadius) return null
  const angle = Math.acos(-crownRadius / reach) - Math.atan2(halfWidth, up)
  return angle <= Math.PI / 2 ? Math.max(0, angle) : null
}

/**
 * Angle [rad] from the contact line to the centre of gravity for a roll angle [rad]: tyres with a
 * crown radius [m] carry the contact to the inside, so it is less. The centre's height upright [m].
 * Refuses a height not above the crown. Source: statics of steady turning (Cossalter, Motorcycle
 * Dynamics, on the effective roll angle).
 */
export function effectiveLean(turn: {
  roll: number
  centreOfGravityHeight: number
  crownRadius: number
}): number {
  const { roll, centreOfGravityHeight, crownRadius } = record('turn', turn)
  const crown = nonNegative('crownRadius', crownRadius)
  const arm = positive('centreOfGravityHeight', finite('height', centreOfGravityHeight) - crown)
  return Math.atan2(arm * Math.sin(finite('roll', roll)), crown + arm * Math.cos(roll))
}

/**
 * A point of the chassis: (x, z) in the frame of the datum pose [m], and how far it lies from the
 * middle plane [m].
 */
export interface TouchPoint extends Point {
  halfWidth: number
}

/**
 * A bike at the lean at which a point touches: roll and effective lean [rad], the point's height
 * upright in the stance of that lean [m], and that stance.
 */
export interface LeanToTouch {
  roll: number
  effectiveLean: number
  height: number
  stance: Stance
}

/** No tyre holds a steady turn at this roll [rad]: 70°. */
const STEEPEST = (70 * Math.PI) / 180
const STEPS = 14

/**
 * Roll at which a point fixed to the chassis first touches the ground in a steady turn, the springs
 * pressed by the turn (weight ÷ cos of the effective lean); null if it is clear up to 70°. Crown
 * radius [m] of both tyres. Steering, and bumps, which take more, are left out. Refuses what
 * `solveStance` refuses. Source: `solveStance` and `rolledHeight`.
 */
export function leanToTouch(
  bike: Bike,
  loadCase: LoadCase,
  point: TouchPoint,
  { crownRadius, ...options }: StanceOptions & { crownRadius: number },
): LeanToTouch | null {
  const { halfWidth } = record('point', point)
  const upright = solveStance(bike, { ...loadCase, lean: 0 }, options)
  const at = (roll: number): LeanToTouch => {
    const centreOfGravityHeight = upright.centreOfGravity.z
    const lean = effectiveLean({ roll, centreOfGravityHeight, crownRadius })
    const stance = solveStance(bike, { ...loadCase, lean }, options)
    return { roll, effectiveLean: lean, height: stance.toGround(point).z, stance }
  }
  const clearance = (roll: number): number =>
    rolledHeight({ height: at(roll).height, halfWidth, crownRadius }, roll)
  let low = 0
  let before = clearance(0)
  if (before <= 0) return at(0)
  for (const high of sample(0, STEEPEST, STEPS).slice(1)) {
    const after = clearance(high)
    if (after <= 0) return at(bracketedRoot(clearance, low, high, before, after))
    low = high
    before = after
  }
  return null
}

import type { Bike, LoadCase } from './bike.ts'
import type { Balance } from './balance.ts'
import { type Point, type Pose, poseOf } from './chassis.ts'
import { DomainError, record } from './domain.ts'
import type { TravelLimit } from './fork.ts'
import { type Found, findBalance } from './newton.ts'
import { type Scene, setScene } from './scene.ts'
import { balanceOnTyres, loadsOf, type Tyres, type TyreSquash } from './tyreSquash.ts'

/** What holds an end of the bike besides its spring: nothing, the end of its extension, or the end of its travel. */
export type Stop = 'none' | 'extended' | 'bottomed' | 'coilBound'

/**
 * A bike at rest or slowing steadily: its pose, used travels [m], wheel loads [N] and the front's share [1], spring forces [N] along the steering
 * axis and vertical at the rear axle, stops and their forces [N] (negative at full extension), limits [m], centre of gravity in the ground
 * frame [m], whether a wheel lifts, and brake force ÷ load [1] (null without load). A load below 0 is as if the ground could pull.
 * On tyres, `tyreSquash` says how far each is squashed beyond the radius of the geometry [m]; heights, pitch, rake and trail then include it.
 */
export interface Stance extends Pose {
  frontTravel: number
  rearTravel: number
  frontLoad: number
  rearLoad: number
  frontShare: number
  forkForce: number
  rearForce: number
  frontStop: Stop
  rearStop: Stop
  frontStopForce: number
  rearStopForce: number
  frontLimit: TravelLimit
  rearLimit: TravelLimit
  centreOfGravity: Point
  frontWheelLifts: boolean
  rearWheelLifts: boolean
  neededGrip: { front: number | null; rear: number | null }
  tyreSquash?: TyreSquash
}

/** From which side friction is left behind (−1…1), and the tyres. */
export interface StanceOptions {
  settle?: number
  tyres?: Tyres
}

/**
 * The travels at which both ends of a bike balance, and everything that follows from them. `settle`: +1 rising slowly out of compression
 * (friction holds it deeper), −1 sinking from extension (higher), 0 no friction. `tyres`: springs under the wheels; without them the radii are the geometry's.
 * Refuses arguments without meaning and a deceleration below 0. Stops, coil bind, a lifted wheel and a loose spring are results.
 * Source: statics of two unsprung and one sprung body, moments about rear contact and pivot (Cossalter, Motorcycle Dynamics, ch. 5–6, for the terms).
 */
export function solveStance(
  bike: Bike,
  loadCase: LoadCase = {},
  options: StanceOptions = {},
): Stance {
  const { settle = 0, tyres } = record('options', options)
  const scene = setScene(bike, loadCase, settle)
  if (tyres === undefined) return stanceOf(scene, findBalance(scene))
  const onTyres = balanceOnTyres(scene, tyres)
  return { ...stanceOf(onTyres.scene, onTyres.found), tyreSquash: onTyres.squash }
}

/** What a balance found in a scene comes to. */
export function stanceOf(scene: Scene, found: Found): Stance {
  const { gravity, total, fork, rear: rearEnd } = scene
  const { front, rear, balance } = found
  const { front: frontLoad, rear: rearLoad } = loadsOf(scene, found)
  if (!Number.isFinite(frontLoad + rearLoad + balance.front + balance.rear)) {
    throw new DomainError('bike', frontLoad, 'has figures too large or too small to compute with')
  }
  const frontStop = stopAt(front, balance.front, fork.limit)
  const rearStop = stopAt(rear, balance.rear, rearEnd.limit)
  return {
    ...poseOf(scene.body, balance.at),
    frontTravel: front,
    rearTravel: rear,
    frontLoad,
    rearLoad,
    frontShare: frontLoad / (total * gravity),
    forkForce: balance.forkForce,
    rearForce: balance.rearForce,
    frontStop,
    rearStop,
    frontStopForce: frontStop === 'none' ? 0 : balance.front,
    rearStopForce: rearStop === 'none' ? 0 : balance.rear,
    frontLimit: { ...fork.limit },
    rearLimit: { ...rearEnd.limit },
    centreOfGravity: centreOf(scene, balance),
    frontWheelLifts: frontLoad < 0,
    rearWheelLifts: rearLoad < 0,
    neededGrip: { front: grip(scene.frontBrake, frontLoad), rear: grip(scene.rearBrake, rearLoad) },
  }
}

// An end may stand exactly where a stop begins and need no force from it: that is still between the stops.
function stopAt(travel: number, unbalanced: number, limit: TravelLimit): Stop {
  if (travel <= 0 && unbalanced < 0) return 'extended'
  if (travel >= limit.travel && unbalanced > 0)
    return limit.cause === 'locked' ? 'none' : limit.cause
  return 'none'
}

function centreOf(
  { carried, frontMass, rearMass, total, body }: Scene,
  { carriedX, carriedZ, at }: Balance,
): Point {
  return {
    x: (carried.mass * carriedX + frontMass * at.wheelbase) / total,
    z:
      (carried.mass * (carriedZ + body.rearRadius) +
        frontMass * body.frontRadius +
        rearMass * body.rearRadius) /
      total,
  }
}

function grip(brake: number, load: number): number | null {
  const needed = brake / load
  return load > 0 && Number.isFinite(needed) ? needed : null
}

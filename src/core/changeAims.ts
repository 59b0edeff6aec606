import type { Bike, LoadCase } from './bike.ts'
import type { Point } from './chassis.ts'
import { solveStance, type Stance, type Stop } from './stance.ts'

/** What can be wanted of a bike, in the order in which ways are told. */
export const AIMS = [
  'frontStaticSag',
  'frontRiderSag',
  'rearStaticSag',
  'rearRiderSag',
  'trail',
  'rake',
  'frontShare',
  'frontHeight',
  'rearHeight',
  'brakingReserve',
] as const

export type AimId = (typeof AIMS)[number]
export type AimCase = 'static' | 'rider' | 'braking'

/** The loads under which aims are read: the bike alone, with who rides it, and on the brakes. */
export interface AimCases {
  static?: LoadCase
  rider: LoadCase
  braking?: LoadCase
}

/** The load at which each aim is read. Geometry, share and heights are those with the rider. */
export const CASE_OF: Readonly<Record<AimId, AimCase>> = {
  frontStaticSag: 'static',
  frontRiderSag: 'rider',
  rearStaticSag: 'static',
  rearRiderSag: 'rider',
  trail: 'rider',
  rake: 'rider',
  frontShare: 'rider',
  frontHeight: 'rider',
  rearHeight: 'rider',
  brakingReserve: 'braking',
}

/** The stances of one bike, those that were asked for. */
export type AimStances = Partial<Record<AimCase, Stance>>

/**
 * The stances of a bike under the loads asked for. On the brakes the gas starts from where the bike settles with the rider, whatever the load case
 * says of it, since that moves with every change.
 */
export function aimStances(bike: Bike, cases: AimCases, wanted: ReadonlySet<AimCase>): AimStances {
  const found: AimStances = {}
  if (wanted.has('static')) found.static = solveStance(bike, cases.static ?? {})
  if (wanted.has('rider') || wanted.has('braking')) found.rider = solveStance(bike, cases.rider)
  if (wanted.has('braking')) {
    const braking = cases.braking ?? {}
    const from = Math.min(found.rider!.frontTravel, bike.fork.travel)
    found.braking = solveStance(bike, {
      ...braking,
      gasState: { ...braking.gasState, from },
    })
  }
  return found
}

/** Where the axles are in the chassis frame of a pose: the places whose heights are told. */
export interface AxlePlaces {
  front: Point
  rear: Point
  frontZ: number
  rearZ: number
}

/** The two places of the frame that stand over the axles now, with the rider, and their heights [m]. */
export function axlePlaces(bike: Bike, rider: Stance): AxlePlaces {
  const { datum } = bike.geometry
  const front = {
    x: bike.geometry.wheelbase,
    z: datum.frontRadius ?? bike.geometry.frontRadius,
  }
  const rear = { x: 0, z: datum.rearRadius ?? bike.geometry.rearRadius }
  return { front, rear, frontZ: rider.toGround(front).z, rearZ: rider.toGround(rear).z }
}

/**
 * What an aim reads: sags, trail and travel left before the end of the fork's travel on the brakes, settled [m]; rake [rad]; share [1]; heights as the
 * rise of the frame at the line of each axle from where it stands now [m].
 */
export function aimReading(aim: AimId, stances: AimStances, places: AxlePlaces): number {
  const stance = stances[CASE_OF[aim]]!
  switch (aim) {
    case 'frontStaticSag':
    case 'frontRiderSag':
      return stance.frontTravel
    case 'rearStaticSag':
    case 'rearRiderSag':
      return stance.rearTravel
    case 'trail':
      return stance.trail
    case 'rake':
      return stance.rake
    case 'frontShare':
      return stance.frontShare
    case 'frontHeight':
      return stance.toGround(places.front).z - places.frontZ
    case 'rearHeight':
      return stance.toGround(places.rear).z - places.rearZ
    case 'brakingReserve':
      return stance.frontLimit.travel - stance.frontTravel
  }
}

/** The first stop at which an end stands at these loads. On the brakes the rear may be fully extended, as it often is; nothing else may. */
export function stopOf({ static: alone, rider, braking }: AimStances): Stop {
  for (const stance of [alone, rider, braking]) {
    if (stance === undefined) continue
    if (stance.frontStop !== 'none') return stance.frontStop
    if (stance.rearStop !== 'none' && !(stance === braking && stance.rearStop === 'extended'))
      return stance.rearStop
  }
  return 'none'
}

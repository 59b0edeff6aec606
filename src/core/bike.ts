import type { Geometry } from './chassis.ts'
import type { Fork } from './fork.ts'
import type { GasState } from './gas.ts'
import type { Rear } from './rear.ts'

/** A mass [kg] at a place [m]: in the chassis frame of the datum pose for a bike, from the rear contact for `wheelLoads`. */
export interface PointMass {
  mass: number
  x: number
  z: number
}

/** A motorcycle: its chassis, the sprung mass [kg] at its centre in the datum frame [m], the masses that move with the axles [kg], both ends. */
export interface Bike {
  geometry: Geometry
  sprung: PointMass
  frontUnsprungMass: number
  rearUnsprungMass: number
  fork: Fork
  rear: Rear
}

/**
 * What the bike carries and does: masses that ride on the chassis, deceleration [m/s²], the front brake's share of it, the effective lean [rad]
 * from the contact line to the centre of gravity, and the state of the trapped gas.
 */
export interface LoadCase {
  payload?: readonly PointMass[]
  deceleration?: number
  frontBrakeShare?: number
  lean?: number
  gasState?: GasState
}

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

/**
 * A motorcycle: its chassis, the sprung mass [kg] at its centre in the datum frame [m], the masses that move with the axles [kg], both ends.
 * `wheelInertia`: moments of inertia of the wheels about their axles [kg m²], with tyre and discs; absent, slowing their turning takes nothing.
 */
export interface Bike {
  geometry: Geometry
  sprung: PointMass
  frontUnsprungMass: number
  rearUnsprungMass: number
  fork: Fork
  rear: Rear
  wheelInertia?: { front?: number; rear?: number }
}

/**
 * What the bike carries and does: masses that ride on the chassis, deceleration [m/s²], the front brake's share of it, the effective lean [rad]
 * from the contact line to the centre of gravity, the slope of the ground [rad, positive downhill], and the state of the trapped gas. On a slope a
 * deceleration of 0 is a bike held on its brakes, or rolling down them at one speed.
 */
export interface LoadCase {
  payload?: readonly PointMass[]
  deceleration?: number
  frontBrakeShare?: number
  lean?: number
  slope?: number
  gasState?: GasState
}

import type { Bike } from './bike.ts'
import { blankAttitude, chassis, takeAttitude } from './chassis.ts'
import { STANDARD_GRAVITY } from './constants.ts'
import { DomainError, finite, nonNegative, record, within } from './domain.ts'
import { forkLimit } from './fork.ts'
import { rearLimit } from './rear.ts'

/** A bike as it stood on two scales: wheel loads [N], used travels [m] and the height of the whole bike's centre of gravity [m]. */
export interface ScaleReading {
  frontLoad: number
  rearLoad: number
  frontTravel: number
  rearTravel: number
  centreOfGravityHeight: number
}

/**
 * The bike whose pose and wheel loads at the read travels are the readings: its sprung mass and where that sits follow. The springs are handed
 * on as they are; whether they carry these loads there is for `solveStance` to say. Refuses readings below 0, travels outside the limits, and
 * unsprung masses that leave no sprung mass. Source: moments about the rear contact, solved for the mass and its place.
 */
export function bikeFromScales(measured: Omit<Bike, 'sprung'> & { reading: ScaleReading }): Bike {
  const { geometry, frontUnsprungMass, rearUnsprungMass, fork, rear, reading } = record(
    'measured',
    measured,
  )
  const frontTravel = within(
    'reading.frontTravel',
    record('reading', reading).frontTravel,
    0,
    forkLimit(fork).travel,
  )
  const rearTravel = within('reading.rearTravel', reading.rearTravel, 0, rearLimit(rear).travel)
  const body = chassis(geometry)
  const at = takeAttitude(body, frontTravel, rearTravel, blankAttitude())
  const total =
    (nonNegative('reading.frontLoad', reading.frontLoad) +
      nonNegative('reading.rearLoad', reading.rearLoad)) /
    STANDARD_GRAVITY
  const mass =
    total -
    nonNegative('frontUnsprungMass', frontUnsprungMass) -
    nonNegative('rearUnsprungMass', rearUnsprungMass)
  if (!(mass > 0))
    throw new DomainError('reading', total, 'must weigh more than the unsprung masses')
  // The centre of the sprung mass from the rear axle, in ground directions; then turned back into the chassis frame.
  const x = ((reading.frontLoad / STANDARD_GRAVITY - frontUnsprungMass) * at.wheelbase) / mass
  const height = finite('reading.centreOfGravityHeight', reading.centreOfGravityHeight)
  const z =
    (total * height - frontUnsprungMass * body.frontRadius - rearUnsprungMass * body.rearRadius) /
      mass -
    body.rearRadius
  return {
    geometry,
    sprung: {
      mass,
      x: at.rearX + x * at.cosPitch + z * at.sinPitch,
      z: at.rearZ - x * at.sinPitch + z * at.cosPitch,
    },
    frontUnsprungMass,
    rearUnsprungMass,
    fork,
    rear,
  }
}

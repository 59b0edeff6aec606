import { type Bike, type LoadCase, STANDARD_GRAVITY, type Stance } from '../../src/core/index.ts'

/** What the balance equations leave over at a solved stance [N], written out anew from its pose: the two stop forces included. */
export function leftOver(
  bike: Bike,
  loadCase: LoadCase,
  settle: number,
  stance: Stance,
): { front: number; rear: number } {
  const { deceleration: a = 0, frontBrakeShare = 1, lean = 0, payload = [] } = loadCase
  const { frontUnsprungMass: mf, rearUnsprungMass: mr, geometry } = bike
  const g = STANDARD_GRAVITY / Math.cos(lean)
  const places = [bike.sprung, ...payload].map(({ mass, x, z }) => ({
    mass,
    ...stance.toGround({ x, z }),
  }))
  places.push({ mass: mf, ...stance.frontAxle }, { mass: mr, ...stance.rearAxle })
  const total = places.reduce((sum, { mass }) => sum + mass, 0)
  const moment = places.reduce((sum, { mass, x, z }) => sum + mass * (g * x + a * z), 0)
  const frontLoad = moment / stance.wheelbase
  const rearLoad = total * g - frontLoad
  const frontBrake = frontBrakeShare * total * a
  const rearBrake = (1 - frontBrakeShare) * total * a
  const axis =
    (frontLoad - mf * g) * Math.cos(stance.rake) + (frontBrake - mf * a) * Math.sin(stance.rake)
  const { x, z } = stance.pivot
  const about = x * rearLoad + z * rearBrake - mr * (g * x + a * (z - geometry.rearRadius))
  const raise = geometry.rearRaise ?? 0
  const datumRadius = geometry.datum.rearRadius ?? geometry.rearRadius
  const axleHeight = datumRadius + stance.rearTravel - geometry.datum.rearTravel - raise
  const arm = Math.sqrt(
    geometry.pivot.x ** 2 +
      (datumRadius - geometry.pivot.z) ** 2 -
      (axleHeight - geometry.pivot.z) ** 2,
  )
  return {
    front: axis - stance.forkForce + settle * (bike.fork.friction ?? 0) - stance.frontStopForce,
    rear:
      about / arm - stance.rearForce + settle * (bike.rear.friction ?? 0) - stance.rearStopForce,
  }
}

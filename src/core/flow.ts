import { DomainError, nonNegative, positive, record, representable, within } from './domain.ts'

/**
 * Flow [m³/s] through a sharp hole: C·A·√(2Δp/ρ), from its area [m²], pressure drop [Pa ≥ 0], density [kg/m³] and discharge
 * coefficient [1, above 0 to 1]. Viscosity has no part in it. Refuses a negative drop. Source: Massey and Ward-Smith, Mechanics of Fluids, ch. 3.
 */
export function orificeFlow(hole: {
  area: number
  pressureDrop: number
  density: number
  dischargeCoefficient: number
}): number {
  record('hole', hole)
  const coefficient = within(
    'dischargeCoefficient',
    positive('dischargeCoefficient', hole.dischargeCoefficient),
    0,
    1,
  )
  const speed = Math.sqrt(
    (2 * nonNegative('pressureDrop', hole.pressureDrop)) / positive('density', hole.density),
  )
  return representable('flow', coefficient * nonNegative('area', hole.area) * speed)
}

/**
 * Laminar flow [m³/s] through a narrow ring-shaped gap: π·D·h³·Δp/(12·μ·L), from mean diameter, gap and length [m], pressure drop
 * [Pa ≥ 0] and dynamic viscosity [Pa s]. Here flow falls as viscosity grows. Refuses a gap as wide as the diameter, where no ring is left.
 * Source: Massey and Ward-Smith, ch. 6 (flow between parallel plates, wrapped round).
 */
export function gapFlow(ring: {
  meanDiameter: number
  gap: number
  length: number
  pressureDrop: number
  viscosity: number
}): number {
  record('ring', ring)
  const diameter = positive('meanDiameter', ring.meanDiameter)
  const gap = nonNegative('gap', ring.gap)
  if (gap >= diameter)
    throw new DomainError(
      'gap',
      gap,
      'must be below the mean diameter: nothing is left inside the ring',
    )
  const resistance = 12 * positive('viscosity', ring.viscosity) * positive('length', ring.length)
  return representable(
    'flow',
    (Math.PI * diameter * gap ** 3 * nonNegative('pressureDrop', ring.pressureDrop)) / resistance,
  )
}

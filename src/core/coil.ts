import { DomainError, nonNegative, oneOf, positive, record, representable } from './domain.ts'

export interface CoilShape {
  wireDiameter: number
  meanDiameter: number
  activeCoils: number
  shearModulus: number
}

/**
 * Rate [N/m] of a helical compression spring from its wire diameter [m], mean coil diameter [m], active coils [1] and shear modulus [Pa].
 * Refuses values that are not above 0. Source: EN 13906-1, R = G d⁴/(8 D³ n).
 */
export function coilRate(shape: CoilShape): number {
  const { wireDiameter, meanDiameter, activeCoils, shearModulus } = record('coil', shape)
  springIndex(wireDiameter, meanDiameter)
  const wire = wireDiameter ** 4 * positive('shearModulus', shearModulus)
  return representable(
    'rate',
    wire / (8 * meanDiameter ** 3 * positive('activeCoils', activeCoils)),
  )
}

export interface CoilLoad {
  force: number
  wireDiameter: number
  meanDiameter: number
  correction: 'none' | 'wahl' | 'bergstrasser'
}

/**
 * Shear stress [Pa] in the wire under an axial force [N], from wire and mean coil diameter [m], with the chosen correction for curvature.
 * Refuses a force below 0, and a mean diameter that is not above the wire diameter.
 * Source: EN 13906-1 (the Bergsträsser factor); Wahl, Mechanical Springs, 1963 (the Wahl factor).
 */
export function coilShearStress(load: CoilLoad): number {
  const { force, wireDiameter, meanDiameter, correction } = record('load', load)
  const index = springIndex(wireDiameter, meanDiameter)
  nonNegative('force', force)
  const stress = (8 * force * meanDiameter) / (Math.PI * wireDiameter ** 3)
  return representable('stress', curvatureFactor(index, correction) * stress)
}

function curvatureFactor(index: number, correction: CoilLoad['correction']): number {
  switch (oneOf('correction', correction, ['none', 'wahl', 'bergstrasser'])) {
    case 'none':
      return 1
    case 'wahl':
      return (4 * index - 1) / (4 * index - 4) + 0.615 / index
    case 'bergstrasser':
      return (4 * index + 2) / (4 * index - 3)
  }
}

// At an index of 1 the coil has no hole, and the Wahl factor no value.
function springIndex(wireDiameter: number, meanDiameter: number): number {
  const index = positive('meanDiameter', meanDiameter) / positive('wireDiameter', wireDiameter)
  if (index <= 1)
    throw new DomainError('meanDiameter', meanDiameter, 'must be above the wire diameter')
  return index
}

/**
 * Least sum of the gaps [m] that a cold-coiled spring is to keep between its coils when squeezed most, from its wire diameter [m], mean coil diameter
 * [m] and active coils [1]: below it coils may touch one by one. Refuses values that are not above 0. Source: EN 13906-1, Sₐ = n (0.0015 D²/d + 0.1 d),
 * from memory: the paid text was not read.
 */
export function leastGaps({
  wireDiameter,
  meanDiameter,
  activeCoils,
}: {
  wireDiameter: number
  meanDiameter: number
  activeCoils: number
}): number {
  springIndex(wireDiameter, meanDiameter)
  const each = (0.0015 * meanDiameter ** 2) / wireDiameter + 0.1 * wireDiameter
  return representable('gaps', positive('activeCoils', activeCoils) * each)
}

/**
 * Length [m] of a spring pressed solid, from its wire diameter [m], total coils [1] and the form of its ends.
 * Refuses sizes that are not above 0. Source: Budynas and Nisbett, Shigley's Mechanical Engineering Design, table 10-1.
 */
export function solidLength(coil: {
  wireDiameter: number
  totalCoils: number
  ends: 'plain' | 'closed' | 'closedGround'
}): number {
  const { wireDiameter, totalCoils, ends } = record('coil', coil)
  const ground = oneOf('ends', ends, ['plain', 'closed', 'closedGround']) === 'closedGround'
  return representable(
    'length',
    positive('wireDiameter', wireDiameter) *
      (positive('totalCoils', totalCoils) + (ground ? 0 : 1)),
  )
}

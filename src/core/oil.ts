import { DomainError, finite, list, nonNegative, positive, record } from './domain.ts'

/** A kinematic viscosity [m²/s] at a temperature [K]. */
export interface ViscosityReading {
  temperature: number
  viscosity: number
}

const MM2 = 1e-6
// Walther's double logarithm exists only above 1 mm²/s of ν + 0.7.
const SHIFT = 0.7

/** Walther's scale: lg lg(ν + 0.7), ν in mm²/s (ASTM D341); takes [m²/s], refuses 0.3 mm²/s and below. */
function walther(parameter: string, viscosity: number): number {
  const shifted = positive(parameter, viscosity) / MM2 + SHIFT
  if (shifted <= 1)
    throw new DomainError(
      parameter,
      viscosity,
      'must be above 0.3 mm²/s (3e-7 m²/s), where the scale begins',
    )
  return Math.log10(Math.log10(shifted))
}

function fromWalther(scale: number): number {
  return (10 ** (10 ** scale) - SHIFT) * MM2
}

/**
 * Kinematic viscosity [m²/s] at `temperature` [K] of an oil known at two temperatures [K, m²/s]: lg lg(ν + 0.7) = A − B lg T.
 * Refuses equal temperatures, a viscosity that rises with temperature, 0.3 mm²/s and below, and a temperature so low that the law runs away.
 * Source: Walther's equation as in ASTM D341.
 */
export function viscosityAt(
  temperature: number,
  readings: readonly [ViscosityReading, ViscosityReading],
): number {
  const target = Math.log10(positive('temperature', temperature))
  if (list('readings', readings, 2).length > 2)
    throw new DomainError('readings', readings, 'must hold two entries')
  const [first, second] = readings
  const t1 = Math.log10(
    positive('readings[0].temperature', record('readings[0]', first).temperature),
  )
  const t2 = Math.log10(
    positive('readings[1].temperature', record('readings[1]', second).temperature),
  )
  if (t1 === t2)
    throw new DomainError('readings', readings, 'must be at two different temperatures')
  const w1 = walther('readings[0].viscosity', first.viscosity)
  const w2 = walther('readings[1].viscosity', second.viscosity)
  const slope = (w2 - w1) / (t2 - t1)
  if (slope > 0)
    throw new DomainError(
      'readings',
      readings,
      'must show a viscosity that falls as temperature rises',
    )
  // From the nearer reading, so that a reading comes back as it was given.
  const near = Math.abs(target - t1) <= Math.abs(target - t2)
  const viscosity = fromWalther(near ? w1 + slope * (target - t1) : w2 + slope * (target - t2))
  if (!Number.isFinite(viscosity))
    throw new DomainError(
      'temperature',
      temperature,
      'must be higher: Walther’s law has no finite viscosity there',
    )
  return viscosity
}

/** One oil of a blend: its share of the volume [1] and its kinematic viscosity [m²/s], at the blend's temperature. */
export interface BlendPart {
  share: number
  viscosity: number
}

/**
 * Kinematic viscosity [m²/s] of a blend: the shares [1] average lg lg(ν + 0.7). An estimate; additives that thicken can put a real blend off it.
 * Refuses an empty list, a share below 0, shares that do not add up to 1, and 0.3 mm²/s and below. Source: ASTM D341's scale with volume
 * shares, the principle of ASTM D7152 (from memory).
 */
export function blendViscosity(parts: readonly BlendPart[]): number {
  const total = list('parts', parts, 1).reduce(
    (sum, part) => sum + nonNegative('share', record('parts', part).share),
    0,
  )
  if (Math.abs(finite('share', total) - 1) > 1e-6)
    throw new DomainError('share', total, 'must add up to 1 over all parts')
  return fromWalther(
    parts.reduce(
      (sum, { share, viscosity }) => sum + (share / total) * walther('viscosity', viscosity),
      0,
    ),
  )
}

// ISO 3448 (2200 and 3200 from memory, after its edition of 1992): the mid-point of each class, mm²/s at 40 °C. A class reaches 10 % either way.
const CLASSES = [
  2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
]
const MID_POINTS = new Map([
  [2, 2.2],
  [3, 3.2],
  [5, 4.6],
  [7, 6.8],
])

/**
 * ISO viscosity class (the number after VG) of an oil from its kinematic viscosity at 40 °C [m²/s], limits included; null between and beyond the classes.
 * Refuses 0 and below. Source: ISO 3448.
 */
export function isoViscosityClass(viscosityAt40: number): number | null {
  // 35.2e-6 m²/s must be 35.2 mm²/s: twelve digits take away the rounding of the change of unit.
  const viscosity = twelveDigits(positive('viscosityAt40', viscosityAt40) / MM2)
  for (const grade of CLASSES) {
    const mid = MID_POINTS.get(grade) ?? grade
    if (viscosity >= twelveDigits(0.9 * mid) && viscosity <= twelveDigits(1.1 * mid)) return grade
  }
  return null
}

function twelveDigits(value: number): number {
  return Number(value.toPrecision(12))
}

import { DomainError, nonNegative, positive, record, representable } from './domain.ts'

/**
 * Time [s] in which a volume [m³] of oil runs by its own weight through a long thin round tube under a head that is held level:
 * 128·ν·L·V/(π·g·h·d⁴), from kinematic viscosity [m²/s], length, bore and head [m] and gravity [m/s²]. It is proportional to the
 * viscosity while the flow is slow; `reynolds` [1] tells how slow, and `kinetic` [1] the share of the head that goes into speed (both
 * low: proportional). Refuses what is not above 0. Source: Hagen and Poiseuille; Massey and Ward-Smith, Mechanics of Fluids, ch. 6.
 */
export function tubeDrainTime(tube: {
  viscosity: number
  volume: number
  length: number
  bore: number
  head: number
  gravity: number
}): { time: number; reynolds: number; kinetic: number } {
  record('tube', tube)
  const viscosity = positive('viscosity', tube.viscosity)
  const bore = positive('bore', tube.bore)
  const drive = positive('gravity', tube.gravity) * positive('head', tube.head)
  const flow = (Math.PI * drive * bore ** 4) / (128 * viscosity * positive('length', tube.length))
  const speed = flow / ((Math.PI / 4) * bore ** 2)
  return {
    time: representable('time', nonNegative('volume', tube.volume) / flow),
    reynolds: (speed * bore) / viscosity,
    kinetic: speed ** 2 / drive,
  }
}

/** Flow cups of ISO 2431 by their hole [mm]: ν = A·t − B/t, with A [mm²/s²] and B [mm²]. */
const CUPS = {
  3: [0.443, 200],
  4: [1.37, 200],
  5: [3.28, 220],
  6: [6.9, 570],
} as const

export type FlowCup = keyof typeof CUPS

/**
 * Kinematic viscosity [m²/s] from the time [s] in which a flow cup of ISO 2431 empties, by its hole [3, 4, 5 or 6 mm]. The standard
 * holds it for 30 to 100 s. Refuses a time so short that nothing is left of the viscosity. Source: ISO 2431:2019, as quoted in public tables.
 */
export function flowCupViscosity(cup: { hole: FlowCup; time: number }): number {
  record('cup', cup)
  const [a, b] = CUPS[cup.hole]
  const time = positive('time', cup.time)
  const viscosity = a * time - b / time
  if (viscosity <= 0)
    throw new DomainError('time', time, 'must be longer: the cup’s equation leaves no viscosity')
  return viscosity * 1e-6
}

/** Time [s] in which a flow cup of ISO 2431 empties of an oil of a kinematic viscosity [m²/s]: the inverse of `flowCupViscosity`. Refuses what is not above 0. */
export function flowCupTime(cup: { hole: FlowCup; viscosity: number }): number {
  record('cup', cup)
  const [a, b] = CUPS[cup.hole]
  const viscosity = positive('viscosity', cup.viscosity) * 1e6
  return (viscosity + Math.sqrt(viscosity ** 2 + 4 * a * b)) / (2 * a)
}

import { ATMOSPHERE } from './constants.ts'
import { within } from './domain.ts'

/**
 * Pressure of the standard atmosphere [Pa] at a height above sea level [m], from −500 to 11,000 m; refuses heights outside. Weather moves it by about 3 %.
 * Source: ISO 2533 (p₀(1 − 6.5 K/km·h/288.15 K)^5.25588, the constants from memory).
 */
export function standardPressure(altitude: number): number {
  return (
    ATMOSPHERE * (1 - (0.0065 * within('altitude', altitude, -500, 11_000)) / 288.15) ** 5.25588
  )
}

import { DomainError, finite, positive, record } from './domain.ts'
import { bracketedRoot } from './root.ts'
import { AT_100, INDEX_0, INDEX_100 } from './viscosityIndexTable.ts'

/** L and H of ASTM D2270 [mm²/s] for a viscosity at 100 °C of at least 2 mm²/s. */
function references(at100: number): { low: number; high: number } {
  if (at100 > 70) {
    return {
      low: (0.8353 * at100 + 14.67) * at100 - 216,
      high: (0.1684 * at100 + 11.85) * at100 - 97,
    }
  }
  const found = AT_100.findIndex((entry) => entry >= at100)
  const upper = Math.max(found, 1)
  const [x0 = 0, x1 = 1] = AT_100.slice(upper - 1, upper + 1)
  const share = (at100 - x0) / (x1 - x0)
  return { low: between(INDEX_0, upper, share), high: between(INDEX_100, upper, share) }
}

function between(table: readonly number[], upper: number, share: number): number {
  const [y0 = 0, y1 = 0] = table.slice(upper - 1, upper + 1)
  return y0 + share * (y1 - y0)
}

/**
 * Viscosity index [1, not rounded] from the kinematic viscosities at 40 °C and at 100 °C [m²/s]: the higher, the less the oil thins as it warms.
 * Refuses less than 2 mm²/s at 100 °C, where the standard has no table, and an oil that is not thinner at 100 °C.
 * Source: ASTM D2270 (ISO 2909), procedure A up to 100 and B above.
 */
export function viscosityIndex(oil: { at40: number; at100: number }): number {
  record('oil', oil)
  // In mm²/s, to twelve digits: 2e-6 m²/s must not fall below 2 by the rounding of the change of unit.
  const at40 = Number((positive('at40', oil.at40) * 1e6).toPrecision(12))
  const at100 = Number((positive('at100', oil.at100) * 1e6).toPrecision(12))
  if (at100 < 2)
    throw new DomainError(
      'at100',
      oil.at100,
      'must be at least 2 mm²/s (2e-6 m²/s): the standard begins there',
    )
  if (at40 <= at100)
    throw new DomainError('at40', oil.at40, 'must be above the viscosity at 100 °C')
  const { low, high } = references(at100)
  if (at40 >= high) return (100 * (low - at40)) / (low - high)
  const exponent = Math.log(high / at40) / Math.log(at100)
  return (10 ** exponent - 1) / 0.00715 + 100
}

/**
 * Viscosity at 100 °C [m²/s] of an oil from its viscosity at 40 °C [m²/s] and its viscosity index [1]: `viscosityIndex` turned round.
 * Refuses an index that no oil of 2 mm²/s or more at 100 °C has at this viscosity. Source: ASTM D2270.
 */
export function viscosityFromIndex(oil: { at40: number; index: number }): number {
  const at40 = positive('at40', record('oil', oil).at40)
  const index = finite('index', oil.index)
  const low = 2e-6
  const high = at40 * (1 - 1e-9)
  const off = (at100: number): number => viscosityIndex({ at40, at100 }) - index
  if (!(high > low) || off(low) > 0 || off(high) < 0) {
    throw new DomainError('index', oil.index, 'must belong to an oil of at least 2 mm²/s at 100 °C')
  }
  return bracketedRoot(off, low, high)
}

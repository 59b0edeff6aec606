import { units } from '../units/units.ts'

/* Units that published examples are printed in and no calculator offers. Each is put together from the units that calculators use, so that a slip there
   shows here too. Definitions: NIST SP 811, appendix B; the conventional millimetre of mercury and the gallon from memory. */

const of = (unit: keyof typeof units): number => units[unit].factor
const MINUTE = 60
const SECONDS_PER_TURN = 2 * Math.PI

const printed: Record<string, number> = {
  nm: 1e-9,
  µm: 1e-6,
  cm: 1e-2,
  'in²': of('in') ** 2,
  'm²': 1,
  'm³': 1,
  'mm³': 1e-9,
  'm/s²': 1,
  'ft/s²': of('ft'),
  'in/s²': of('in'),
  kN: 1e3,
  'N/m': 1,
  'lbf/ft': of('lbf') / of('ft'),
  Pa: 1,
  hPa: 100,
  'N/mm²': 1e6,
  'kgf/cm²': of('kgf') / 1e-4,
  kpsi: of('psi') * 1e3,
  Mpsi: of('psi') * 1e6,
  mmHg: 133.322387415,
  'kgf·m': of('kgf'),
  'lbf·in': of('lbf') * of('in'),
  rad: 1,
  'rad/s': 1,
  '1/min': SECONDS_PER_TURN / MINUTE,
  K: 1,
  'm²/s': 1,
  cSt: 1e-6,
  'Pa·s': 1,
  'kg/m³': 1,
  'm³/s': 1,
  'mm³/s': 1e-9,
  'L/min': 1e-3 / MINUTE,
  gpm: (231 * of('in³')) / MINUTE,
  'lbf·s/ft': of('lbf') / of('ft'),
  'lbf·s/in': of('lbf') / of('in'),
  'kJ/kg': 1e3,
  'kJ/(kg·K)': 1e3,
}

/** Factor and zero point [SI] of a unit by its symbol; refuses a symbol that stands in neither table. */
export function unitNamed(symbol: string): { factor: number; zero: number } {
  if (Object.hasOwn(units, symbol)) {
    const { factor, zero = 0 } = units[symbol as keyof typeof units]
    return { factor, zero }
  }
  const factor = printed[symbol]
  if (factor === undefined)
    throw new RangeError(`there is no unit “${symbol}”; add it to src/checks/units.ts`)
  return { factor, zero: 0 }
}

/** Units at the boundary: the core computes in SI, people read millimetres, kilograms and inches. Exact factors: NIST SP 811, appendix B. */

interface UnitDefinition {
  /** what it measures; only units of one quantity convert into one another */
  quantity: string
  /** SI value of 1 of this unit */
  factor: number
  /** SI value of 0 of this unit (temperatures) */
  zero?: number
  /** what is printed after the number */
  symbol: string
  /** how it is read aloud, plural */
  spoken: string
}

const GRAVITY = 9.80665
const INCH = 0.0254
const POUND = 0.45359237
const POUND_FORCE = POUND * GRAVITY

const table = {
  mm: { quantity: 'length', factor: 1e-3, symbol: 'mm', spoken: 'millimetres' },
  in: { quantity: 'length', factor: INCH, symbol: 'in', spoken: 'inches' },
  m: { quantity: 'distance', factor: 1, symbol: 'm', spoken: 'metres' },
  ft: { quantity: 'distance', factor: 12 * INCH, symbol: 'ft', spoken: 'feet' },
  'mm²': { quantity: 'area', factor: 1e-6, symbol: 'mm²', spoken: 'square millimetres' },
  'cm³': { quantity: 'volume', factor: 1e-6, symbol: 'cm³', spoken: 'cubic centimetres' },
  'in³': { quantity: 'volume', factor: INCH ** 3, symbol: 'in³', spoken: 'cubic inches' },
  N: { quantity: 'force', factor: 1, symbol: 'N', spoken: 'newtons' },
  kgf: { quantity: 'force', factor: GRAVITY, symbol: 'kgf', spoken: 'kilograms force' },
  lbf: { quantity: 'force', factor: POUND_FORCE, symbol: 'lbf', spoken: 'pounds force' },
  /** a load as a weighing scale reads it: SI in newtons, printed as kg */
  'kg load': { quantity: 'load', factor: GRAVITY, symbol: 'kg', spoken: 'kilograms' },
  'lb load': { quantity: 'load', factor: POUND_FORCE, symbol: 'lb', spoken: 'pounds' },
  'N/mm': { quantity: 'rate', factor: 1e3, symbol: 'N/mm', spoken: 'newtons per millimetre' },
  /** the trade writes kg/mm and lb/in; exactly, these are of the force */
  'kgf/mm': {
    quantity: 'rate',
    factor: GRAVITY * 1e3,
    symbol: 'kg/mm',
    spoken: 'kilograms force per millimetre',
  },
  'lbf/in': {
    quantity: 'rate',
    factor: POUND_FORCE / INCH,
    symbol: 'lb/in',
    spoken: 'pounds force per inch',
  },
  kg: { quantity: 'mass', factor: 1, symbol: 'kg', spoken: 'kilograms' },
  lb: { quantity: 'mass', factor: POUND, symbol: 'lb', spoken: 'pounds' },
  st: { quantity: 'mass', factor: 14 * POUND, symbol: 'st', spoken: 'stone' },
  '°': { quantity: 'angle', factor: Math.PI / 180, symbol: '°', spoken: 'degrees' },
  bar: { quantity: 'pressure', factor: 1e5, symbol: 'bar', spoken: 'bar' },
  kPa: { quantity: 'pressure', factor: 1e3, symbol: 'kPa', spoken: 'kilopascals' },
  psi: {
    quantity: 'pressure',
    factor: POUND_FORCE / INCH ** 2,
    symbol: 'psi',
    spoken: 'pounds per square inch',
  },
  MPa: { quantity: 'stress', factor: 1e6, symbol: 'MPa', spoken: 'megapascals' },
  GPa: { quantity: 'modulus', factor: 1e9, symbol: 'GPa', spoken: 'gigapascals' },
  '°C': {
    quantity: 'temperature',
    factor: 1,
    zero: 273.15,
    symbol: '°C',
    spoken: 'degrees Celsius',
  },
  '°F': {
    quantity: 'temperature',
    factor: 5 / 9,
    zero: 273.15 - 160 / 9,
    symbol: '°F',
    spoken: 'degrees Fahrenheit',
  },
  s: { quantity: 'time', factor: 1, symbol: 's', spoken: 'seconds' },
  'm/s': { quantity: 'velocity', factor: 1, symbol: 'm/s', spoken: 'metres per second' },
  'km/h': { quantity: 'speed', factor: 1 / 3.6, symbol: 'km/h', spoken: 'kilometres per hour' },
  mph: { quantity: 'speed', factor: 0.44704, symbol: 'mph', spoken: 'miles per hour' },
  g: { quantity: 'acceleration', factor: GRAVITY, symbol: 'g', spoken: 'g' },
  'mm²/s': {
    quantity: 'viscosity',
    factor: 1e-6,
    symbol: 'mm²/s',
    spoken: 'square millimetres per second',
  },
  'N·s/m': { quantity: 'damping', factor: 1, symbol: 'N·s/m', spoken: 'newton seconds per metre' },
  'N·m': { quantity: 'moment', factor: 1, symbol: 'N·m', spoken: 'newton metres' },
  'lbf·ft': {
    quantity: 'moment',
    factor: POUND_FORCE * 12 * INCH,
    symbol: 'lbf·ft',
    spoken: 'pound feet',
  },
  J: { quantity: 'energy', factor: 1, symbol: 'J', spoken: 'joules' },
  Hz: { quantity: 'frequency', factor: 2 * Math.PI, symbol: 'Hz', spoken: 'hertz' },
  '1/s': { quantity: 'growth', factor: 1, symbol: '1/s', spoken: 'per second' },
  '%': { quantity: 'share', factor: 0.01, symbol: '%', spoken: 'per cent' },
  '1/m': { quantity: 'curvature', factor: 1, symbol: '1/m', spoken: 'per metre' },
  '1/mm': { quantity: 'curvature', factor: 1e3, symbol: '1/mm', spoken: 'per millimetre' },
  '': { quantity: 'ratio', factor: 1, symbol: '', spoken: '' },
  turns: { quantity: 'turns', factor: 1, symbol: 'turns', spoken: 'turns' },
  clicks: { quantity: 'clicks', factor: 1, symbol: 'clicks', spoken: 'clicks' },
  coils: { quantity: 'coils', factor: 1, symbol: 'coils', spoken: 'coils' },
} as const satisfies Record<string, UnitDefinition>

export type Unit = keyof typeof table
export const units: Record<Unit, UnitDefinition> = table
/** What a unit measures. */
export type Quantity = (typeof table)[Unit]['quantity']

/** Value in SI of `value` [unit]. */
export const toSI = (value: number, unit: Unit): number =>
  value * units[unit].factor + (units[unit].zero ?? 0)

/** Value in `unit` of `si` [SI]. */
export const fromSI = (si: number, unit: Unit): number =>
  (si - (units[unit].zero ?? 0)) / units[unit].factor

/** A difference of two values: no offset, so that 10 °C of warming is 18 °F. */
export const differenceFromSI = (si: number, unit: Unit): number => si / units[unit].factor

/** `value` [from] in the unit `to`; refuses units of different quantities. */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value
  if (units[from].quantity !== units[to].quantity)
    throw new RangeError(`${from} and ${to} measure different things`)
  return fromSI(toSI(value, from), to)
}

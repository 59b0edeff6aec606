import { ATMOSPHERE } from './constants.ts'
import {
  DomainError,
  finite,
  nonNegative,
  positive,
  record,
  representable,
  within,
} from './domain.ts'

/**
 * The gas above the oil in one fork leg: diameters [m], `airHeight` from the top of the tube down to the oil with the fork collapsed and the
 * spring out [m], `stackVolume` of spring, spacer and cap below that top [m³], gauge pressure [Pa], oil volume [m³] and its expansion [1/K].
 * `closed`: temperature [K] and ambient pressure [Pa] when the cap went on, fork fully extended.
 */
export interface Gas {
  tubeDiameter: number
  boreDiameter: number
  airHeight: number
  stackVolume?: number
  gaugePressure?: number
  oilVolume?: number
  oilExpansion?: number
  closed?: { temperature?: number; pressure?: number }
}

/**
 * What the gas has been through: slowly to fork travel `from` [m] at the temperature of now [K], then fast with a polytropic `exponent` [1]
 * (1 slow, 1.4 fast, a stroke between), against the ambient pressure of now [Pa]. Both of the last are as closed unless given.
 */
export interface GasState {
  exponent?: number
  from?: number
  temperature?: number
  ambientPressure?: number
}

/** One leg's gas ready to evaluate: piston area [m²], volume at full extension and now [m³], pressure [Pa] at the volume it starts fast from. */
export interface GasCurve {
  area: number
  volume: number
  startVolume: number
  startPressure: number
  ambientPressure: number
  exponent: number
  /** Travel [m] at which no gas volume is left: approached, never reached. */
  lock: number
}

/** The gas of a leg in a fork of the given travel [m], in a state; refuses sizes without meaning and a leg without gas at full extension. */
export function gasCurve(gas: Gas, travel: number, state: GasState = {}): GasCurve {
  const { temperature: closedAt, pressure } = closing(record('gas', gas))
  record('gasState', state)
  const temperature =
    state.temperature == null ? closedAt : positive('temperature', state.temperature)
  const area = (Math.PI / 4) * positive('tubeDiameter', gas.tubeDiameter) ** 2
  const closedVolume = volumeWhenClosed(gas, positive('travel', travel) * area)
  const growth =
    nonNegative('oilVolume', gas.oilVolume ?? 0) *
    nonNegative('oilExpansion', gas.oilExpansion ?? 7e-4) *
    (temperature - closedAt)
  const volume = closedVolume - growth
  if (!(volume > 0))
    throw new DomainError(
      'temperature',
      temperature,
      'must leave gas above the oil at full extension',
    )
  const startVolume = volume - area * within('from', state.from ?? 0, 0, travel)
  if (!(startVolume > 0)) throw new DomainError('from', state.from, 'must leave gas above the oil')
  return {
    area,
    volume,
    startVolume,
    startPressure: (pressure * (closedVolume / startVolume) * temperature) / closedAt,
    ambientPressure:
      state.ambientPressure == null
        ? ambientWhenClosed(gas)
        : nonNegative('ambientPressure', state.ambientPressure),
    // Beyond 3 no gas behaves so, and powers outgrow a number; 0 is constant pressure.
    exponent: within('exponent', state.exponent ?? 1, 0, 3),
    lock: volume / area,
  }
}

function volumeWhenClosed(gas: Gas, swept: number): number {
  const bore = (Math.PI / 4) * positive('boreDiameter', gas.boreDiameter) ** 2
  const volume =
    bore * nonNegative('airHeight', gas.airHeight) -
    nonNegative('stackVolume', gas.stackVolume ?? 0) +
    swept
  if (!(volume > 0))
    throw new DomainError(
      'stackVolume',
      gas.stackVolume ?? 0,
      'must leave gas above the oil at full extension',
    )
  return representable('volume', volume)
}

function ambientWhenClosed(gas: Gas): number {
  return positive('closed.pressure', gas.closed?.pressure ?? ATMOSPHERE)
}

function closing(gas: Gas): { temperature: number; pressure: number } {
  const gauge = finite('gaugePressure', gas.gaugePressure ?? 0)
  const pressure = ambientWhenClosed(gas) + gauge
  if (pressure < 0) throw new DomainError('gaugePressure', gauge, 'must not be below a vacuum')
  return {
    temperature: positive('closed.temperature', gas.closed?.temperature ?? 293.15),
    pressure,
  }
}

/** A gas curve whose fast part starts from another travel [m], short of its lock: up to there the gas is squeezed slowly, at pressure times volume kept. */
export function gasCurveFrom(curve: GasCurve, from: number): GasCurve {
  const startVolume = curve.volume - curve.area * from
  const startPressure = (curve.startPressure * curve.startVolume) / startVolume
  return { ...curve, startVolume, startPressure }
}

/** Force [N] of a gas curve at a travel [m] short of its lock: area times pressure above ambient. */
export function gasCurveForce(curve: GasCurve, x: number): number {
  return curve.area * (pressureAt(curve, curve.volume - curve.area * x) - curve.ambientPressure)
}

/** Slope [N/m] of a gas curve at a travel [m] short of its lock. */
export function gasCurveRate(curve: GasCurve, x: number): number {
  const volume = curve.volume - curve.area * x
  return (curve.exponent * curve.area * curve.area * pressureAt(curve, volume)) / volume
}

function pressureAt(curve: GasCurve, volume: number): number {
  const ratio = curve.startVolume / volume
  return curve.startPressure * (curve.exponent === 1 ? ratio : ratio ** curve.exponent)
}

/** Work [J] done on a gas curve between two travels [m] short of its lock. */
export function gasCurveEnergy(curve: GasCurve, x0: number, x1: number): number {
  const first = curve.volume - curve.area * x0
  const squeeze = Math.log(first / (curve.volume - curve.area * x1))
  const excess = curve.exponent - 1
  // expm1 keeps the digits that a difference of powers loses when the exponent is close to 1.
  const growth = excess === 0 ? squeeze : Math.expm1(excess * squeeze) / excess
  return pressureAt(curve, first) * first * growth - curve.area * curve.ambientPressure * (x1 - x0)
}

/** Refuses a travel [m] outside the fork's, or at or past hydraulic lock, and hands it back. */
export function beforeLock(curve: GasCurve, parameter: string, x: number): number {
  if (curve.volume - curve.area * x <= 0)
    throw new DomainError(parameter, x, `must stay short of hydraulic lock at ${curve.lock} m`)
  return x
}

/**
 * Force [N] of the gas in one leg on a fork of the given travel [m], at used travel x [m], above ambient pressure.
 * Refuses x outside 0…travel and at or past hydraulic lock. Source: the ideal gas law, pVⁿ constant (Cengel and Boles, Thermodynamics).
 */
export function gasForce(gas: Gas, travel: number, x: number, state?: GasState): number {
  const curve = gasCurve(gas, travel, state)
  return representable(
    'force',
    gasCurveForce(curve, beforeLock(curve, 'x', within('x', x, 0, travel))),
  )
}

/** Slope [N/m] of `gasForce` at used travel x [m]; refuses what `gasForce` refuses. */
export function gasRate(gas: Gas, travel: number, x: number, state?: GasState): number {
  const curve = gasCurve(gas, travel, state)
  return representable(
    'rate',
    gasCurveRate(curve, beforeLock(curve, 'x', within('x', x, 0, travel))),
  )
}

/** Work [J] done on the gas of one leg from travel x0 to x1 [m], the integral of `gasForce`; refuses what `gasForce` refuses. */
export function gasEnergy(
  gas: Gas,
  travel: number,
  x0: number,
  x1: number,
  state?: GasState,
): number {
  const curve = gasCurve(gas, travel, state)
  beforeLock(curve, 'x0', within('x0', x0, 0, travel))
  beforeLock(curve, 'x1', within('x1', x1, 0, travel))
  return representable('energy', gasCurveEnergy(curve, x0, x1))
}

import { DomainError, finite, positive, record, representable } from './domain.ts'

/**
 * Volume [m³] of gas closed in by a piston that a force presses: V·(p/(p + F/A))^(1/n), from the volume [m³] and the absolute pressure [Pa]
 * before, the force on the piston [N, below 0 for a pull], its area [m²] and the polytropic exponent [1]: 1 where the gas has time to
 * keep its temperature, 1.4 for air that has none. Refuses a pull that leaves no pressure. Source: the gas laws; Moran and Shapiro.
 */
export function closedGasVolume(gas: {
  volume: number
  pressure: number
  force: number
  area: number
  exponent: number
}): number {
  record('gas', gas)
  const pressure = positive('pressure', gas.pressure)
  const after = pressure + finite('force', gas.force) / positive('area', gas.area)
  if (after <= 0) throw new DomainError('force', gas.force, 'must leave a pressure: pull less')
  return representable(
    'volume',
    positive('volume', gas.volume) * (pressure / after) ** (1 / positive('exponent', gas.exponent)),
  )
}

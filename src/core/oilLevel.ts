import { finite, positive, record, representable } from './domain.ts'
import { type Gas, gasCurve, type GasState } from './gas.ts'

/** Change of level [m] in a bore of this diameter [m] when a volume [m³, either sign] is poured in or drawn off; refuses a diameter not above 0. Source: volume ÷ area. */
export function levelChange({
  volume,
  boreDiameter,
}: {
  volume: number
  boreDiameter: number
}): number {
  return representable(
    'level',
    finite('volume', volume) / ((Math.PI / 4) * positive('boreDiameter', boreDiameter) ** 2),
  )
}

/**
 * Gas volume left in one leg [m³] at used travel x [m] of a fork of the given travel [m], its oil as warm as the state says. Below 0 past hydraulic
 * lock: by so much the oil is too much. Refuses what `gasCurve` refuses. Source: the volumes in `gasForce`.
 */
export function gasVolume(gas: Gas, travel: number, x: number, state?: GasState): number {
  const curve = gasCurve(record('gas', gas), travel, state)
  return representable('volume', curve.volume - curve.area * finite('x', x))
}

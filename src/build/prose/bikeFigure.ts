import type { BikeSpec } from '../../bikes/bikes.ts'
import { toSI } from '../../units/units.ts'
import type { Unit } from '../../units/units.ts'
import { showQuantity } from './value.ts'
import type { ShownValue } from './value.ts'

/** Units of a bike's figures by the last part of their name; everything else is a length in mm. */
const UNITS: Record<string, Unit> = {
  mass: 'kg',
  frontUnsprungMass: 'kg',
  rearUnsprungMass: 'kg',
  rake: '°',
  frontShare: '%',
  springRate: 'N/mm',
  rate: 'N/mm',
  friction: 'N',
  gasForce: 'N',
  stackVolume: 'cm³',
  initial: '',
  shocks: '',
}

/** One of an invented bike's own figures, as `fork.springRate`. */
export function bikeFigure(
  bikes: Readonly<Record<string, BikeSpec>>,
  id: string,
  of: string,
  { digits, only }: { digits?: number; only?: 'metric' },
): ShownValue {
  const bike = bikes[id]
  if (bike === undefined)
    throw new Error(
      `<Value bike="${id}">: there is no such bike; known are ${Object.keys(bikes).join(', ')}`,
    )
  const value = of
    .split('.')
    .reduce<unknown>(
      (object, key) =>
        typeof object === 'object' && object !== null ? Reflect.get(object, key) : undefined,
      bike,
    )
  if (typeof value !== 'number') throw new Error(`<Value bike="${id}" of="${of}">: no such figure`)
  const unit = UNITS[of.split('.').at(-1) ?? ''] ?? 'mm'
  const places = digits ?? (Number.isInteger(value) ? 0 : unit === 'N/mm' ? 1 : 2)
  return showQuantity(toSI(value, unit), unit, places, false, only)
}

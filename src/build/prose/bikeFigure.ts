import { sheetUnit } from '../../bikes/inSI.ts'
import type { BikeSheets } from '../../bikes/sheet.ts'
import { toSI } from '../../units/units.ts'
import { showQuantity } from './value.ts'
import type { ShownValue } from './value.ts'

/** One of an invented bike's own figures, as `fork.springRate`. */
export function bikeFigure(
  bikes: BikeSheets,
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
  const unit = sheetUnit(of)
  if (typeof value !== 'number' || unit === undefined)
    throw new Error(`<Value bike="${id}" of="${of}">: no such figure`)
  const places = digits ?? (Number.isInteger(value) ? 0 : unit === 'N/mm' ? 1 : 2)
  return showQuantity(toSI(value, unit), unit, places, false, only)
}

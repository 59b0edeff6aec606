import { IMPERIAL, METRIC, unitOptions } from './choice.ts'
import type { UnitChoice } from './choice.ts'

const quantities = Object.keys(unitOptions) as (keyof UnitChoice)[]

const same = (one: UnitChoice, other: UnitChoice): boolean =>
  quantities.every((quantity) => one[quantity] === other[quantity])

/** A choice of units for a link: a name, or the units that are not metric, as "in,lbf/in"; null for metric, which a link leaves out. */
export function unitsText(choice: UnitChoice): string | null {
  if (same(choice, METRIC)) return null
  if (same(choice, IMPERIAL)) return 'imperial'
  const own = quantities.filter((quantity) => choice[quantity] !== METRIC[quantity])
  return own.map((quantity) => choice[quantity]).join(',')
}

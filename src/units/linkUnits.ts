import { IMPERIAL, METRIC, unitOptions } from './choice.ts'
import type { UnitChoice } from './choice.ts'

/** The key of a link under which its sender's units stand. */
export const UNITS_KEY = 'units'

/** What a link says of units: the choice, and a sentence of what in it could not be used. */
export interface UnitsReading {
  choice: UnitChoice
  problem?: string
}

const quantities = Object.keys(unitOptions) as (keyof UnitChoice)[]

/** The units that a link's query names; null where it names none, so that the reader's own hold. */
export function unitsOfLink(search: string): UnitsReading | null {
  const text = new URLSearchParams(search.replaceAll('&amp;', '&')).get(UNITS_KEY)
  if (text === null) return null
  if (text === 'metric') return { choice: METRIC }
  if (text === 'imperial') return { choice: IMPERIAL }
  const choice: Record<keyof UnitChoice, string> = { ...METRIC }
  const strange: string[] = []
  for (const unit of text.slice(0, 200).split(',')) {
    const quantity = quantities.find((each) =>
      (unitOptions[each] as readonly string[]).includes(unit),
    )
    if (quantity === undefined) strange.push(unit)
    else choice[quantity] = unit
  }
  const problem = `The link names units that this site does not have: “${strange.join(', ').slice(0, 40)}”. Metric units are shown in their place`
  return { choice: choice as UnitChoice, ...(strange.length > 0 ? { problem } : {}) }
}

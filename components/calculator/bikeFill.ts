import { dayOf, formatDay } from '../../src/units/words.ts'
import { filledBy } from '../../src/bikes/figuresFor.ts'
import type { Whose } from '../../src/bikes/figuresFor.ts'
import { bikeCode } from '../../src/bikes/ownBike.ts'
import type { OwnFigures } from '../../src/bikes/ownBike.ts'
import type { BikeSheet } from '../../src/bikes/sheet.ts'
import { tidy } from '../../src/machine/fields.ts'
import { UNKNOWN } from '../../src/machine/given.ts'
import type { GivenValue } from '../../src/machine/given.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import type { BikeRecord, Figure } from '../../src/record/records.ts'
import { withWorkedOut } from '../../src/record/workedOut.ts'
import { convert } from '../../src/units/units.ts'
import type { Origin } from './stand.ts'

/* A card's values from a reader's bike, each with where it comes from. */

/** "measured 12 Mar": how a figure is known, and since when. */
export const sourceText = ({ from, date }: Figure): string =>
  `${from} ${formatDay(dayOf(date), 'ofYear')}`

/** "middleweight roadster": an invented bike in running text. */
export const standInName = ({ name }: BikeSheet): string =>
  name.replace(/ \(invented\)$/, '').toLowerCase()

export const ownFigures = (bike: BikeRecord): OwnFigures =>
  Object.fromEntries(
    Object.entries(withWorkedOut(bike.figures)).map(([id, { value }]) => [id, value]),
  )

/** Where a value comes from that stands for a figure which nobody has measured. */
export const UNMEASURED = 'bike:not measured on yours'

export interface Fill {
  values: Record<string, GivenValue>
  origins: Record<string, Origin>
  /** inputs by whose value they got */
  of: Record<Whose, string[]>
}

/** The id of a statement's bike input, if it has one. */
export const bikeInputOf = ({ inputs }: CardStatement): string | null =>
  Object.entries(inputs).find(([, { kind }]) => kind === 'bike')?.[0] ?? null

/** What a bike gives a card. */
export function fillFrom(statement: CardStatement, bike: BikeRecord, standIn: BikeSheet): Fill {
  const figures = ownFigures(bike)
  const known = withWorkedOut(bike.figures)
  const fill: Fill = {
    values: {},
    origins: {},
    of: { own: [], unknown: [], standIn: [], example: [] },
  }
  const asked = (id: string): { unknown: boolean } | null => {
    const input = statement.inputs[id]
    return input?.kind === 'quantity' ? { unknown: input.typical !== undefined } : null
  }
  for (const { input: id, figure, whose, value } of filledBy(
    statement.id,
    figures,
    standIn,
    asked,
  )) {
    const input = statement.inputs[id]
    if (input?.kind !== 'quantity') continue
    fill.of[whose].push(id)
    if (whose === 'example') {
      if (input.unmeasured !== undefined) {
        fill.values[id] = input.unmeasured
        fill.origins[id] = UNMEASURED
      }
      continue
    }
    fill.values[id] = value === null ? UNKNOWN : tidy(convert(value, figure.unit, input.unit))
    fill.origins[id] =
      whose === 'own'
        ? `bike:${sourceText(known[figure.id]!)}`
        : `bike:from the ${standInName(standIn)}: unknown on yours`
  }
  const bikeInput = bikeInputOf(statement)
  if (bikeInput !== null) {
    fill.values[bikeInput] = bikeCode(standIn, figures)
    fill.origins[bikeInput] = 'bike:from your bench book'
  }
  return fill
}

import { figuresFeeding } from './figures.ts'
import { isOnSheet, sheetFigure } from './ownBike.ts'
import type { FigureDefinition } from './figure.ts'
import type { OwnFigures } from './ownBike.ts'
import type { BikeSheet } from './sheet.ts'

/* Which of a calculator's inputs a bike fills, and with what. */

/** Whose value an input gets: the bike's own, nobody's (worked in a range), the stand-in's, or none, so that the card's example stays. */
export type Whose = 'own' | 'unknown' | 'standIn' | 'example'

export interface Filled {
  input: string
  figure: FigureDefinition
  whose: Whose
  /** in the figure's unit; null where nobody has one */
  value: number | null
}

/** The inputs of a calculator that figures feed. `asked` says of an input whether it takes “I don’t know”; an input that is not there is left out. */
export function filledBy(
  calculator: string,
  figures: OwnFigures,
  standIn: BikeSheet,
  asked: (input: string) => { unknown: boolean } | null,
): Filled[] {
  return [...figuresFeeding(calculator)].flatMap(([input, figure]): Filled[] => {
    const field = asked(input)
    if (field === null) return []
    const own = Object.hasOwn(figures, figure.id) ? figures[figure.id] : undefined
    if (own !== undefined) return [{ input, figure, whose: 'own', value: own }]
    if (field.unknown) return [{ input, figure, whose: 'unknown', value: null }]
    const value = sheetFigure(standIn, figure.id)
    return [{ input, figure, whose: value === null ? 'example' : 'standIn', value }]
  })
}

/** The figures of the sheet that a bike has not: what a calculator with a bike works with the stand-in's. */
export const standInFigures = (
  figures: OwnFigures,
  all: readonly FigureDefinition[],
): FigureDefinition[] =>
  all.filter(({ id }) => isOnSheet(id) && id !== 'riderShare' && !Object.hasOwn(figures, id))

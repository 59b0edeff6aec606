import { FIGURES, figureOf } from './figures.ts'
import { sheetOfCode, writeBikeCode } from './bikeCode.ts'
import type { SheetNumbers } from './bikeCode.ts'
import type { BikeSheet, BikeSheets } from './sheet.ts'

/* Between a reader's figures and the sheet that calculators take. */

/** Figures by id, each in its own unit. */
export type OwnFigures = Readonly<Record<string, number>>

const at = (object: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>(
    (now, key) => (typeof now === 'object' && now !== null ? Reflect.get(now, key) : undefined),
    object,
  )

/** Figures that a sheet holds in another form. */
const DERIVED: Readonly<Record<string, (sheet: BikeSheet) => number>> = {
  riderShare: ({ rider, wheelbase }) => (100 * rider.x) / wheelbase,
  frontScale: ({ mass, frontShare }) => (mass * frontShare) / 100,
  rearScale: ({ mass, frontShare }) => mass * (1 - frontShare / 100),
}

/** An invented bike's figure in the figure's unit; null where its sheet has none. */
export function sheetFigure(sheet: BikeSheet, id: string): number | null {
  const derived = Object.hasOwn(DERIVED, id) ? DERIVED[id] : undefined
  if (derived) return derived(sheet)
  const value = at(sheet, figureOf(id)?.sheet?.split('.') ?? ['nothing'])
  return typeof value === 'number' ? value : null
}

const tidy = (value: number): number => Number(value.toPrecision(7))

/** The numbers of a sheet that these figures set. */
function numbersOf(standIn: BikeSheet, figures: OwnFigures): SheetNumbers {
  const numbers: Record<string, number> = {}
  for (const { id, sheet } of FIGURES) {
    const value = Object.hasOwn(figures, id) ? figures[id] : undefined
    if (value === undefined || sheet === undefined || sheetFigure(standIn, id) === value) continue
    numbers[sheet] = tidy(value)
    // one ratio is all that is known: how it changes with travel is left out
    if (id === 'rear.motionRatio') numbers['rear.motionRatio.slope'] = 0
  }
  const { riderShare, wheelbase = standIn.wheelbase } = figures
  if (riderShare !== undefined) numbers['rider.x'] = tidy((wheelbase * riderShare) / 100)
  return numbers
}

/** A bike as one text: its stand-in, and what differs from the stand-in's sheet. */
export const bikeCode = (standIn: BikeSheet, figures: OwnFigures): string =>
  writeBikeCode(standIn.id, numbersOf(standIn, figures))

/** Whether a figure changes the bike that calculators work with. */
export const isOnSheet = (id: string): boolean =>
  id === 'riderShare' || figureOf(id)?.sheet !== undefined

/** The figures that a bike's text holds, as whoever receives a link would keep them. */
export function figuresInCode(code: string, sheets: BikeSheets): OwnFigures {
  const written = sheetOfCode(code, sheets)
  if (!written) return {}
  const named = new Set(code.split(';').map((part) => part.split(':')[0]))
  return Object.fromEntries(
    FIGURES.flatMap(({ id, sheet }) => {
      const value = sheetFigure(written, id)
      const here =
        id === 'riderShare' ? named.has('rider.x') : sheet !== undefined && named.has(sheet)
      return here && value !== null ? [[id, value]] : []
    }),
  )
}

import { encodeLink } from '../../src/machine/writeLink.ts'
import { defaultsOf } from '../../src/machine/evaluate.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import type { Book } from '../../src/record/book.ts'
import { takenMean } from '../../src/record/carry.ts'
import type { Taken } from '../../src/record/carry.ts'
import { readingUnit, showValue } from '../../src/record/reading.ts'
import { entriesOf } from '../../src/record/sheet.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { markCaption, markDrawing } from './markDrawing.ts'

/* Fills the hand-over sheet from the readings of the card. */

/** A row of the sheet: a reading before the work and one after it. */
export interface HandedRow {
  id: string
  before: string
  after: string
}

interface Found {
  value: number
  unit: string
}

/** The mean of a reading in its unit: before the work the first that was taken, after it the last. */
function found(
  id: string,
  side: 'before' | 'after',
  all: readonly Taken[],
  book: Book,
): Found | null {
  const named = all.filter(({ spec }) => spec.id === id)
  for (const taken of side === 'before' ? named : named.reverse()) {
    const value = takenMean(book, taken)
    if (value !== null) return { value, unit: taken.spec.unit }
  }
  return null
}

const wordsOf = (id: string, all: readonly Taken[], book: Book): string => {
  const taken = all.findLast(({ spec }) => spec.id === id)
  return taken ? (entriesOf(book, taken.procedure, id)[0]?.typed ?? '') : ''
}

/** The address that opens the same marks, in the calculator that compares them; nothing without a public address. */
function marksAddress(sheet: HTMLElement, given: Readonly<Record<string, number>>): string | null {
  const site = sheet.dataset['site']
  const held = document.querySelector<HTMLElement>('[data-carry="marks"]')?.dataset['statement']
  if (!site || !held) return null
  const statement = JSON.parse(held) as CardStatement
  const state = { ...defaultsOf(statement), ...given }
  const query = encodeLink(statement, state, null, { named: Object.keys(given) })
  return new URL(`calculators/marks/?${query}`, site).href
}

async function drawCode(place: Element | null, address: string | null): Promise<void> {
  if (!place || !address) return
  const { codeOf } = await import('../calculator/codes.ts')
  const code = document.createElement('div')
  code.innerHTML = codeOf(address)
  const says = Object.assign(document.createElement('p'), {
    textContent: 'The code opens these two marks.',
  })
  place.replaceChildren(code, says)
}

const BLANKS: Readonly<Record<string, string>> = { Bike: 'bikeIdentity', Odometer: 'odometerOut' }

/** Keeps the sheet at what the book holds. */
export function handOver(
  root: HTMLElement,
  rows: readonly HandedRow[],
  all: readonly Taken[],
  units: () => UnitChoice,
): (book: Book) => void {
  const sheet = root.querySelector<HTMLElement>('[data-handover]')
  if (!sheet) return () => undefined
  const put = (row: string, side: string, value: Found | null): void => {
    const cell = sheet.querySelector<HTMLElement>(`[data-handed="${row}"] [data-side="${side}"]`)
    if (cell)
      cell.textContent = value
        ? showValue(value.value, value.unit, readingUnit(value.unit, units()))
        : ''
  }
  const draw = (book: Book): void => {
    const [before, after] = [
      found('markLeft', 'before', all, book),
      found('markLeftAfter', 'after', all, book),
    ]
    const place = sheet.querySelector('[data-mark-drawing]')
    if (!before || !after || !place) return
    const shown = ({ value, unit }: Found) => ({
      exposed: value,
      written: showValue(value, unit, readingUnit(unit, units())),
    })
    const upsideDown =
      document.querySelector<HTMLInputElement>('input[name="way"]:checked')?.value === 'upside-down'
    const drawing = markDrawing(shown(before), shown(after), upsideDown)
    const caption = document.createElement('figcaption')
    caption.textContent = markCaption(Number(drawing.dataset['cut']), upsideDown)
    place.replaceChildren(drawing, caption)
    const given = { beforeLeft: before.value, afterLeft: after.value }
    void drawCode(sheet.querySelector('[data-handover-code]'), marksAddress(sheet, given))
  }
  return (book) => {
    for (const { id, before, after } of rows) {
      put(id, 'before', found(before, 'before', all, book))
      put(id, 'after', found(after, 'after', all, book))
    }
    for (const [name, id] of Object.entries(BLANKS)) {
      const blank = sheet.querySelector(`[data-handover-blank="${name}"]`)
      if (blank) blank.textContent = wordsOf(id, all, book)
    }
    const again = sheet.querySelector('[data-handover-follow-up]')
    if (again) again.textContent = wordsOf('followUpWhen', all, book)
    draw(book)
  }
}

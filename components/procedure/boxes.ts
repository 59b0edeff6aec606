import type { UnitChoice } from '../../src/units/choice.ts'
import type { Book } from '../../src/record/book.ts'
import { takenMean } from '../../src/record/carry.ts'
import type { Taken } from '../../src/record/carry.ts'
import {
  apartText,
  boxText,
  entryOf,
  meanOf,
  readBox,
  readingUnit,
  showValue,
  unitSymbol,
} from '../../src/record/reading.ts'
import type { ReadingSpec } from '../../src/record/reading.ts'
import { entriesOf } from '../../src/record/sheet.ts'
import type { Change } from './ticks.ts'

type Box = HTMLInputElement | HTMLTextAreaElement

interface Place {
  root: HTMLElement
  spec: ReadingSpec
  boxes: Box[]
  units: () => UnitChoice
  /** the unit in sight; once it changes, even the box that has the focus is rewritten */
  shown: string
}

const part = (root: HTMLElement, name: string): HTMLElement | null =>
  root.querySelector<HTMLElement>(`[data-${name}]`)

/** Shows the first thing that is wrong with a reading's boxes; while a box is being typed in, only takes a cured one away. */
function showProblems({ root, spec, boxes, units }: Place, typing: boolean): void {
  const shown = readingUnit(spec.unit, units())
  const problems = boxes
    .map((box) => readBox(spec, box.value, shown))
    .map((reading) => (reading.kind === 'problem' ? reading.problem : null))
  const error = part(root, 'error')
  if (!error || (typing && error.hidden)) return
  const first = problems.find((problem) => problem !== null) ?? null
  error.hidden = first === null
  error.textContent = first ?? ''
  for (const [index, box] of boxes.entries()) {
    if (problems[index] == null) box.removeAttribute('aria-invalid')
    else box.setAttribute('aria-invalid', 'true')
  }
}

/** The latest reading of the same length in another procedure; for a reading after the work, the one before it. */
function earlier(
  book: Book,
  procedure: string,
  spec: ReadingSpec,
  all: readonly Taken[],
): { taken: Taken; mean: number } | null {
  const names = [spec.id, spec.id.replace(/After$/, '')]
  const here = all.findIndex((each) => each.procedure === procedure)
  for (const name of [names[1]!, names[0]!]) {
    for (const taken of all.slice(0, Math.max(0, here)).reverse()) {
      const mean = taken.spec.id === name ? takenMean(book, taken) : null
      if (mean !== null) return { taken, mean }
    }
  }
  return null
}

/** Units, mean and what was read earlier, as the book now stands. */
function showAround(
  { root, spec, units }: Place,
  book: Book,
  procedure: string,
  all: readonly Taken[],
  titles: ReadonlyMap<string, string>,
): void {
  const shown = readingUnit(spec.unit, units())
  const symbol = part(root, 'unit-symbol')
  if (symbol) symbol.textContent = unitSymbol(shown)
  const mean = part(root, 'mean')
  const result = meanOf(spec, entriesOf(book, procedure, spec.id))
  if (mean)
    mean.textContent =
      result === null || result.apart ? '' : showValue(result.mean, spec.unit, shown)
  const apart = part(root, 'apart')
  if (apart) apart.textContent = apartText(result, spec, shown)
  const note = part(root, 'earlier')
  const found = earlier(book, procedure, spec, all)
  if (!note) return
  note.hidden = found === null
  if (found)
    note.textContent = `Earlier, in “${titles.get(found.taken.procedure) ?? found.taken.procedure}”: ${showValue(found.mean, found.taken.spec.unit, shown)}`
}

/** Keeps what was typed into one box. */
function writeBox(
  { spec, boxes, units }: Place,
  procedure: string,
  box: number,
  change: Change,
): void {
  const typed = boxes[box]?.value ?? ''
  const entry = entryOf(spec, typed, readingUnit(spec.unit, units()))
  const at = new Date().toISOString().slice(0, 10)
  change(
    { do: 'write', procedure, reading: spec.id, box, entry, at },
    `${spec.label}: ${typed.slice(0, 40) || 'emptied'}`,
  )
}

/** The boxes in which readings are written: kept as typed, with their means, in the reader's units. */
export function boxes(
  root: HTMLElement,
  procedure: string,
  all: readonly Taken[],
  titles: ReadonlyMap<string, string>,
  units: () => UnitChoice,
  change: Change,
): (book: Book) => void {
  const own = new Map(
    all.filter((each) => each.procedure === procedure).map(({ spec }) => [spec.id, spec]),
  )
  const places: Place[] = [...root.querySelectorAll<HTMLElement>('[data-reading]')].flatMap(
    (element) => {
      const spec = own.get(element.dataset['reading'] ?? '')
      return spec
        ? [
            {
              root: element,
              spec,
              boxes: [...element.querySelectorAll<Box>('[data-box]')],
              units,
              shown: '',
            },
          ]
        : []
    },
  )
  for (const place of places) {
    for (const [index, box] of place.boxes.entries()) {
      box.addEventListener('input', () => {
        writeBox(place, procedure, index, change)
        showProblems(place, true)
      })
      box.addEventListener('change', () => showProblems(place, false))
    }
  }
  return (book) => {
    for (const place of places) {
      const shown = readingUnit(place.spec.unit, units())
      const entries = entriesOf(book, procedure, place.spec.id)
      for (const [index, box] of place.boxes.entries()) {
        const entry = entries[index]
        const text = entry ? boxText(place.spec, entry, shown) : ''
        // what is being typed stays as it is typed
        if ((box !== document.activeElement || shown !== place.shown) && box.value !== text)
          box.value = text
      }
      place.shown = shown
      showAround(place, book, procedure, all, titles)
      if (!place.boxes.includes(document.activeElement as Box)) showProblems(place, false)
    }
  }
}

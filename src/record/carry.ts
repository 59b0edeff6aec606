import type { Given } from '../machine/given.ts'
import type { CardStatement } from '../machine/statement.ts'
import { checkValue, tidy } from '../machine/fields.ts'
import { convert, units } from '../units/units.ts'
import type { Unit } from '../units/units.ts'
import type { Book } from './book.ts'
import { meanOf } from './reading.ts'
import type { Mean, ReadingSpec } from './reading.ts'
import { entriesOf } from './sheet.ts'

/** A reading and the procedure that takes it, in the order of the job. */
export interface Taken {
  procedure: string
  spec: ReadingSpec
}

/** A value carried to a calculator's input, in the definition's unit. */
export interface Carried {
  input: string
  value: number
  taken: Taken
}

/** What of a book a calculator can use, and what it can't. */
export interface Carrying {
  given: Given
  carried: readonly Carried[]
  /** sentences: a reading that the calculator's field refuses */
  refused: readonly string[]
  /** whether every value that the calculator asks for at first comes from readings, and none from before the work where it is read again after it */
  complete: boolean
}

/** Inputs that a reading feeds although it is declared for another calculator: the same length, read once. */
const ALSO: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  marks: { travel: 'frontTravel' },
}

/** Friction band of the marks: the reading after a lift less the one after a push down, taken in one procedure. */
const BANDS = [
  ['staticSettledUpAfter', 'markLeftAfter'],
  ['staticSettledUp', 'markLeft'],
] as const

const isUnit = (unit: string): unit is Unit => unit in units

/** `value` [from] in the unit `to`; null where the two measure different things. */
export function inUnit(value: number, from: string, to: Unit): number | null {
  // a scale reads kilograms, and a load as a scale reads it is those kilograms
  if (from === to || (from === 'kg' && to === 'kg load')) return value
  if (!isUnit(from) || units[from].quantity !== units[to].quantity) return null
  return tidy(convert(value, from, to))
}

const read = (book: Book, { procedure, spec }: Taken): Mean | null =>
  meanOf(spec, entriesOf(book, procedure, spec.id))

/** The mean of a reading's boxes in its own unit; null while nothing readable stands there, or what does lies too far apart to be used. */
export function takenMean(book: Book, taken: Taken): number | null {
  const found = read(book, taken)
  return found === null || found.apart ? null : found.mean
}

/** Readings that may feed an input, the best one first: this procedure's, its last step first; then the other procedures', the latest in the job first. */
function candidates(
  calculator: string,
  input: string,
  here: string,
  all: readonly Taken[],
): Taken[] {
  const also = ALSO[calculator]?.[input]
  const feeding = all.filter(
    ({ spec }) =>
      (spec.to?.calculator === calculator && spec.to.input === input) || spec.id === also,
  )
  const own = feeding.filter(({ procedure }) => procedure === here)
  const others = feeding.filter(({ procedure }) => procedure !== here)
  return [...own.reverse(), ...others.reverse()]
}

/** The friction band [mm] that a procedure's own readings give, the latest in the job first. */
function bandOf(book: Book, all: readonly Taken[]): Carried | null {
  for (const [up, down] of BANDS) {
    for (const lifted of [...all].reverse().filter(({ spec }) => spec.id === up)) {
      const pushed = all.find(
        ({ procedure, spec }) => procedure === lifted.procedure && spec.id === down,
      )
      const [high, low] = [takenMean(book, lifted), pushed ? takenMean(book, pushed) : null]
      if (high !== null && low !== null && high >= low)
        return { input: 'frictionBand', value: tidy(high - low), taken: lifted }
    }
  }
  return null
}

/** Whether a value from before the work stands where the work's own reading is still to come: at a procedure that reads after the work, its twin is read there or later in the job. */
function isOutdated(
  { input, taken }: Carried,
  calculator: string,
  here: string,
  all: readonly Taken[],
): boolean {
  const feeds = ({ spec }: Taken): boolean =>
    spec.to?.calculator === calculator && spec.id.endsWith('After')
  const from = all.findIndex((each) => each.procedure === here)
  const readsAfter = all.some((each) => each.procedure === here && feeds(each))
  return (
    readsAfter &&
    all.some(
      (each, index) =>
        index >= from &&
        feeds(each) &&
        each.spec.to?.input === input &&
        each.spec.id === `${taken.spec.id}After`,
    )
  )
}

/** What the readings of a book give a calculator, seen from one procedure. Values that its fields refuse are named and left out. */
export function carry(
  definition: CardStatement,
  here: string,
  all: readonly Taken[],
  book: Book,
): Carrying {
  const carried: Carried[] = []
  const refused: string[] = []
  for (const [id, input] of Object.entries(definition.inputs)) {
    if (input.kind !== 'quantity') continue
    for (const taken of candidates(definition.id, id, here, all)) {
      if (read(book, taken)?.apart) {
        // an earlier reading must not stand in for one that is to be read again
        refused.push(`${taken.spec.label}, whose readings lie too far apart`)
        break
      }
      const mean = takenMean(book, taken)
      const value = mean === null ? null : inUnit(mean, taken.spec.unit, input.unit)
      if (value === null) continue
      const reading = checkValue(input, value, [])
      if ('problem' in reading) refused.push(reading.problem)
      else carried.push({ input: id, value, taken })
      break
    }
  }
  const band = definition.id === 'marks' ? bandOf(book, all) : null
  if (band) carried.push(band)
  const current = carried.filter((each) => !isOutdated(each, definition.id, here, all))
  const known = new Set(current.map(({ input }) => input))
  const asked = Object.entries(definition.inputs).filter(([, input]) => input.more !== true)
  return {
    given: Object.fromEntries(carried.map(({ input, value }) => [input, value])),
    carried,
    refused,
    complete: asked.every(([id]) => known.has(id)),
  }
}

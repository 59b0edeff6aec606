import { displayUnit, METRIC, unitOptions } from '../units/choice.ts'
import type { UnitChoice } from '../units/choice.ts'
import { createSay } from '../units/say.ts'
import { readWithUnit } from '../units/typedUnit.ts'
import { convert, toSI, units } from '../units/units.ts'
import type { Unit } from '../units/units.ts'
import { checkQuantity, lowerFirst, readQuantity, stepDigits, tidy } from './fields.ts'
import type { FieldReading } from './fields.ts'
import type { QuantityInput } from './statement.ts'

/** Another way to understand what was typed: the sentence that asks, what the button says, and the value in the definition's unit. */
export interface Offer {
  ask: string
  use: string
  value: number
}

/** What a field makes of text that is more than a bare number in its own unit. */
export interface Written {
  reading: FieldReading
  /** what was read, where a unit was typed that is not the field's own */
  note?: string
  offers: readonly Offer[]
}

/** At most so many other meanings are offered: one bare number seldom has more. */
const MOST_OFFERS = 2

/** The value [definition's unit] in the reader's unit, with one decimal more than the field's step, as a conversion may have. */
function shown(input: QuantityInput, value: number, choice: UnitChoice): string {
  const text = createSay(choice).quantity(
    toSI(value, input.unit),
    input.unit,
    stepDigits(input) + 1,
  )
  return text.replace(/(\.\d*?)0+(?!\d)/, '$1').replace(/\.(?!\d)/, '')
}

const isIn = (input: QuantityInput, value: number): boolean =>
  'value' in checkQuantity(input, value, METRIC)

/** Units that a reader may have meant by a bare number in a field of this unit. */
function otherUnits(own: Unit): readonly Unit[] {
  const quantity = units[own].quantity
  const choices: Partial<Record<string, readonly Unit[]>> = unitOptions
  const options = quantity === 'load' ? (['kg load', 'lb load'] as const) : choices[quantity]
  return (options ?? []).filter((unit) => unit !== own)
}

/** A number out of the field's range that is in it as another unit of the same quantity. */
function asAnotherUnit(input: QuantityInput, typed: number, choice: UnitChoice): Offer[] {
  const own = displayUnit(input.unit, choice)
  return otherUnits(own)
    .map((unit) => ({ unit, value: tidy(convert(typed, unit, input.unit)) }))
    .filter(({ value }) => isIn(input, value))
    .map(({ unit, value }) => {
      const now = shown(input, value, choice)
      return { ask: `${typed} ${units[unit].symbol} is ${now}.`, use: `Use ${now}`, value }
    })
}

/** A rate for one leg that is twice what one leg commonly has, or more. */
function asPair(input: QuantityInput, value: number, choice: UnitChoice): Offer[] {
  if (input.oneLeg === undefined) return []
  const [low, high] = input.oneLeg
  const half = tidy(value / 2)
  if (value <= high || half < low || half > high || !isIn(input, half)) return []
  const each = shown(input, half, choice)
  return [
    {
      ask: `${shown(input, value, choice)} is much for one leg. If it is for both legs together, each has ${each}.`,
      use: `Use ${each}`,
      value: half,
    },
  ]
}

/** Reads what was typed into a quantity's field, with or without a unit, and says what else it may mean. */
export function readWritten(input: QuantityInput, text: string, choice: UnitChoice): Written {
  const own = displayUnit(input.unit, choice)
  const read = readWithUnit(text, own)
  if ('problem' in read) {
    if (read.problem !== 'other') return { reading: readQuantity(input, text, choice), offers: [] }
    return {
      reading: {
        problem: `${input.label}: “${text.trim().slice(0, 40)}” is in ${units[read.typed].spoken}. Enter ${lowerFirst(input.label)} in ${units[own].spoken}`,
      },
      offers: [],
    }
  }
  const value = tidy(convert(read.value, own, input.unit))
  const reading = checkQuantity(input, value, choice)
  if ('problem' in reading)
    return {
      reading,
      offers:
        read.typed === undefined
          ? asAnotherUnit(input, read.value, choice).slice(0, MOST_OFFERS)
          : [],
    }
  const note =
    read.typed !== undefined && read.typed !== own
      ? `Read as ${shown(input, value, choice)}.`
      : undefined
  return { reading, offers: asPair(input, value, choice), ...(note === undefined ? {} : { note }) }
}

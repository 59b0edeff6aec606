import { UNKNOWN } from './given.ts'
import { bikeOfCode } from '../bikes/bikeCode.ts'
import type { BikeSheets } from '../bikes/sheet.ts'
import type { Calculator } from './calculator.ts'
import type { Given, GivenValue } from './given.ts'
import type { CardStatement, Input } from './statement.ts'
import { checkValue } from './fields.ts'
import type { UnitChoice } from '../units/choice.ts'
import { toSI } from '../units/units.ts'

/** What a calculator may draw on besides its inputs. */
export interface Context {
  bikes: BikeSheets
  choice?: UnitChoice
}

/** Inputs by id in SI, as a calculator takes them. */
export type Loose = Readonly<Record<string, unknown>>

/** The definition's defaults, in its own units. */
export function defaultsOf(definition: Pick<CardStatement, 'inputs'>): Given {
  const given: Record<string, GivenValue> = {}
  for (const [id, input] of Object.entries(definition.inputs)) {
    if (input.default !== undefined) given[id] = input.default
  }
  return given
}

/** Whether an input is asked for, given the choices made. */
export function isAsked(input: Input, given: Given): boolean {
  return Object.entries(input.when ?? {}).every(([id, wanted]) => {
    const value = given[id]
    return (
      typeof value === 'string' &&
      (typeof wanted === 'string' ? wanted === value : wanted.includes(value))
    )
  })
}

function toCore(input: Input, value: GivenValue | undefined, context: Context): unknown {
  if (value === undefined) return undefined
  if (input.kind === 'quantity')
    return typeof value === 'number' ? toSI(value, input.unit) : undefined
  if (input.kind === 'bike') return bikeOfCode(String(value), context.bikes) ?? undefined
  if (input.kind === 'table' && typeof value === 'object')
    return value.map((row) => row.map((cell, place) => toSI(cell, input.columns[place]!.unit)))
  return value
}

/** What of a state can be computed with, and what is wrong with the rest: by input id. */
export interface Usable {
  given: Given
  problems: Readonly<Record<string, string>>
  /** whether a problem leaves nothing to compute with */
  blocked: boolean
}

/** Checks every input that is asked for. A table without its bad rows can still be used; the problem names those. */
export function usableOf(definition: Calculator, state: Given, context: Context): Usable {
  const problems: Record<string, string> = {}
  const given: Record<string, GivenValue> = { ...state }
  const bikes = Object.keys(context.bikes)
  let blocked = false
  for (const [id, input] of Object.entries(definition.inputs)) {
    if (!isAsked(input, state)) continue
    const reading = checkValue(input, state[id], bikes, context.choice)
    if ('problem' in reading) {
      problems[id] = reading.problem
      blocked = true
    } else if (input.kind === 'bike' && bikeOfCode(String(state[id]), context.bikes) === null) {
      problems[id] = `${input.label}: the link’s bike can’t be read. Choose one of the list`
      blocked = true
    } else if (reading.left !== undefined && reading.value !== undefined) {
      problems[id] = reading.left
      given[id] = reading.value
    }
  }
  return { given, problems, blocked }
}

/** An input that is not asked for falls back to its default, so that what stood there cannot matter. */
export function inputOf(definition: Calculator, given: Given, context: Context): Loose {
  return Object.fromEntries(
    Object.entries(definition.inputs).map(([id, input]) => [
      id,
      toCore(input, isAsked(input, given) ? given[id] : input.default, context),
    ]),
  )
}

/** The inputs answered with "I don't know", of those that are asked for. */
export const unknownIn = (definition: Calculator, given: Given): string[] =>
  Object.entries(definition.inputs).flatMap(([id, input]) =>
    input.kind === 'quantity' && given[id] === UNKNOWN && isAsked(input, given) ? [id] : [],
  )

/** A state with what is not known at a possible value. */
export const placed = (given: Given, at: Given): Given => ({
  ...given,
  ...Object.fromEntries(Object.entries(at).filter(([id]) => given[id] === UNKNOWN)),
})

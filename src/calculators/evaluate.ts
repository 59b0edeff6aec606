import { DomainError } from '../core/index.ts'
import type { BikeSpec } from './bikes.ts'
import { InputRefusal } from './define.ts'
import type { Calculator, Cell, Given, GivenValue, Input, OutputValue, Remark, Statement } from './define.ts'
import { checkValue } from './fields.ts'
import { isInterval } from './interval.ts'
import type { Say } from './say.ts'
import { createSay } from './say.ts'
import { METRIC } from './unit-choice.ts'
import type { UnitChoice } from './unit-choice.ts'
import { toSI } from './units.ts'

/** What a calculator may draw on besides its inputs. */
export interface Context {
  bikes: Readonly<Record<string, BikeSpec>>
  choice?: UnitChoice
}

export type Loose = Readonly<Record<string, unknown>>

/** One state, computed. */
export interface Computed {
  input: Loose
  output: Readonly<Record<string, OutputValue>>
  picture: unknown
  remarks: readonly Remark[]
}

/** A state computed, or the reasons why not: by input id, or for the whole (`refusal`). */
export interface Evaluation {
  now: Computed | null
  before: Computed | null
  problems: Readonly<Record<string, string>>
  refusal: string | null
  /** inputs answered with "I don't know" */
  unknown: readonly string[]
}

/** The definition's defaults, in its own units. */
export function defaultsOf(definition: Pick<Statement, 'inputs'>): Given {
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
    return typeof value === 'string' && (typeof wanted === 'string' ? wanted === value : wanted.includes(value))
  })
}

function toCore(input: Input, value: GivenValue | undefined, context: Context): unknown {
  if (value === undefined) return undefined
  if (input.kind === 'quantity') return typeof value === 'number' ? toSI(value, input.unit) : undefined
  if (input.kind === 'bike') return context.bikes[String(value)]
  if (input.kind === 'table' && typeof value === 'object') return value.map((row) => row.map((cell, place) => toSI(cell, input.columns[place]!.unit)))
  return value
}

function problemsOf(definition: Calculator, given: Given, context: Context): Record<string, string> {
  const problems: Record<string, string> = {}
  const bikes = Object.keys(context.bikes)
  for (const [id, input] of Object.entries(definition.inputs)) {
    if (!isAsked(input, given)) continue
    const reading = checkValue(input, given[id], bikes, context.choice)
    if ('problem' in reading) problems[id] = reading.problem
  }
  return problems
}

/** An input that is not asked for falls back to its default, so that what stood there cannot matter. */
function inputOf(definition: Calculator, given: Given, context: Context): Loose {
  return Object.fromEntries(
    Object.entries(definition.inputs).map(([id, input]) => [id, toCore(input, isAsked(input, given) ? given[id] : input.default, context)]),
  )
}

function mergeCell(middle: Cell, others: readonly (Cell | undefined)[]): Cell {
  if (typeof middle === 'string') return middle
  const ends = others.flatMap((cell) => (typeof cell === 'number' ? [cell] : isInterval(cell) ? [cell.low, cell.high] : []))
  if (ends.length === 0) return middle
  // what an unknown does not touch stays a plain number
  if (typeof middle === 'number' && ends.every((end) => end === middle)) return middle
  const value = typeof middle === 'number' ? middle : isInterval(middle) ? middle.value : undefined
  return { low: Math.min(...ends), high: Math.max(...ends), ...(value === undefined ? {} : { value }) }
}

function mergeOutputs(middle: Computed['output'], all: readonly Computed['output'][]): Computed['output'] {
  return Object.fromEntries(
    Object.entries(middle).map(([id, value]) => {
      if (!Array.isArray(value))
        return [
          id,
          mergeCell(
            value as Cell,
            all.map((output) => output[id] as Cell),
          ),
        ]
      const rows = value as readonly (readonly Cell[])[]
      return [
        id,
        rows.map((row, r) =>
          row.map((cell, c) =>
            mergeCell(
              cell,
              all.map((output) => (output[id] as typeof rows)[r]?.[c]),
            ),
          ),
        ),
      ]
    }),
  )
}

/** Low, middle and high of every unknown input, in all combinations up to 3⁴; past four unknowns the extremes of each alone. */
function possibilities(definition: Calculator, given: Given, unknown: readonly string[]): Given[] {
  const points = unknown.map((id) => {
    const input = definition.inputs[id]
    const [low, high] = input?.kind === 'quantity' ? (input.typical ?? input.range) : [0, 0]
    return { id, values: [(low + high) / 2, low, high] }
  })
  const middle: Given = { ...given, ...Object.fromEntries(points.map(({ id, values }) => [id, values[0]!])) }
  if (points.length > 4) return [middle, ...points.flatMap(({ id, values }) => values.slice(1).map((value) => ({ ...middle, [id]: value })))]
  return points.reduce<Given[]>((states, { id, values }) => values.flatMap((value) => states.map((state) => ({ ...state, [id]: value }))), [middle])
}

function computeState(definition: Calculator, given: Given, unknown: readonly string[], context: Context): Omit<Computed, 'remarks'> {
  const [middle, ...others] = possibilities(definition, given, unknown).map((state) => inputOf(definition, state, context))
  const output = definition.compute(middle as never) as Computed['output']
  const picture = definition.picture?.(middle as never, output as never)
  if (others.length === 0) return { input: middle!, output, picture }
  const all = [output, ...others.map((input) => definition.compute(input as never) as Computed['output'])]
  return { input: middle!, output: mergeOutputs(output, all), picture }
}

const recent = new WeakMap<Calculator, { key: string; bikes: Context['bikes']; computed: Omit<Computed, 'remarks'> }>()

/** The state before stays the same while a slider moves the one now: its last result is kept. */
function computeBefore(definition: Calculator, given: Given, context: Context): Omit<Computed, 'remarks'> {
  const key = JSON.stringify(given)
  const last = recent.get(definition)
  if (last?.key === key && last.bikes === context.bikes) return last.computed
  const computed = computeState(definition, given, unknownIn(definition, given), context)
  recent.set(definition, { key, bikes: context.bikes, computed })
  return computed
}

/** The middle estimate of each output, which remarks reason with. */
function middleOf(output: Computed['output']): Computed['output'] {
  return Object.fromEntries(
    Object.entries(output).map(([id, value]) => [id, isInterval(value) && value.value !== undefined && !Array.isArray(value) ? value.value : value]),
  )
}

const unknownIn = (definition: Calculator, given: Given): string[] =>
  Object.entries(definition.inputs).flatMap(([id, input]) => (given[id] === '?' && isAsked(input, given) ? [id] : []))

/** The state before: the one held, else the definition's baseline, else none. */
export function beforeOf(definition: Calculator, given: Given, held: Given | null): Given | null {
  if (held !== null) return held
  const baseline = definition.baseline?.(given)
  return baseline === undefined ? null : { ...given, ...baseline }
}

/** What `remarks` has to say on a computed state. Outputs that are intervals reach it as their middle estimate. */
export function remarksOn(remarks: NonNullable<Calculator['remarks']>, { now, before }: Pick<Evaluation, 'now' | 'before'>, say: Say): readonly Remark[] {
  if (now === null) return []
  const told = {
    input: now.input,
    output: middleOf(now.output),
    spread: now.output,
    say,
    ...(before ? { before: { input: before.input, output: middleOf(before.output) } } : {}),
  }
  return remarks(told as never)
}

/**
 * Computes a calculator's state, and the state before it when there is one. Nothing throws: what is wrong comes back as
 * text, at the field where it can be put right.
 */
export function evaluate(
  definition: Calculator,
  given: Given,
  context: Context,
  held: Given | null = null,
  say: Say = createSay(context.choice ?? METRIC),
): Evaluation {
  const state: Given = { ...defaultsOf(definition), ...given }
  const problems = problemsOf(definition, state, context)
  const unknown = unknownIn(definition, state)
  const failed = (extra: Record<string, string>, refusal: string | null): Evaluation => ({
    now: null,
    before: null,
    problems: { ...problems, ...extra },
    refusal,
    unknown,
  })
  if (Object.keys(problems).length > 0) return failed({}, null)
  try {
    const earlier = beforeOf(definition, state, held && { ...defaultsOf(definition), ...held })
    const usable = earlier && Object.keys(problemsOf(definition, earlier, context)).length === 0 ? earlier : null
    const before = usable && { ...computeBefore(definition, usable, context), remarks: [] }
    const now = { ...computeState(definition, state, unknown, context), remarks: [] }
    const remarks = definition.remarks === undefined ? [] : remarksOn(definition.remarks, { now, before }, say)
    return { now: { ...now, remarks }, before, problems, refusal: null, unknown }
  } catch (error) {
    if (error instanceof InputRefusal) return failed({ [error.input]: error.message }, null)
    if (error instanceof DomainError) return failed({}, `These values do not go together: ${error.message}`)
    throw error
  }
}

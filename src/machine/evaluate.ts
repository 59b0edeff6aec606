import { DomainError } from '../core/index.ts'
import type { Calculator } from './calculator.ts'
import type { Given } from './given.ts'
import type { Remark, Remarks, LooseContext } from './remark.ts'
import type { CardStatement, QuantityInput } from './statement.ts'
import { InputRefusal } from './work.ts'
import type { Interval } from '../units/interval.ts'
import { rangeEnds } from './fields.ts'
import { eitherOf, labelOf } from './labels.ts'
import { isInterval } from '../units/interval.ts'
import { changesBetween, changeSharesBetween } from './merge.ts'
import type { Results } from './cells.ts'
import { possibleStates, unknownOf } from './possible.ts'
import type { Say } from '../units/say.ts'
import { createSay } from '../units/say.ts'
import { leadOf, solve, solveBefore } from './solved.ts'
import { defaultsOf, placed, unknownIn, usableOf } from './state.ts'
import type { Context, Loose } from './state.ts'
import { METRIC } from '../units/choice.ts'

export { defaultsOf, isAsked } from './state.ts'
export type { Context, Loose } from './state.ts'

/** One state, computed. */
export interface Computed {
  input: Loose
  /** as `input`, with the range of what is not known */
  inputSpread: Loose
  output: Results
  /** by output id, every code that it may have */
  verdicts: Readonly<Record<string, readonly string[]>>
  picture: unknown
  remarks: readonly Remark[]
}

/** A state computed, or the reasons why not: by input id. `refusal` is a fault of the calculator. */
export interface Evaluation {
  now: Computed | null
  before: Computed | null
  /** how far each number moved from before to now, and that as a share of what it was */
  change: Readonly<Record<string, number | Interval>>
  changeShare: Readonly<Record<string, number | Interval>>
  /** beside results too: rows of a table that were left out */
  problems: Readonly<Record<string, string>>
  refusal: string | null
  /** what the core refused although every field passed: for whoever mends it */
  fault?: string
  /** inputs answered with "I don't know" */
  unknown: readonly string[]
}

/** The estimate of each measured output; what hangs on something that is not known stays a range. */
function estimatesOf(output: Results): Results {
  return Object.fromEntries(
    Object.entries(output).map(([id, value]) => [
      id,
      isInterval(value) && value.value !== undefined && !Array.isArray(value) ? value.value : value,
    ]),
  )
}

/** The state before: the one held, else the definition's baseline, else none. */
export function beforeOf(definition: Calculator, given: Given, held: Given | null): Given | null {
  if (held !== null) return held
  const baseline = definition.baseline?.(given)
  return baseline === undefined ? null : { ...given, ...baseline }
}

const toldState = ({ input, inputSpread, output, verdicts }: Computed) => ({
  input,
  inputSpread,
  output: estimatesOf(output),
  spread: output,
  verdicts,
})

function wordsAt(
  outputs: CardStatement['outputs'],
  codes: readonly string[] | undefined,
  id: string,
): string {
  const output = outputs[id]
  if (output?.kind !== 'choice' || codes === undefined) return ''
  return eitherOf(codes.map((code) => labelOf(output, code)))
}

/** What `remarks` has to say on a computed state. Measured outputs reach it as their estimate, unknown ones as a range. */
export function remarksOn(
  { outputs }: Pick<CardStatement, 'outputs'>,
  remarks: Remarks,
  {
    now,
    before,
    change,
    changeShare,
  }: Pick<Evaluation, 'now' | 'before' | 'change' | 'changeShare'>,
  say: Say,
): readonly Remark[] {
  if (now === null) return []
  const context: LooseContext = {
    ...toldState(now),
    say,
    change,
    changeShare,
    words: (id, code) => wordsAt(outputs, code === undefined ? now.verdicts[id] : [code], id),
    ...(before ? { before: toldState(before) } : {}),
  }
  return remarks(context)
}

const NOTHING = { now: null, before: null, change: {}, changeShare: {} }

/** A fault of the calculator, not of the reader: no test lets one pass, and a reader is told what to do. */
const FAULT =
  'These values do not go together, and the fault is this calculator’s: it cannot say which of them to change. Go back to the value before.'

/** Figures that somebody wrote of a bike need not make one that stands: that is no fault of the calculator. */
const UNFIT =
  'The figures of this bike can’t go with one another. Look at them in the bench book, or choose another bike'

/** The id of an input that holds a bike with figures of its own. */
const ownBikeIn = ({ inputs }: Calculator, state: Given): string | null =>
  Object.keys(inputs).find(
    (id) => inputs[id]?.kind === 'bike' && String(state[id]).includes(';'),
  ) ?? null

/** A refusal at a field answered with "I don't know" says what was tried there. */
function refusedAt(
  definition: Calculator,
  { input: id, message }: InputRefusal,
  unknown: readonly string[],
  context: Context,
): string {
  const input = definition.inputs[id]
  if (!unknown.includes(id) || input?.kind !== 'quantity') return message
  const { low, high } = unknownOf(id, input)
  return `${message}. While you don’t know this one, ${rangeEnds([low, high], input, context.choice ?? METRIC).join(' to ')} is tried: enter a value`
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
  const usable = usableOf(definition, state, context)
  const { problems } = usable
  const unknown = unknownIn(definition, state)
  if (usable.blocked) return { ...NOTHING, problems, refusal: null, unknown }
  try {
    const earlier = beforeOf(
      definition,
      usable.given,
      held && { ...defaultsOf(definition), ...held },
    )
    const was = earlier && usableOf(definition, earlier, context)
    return {
      ...compareStates(
        definition,
        usable.given,
        was?.blocked === false ? was.given : null,
        context,
        say,
      ),
      problems,
      refusal: null,
      unknown,
    }
  } catch (error) {
    if (error instanceof InputRefusal)
      return {
        ...NOTHING,
        problems: { ...problems, [error.input]: refusedAt(definition, error, unknown, context) },
        refusal: null,
        unknown,
      }
    if (error instanceof DomainError) {
      const own = ownBikeIn(definition, state)
      if (own !== null)
        return {
          ...NOTHING,
          problems: { ...problems, [own]: UNFIT },
          refusal: null,
          unknown,
        }
      return { ...NOTHING, problems, refusal: FAULT, fault: error.message, unknown }
    }
    throw error
  }
}

/** Both states over all that either leaves open, so that each possible state has its own change. */
function compareStates(
  definition: Calculator,
  given: Given,
  earlier: Given | null,
  context: Context,
  say: Say,
): Pick<Evaluation, 'now' | 'before' | 'change' | 'changeShare'> {
  const ids = [
    ...new Set([
      ...unknownIn(definition, given),
      ...(earlier === null ? [] : unknownIn(definition, earlier)),
    ]),
  ]
  const unknowns = ids.map((id) => unknownOf(id, definition.inputs[id] as QuantityInput))
  const states = possibleStates(unknowns, (at) => leadOf(definition, placed(given, at), context))
  const was = earlier && solveBefore(definition, earlier, states, context)
  const { all, ...solved } = solve(definition, given, states, context)
  const now: Computed = { ...solved, remarks: [] }
  const before = was && {
    input: was.input,
    inputSpread: was.inputSpread,
    output: was.output,
    verdicts: was.verdicts,
    picture: was.picture,
    remarks: [],
  }
  const moved =
    was === null
      ? { change: {}, changeShare: {} }
      : { change: changesBetween(was.all, all), changeShare: changeSharesBetween(was.all, all) }
  const remarks =
    definition.remarks === undefined
      ? []
      : remarksOn(definition, definition.remarks, { now, before, ...moved }, say)
  return { now: { ...now, remarks }, before, ...moved }
}

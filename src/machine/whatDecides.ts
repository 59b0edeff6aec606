import type { Calculator } from './calculator.ts'
import type { Given } from './given.ts'
import { InputRefusal } from './work.ts'
import type { Interval } from '../units/interval.ts'
import { ends } from '../units/interval.ts'
import type { Results } from './cells.ts'
import { possibleStates, unknownOf } from './possible.ts'
import type { Unknown } from './possible.ts'
import { leadOf } from './solved.ts'
import { inputOf, placed, unknownIn, usableOf } from './state.ts'
import type { Context } from './state.ts'

/**
 * The one input, of those not known, that narrows a result most once it is measured. `low` and
 * `high`: how far the result goes as that input alone goes through its range, the others in the
 * middle of theirs; `leaves`: what would still be open with it measured at the middle of its range.
 * SI.
 */
export interface Deciding {
  input: string
  low: number
  high: number
  leaves: { low: number; high: number }
}

/** A width that shrinks by less than this share of it has only been rounded otherwise. */
const ROUNDING = 1e-9

type Width = Pick<Interval, 'low' | 'high'>

/** What one result spans over states; null where none of them gives a number. */
function spanOf(results: readonly Results[], outputId: string): Width | null {
  const all = results.flatMap((result) => ends(result[outputId]) ?? [])
  return all.length === 0 ? null : { low: Math.min(...all), high: Math.max(...all) }
}

const widthOf = ({ low, high }: Width): number => high - low

/** Results by state, each state computed once. */
function computing(definition: Calculator, given: Given, context: Context): (at: Given) => Results {
  const known = new Map<string, Results>()
  return (at) => {
    const key = JSON.stringify(at)
    const kept = known.get(key)
    if (kept !== undefined) return kept
    const input = inputOf(definition, placed(given, at), context)
    const results = definition.solve(input).outputs
    known.set(key, results)
    return results
  }
}

function unknownsOf(definition: Calculator, given: Given): Unknown[] {
  return unknownIn(definition, given).flatMap((id) => {
    const input = definition.inputs[id]
    return input?.kind === 'quantity' ? [unknownOf(id, input)] : []
  })
}

function found(
  definition: Calculator,
  given: Given,
  context: Context,
  outputId: string,
): Deciding | null {
  const unknowns = unknownsOf(definition, given)
  const states = possibleStates(unknowns, (at) => leadOf(definition, placed(given, at), context))
  const [middle = {}] = states
  const compute = computing(definition, given, context)
  const span = (all: readonly Given[]): Width | null => spanOf(all.map(compute), outputId)
  const whole = span(states)
  if (whole === null) return null
  const rounding = ROUNDING * Math.max(Math.abs(whole.low), Math.abs(whole.high), widthOf(whole))
  let best: Deciding | null = null
  let least = widthOf(whole) - rounding
  for (const { id, low, middle: centre, high } of unknowns) {
    // the same states with this one input known: an input that changes nothing then leaves the width as it was, to the last digit
    const leaves = span(states.map((at) => ({ ...at, [id]: centre })))
    const alone = span([low, centre, high].map((value) => ({ ...middle, [id]: value })))
    if (leaves === null || alone === null || widthOf(leaves) >= least) continue
    least = widthOf(leaves)
    best = { input: id, ...alone, leaves }
  }
  return best
}

/**
 * Which input answered with "I don't know" accounts for most of the width of a result, over the
 * same possible states that the result is made of. Null where nothing is unknown, where the result
 * is no number or none of the inputs narrows it, and where a state cannot be computed: the card
 * then says so by itself.
 */
export function whatDecides(
  definition: Calculator,
  given: Given,
  context: Context,
  outputId: string,
): Deciding | null {
  const usable = usableOf(definition, given, context)
  if (usable.blocked || unknownIn(definition, usable.given).length === 0) return null
  try {
    return found(definition, usable.given, context, outputId)
  } catch (error) {
    if (error instanceof InputRefusal) return null
    throw error
  }
}

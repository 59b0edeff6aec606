import type { Calculator } from './calculator.ts'
import type { Results } from './cells.ts'
import type { Given } from './given.ts'
import { nameOf } from './labels.ts'
import type { Remark } from './remark.ts'
import type { Input, QuantityOutput } from './statement.ts'
import { isNumber } from './statement.ts'
import type { Context } from './state.ts'
import { unknownIn } from './state.ts'
import { whatDecides } from './whatDecides.ts'
import type { Deciding } from './whatDecides.ts'
import { isInterval } from '../units/interval.ts'
import type { Interval } from '../units/interval.ts'
import type { Say } from '../units/say.ts'

/** With more unknowns than this the states to try are too many for a phone, and “measure more” is the advice anyway. */
const MOST_UNKNOWN = 6

/** So many open results are looked at for one that measuring would narrow. */
const MOST_TRIED = 3

/** Results that are a range without an estimate, those told first in front: some are ranges by themselves, whatever is known. */
function openResults(
  { outputs }: Calculator,
  results: Results,
): readonly (readonly [string, QuantityOutput])[] {
  const open = Object.entries(outputs).flatMap(([id, output]) => {
    const cell = results[id]
    return isNumber(output) && isInterval(cell) && !('value' in cell) ? [[id, output] as const] : []
  })
  return [...open.filter(([, { lead }]) => lead), ...open.filter(([, { lead }]) => !lead)]
}

/** A range in the reader's units; one value where both ends read alike. */
function spanOf(
  say: Say,
  { unit, digits, signed }: QuantityOutput,
  { low, high }: { low: number; high: number },
): string {
  if (!signed) return say.range(low, high, unit, digits)
  const [from, to] = [low, high].map((end) => say.change(end, unit, digits))
  return from === to ? from! : `${from} to ${to}`
}

/** What to measure first, and what that would leave open of the result told first [in the reader's units]; null while nothing is unknown or none of it decides. */
export function decidingRemark(
  calculator: Calculator,
  given: Given,
  results: Results,
  context: Context,
  say: Say,
): Remark | null {
  const unknown = unknownIn(calculator, given)
  if (unknown.length === 0 || unknown.length > MOST_UNKNOWN) return null
  for (const [id, output] of openResults(calculator, results).slice(0, MOST_TRIED)) {
    const decides = whatDecides(calculator, given, context, id)
    const measured = decides && calculator.inputs[decides.input]
    if (decides && measured)
      return sentence({ output, measured, decides, whole: results[id] as Interval, say }, unknown)
  }
  return null
}

interface Found {
  output: QuantityOutput
  measured: Input
  decides: Deciding
  whole: Interval
  say: Say
}

function sentence(
  { output, measured, decides, whole, say }: Found,
  unknown: readonly string[],
): Remark | null {
  const told = (range: { low: number; high: number }): string => spanOf(say, output, range)
  const hangs = `“${nameOf(output.label)}” hangs most on “${nameOf(measured.label)}”: ${told(decides)} by that alone.`
  if (unknown.length === 1)
    return { kind: 'next', text: `${hangs} Measure it, and the range closes.` }
  const left = told(decides.leaves)
  // narrower, but by less than the last digit shown: nothing that a reader could see
  if (left === told(whole)) return null
  return { kind: 'next', text: `${hangs} Measuring it would leave about ${left}.` }
}

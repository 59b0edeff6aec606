import type { Given, Statement } from '../calculators/define.ts'
import type { Evaluation } from '../calculators/evaluate.ts'
import { middle } from '../calculators/interval.ts'
import type { Say } from '../calculators/say.ts'
import { toSI } from '../calculators/units.ts'

/** "Your sag is 35.0 mm, 29 % of the travel. The window you set is 25 to 33 %: inside the window." */
function sagTold({ now }: Evaluation, given: Given, usual: Given, say: Say): string {
  const share = (value: unknown): string => say.number(toSI(Number(value), '%'), '%', 0)
  const set = 'windowLow' in given || 'windowHigh' in given
  const [low, high] = [given.windowLow ?? usual.windowLow, given.windowHigh ?? usual.windowHigh]
  const sag = say.quantity(middle(now?.output.sag) ?? 0, 'mm', 1)
  const part = say.quantity(middle(now?.output.share) ?? 0, '%', 0)
  return `Your sag is ${sag}, ${part} of the travel. The window ${set ? 'you set' : 'used'} is ${share(low)} to ${share(high)}\u00a0%: ${String(now?.output.window ?? '')}.`
}

/** What readings come to, in a sentence or two: the result in place, or what keeps it from being worked out. Empty where there is nothing to tell. */
export function told(definition: Statement, evaluation: Evaluation, given: Given, usual: Given, say: Say): string[] {
  if (evaluation.now === null) return [...Object.values(evaluation.problems), ...(evaluation.refusal === null ? [] : [evaluation.refusal])]
  const remarks = evaluation.now.remarks.filter(({ kind }) => kind === 'next').map(({ text }) => text)
  const reading = evaluation.now.remarks.filter(({ kind }) => kind === 'reading').map(({ text }) => text)
  return definition.id === 'sag' ? [sagTold(evaluation, given, usual, say), ...remarks] : [...reading, ...remarks]
}

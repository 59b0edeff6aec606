import type { Evaluation } from '../machine/evaluate.ts'
import type { Remark } from '../machine/remark.ts'

const said = (remarks: readonly Remark[], kind: Remark['kind']): string[] =>
  remarks.filter((remark) => remark.kind === kind).map(({ brief, text }) => brief ?? text)

/** What readings come to, in a sentence or two: the result in place, or what keeps it from being worked out. Empty where there is nothing to tell. */
export function told({ now, problems, refusal }: Evaluation): string[] {
  if (now === null) return [...Object.values(problems), ...(refusal === null ? [] : [refusal])]
  return [...said(now.remarks, 'reading'), ...said(now.remarks, 'next')]
}

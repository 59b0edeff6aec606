import { compareMarks } from '../core/index.ts'
import { InputRefusal } from './define.ts'
import type { InputValues, OutputValues } from './define.ts'
import type { inputs, outputs } from './marks.fields.ts'
import { measured } from './measured.ts'

/** The verdict on a change that friction alone could make; remarks go by it. */
export const ON_MARK = 'back on its mark'

/** SI in, SI out. */
export function compute(input: InputValues<typeof inputs>): OutputValues<typeof outputs> {
  const { beforeLeft, beforeRight, afterLeft, afterRight, frictionBand, travel, readingPlusMinus } = input
  const mean = (left: number, right: number): number => (left + right) / 2
  const marks = { before: mean(beforeLeft, beforeRight), after: mean(afterLeft, afterRight), frictionBand }
  if (Math.abs(marks.after - marks.before) > travel)
    throw new InputRefusal('travel', 'Full travel is less than the change between the marks. Check the readings and the travel')
  const { change, share, withinBand } = compareMarks({ ...marks, travel })
  const limits = [readingPlusMinus, readingPlusMinus, readingPlusMinus, readingPlusMinus]
  const heightChange = measured(([bl, br, al, ar]) => mean(al!, ar!) - mean(bl!, br!), [beforeLeft, beforeRight, afterLeft, afterRight], limits)
  const differ = (left: number, right: number) => measured(([l, r]) => l! - r!, [left, right], limits.slice(2))
  return {
    heightChange: { ...heightChange, value: change },
    onMark: withinBand ? ON_MARK : change > 0 ? 'higher than its mark' : 'lower than its mark',
    share: share ?? null,
    sideDifference: differ(afterLeft, afterRight),
    sideBefore: differ(beforeLeft, beforeRight),
    leftChange: compareMarks({ before: beforeLeft, after: afterLeft, frictionBand }).change,
    rightChange: compareMarks({ before: beforeRight, after: afterRight, frictionBand }).change,
  }
}

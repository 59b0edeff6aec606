import { compareMarks } from '../../core/index.ts'
import type { CodeOf, InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import type statement from './statement.ts'
import {
  expanded,
  expandedFromSpread,
  measured,
  standardFromLimit,
} from '../../machine/measured.ts'

type Values = InputOf<typeof statement>

const mean = (left: number, right: number): number => (left + right) / 2

/** What a change has to exceed to be one [m]: the ± of two heights read alike, or the friction band, which has a ± of its own. */
interface Yardstick {
  size: number
  plusMinus: number
}

function yardstickOf(
  { settled, frictionBand, readingPlusMinus }: Values,
  ofChange: number,
): Yardstick {
  if (settled !== 'different') return { size: ofChange, plusMinus: 0 }
  // the band is the difference of two readings
  return {
    size: frictionBand,
    plusMinus: Math.hypot(ofChange, expanded(Math.SQRT2 * standardFromLimit(readingPlusMinus))),
  }
}

/** Whether a value is really above another, and not by rounding: a move of 18 mm is no more than a band of 18 mm; both in metres. */
const exceeds = (value: number, other: number): boolean => value - other > 1e-12

function verdictOf(
  change: number,
  { settled }: Values,
  { size, plusMinus }: Yardstick,
): CodeOf<typeof statement, 'onMark'> {
  const beyond = change > 0 ? 'higher' : 'lower'
  const moved = Math.abs(change)
  if (settled !== 'different') return exceeds(moved, size) ? beyond : 'on-mark'
  if (exceeds(moved - plusMinus, size)) return beyond
  // exact readings have no edge: then both comparisons are one
  return exceeds(moved + plusMinus, size) ? 'edge' : 'friction'
}

/** SI in, SI out. */
function compute(input: Values): OutputOf<typeof statement> {
  const {
    beforeLeft,
    beforeRight,
    afterLeft,
    afterRight,
    frictionBand,
    travel,
    readingPlusMinus,
    settled,
    spread,
  } = input
  const marks = {
    before: mean(beforeLeft, beforeRight),
    after: mean(afterLeft, afterRight),
    frictionBand,
  }
  if (Math.abs(marks.after - marks.before) > travel)
    throw new InputRefusal(
      'travel',
      'Full travel is less than the change between the marks. Check the readings and the travel',
    )
  const { change, share } = compareMarks({ ...marks, travel })
  const limits = [readingPlusMinus, readingPlusMinus, readingPlusMinus, readingPlusMinus]
  const read = measured(
    ([bl, br, al, ar]) => mean(al!, ar!) - mean(bl!, br!),
    [beforeLeft, beforeRight, afterLeft, afterRight],
    limits,
  )
  // both legs settle together, so repeats move their mean as they move each
  const ofChange = Math.hypot(
    (read.high - read.low) / 2,
    settled === 'different' ? 0 : expandedFromSpread(spread),
  )
  const yardstick = yardstickOf(input, ofChange)
  const differ = (left: number, right: number): Interval =>
    measured(([l, r]) => l! - r!, [left, right], limits.slice(2))
  return {
    heightChange: { value: change, low: change - ofChange, high: change + ofChange },
    onMark: verdictOf(change, input, yardstick),
    share: share ?? null,
    against: yardstick.size,
    sideDifference: differ(afterLeft, afterRight),
    sideBefore: differ(beforeLeft, beforeRight),
    leftChange: afterLeft - beforeLeft,
    rightChange: afterRight - beforeRight,
  }
}

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => undefined }
  },
})

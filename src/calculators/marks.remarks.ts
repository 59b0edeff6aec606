import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import type { inputs, outputs } from './marks.fields.ts'
import { ON_MARK } from './marks.work.ts'

/** Past this the legs no longer stand alike: each tube's height in the yokes is set to half a millimetre (common practice, no source). */
export const SIDE_TOLERANCE = 1e-3

/** A bigger band than this is worth curing before anything is judged by a mark: at 18 N/mm it is 90 N of friction each way (60 N is common; no source). */
export const STICKY_BAND = 10e-3

/** A nanometre: what a difference of two read lengths may owe to rounding. */
const ROUNDING = 1e-9

type Context = RemarkContext<typeof inputs, typeof outputs>

function readingOf({ input, output, say }: Context): Remark {
  const change = middle(output.heightChange) ?? 0
  const size = say.quantity(Math.abs(change), 'mm', 1)
  const band = say.quantity(input.frictionBand, 'mm', 1)
  if (output.onMark === ON_MARK) {
    return {
      kind: 'reading',
      text: `Back on its mark, as far as these readings can tell: the height differs by ${size}, and friction alone can hold the bike anywhere within ${band}.`,
    }
  }
  return {
    kind: 'reading',
    text: `The front sits ${size} ${change > 0 ? 'higher' : 'lower'} than its mark. That is more than the ${band} that friction alone can hold, so something has moved it.`,
  }
}

function sidesOf({ output, say }: Context): Remark[] {
  const difference = middle(output.sideDifference) ?? 0
  if (Math.abs(difference) <= SIDE_TOLERANCE + ROUNDING) return []
  const before = middle(output.sideBefore) ?? 0
  const size = say.quantity(Math.abs(difference), 'mm', 1)
  const same = Math.abs(difference - before) <= SIDE_TOLERANCE + ROUNDING
  const text = same
    ? `The two legs differ by ${size}, as they did before. One axle joins them, so either the tubes stand unequal in the yokes or the readings were not taken from like edges.`
    : `The two legs now differ by ${size}. One axle joins them: a tube has moved in the yokes, or the axle clamp was tightened on a twisted leg.`
  return [
    { kind: 'next', text },
    { kind: 'caution', caution: 'unequal-legs', text: 'A fork whose legs stand unequal can bind and steer to one side.' },
  ]
}

/** What the change means, and what to do or read next. */
export function remarks(context: Context): readonly Remark[] {
  const { input, output, say } = context
  const all: Remark[] = [readingOf(context), ...sidesOf(context)]
  if (input.frictionBand > STICKY_BAND)
    all.push({
      kind: 'next',
      text: `A band of ${say.quantity(input.frictionBand, 'mm', 1)} hides small changes. Free the fork first, then read the marks again.`,
    })
  else if (output.onMark === ON_MARK)
    all.push({
      kind: 'next',
      text: 'To see finer, push down, let rise and read; lift, let sink and read; then use the mean of the two. Friction then drops out, and only the error of the readings is left.',
    })
  else all.push({ kind: 'next', text: 'Take this change to the ride-height calculator. It tells what the geometry did.' })
  return all
}

import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, estimate } from '../../units/interval.ts'
import type statement from './statement.ts'

/** Past this the legs no longer stand alike: each tube's height in the yokes is set to half a millimetre (common practice, no source). */
export const SIDE_TOLERANCE = 1e-3

/** A bigger band than this is worth curing before anything is judged by a mark: at 18 N/mm it is 90 N of friction each way (60 N is common; no source). */
export const STICKY_BAND = 10e-3

/** A nanometre: what a difference of two read lengths may owe to rounding. */
const ROUNDING = 1e-9

type Context = RemarkContext<typeof statement>

const reading = (text: string): Remark => ({ kind: 'reading', text })

/** Settled alike, or both ways: friction drops out, and the repeats and readings decide. */
function settledAlike({ input, output, say }: Context): Remark {
  const change = estimate(output.heightChange) ?? 0
  const size = say.quantity(Math.abs(change), 'mm', 1)
  const least = say.span(output.against ?? 0, 'mm', 1)
  const how =
    input.settled === 'same'
      ? 'Settled the same way both times, friction drops out of it'
      : 'The mean of both ways leaves friction out of it'
  if (output.onMark === 'on-mark')
    return reading(
      `Back on its mark, as far as these readings can tell: the height differs by ${size}, and it would take more than ${least} to be sure of a change.`,
    )
  return reading(
    `The front sits ${size} ${change > 0 ? 'higher' : 'lower'} than its mark. ${how}, and the readings are good to ${least}, so something has moved it.`,
  )
}

/** Settled one way before and another way after: friction alone can make as much as its band. */
function settledApart({ inputSpread, output, verdicts, say }: Context): Remark {
  const change = estimate(output.heightChange) ?? 0
  const size = say.quantity(Math.abs(change), 'mm', 1)
  const band = say.span(inputSpread.frictionBand, 'mm', 1)
  const where = `The front reads ${size} ${change > 0 ? 'higher' : 'lower'} than its mark`
  const only = verdicts.onMark.length === 1 ? verdicts.onMark[0] : undefined
  if (only === 'higher' || only === 'lower')
    return reading(
      `${where}. That is more than the ${band} that friction alone can make, so something has moved it.`,
    )
  if (only === 'friction')
    return reading(
      `${where}. Friction alone can make up to ${band} where the two were settled differently, so this shows nothing yet.`,
    )
  if (only === 'edge')
    return reading(
      `${where}, and friction alone can make about as much, ${band}. These readings cannot tell the two apart.`,
    )
  return reading(
    `${where}. Friction alone can make ${band}, since you don’t know this fork’s band: it may be friction, and it may be a change.`,
  )
}

function sidesOf({ output, spread, say }: Context): Remark[] {
  const difference = estimate(output.sideDifference) ?? 0
  if (Math.abs(difference) <= SIDE_TOLERANCE + ROUNDING) return []
  const size = say.quantity(Math.abs(difference), 'mm', 1)
  const [low, high] = ends(spread.sideDifference) ?? [0, 0]
  const half = (high - low) / 2
  if (Math.abs(difference) <= half + ROUNDING)
    return [
      {
        kind: 'next',
        text: `The two legs read ${size} apart, which readings good to ${say.quantity(half, 'mm', 1)} cannot tell from none. Read both legs three times before you loosen anything.`,
      },
    ]
  // two differences, each with its own ±
  const same =
    Math.abs(difference - (estimate(output.sideBefore) ?? 0)) <=
    Math.max(SIDE_TOLERANCE, Math.SQRT2 * half) + ROUNDING
  const text = same
    ? `The two legs differ by ${size}, as they did before. One axle joins them, so either the tubes are at unequal heights in the yokes or the readings were not taken from like edges.`
    : `The two legs now differ by ${size}. One axle joins them: a tube has moved in the yokes, or the axle clamp was tightened on a twisted leg.`
  return [
    { kind: 'next', text },
    {
      kind: 'caution',
      caution: 'unequal-legs',
      text: 'A fork with one leg higher in the yokes than the other can bind and steer to one side.',
    },
  ]
}

function nextOf({ input, inputSpread, output, say }: Context): Remark {
  const [least] = ends(inputSpread.frictionBand) ?? [0]
  if (least > STICKY_BAND)
    return {
      kind: 'next',
      text: `A band of ${say.span(inputSpread.frictionBand, 'mm', 1)} is wide (common practice, no published source). Free the fork first, then read the marks again.`,
    }
  if (input.settled === 'different')
    return {
      kind: 'next',
      text: 'To see more, settle it the same way as for the mark and read again, three times. Or read after a push and after a lift and compare the means. Friction then drops out.',
    }
  if (output.onMark === 'on-mark')
    return {
      kind: 'next',
      text: 'To see finer, read each mark three times and use the means. The closer together they lie, the smaller the change that shows.',
    }
  return {
    kind: 'next',
    text: 'Take this change to the ride-height calculator. It tells what the geometry did.',
  }
}

/** What the change means, and what to do or read next. */
function remarks(context: Context): readonly Remark[] {
  const { input, output, say } = context
  const all: Remark[] = [
    input.settled === 'different' ? settledApart(context) : settledAlike(context),
    ...sidesOf(context),
    nextOf(context),
  ]
  if (input.settled === 'same' && output.onMark !== 'on-mark')
    all.push({
      kind: 'limit',
      text: `If the fork was undone in between, its friction may have changed too: ${say.quantity(20, 'N', 0)} more or less is about ${say.quantity(1e-3, 'mm', 0)} of height after a push. Reading both ways shows that.`,
    })
  return all
}

export default defineRemarks<typeof statement>(remarks)

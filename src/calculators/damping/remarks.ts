import type statement from './statement.ts'
import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, largest, mapped } from '../../units/interval.ts'

/** Below this ratio a body swings on visibly: each swing is still half the one before it (logarithmic decrement at 0.11 is 0.69). */
export const SWINGS_ON = 0.11
/** From this ratio on each half swing of a free linear body is less than 5 % of the one before (Ogata, Modern Control Engineering, ch. 5). */
export const NO_SWING = 0.7
/** Rebound over compression [times] from which a wheel that is thrown up again and again does not come back in time. Common practice, no source. */
export const PACKS = 3

/** Deeper than this over the waves is more than rounding and a start that has not died out [m]. */
const PACKED = 3e-3

type Context = RemarkContext<typeof statement>

/** Past its new height by no more than this nobody sees it: it is less than the card shows in its drawing [m]. */
const UNSEEN = 5e-4

/** A firm damper hands the wheel's movement on, so the body still goes past a ramp's height. */
function thrownPast({ output, say }: Context): string {
  const [, most] = ends(output.overshoot) ?? [0, 0]
  return exists(output.overshoot) && most > UNSEEN
    ? ` The ramp still throws it past its new height, by ${say.span(output.overshoot, 'mm', 1)}.`
    : ''
}

function ratioReading(told: Context): Remark[] {
  const { output, say } = told
  const [low, high] = ends(output.ratio) ?? [0, 0]
  if (!exists(output.ratio)) return []
  const at = `At a damping ratio of ${say.span(output.ratio, '', 2)}`
  if (high < SWINGS_ON)
    return [
      {
        kind: 'reading',
        text: `${at} each swing is more than half the one before. The bike wallows.`,
      },
    ]
  if (low >= NO_SWING)
    return [
      {
        kind: 'reading',
        text: `${at} the body does not swing on. It follows the wheel instead: what the wheel meets goes through to the bars.${thrownPast(told)}`,
      },
    ]
  return [{ kind: 'reading', text: swingsOnce(told, at) }]
}

/** Between wallowing and hard: what the ride over the road shows, since the ratio is a mean of both ways and one of them alone may hold the body. */
function swingsOnce({ output, input }: Context, at: string): string {
  const past = ends(output.overshoot)
  if (past === null)
    return `${at}, taken over both ways, a body swings once or twice and comes to rest.`
  if (past[1] > UNSEEN)
    return `${at} the body ${past[0] > UNSEEN ? 'swings' : 'may swing'} past its new height once or twice and comes to rest.`
  const price =
    input.rebound >= PACKS * Math.max(1, input.compression)
      ? ' With rebound so much slower than compression, look at what it does over waves before you call that best.'
      : ''
  return `${at}, taken over both ways, the body still does not pass its new height here.${price}`
}

function groundRemark({ output, input, say }: Context): Remark[] {
  const remarks: Remark[] = []
  const [least, most] = ends(output.leastLoad) ?? [1, 1]
  if (most <= 0)
    remarks.push({
      kind: 'reading',
      text: 'The tyre leaves the road. For that long it neither steers nor brakes.',
    })
  else if (least <= 0)
    remarks.push({
      kind: 'reading',
      text: 'With what you don’t know the tyre may leave the road. For that long it neither steers nor brakes.',
    })
  const [shallow, deep] = ends(output.peakTravel) ?? [0, 0]
  if (shallow >= input.travel)
    remarks.push({ kind: 'limit', text: 'This end reaches its stop on this road.' })
  else if (deep >= input.travel)
    remarks.push({
      kind: 'limit',
      text: 'With what you don’t know this end may reach its stop on this road.',
    })
  const mean = output.meanTravel
  const deeper = exists(mean) ? mapped(mean, (travel) => travel - input.sag) : 0
  if (
    (ends(deeper)?.[0] ?? 0) > PACKED &&
    input.rebound >= PACKS * Math.max(1, input.compression)
  ) {
    remarks.push({
      kind: 'reading',
      text: `Over the waves it rides ${say.span(deeper, 'mm', 1)} deeper than at rest. Rebound is so much slower than compression that the wheel is hit again before it is back: it packs down.`,
    })
  }
  return remarks
}

/** What the motion means for the rider. */
function remarks(told: Context): readonly Remark[] {
  const { input, output, change, say } = told
  const all = [...ratioReading(told), ...groundRemark(told)]
  if (change.rest !== undefined && largest(change.rest) < 1e-6 && exists(output.rest)) {
    all.push({
      kind: 'reading',
      text: `Standing still both settings use ${say.span(output.rest, 'mm', 1)} of travel. A damper pushes back only while it moves: at rest it carries nothing.`,
    })
  }
  if (input.law === 'square')
    all.push({
      kind: 'limit',
      text: `A plain hole has no damping ratio of its own: slow, it damps almost nothing. The ratio here holds at ${say.quantity(input.knee, 'm/s', 2)}.`,
    })
  all.push({
    kind: 'next',
    text: 'On a bike, count clicks from fully closed, change one thing by two clicks, ride the same stretch, and write it down.',
  })
  return all
}

export default defineRemarks<typeof statement>(remarks)

import type { inputs, outputs } from './damping.fields.ts'
import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'

/** Below this ratio a body swings on visibly: each swing is still half the one before it (logarithmic decrement at 0.11 is 0.69). */
export const SWINGS_ON = 0.11
/** From this ratio on a linear body passes its new height by less than 5 % (Ogata, Modern Control Engineering, ch. 5). */
export const NO_OVERSHOOT = 0.7
/** Rebound over compression [times] from which a wheel that is thrown up again and again does not come back in time. Common practice, no source. */
export const PACKS = 3

type Context = RemarkContext<typeof inputs, typeof outputs>

function ratioReading({ output }: Context): Remark[] {
  const ratio = middle(output.ratio)
  if (ratio === null) return []
  if (ratio < SWINGS_ON)
    return [{ kind: 'reading', text: `At a damping ratio of ${ratio.toFixed(2)} each swing is more than half the one before. The bike wallows.` }]
  if (ratio >= NO_OVERSHOOT)
    return [
      {
        kind: 'reading',
        text: `At a damping ratio of ${ratio.toFixed(2)} the body hardly passes its new height. It follows the road instead: what the wheel meets goes through to the bars.`,
      },
    ]
  return [{ kind: 'reading', text: `At a damping ratio of ${ratio.toFixed(2)} the body swings past its new height once or twice and comes to rest.` }]
}

function groundRemark({ output, input, say }: Context): Remark[] {
  const remarks: Remark[] = []
  const least = middle(output.leastLoad)
  if (least !== null && least <= 0) remarks.push({ kind: 'reading', text: 'The tyre leaves the road. For that long it neither steers nor brakes.' })
  const peak = middle(output.peakTravel)
  if (peak !== null && peak >= input.travel) remarks.push({ kind: 'limit', text: 'This end reaches its stop on this road.' })
  const mean = middle(output.meanTravel)
  if (mean !== null && mean - input.sag > 0.003 && input.rebound >= PACKS * Math.max(1, input.compression)) {
    remarks.push({
      kind: 'reading',
      text: `Over the waves it rides ${say.quantity(mean - input.sag, 'mm', 1)} deeper than at rest. Rebound is so much slower than compression that the wheel is hit again before it is back: it packs down.`,
    })
  }
  return remarks
}

/** What the motion means for the rider. */
export function remarks(told: Context): readonly Remark[] {
  const { output, before, say } = told
  const all = [...ratioReading(told), ...groundRemark(told)]
  const [rest, was] = [middle(output.rest), before ? middle(before.output.rest) : null]
  if (rest !== null && was !== null && Math.abs(rest - was) < 1e-6) {
    all.push({
      kind: 'reading',
      text: `Standing still both settings use ${say.quantity(rest, 'mm', 1)} of travel. A damper pushes back only while it moves: it holds nothing up.`,
    })
  }
  if (told.input.law === 'square')
    all.push({
      kind: 'limit',
      text: `A plain hole has no damping ratio of its own: slow, it damps almost nothing. The ratio here holds at ${say.quantity(told.input.knee, 'm/s', 2)}.`,
    })
  all.push({ kind: 'next', text: 'On a bike, count clicks from fully closed, change one thing by two clicks, ride the same stretch, and write it down.' })
  return all
}

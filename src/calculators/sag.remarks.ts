import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import type { inputs, outputs } from './sag.fields.ts'

/** A band this wide calls for freeing the fork before choosing anything by it: at 18 N/mm it is 90 N each way, half as much again as the 60 N of a fork in order (common practice, no source). */
export const STICKY_BAND = 10e-3

type Context = RemarkContext<typeof inputs, typeof outputs>

function readingOf({ output, input, say }: Context): Remark {
  const sag = say.quantity(middle(output.sag) ?? 0, 'mm', 1)
  const share = say.quantity(middle(output.share) ?? 0, '%', 0)
  const window = `${say.number(input.windowLow, '%', 0)} to ${say.quantity(input.windowHigh, '%', 0)}`
  const middleBand = say.quantity(middle(output.frictionBand) ?? 0, 'mm', 1)
  const places: Record<string, string> = { 'inside the window': 'inside', 'less sag than the window': 'less than', 'more sag than the window': 'more than' }
  const verdict = places[output.window ?? '']
  const place = verdict === undefined ? `at an edge of the window of ${window}, closer than the readings can tell` : `${verdict} the window of ${window}`
  return {
    kind: 'reading',
    text: `The bike settles about ${sag} down, ${share} of its travel: ${place}. Friction can hold it anywhere within ${middleBand} of travel.`,
  }
}

/** What the sag means, and what to do or read next. */
export function remarks(context: Context): readonly Remark[] {
  const { input, output, say } = context
  const band = middle(output.frictionBand) ?? 0
  const all: Remark[] = [readingOf(context)]
  if (band > STICKY_BAND)
    all.push({
      kind: 'next',
      text: `A band of ${say.quantity(band, 'mm', 1)} is wide. Free the fork before you choose a spring or a preload by this figure: a softer spring does not cure friction, it widens the band.`,
    })
  else if (output.window === 'inside the window')
    all.push({
      kind: 'next',
      text: 'Write all three readings down, not the sag alone. The right sag does not prove the right spring: many pairs of rate and preload give it. Read the sag of the bike alone too.',
    })
  else all.push({ kind: 'next', text: 'Preload moves the bike along its travel, close to a millimetre for a millimetre. Read again after each step.' })
  if (input.readingPlusMinus > 0 && band < 2 * input.readingPlusMinus)
    all.push({
      kind: 'limit',
      text: `The band is smaller than two readings within ±${say.quantity(input.readingPlusMinus, 'mm', 1)} can show. Read each three times and use the means.`,
    })
  return all
}

import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { exists, estimate } from '../../units/interval.ts'
import type statement from './statement.ts'

/** A band this wide calls for freeing the fork before choosing anything by it: at 18 N/mm it is 90 N each way, half as much again as the 60 N of a fork in order (common practice, no source). */
export const STICKY_BAND = 10e-3

type Context = RemarkContext<typeof statement>

/** Where the sag is, for one verdict; `window` with its ends. */
const places = (window: string): Readonly<Record<string, string>> => ({
  inside: `inside the window of ${window}`,
  less: `less than the window of ${window}`,
  more: `more than the window of ${window}`,
  edge: `at an edge of the window of ${window}, closer than the readings can tell`,
})

function readingOf({ output, input, verdicts, say, words }: Context): Remark {
  const sag = say.quantity(estimate(output.sag) ?? 0, 'mm', 1)
  const share = exists(output.share) ? say.span(output.share, '%', 0) : ''
  const window = say.range(input.windowLow, input.windowHigh, '%', 0)
  const band = say.quantity(estimate(output.frictionBand) ?? 0, 'mm', 1)
  const [only, ...others] = verdicts.window
  const friction = `Friction can hold it anywhere within ${band} of travel.`
  // the travel alone may be unknown, and the share hangs on it; an edge between two sides of it goes without saying
  const sides = verdicts.window.filter((code) => code !== 'edge')
  const where = (sides.length > 1 ? sides : verdicts.window)
    .map((code) => words('window', code))
    .join(', or ')
  if (others.length > 0)
    return {
      kind: 'reading',
      text: `The bike settles about ${sag} down. Without the full travel, that can be ${share} of it: ${where}, which runs from ${window}. ${friction}`,
    }
  const at = typeof output.share === 'number' ? share : `somewhere from ${share}`
  return {
    kind: 'reading',
    text: `The bike settles about ${sag} down, ${at} of its travel: ${places(window)[only ?? 'edge'] ?? ''}. ${friction}`,
    brief: `Your sag is ${sag}, ${share} of the travel. The window is ${window}: ${words('window')}.`,
  }
}

function nextOf({ output, verdicts, say }: Context): Remark {
  const band = estimate(output.frictionBand) ?? 0
  if (band > STICKY_BAND)
    return {
      kind: 'next',
      text: `A band of ${say.quantity(band, 'mm', 1)} is wide (common practice, no published source). Free the fork before you choose a spring or a preload by this figure: a softer spring does not cure friction, it widens the band.`,
    }
  if (verdicts.window.length > 1)
    return {
      kind: 'next',
      text: 'Measure the full travel, since only that tells on which side of the window it is. The maker’s data give it too.',
    }
  if (verdicts.window[0] === 'inside')
    return {
      kind: 'next',
      text: 'Write all three readings down, not the sag alone. The right sag does not prove the right spring: many pairs of rate and preload give it. Read the sag of the bike alone too.',
    }
  return {
    kind: 'next',
    text: 'Preload moves the bike along its travel, close to a millimetre for a millimetre. Read again after each step.',
  }
}

/** What the sag means, and what to do or read next. */
function remarks(context: Context): readonly Remark[] {
  const { input, output, say } = context
  const all: Remark[] = [readingOf(context), nextOf(context)]
  if (
    input.readingPlusMinus > 0 &&
    (estimate(output.frictionBand) ?? 0) < 2 * input.readingPlusMinus
  )
    all.push({
      kind: 'limit',
      text: `The band is smaller than two readings within ±${say.quantity(input.readingPlusMinus, 'mm', 1)} can show. Read each three times and use the means.`,
    })
  return all
}

export default defineRemarks<typeof statement>(remarks)

import { sagFromMarks } from '../../core/index.ts'
import type { CodeOf, InputOf, KnownInputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import { ends } from '../../units/interval.ts'
import type { Interval } from '../../units/interval.ts'
import { measured } from '../../machine/measured.ts'
import type statement from './statement.ts'

function refuseWrongOrder(extended: number, down: number, up: number): void {
  if (up < down)
    throw new InputRefusal(
      'settledUp',
      'The reading after lifting must not be below the one after pushing down. Check whether the two were swapped',
    )
  if (extended < up)
    throw new InputRefusal(
      'extended',
      'The reading with the wheel hanging must be the longest of the three. Lift the wheel clear and read again',
    )
}

/** Whether a value is really above another, and not by rounding: 35 mm of 140 mm is 25 %, and not less. */
const exceeds = (value: number, other: number): boolean => value - other > 1e-9

/** Against a window, with what the ± leaves open. */
function against(share: Interval, low: number, high: number): CodeOf<typeof statement, 'window'> {
  if (exceeds(low, share.high)) return 'less'
  if (exceeds(share.low, high)) return 'more'
  return exceeds(low, share.low) || exceeds(share.high, high) ? 'edge' : 'inside'
}

/**
 * Travel that is not known leads through every verdict of the range, the narrowest too: between the travels at which an end of the sag meets an end of the window
 * it stays the same.
 */
const judge = (
  { windowLow, windowHigh }: InputOf<typeof statement>,
  { sag }: OutputOf<typeof statement>,
  { travel }: KnownInputOf<typeof statement>,
): { window?: CodeOf<typeof statement, 'window'>[] } => {
  const [from, to] = ends(travel)!
  const [least, most] = ends(sag)!
  const turns = [least, most]
    .flatMap((length) => [length / windowLow, length / windowHigh])
    .filter((at) => at > from && at < to)
    .sort((a, b) => a - b)
  const places = [from, ...turns, to]
  const tried = places.flatMap((at, place) => [at, (at + (places[place + 1] ?? at)) / 2])
  const codes = tried.map((at) =>
    against({ low: least / at, high: most / at }, windowLow, windowHigh),
  )
  return { window: [...new Set(codes)] }
}

/** SI in, SI out. */
function compute(input: InputOf<typeof statement>): OutputOf<typeof statement> {
  const { extended, settledDown, settledUp, travel, windowLow, windowHigh, readingPlusMinus } =
    input
  refuseWrongOrder(extended, settledDown, settledUp)
  if (windowHigh < windowLow)
    throw new InputRefusal(
      'windowHigh',
      'The window must not end below where it starts. Enter its two ends the other way round',
    )
  if (extended - (settledDown + settledUp) / 2 > travel)
    throw new InputRefusal(
      'travel',
      'Full travel is less than the sag that was read. Check the travel and the readings',
    )
  const { sag, frictionBand, share } = sagFromMarks({ extended, settledDown, settledUp, travel })
  const limits = [readingPlusMinus, readingPlusMinus, readingPlusMinus]
  const reading = measured(
    ([e, d, u]) => e! - (d! + u!) / 2,
    [extended, settledDown, settledUp],
    limits,
  )
  const band = measured(([d, u]) => u! - d!, [settledDown, settledUp], limits.slice(1))
  const part = { value: share!, low: reading.low / travel, high: reading.high / travel }
  return {
    sag: { ...reading, value: sag },
    rests: { low: extended - settledUp, high: extended - settledDown },
    frictionBand: { ...band, value: frictionBand },
    share: part,
    window: against(part, windowLow, windowHigh),
  }
}

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => undefined }
  },
  judge,
})

import { sagFromMarks } from '../core/index.ts'
import { InputRefusal } from './define.ts'
import type { InputValues, Interval, OutputValues } from './define.ts'
import { measured } from './measured.ts'
import type { inputs, outputs } from './sag.fields.ts'

function refuseWrongOrder(extended: number, down: number, up: number): void {
  if (up < down)
    throw new InputRefusal('settledUp', 'The reading after lifting must not be below the one after pushing down. Check whether the two were swapped')
  if (extended < up)
    throw new InputRefusal('extended', 'The reading with the wheel hanging must be the longest of the three. Lift the wheel clear and read again')
}

/** Against a window, with what the ± leaves open. */
function against(share: Interval, low: number, high: number): string {
  if (share.low >= low && share.high <= high) return 'inside the window'
  if (share.high < low) return 'less sag than the window'
  if (share.low > high) return 'more sag than the window'
  return 'at an edge of the window: within the ±'
}

/** SI in, SI out. */
export function compute(input: InputValues<typeof inputs>): OutputValues<typeof outputs> {
  const { extended, settledDown, settledUp, travel, windowLow, windowHigh, readingPlusMinus } = input
  refuseWrongOrder(extended, settledDown, settledUp)
  if (windowHigh < windowLow) throw new InputRefusal('windowHigh', 'The window must end at or above where it starts')
  if (extended - (settledDown + settledUp) / 2 > travel)
    throw new InputRefusal('travel', 'Full travel is less than the sag that was read. Check the travel and the readings')
  const { sag, frictionBand, share } = sagFromMarks({ extended, settledDown, settledUp, travel })
  const limits = [readingPlusMinus, readingPlusMinus, readingPlusMinus]
  const reading = measured(([e, d, u]) => e! - (d! + u!) / 2, [extended, settledDown, settledUp], limits)
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

import type { inputs, outputs } from './cg-height.fields.ts'
import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'

/** A bike alone with its centre lower or higher than this has most likely been read wrongly: tanks and engines stand between. No published source. */
const PLAUSIBLE = [0.35, 0.8] as const
/** Below this many times the scale's ± the load that moved is lost in the reading. */
const CLEAR_OF_NOISE = 4

/** What the weighing tells, how sure it is, and what would make it surer. */
export function remarks({ input, output, say }: RemarkContext<typeof inputs, typeof outputs>): readonly Remark[] {
  const height = middle(output.height) ?? 0
  const gained = middle(output.gained) ?? 0
  const half = Math.abs(middle(output.perHalfKilogram) ?? 0)
  const list: Remark[] = [
    {
      kind: 'reading',
      text: `The whole answer hangs on the ${say.quantity(Math.abs(gained), 'kg load', 1)} that moved. Half a kilogram more or less on that scale is ${say.quantity(half, 'mm', 0)} of height.`,
    },
  ]
  if (gained <= 0) {
    list.push({
      kind: 'limit',
      text: 'The wheel that stays down got no heavier. A centre of gravity above that axle makes it heavier: check which axle was raised, and that both wheels could roll.',
    })
  } else if (gained < CLEAR_OF_NOISE * input.scalePlusMinus) {
    list.push({
      kind: 'limit',
      text: `Only ${say.quantity(gained, 'kg load', 1)} moved, and each reading is within ${say.quantity(input.scalePlusMinus, 'kg load', 1)}. Raise the axle further, or use a finer scale.`,
    })
  }
  if (height < PLAUSIBLE[0] || height > PLAUSIBLE[1]) {
    list.push({
      kind: 'limit',
      text: `Road bikes without a rider commonly lie between ${say.number(PLAUSIBLE[0], 'mm', 0)} and ${say.quantity(PLAUSIBLE[1], 'mm', 0)} (no published source). Check that the suspension was locked.`,
    })
  }
  list.push({
    kind: 'next',
    text: 'Read each load three times, lifting the bike off the scale between readings, and use the means. Lock the suspension with straps or blocks first.',
  })
  list.push({ kind: 'caution', caution: 'raised-bike-on-scales', text: 'A bike with one axle raised rolls forward and tips easily.' })
  return list
}

import type statement from './statement.ts'
import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists } from '../../units/interval.ts'

/** A bike alone with its centre lower or higher than this has most likely been read wrongly: tanks and engines stand between. No published source. */
const PLAUSIBLE = [0.35, 0.8] as const
/** Below this many times the scale's ± the load that moved is lost in the reading. */
const CLEAR_OF_NOISE = 4
/** How far the procedure raises the axle [m]: more is surer on paper, and the bike falls further. */
const LIFT = 0.3

/** What the weighing tells, how sure it is, and what would make it surer. */
function remarks({ input, output, say }: RemarkContext<typeof statement>): readonly Remark[] {
  const [lowest, highest] = ends(output.height) ?? [0, 0]
  const gained = typeof output.gained === 'number' ? output.gained : 0
  const half = exists(output.perHalfKilogram) ? say.span(output.perHalfKilogram, 'mm', 0) : ''
  const list: Remark[] = [
    {
      kind: 'reading',
      text: `The whole answer hangs on the ${say.quantity(Math.abs(gained), 'kg load', 1)} that moved. Half a kilogram more or less on that scale is ${half} of height.`,
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
      text: `Only ${say.quantity(gained, 'kg load', 1)} moved, and each reading is within ${say.quantity(input.scalePlusMinus, 'kg load', 1)}. Use a finer scale and more readings. Raise the axle to ${say.quantity(LIFT, 'mm', 0)} if it was less, and no further for the sake of the number.`,
    })
  }
  if (highest < PLAUSIBLE[0] || lowest > PLAUSIBLE[1]) {
    list.push({
      kind: 'limit',
      text: `Road bikes without a rider commonly lie between ${say.number(PLAUSIBLE[0], 'mm', 0)} and ${say.quantity(PLAUSIBLE[1], 'mm', 0)} (no published source). Check that the suspension was locked.`,
    })
  }
  list.push({
    kind: 'next',
    text: 'Read each load three times and use the means. Roll the wheel off the scale between level readings; raised, only a few millimetres to and fro, between its stops. Strap the suspension to one length first.',
  })
  list.push({
    kind: 'caution',
    caution: 'raised-bike-on-scales',
    text: 'A bike with one axle raised rolls forward and tips easily.',
  })
  return list
}

export default defineRemarks<typeof statement>(remarks)

import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import { about } from './measured.ts'
import type { inputs, outputs } from './trail.fields.ts'
import { trailWithDoubt } from './trail.work.ts'

const MM = 1e-3

/** Road bikes' trail as the trade has it, common practice without a published source: past either end a reading deserves a second look. */
const USUAL_TRAIL = [0.07, 0.13] as const
/** Below a tenth of the whole, a reading's share of the ± is not worth a better rule. */
const MINOR_SHARE = 0.1

type Context = RemarkContext<typeof inputs, typeof outputs>

function largestPart(input: Context['input']): string {
  const { contributions, uncertainty } = trailWithDoubt(input)
  const named = ['the rake', 'the offset', 'the radius']
  const index = contributions.indexOf(Math.max(...contributions))
  const others = contributions.filter((part, place) => place !== index && part / uncertainty > MINOR_SHARE).length
  return others === 0 ? `nearly all of it from ${named[index]}` : `the largest part from ${named[index]}`
}

/** What moves trail, how well it is known, and what to read next. */
export function remarks({ input, output, say }: Context): readonly Remark[] {
  const number = (id: keyof typeof outputs): number => middle(output[id]) ?? 0
  const [trail, perDegree, perOffset] = [number('trail'), number('perDegree'), number('perOffset')]
  const same = Math.abs(perDegree / (perOffset / MM))
  const spread = about(trail, trailWithDoubt(input).uncertainty)
  const list: Remark[] = [
    {
      kind: 'reading',
      text: `One degree of rake moves trail by ${say.quantity(Math.abs(perDegree), 'mm', 1)}, as much as ${say.quantity(same, 'mm', 1)} of offset. Rake alone does not tell you the trail.`,
    },
  ]
  if (spread.high > spread.low) {
    list.push({
      kind: 'reading',
      text: `The ± of the readings leave trail known within ${say.quantity((spread.high - spread.low) / 2, 'mm', 1)}, which covers about 95 %: ${largestPart(input)}.`,
    })
  }
  if (trail <= 0)
    list.push({
      kind: 'limit',
      text: 'The steering axis meets the road behind the tyre’s contact. Such a wheel does not centre itself: check the sign of the offset and the rake’s vertical.',
    })
  else if (trail < USUAL_TRAIL[0] || trail > USUAL_TRAIL[1]) {
    list.push({
      kind: 'limit',
      text: `Road bikes commonly have ${say.number(USUAL_TRAIL[0], 'mm', 0)} to ${say.quantity(USUAL_TRAIL[1], 'mm', 0)} of trail (common practice, no source). Check that rake is measured from the vertical.`,
    })
  }
  list.push({
    kind: 'next',
    text: 'A printed rake holds for the pose in which it was quoted. Measure yours with the bike at rest on its wheels, and write down the exposed tube with it.',
  })
  return list
}

import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type { Interval } from '../../units/interval.ts'
import { ends, isInterval } from '../../units/interval.ts'
import { expanded } from '../../machine/measured.ts'
import type statement from './statement.ts'
import { trailWithDoubt } from './solve.ts'

const MM = 1e-3

/** Road bikes' trail as the trade has it, common practice without a published source: past either end a reading deserves a second look. */
const USUAL_TRAIL = [0.07, 0.13] as const
/** Below a tenth of the whole, a reading's share of the ± is not worth a better rule. */
const MINOR_SHARE = 0.1

type Context = RemarkContext<typeof statement>
type Value = number | Interval

function largestPart(input: Context['input']): string {
  const { contributions, uncertainty } = trailWithDoubt(input)
  const named = ['the rake', 'the offset', 'the radius']
  const index = contributions.indexOf(Math.max(...contributions))
  const others = contributions.filter(
    (part, place) => place !== index && part / uncertainty > MINOR_SHARE,
  ).length
  return others === 0
    ? `nearly all of it from ${named[index]}`
    : `the largest part from ${named[index]}`
}

/** How well trail is known: by the ± of readings, or by the range of what was not read. */
function known({ input, output, say }: Context): Remark[] {
  if (isInterval(output.trail))
    return [
      {
        kind: 'reading',
        text: `What you don’t know leaves trail anywhere from ${say.span(output.trail, 'mm', 1)}. Measure those figures before you judge by it.`,
      },
    ]
  const half = expanded(trailWithDoubt(input).uncertainty)
  if (half === 0) return []
  const text = `The ± of the readings leave trail known within ${say.quantity(half, 'mm', 1)}, which covers about 95 %: ${largestPart(input)}.`
  return [{ kind: 'reading', text }]
}

/** What one degree of rake is in offset [m]. */
function asOffset({ perDegree, perOffset }: Context['output']): Value {
  const [degree, offset] = [ends(perDegree) ?? [0, 0], ends(perOffset) ?? [MM, MM]]
  const ratios = degree.flatMap((one) => offset.map((other) => Math.abs(one / (other / MM))))
  return degree[0] === degree[1] && offset[0] === offset[1]
    ? ratios[0]!
    : { low: Math.min(...ratios), high: Math.max(...ratios) }
}

/** What moves trail, how well it is known, and what to read next. */
function remarks(context: Context): readonly Remark[] {
  const { output, say } = context
  const degree = ends(output.perDegree) ?? [0, 0]
  const list: Remark[] = [
    {
      kind: 'reading',
      text: `One degree of rake moves trail by ${say.range(Math.min(...degree.map(Math.abs)), Math.max(...degree.map(Math.abs)), 'mm', 1)}, as much as ${say.span(asOffset(output), 'mm', 1)} of offset. Rake alone does not tell you the trail.`,
    },
    ...known(context),
  ]
  const [least, most] = ends(output.trail) ?? [0, 0]
  if (most <= 0)
    list.push({
      kind: 'limit',
      text: 'The steering axis meets the road behind the tyre’s contact. Such a wheel does not centre itself: check the sign of the offset and the rake’s vertical.',
    })
  else if (most < USUAL_TRAIL[0] || least > USUAL_TRAIL[1]) {
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

export default defineRemarks<typeof statement>(remarks)

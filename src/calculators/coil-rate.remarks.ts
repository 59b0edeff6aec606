import type { inputs, outputs } from './coil-rate.fields.ts'
import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import { expanded, standardFromLimit } from './measured.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>

/** A height adjuster wound right in squeezes the spring this much more; 8 mm either way is common (common practice, no source). */
export const ADJUSTER_REACH = 8e-3

/** Below 4 the wire is too curved to wind without cracking, above 20 the coil tangles: EN 13906-1 counts in this range (from memory). */
export const INDEX_RANGE = [4, 20] as const

/** Springs on offer commonly step by about 5 % of the rate, 0.5 N/mm at 9 (common practice, no source). */
export const STEP_ON_OFFER = 0.05

/** How many limits of the inputs one standard deviation and its factor come to: 1.13. */
const limitToExpanded = expanded(standardFromLimit(1))

function marginRemark({ output, say }: Context): Remark[] {
  const margin = middle(output.margin) ?? 0
  const size = say.quantity(Math.abs(margin), 'mm', 0)
  if (margin < 0)
    return [
      {
        kind: 'reading',
        text: `The coils touch ${size} before the travel ends. The spring then stands solid: it bottoms the fork hard and can break. It is the wrong spring for this travel, or it has too much preload.`,
      },
    ]
  if (margin < ADJUSTER_REACH)
    return [
      {
        kind: 'next',
        text: `Only ${size} are left before the coils touch. An adjuster wound in can take ${say.quantity(ADJUSTER_REACH, 'mm', 0)} of it. Use less preload, or a spring with more room.`,
      },
    ]
  return [
    {
      kind: 'reading',
      text: `At full squeeze ${size} are left before the coils touch. A spacer or an adjuster takes its share of that, millimetre for millimetre.`,
    },
  ]
}

function rateRemark({ input, output, say }: Context): Remark {
  const rate = middle(output.rate) ?? 0
  const wire = say.quantity(middle(output.wireShare) ?? 0, '%', 1)
  return {
    kind: 'reading',
    text: `About ${say.quantity(rate, 'N/mm', 2)}. The rate goes with the fourth power of the wire: ${say.quantity(input.wirePlusMinus, 'mm', 2)} on ${say.quantity(input.wireDiameter, 'mm', 2)} is ${wire} of the rate by itself.`,
  }
}

/** Whether a calliper is good enough to tell neighbours apart. */
function nextRemark({ input, output, say }: Context): Remark {
  const half = (middle(output.wireShare) ?? 0) * limitToExpanded
  if (half > STEP_ON_OFFER / 2)
    return {
      kind: 'next',
      text: `That cannot tell a spring from its neighbour on the shelf, which differs by about ${say.quantity(STEP_ON_OFFER, '%', 0)}. Test it on a press with a scale: the slope needs no wire.`,
    }
  return {
    kind: 'next',
    text: `Check the count too: one coil in ${say.number(input.totalCoils - input.deadCoils, 'coils', 0)} is ${say.quantity(1 / (input.totalCoils - input.deadCoils), '%', 1)} of the rate.`,
  }
}

function changeRemark({ input, output, before, say }: Context): Remark[] {
  if (!before || Math.abs(before.input.totalCoils - input.totalCoils) < 1e-9) return []
  const [now, was] = [middle(output.rate) ?? 0, middle(before.output.rate) ?? 0]
  if (input.totalCoils > before.input.totalCoils || now <= was) return []
  return [
    {
      kind: 'reading',
      text: `Fewer coils make it stiffer, not softer: ${say.quantity(now / was - 1, '%', 0)} here. The same squeeze is shared by fewer coils, so each is twisted further.`,
    },
    { kind: 'caution', caution: 'cut-springs', text: 'A cut end does not sit flat and can slip out of its seat.' },
  ]
}

/** What the coil's numbers mean for the rider. */
export function remarks(context: Context): readonly Remark[] {
  const index = middle(context.output.index) ?? 0
  const odd: Remark[] =
    index < INDEX_RANGE[0] || index > INDEX_RANGE[1]
      ? [
          {
            kind: 'limit',
            text: `A spring index of ${context.say.number(index, '', 1)} lies outside ${INDEX_RANGE[0]} to ${INDEX_RANGE[1]}, where the formula is good. Check wire and outside diameter.`,
          },
        ]
      : []
  return [rateRemark(context), ...changeRemark(context), ...marginRemark(context), nextRemark(context), ...odd]
}

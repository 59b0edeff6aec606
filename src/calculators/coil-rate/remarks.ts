import type statement from './statement.ts'
import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, sizeOf } from '../../units/interval.ts'

type Context = RemarkContext<typeof statement>

/** A height adjuster wound right in squeezes the spring this much more; 8 mm either way is common (common practice, no source). */
export const ADJUSTER_REACH = 8e-3

/** Below 4 the wire is too curved to wind without cracking, above 20 the coil tangles: EN 13906-1 counts in this range (from memory). */
export const INDEX_RANGE = [4, 20] as const

/** Springs on offer commonly step by about 5 % of the rate, 0.5 N/mm at 9 (common practice, no source). */
export const STEP_ON_OFFER = 0.05

/** Below this no spring is wound: the wire would crack on its inside (from memory). */
const TIGHTEST = 3

const limit = (text: string): Remark => ({ kind: 'limit', text })

function marginRemark({ output, spread, say }: Context): Remark[] {
  if (!exists(output.margin)) return []
  const [low, high] = ends(output.margin) ?? [0, 0]
  const size = say.span(sizeOf(output.margin), 'mm', 0)
  if (high < 0)
    return [
      {
        kind: 'reading',
        text: `The coils touch ${size} before the travel ends. The spring then is solid: it bottoms the fork hard and can break. It is the wrong spring for this travel, or it has too much preload.`,
      },
    ]
  if (low < ADJUSTER_REACH)
    return [
      {
        kind: 'next',
        text: `Only ${say.span(output.margin, 'mm', 0)} are left before the coils touch. An adjuster wound in can take ${say.quantity(ADJUSTER_REACH, 'mm', 0)} of it. Use less preload, or a spring with more room.`,
      },
    ]
  const [, least] = ends(output.leastGap) ?? [0, 0]
  if ((ends(spread.margin)?.[0] ?? 0) < least && exists(output.leastGap))
    return [
      {
        kind: 'reading',
        text: `At full squeeze ${size} are left before the coils touch. EN 13906-1 asks for ${say.span(output.leastGap, 'mm', 0)} with these coils (from memory), since some touch before the rest: leave that much, adjuster wound in.`,
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
  const rate = exists(output.rate) ? say.span(output.rate, 'N/mm', 2) : ''
  const wire = exists(output.wireShare) ? say.span(output.wireShare, '%', 1) : ''
  return {
    kind: 'reading',
    text: `About ${rate}. The rate goes with the fourth power of the wire, and thicker wire in the same outside also makes a smaller coil: ${say.quantity(input.wirePlusMinus, 'mm', 2)} on ${say.quantity(input.wireDiameter, 'mm', 2)} is ${wire} of the rate by itself.`,
  }
}

/** Whether a calliper is good enough to tell neighbours apart: only one of them lies within a ± of half the step. */
function nextRemark({ output, spread, say }: Context): Remark {
  const [low, high] = ends(spread.rate) ?? [0, 1]
  if ((high - low) / (high + low) > STEP_ON_OFFER / 2)
    return {
      kind: 'next',
      text: `That cannot tell a spring from its neighbour on the shelf, which differs by about ${say.quantity(STEP_ON_OFFER, '%', 0)} (common practice, no published source). Test it on a press with a scale: the slope needs no wire.`,
    }
  const [coils] = ends(output.activeCoils) ?? [1]
  return {
    kind: 'next',
    text: `Check the count too: one coil in ${say.number(coils, 'coils', 0)} is ${say.quantity(1 / coils, '%', 1)} of the rate.`,
  }
}

function changeRemark({ input, before, changeShare, say }: Context): Remark[] {
  if (!before || input.totalCoils >= before.input.totalCoils) return []
  const gain = changeShare.rate ?? 0
  if ((ends(gain)?.[0] ?? 0) <= 0) return []
  return [
    {
      kind: 'reading',
      text: `Fewer coils make it stiffer, not softer: ${say.span(gain, '%', 0)} here. The same squeeze is shared by fewer coils, so each is twisted further.`,
    },
    {
      kind: 'caution',
      caution: 'cut-springs',
      text: 'A cut end does not sit flat and can slip out of its seat.',
    },
  ]
}

function oddRemarks({ input, output, say }: Context): Remark[] {
  const index = typeof output.index === 'number' ? output.index : 0
  const list: Remark[] = []
  if (index < TIGHTEST)
    list.push(
      limit(
        `A spring index of ${say.number(index, '', 1)} means a coil hardly wider than its wire, which nobody winds. One of the two diameters is wrong.`,
      ),
    )
  else if (index < INDEX_RANGE[0] || index > INDEX_RANGE[1])
    list.push(
      limit(
        `A spring index of ${say.number(index, '', 1)} lies outside ${INDEX_RANGE[0]} to ${INDEX_RANGE[1]}, where the formula is good. Check wire and outside diameter.`,
      ),
    )
  if (output.stress === null)
    list.push(
      limit(
        `No spring wire bears a squeeze of ${say.quantity(input.deflection, 'mm', 0)} on these coils: it would break long before. A diameter, the count or the squeeze is wrong, so no force or stress is told.`,
      ),
    )
  return list
}

/** What the coil's numbers mean for the rider. */
export const remarks = (context: Context): readonly Remark[] => [
  rateRemark(context),
  ...changeRemark(context),
  ...marginRemark(context),
  nextRemark(context),
  ...oddRemarks(context),
]

export default defineRemarks<typeof statement>(remarks)

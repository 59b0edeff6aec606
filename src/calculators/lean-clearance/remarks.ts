import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, sizeOf } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>

/** A change of lean smaller than this [rad], a fifth of a degree, is less than a kerb's camber: it is not told. */
const TELLING = 0.2 * (Math.PI / 180)

function touchReading({ output, say }: Context): Remark {
  const { roll } = output
  if (!exists(roll))
    return {
      kind: 'reading',
      text: 'Up to 70° of lean this part stays clear. Another part, or the tyre’s edge, comes first.',
    }
  const [low] = ends(roll) ?? [0]
  if (low <= 0)
    return {
      kind: 'reading',
      text: 'With this load and setting the part may be on the ground with the bike upright.',
    }
  return {
    kind: 'reading',
    text: `In a steady bend on a level road the part touches at ${say.span(roll, '°', 1)} of lean.`,
  }
}

function changeReading({ change, say }: Context): Remark[] {
  const { roll } = change
  const [low, high] = ends(roll) ?? [0, 0]
  if (roll === undefined || Math.max(Math.abs(low), Math.abs(high)) < TELLING) return []
  if (high < 0)
    return [
      {
        kind: 'reading',
        text: `That is ${say.span(sizeOf(roll), '°', 1)} sooner than with the rider alone and nothing changed.`,
      },
    ]
  if (low > 0)
    return [
      {
        kind: 'reading',
        text: `That is ${say.span(roll, '°', 1)} later than with the rider alone and nothing changed.`,
      },
    ]
  return []
}

function squatReading({ output, say }: Context): Remark[] {
  const { squat } = output
  if (!exists(squat) || (ends(squat)?.[0] ?? 0) <= 0) return []
  return [
    {
      kind: 'reading',
      text: `In that bend the springs and tyres carry more than the weight, and the part is ${say.span(squat, 'mm', 0)} lower than upright. Its height in the shop says too much.`,
    },
  ]
}

/** What the lean means, and what can take it away. */
function remarks(context: Context): readonly Remark[] {
  return [
    touchReading(context),
    ...changeReading(context),
    ...squatReading(context),
    {
      kind: 'caution',
      caution: 'ground-clearance-when-lowered',
      text: 'A part that cannot fold lifts a wheel off the road. Look for what touches first on both sides.',
    },
    {
      kind: 'limit',
      text: 'A bump, a dip, a camber or the brake takes several degrees more. This is no lean to ride to: it tells one load or height from another.',
    },
    {
      kind: 'next',
      text: 'Measure each part that hangs low, on both sides, with the whole load aboard: the one with the least lean is the one that matters.',
    },
  ]
}

export default defineRemarks<typeof statement>(remarks)

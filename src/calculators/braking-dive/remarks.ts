import { BUMP_ON_BRAKES } from '../thresholds.ts'
import type statement from './statement.ts'
import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type { Interval } from '../../units/interval.ts'
import { ends, exists, mapped, negated, quotient } from '../../units/interval.ts'

type Context = RemarkContext<typeof statement>
type Value = number | Interval

/** Less than half a millimetre is written as 0. */
const NOTHING = 0.5e-3
/** Within a twentieth of the lift, a crest or a bump is enough to take the rear wheel off the ground. */
const NEAR_LIFT = 0.95

function reserveRemark({ input, spread, say }: Context): Remark {
  const [low, high] = ends(spread.reserve) ?? [0, 0]
  const times = `put on in ${say.range(input.quickest, input.slowest, 's', 2)}`
  if (high < NOTHING)
    return {
      kind: 'limit',
      text: `A brake ${times} takes the fork to its stop. Nothing is left for a bump.`,
    }
  if (low <= 0)
    return {
      kind: 'limit',
      text: `A brake ${times} can take the fork to its stop: the reserve reaches from nothing to ${say.quantity(high, 'mm', 0)}.`,
    }
  const left = `A brake ${times} leaves ${say.range(low, high, 'mm', 0)} of travel.`
  if (low < BUMP_ON_BRAKES)
    return {
      kind: 'limit',
      text: `${left} A bump can ask for more: ${say.quantity(BUMP_ON_BRAKES, 'mm', 0)} is common (common practice, no published source).`,
    }
  return {
    kind: 'reading',
    text: `${left} It is a reserve for bumps, and no promise: a large one can still use it up.`,
  }
}

/** A result as a share of itself and another [1], over all that is not known. */
const shareOf = (part: Value, rest: Value): Value =>
  typeof part === 'number' && typeof rest === 'number'
    ? part / (part + rest)
    : mapped(quotient(rest, part), (ratio) => 1 / (1 + ratio))

function forces({ output, say }: Context): Remark {
  const [transfer, brake] = [output.transferPart ?? 0, output.brakePart ?? 0]
  const pushes = `Load transfer pushes the fork with ${say.span(transfer, 'N', 0)}`
  // with hardly any front brake the wheel's own inertia pulls the fork out by more than the brake pushes it in
  if ((ends(brake)?.[1] ?? 0) <= 0)
    return {
      kind: 'reading',
      text: `${pushes}. The front brake does not: slowing the wheel itself takes ${say.span(negated(brake), 'N', 0)} off.`,
    }
  return {
    kind: 'reading',
    text: `${pushes}, the brake along the raked fork with ${say.span(brake, 'N', 0)}: ${say.span(shareOf(brake, transfer), '%', 0)} of the dive is not weight transfer. A stiffer spring changes neither.`,
  }
}

function lifting({ input, output, say }: Context): Remark[] {
  const [lift] = ends(output.liftDeceleration) ?? [Infinity]
  if (!exists(output.liftDeceleration)) return []
  const from = say.span(output.liftDeceleration, 'g', 2)
  if (input.deceleration >= lift)
    return [
      {
        kind: 'limit',
        text: `Past ${from} the rear wheel is off the ground. The figures are as if the road could pull it down: read them at ${from}.`,
      },
    ]
  if (input.deceleration < NEAR_LIFT * lift) return []
  return [
    {
      kind: 'limit',
      text: `The rear wheel carries nothing from ${from}. A crest or a bump lifts it here, and so does a brake that comes quickly or a road downhill.`,
    },
  ]
}

/** What the dive means: what makes it, what is left, and where the rear wheel goes light. */
function remarks(context: Context): readonly Remark[] {
  const { input, output, before, change, say } = context
  const list: Remark[] = []
  if (input.deceleration <= 0) {
    const deep = exists(output.frontTravel) ? say.span(output.frontTravel, 'mm', 1) : ''
    list.push({
      kind: 'reading',
      text: `At rest the front sits ${deep} deep in its travel. Brake to see what is added.`,
    })
  } else {
    list.push(forces(context), reserveRemark(context))
    if (before && change.trail !== undefined)
      list.push({
        kind: 'reading',
        text: `While you brake, trail is ${say.moved(change.trail, 'mm', 0, ['shorter', 'longer'])} than before it.`,
      })
  }
  list.push(...lifting(context), {
    kind: 'next',
    text: 'Put a cable tie round a fork tube, ride and brake as you do, and measure how far it was pushed. That is the deepest stroke, bumps included.',
  })
  return list
}

export default defineRemarks<typeof statement>(remarks)

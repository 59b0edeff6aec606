import type { inputs, outputs } from './braking-dive.fields.ts'
import type { Remark, RemarkContext } from './define.ts'
import { ends, middle } from './interval.ts'
import type { Say } from './say.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>
type State = Pick<Context, 'input' | 'output'>

/** A pothole at speed can use this much travel at once; less in hand on the brakes is worth saying. Common practice, no published source [m]. */
const BUMP = 15e-3
/** Less than half a millimetre is written as 0. */
const NOTHING = 0.5e-3
/** Within a twentieth of the lift, a crest or a bump is enough to take the rear wheel off the ground. */
const NEAR_LIFT = 0.95

function reserveRemark({ output, input }: State, say: Say): Remark {
  const [low, high] = ends(output.reserve) ?? [0, 0]
  const times = `put on in ${say.number(input.quickest, 's', 1)} to ${say.quantity(input.slowest, 's', 1)}`
  if (high < NOTHING) return { kind: 'limit', text: `A brake ${times} takes the fork to its stop. Nothing is left for a bump.` }
  if (low <= 0)
    return { kind: 'limit', text: `A brake ${times} can take the fork to its stop: the reserve reaches from nothing to ${say.quantity(high, 'mm', 0)}.` }
  const left = `A brake ${times} leaves ${say.number(low, 'mm', 0)} to ${say.quantity(high, 'mm', 0)} of travel.`
  if (low < BUMP) return { kind: 'limit', text: `${left} A bump can ask for more than that.` }
  return { kind: 'reading', text: `${left} It is a reserve for bumps, and no promise: a large one can still use it up.` }
}

function forces({ output }: State, say: Say): Remark {
  const [transfer, brake] = [middle(output.transferPart) ?? 0, middle(output.brakePart) ?? 0]
  const share = brake / (brake + transfer)
  // with hardly any front brake the wheel's own inertia pulls the fork out by more than the brake pushes it in
  if (brake <= 0)
    return {
      kind: 'reading',
      text: `Load transfer pushes the fork with ${say.quantity(transfer, 'N', 0)}. The front brake does not: slowing the wheel itself takes ${say.quantity(-brake, 'N', 0)} off.`,
    }
  return {
    kind: 'reading',
    text: `Load transfer pushes the fork with ${say.quantity(transfer, 'N', 0)}, the brake along the raked fork with ${say.quantity(brake, 'N', 0)}: ${say.quantity(share, '%', 0)} of the dive is not weight transfer. A stiffer spring changes neither.`,
  }
}

/** What the dive means: what makes it, what is left, and where the rear wheel goes light. */
export function remarks({ input, output, before, say }: Context): readonly Remark[] {
  const lift = middle(output.liftDeceleration)
  const list: Remark[] = []
  if (input.deceleration <= 0)
    list.push({
      kind: 'reading',
      text: `At rest the front stands ${say.quantity(middle(output.frontTravel) ?? 0, 'mm', 1)} deep in its travel. Brake to see what is added.`,
    })
  else {
    list.push(forces({ input, output }, say), reserveRemark({ input, output }, say))
    if (before) {
      const trail = (middle(output.trail) ?? 0) - (middle(before.output.trail) ?? 0)
      list.push({
        kind: 'reading',
        text: `While you brake, trail is ${say.quantity(Math.abs(trail), 'mm', 0)} ${trail < 0 ? 'shorter' : 'longer'} than before it.`,
      })
    }
  }
  if (lift !== null && input.deceleration >= lift) {
    list.push({
      kind: 'limit',
      text: `Past ${say.quantity(lift, 'g', 2)} the rear wheel is off the ground. The figures are as if the road could pull it down: read them at ${say.quantity(lift, 'g', 2)}.`,
    })
  } else if (lift !== null && input.deceleration >= NEAR_LIFT * lift) {
    list.push({ kind: 'limit', text: `The rear wheel carries nothing from ${say.quantity(lift, 'g', 2)}. A crest or a bump lifts it here.` })
  }
  list.push({
    kind: 'next',
    text: 'Put a cable tie round a fork tube, ride and brake as you do, and measure how far it was pushed. That is the deepest stroke, bumps included.',
  })
  return list
}

import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import type { inputs, outputs } from './progressive-spring.fields.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>

/** A corner this close to where the bike rides is crossed by every ripple: 60 N of friction at 18 N/mm is 3 mm each way, so 5 is never out of reach. */
export const NEAR_CORNER = 5e-3

/** A millimetre of preload or a change of rate below these counts as none. */
const SAME_LENGTH = 1e-5
const SAME_RATE = 1

function place({ output, say }: Context): Remark[] {
  const corner = middle(output.firstClosing)
  const rides = middle(output.riderTravel) ?? 0
  const slope = say.quantity(middle(output.riderRate) ?? 0, 'N/mm', 1)
  if (corner === null) return [{ kind: 'reading', text: `One length of coils is one rate: ${slope} for the pair, wherever it rides.` }]
  if (corner <= 0)
    return [
      {
        kind: 'reading',
        text: `The preload alone has shut the close coils. They do nothing on the road: the fork rides on ${slope} throughout, and they are dead weight.`,
      },
    ]
  const gap = say.quantity(Math.abs(rides - corner), 'mm', 1)
  if (Math.abs(rides - corner) <= NEAR_CORNER)
    return [
      {
        kind: 'reading',
        text: `The bike rides ${gap} from the corner where the close coils touch. It works on the soft rate going up and on the hard one going down.`,
      },
    ]
  if (rides > corner)
    return [
      {
        kind: 'reading',
        text: `With the rider on, the close coils are already shut, ${gap} back. The bike rides on the hard part, ${slope}; the soft part only lets it droop further with no rider on.`,
      },
    ]
  return [{ kind: 'reading', text: `The bike rides on the soft part, ${slope}. Another ${gap} down the close coils touch and the fork turns harder.` }]
}

function againstLinear({ input, output, say }: Context): Remark[] {
  const [here, linear] = [middle(output.forceAtEnd), middle(output.linearAtEnd)]
  if (input.groups.length < 2 || here === null || linear === null || linear <= 0) return []
  const share = here / linear - 1
  return [
    {
      kind: 'reading',
      text: `One rate that rides at the same height, ${say.quantity(middle(output.sameLinear) ?? 0, 'N/mm', 2)} each leg, ends its travel with ${say.quantity(linear, 'N', 0)}; this one with ${say.quantity(here, 'N', 0)}, ${say.quantity(Math.abs(share), '%', 0)} ${share >= 0 ? 'more' : 'less'}. Neither is better: choose the slope where you use it.`,
    },
  ]
}

function preloadChanged({ input, output, before, say }: Context): Remark[] {
  if (!before || Math.abs(input.preload - before.input.preload) <= SAME_LENGTH) return []
  const sameCoils = Math.abs((middle(output.closingForce) ?? 0) - (middle(before.output.closingForce) ?? 0)) <= SAME_RATE
  const sameSlope = Math.abs((middle(output.riderRate) ?? 0) - (middle(before.output.riderRate) ?? 0)) <= SAME_RATE
  if (!sameCoils || !sameSlope || input.riderLoad !== before.input.riderLoad) return []
  const rose = (middle(before.output.riderTravel) ?? 0) - (middle(output.riderTravel) ?? 0)
  return [
    {
      kind: 'reading',
      text: `The preload moved the bike ${say.quantity(Math.abs(rose), 'mm', 1)} ${rose >= 0 ? 'up' : 'down'} and shut no coil: the same load squeezes the spring to the same length, with the same coils touching.`,
    },
  ]
}

/** What the groups of coils mean where the bike rides. */
export function remarks(context: Context): readonly Remark[] {
  const { input, output, say } = context
  const all = [...place(context), ...preloadChanged(context), ...againstLinear(context)]
  const bind = middle(output.bindAt) ?? Infinity
  if (bind < input.travel)
    all.push({
      kind: 'limit',
      text: `All coils touch at ${say.quantity(bind, 'mm', 0)}, before the travel of ${say.quantity(input.travel, 'mm', 0)} ends. The fork then stops on solid wire. It needs less preload or a longer spring.`,
    })
  all.push({
    kind: 'next',
    text: 'Turning the spring over changes none of these numbers. The maker’s sheet decides which end goes up; close coils uppermost is usual, for less unsprung mass and noise.',
  })
  return all
}

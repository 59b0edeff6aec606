import { listAll } from '../../units/words.ts'
import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type { Interval } from '../../units/interval.ts'
import { ends, exists, isInterval, negated } from '../../units/interval.ts'
import type statement from './statement.ts'
import type { Unit } from '../../units/units.ts'

type Context = RemarkContext<typeof statement>

/** A corner this close to where the bike rides is crossed by every ripple: 60 N of friction at 18 N/mm is 3 mm each way, so 5 is never out of reach. */
export const NEAR_CORNER = 5e-3

/** A millimetre of preload or a change of rate below these counts as none. */
const SAME_LENGTH = 1e-5
const SAME_RATE = 1

const span = (
  say: Context['say'],
  value: Context['output']['riderTravel'],
  unit: Unit,
  digits: number,
): string => (exists(value) ? say.span(value, unit, digits) : '')

/** How far the corner is from where the bike rides [m], above 0 where it lies deeper: over all that is not known. */
function gapOf({ output }: Context): readonly [number, number] {
  const [corner, rides] = [ends(output.firstClosing), ends(output.riderTravel)]
  // preload moves both by the same, and is all that may be unknown: ends belong together
  return corner && rides
    ? [
        Math.min(corner[0] - rides[0], corner[1] - rides[1]),
        Math.max(corner[0] - rides[0], corner[1] - rides[1]),
      ]
    : [0, 0]
}

/** A load that takes the fork to its end: no slope is told there. */
function stopped({ input, output, say }: Context): Remark[] {
  const [end] = ends(output.endsAt) ?? [input.travel]
  const solid = end < input.travel
  const where = solid ? 'on solid wire, with every coil shut' : 'on its stop'
  const loads = [
    ['With the rider', output.riderRate],
    ['On the brakes', output.brakingRate],
    ['With the bike alone', output.staticRate],
  ] as const
  const who = loads.filter(([, rate]) => rate === null).map(([name]) => name)
  if (who.length === 0) return []
  return [
    {
      kind: 'limit',
      text: `${listOf(who)} the fork is ${where}, ${say.quantity(end, 'mm', 0)} down. More load moves nothing there, so it has no slope.`,
    },
  ]
}

/** The first name opens the sentence. */
const listOf = ([first = '', ...rest]: readonly string[]): string =>
  listAll([first, ...rest.map((name) => `${name.charAt(0).toLowerCase()}${name.slice(1)}`)])

function place(context: Context): Remark[] {
  const { output, say } = context
  const reading = (text: string): Remark[] => [{ kind: 'reading', text }]
  const slope = span(say, output.riderRate, 'N/mm', 1)
  if (output.riderRate === null) return []
  if (!exists(output.firstClosing))
    return reading(`One length of coils is one rate: ${slope} for the pair, wherever it rides.`)
  const [, latest] = ends(output.firstClosing) ?? [0, 0]
  if (latest <= 0)
    return reading(
      `The preload alone has shut the close coils. They do nothing on the road: the fork rides on ${slope} throughout, and they are dead weight.`,
    )
  const [low, high] = gapOf(context)
  const gap = say.range(
    Math.min(Math.abs(low), Math.abs(high)),
    Math.max(Math.abs(low), Math.abs(high)),
    'mm',
    1,
  )
  if (Math.max(Math.abs(low), Math.abs(high)) <= NEAR_CORNER)
    return reading(
      `The bike rides ${gap} from the corner where the close coils touch. It works on the soft rate going up and on the hard one going down.`,
    )
  if (high < -NEAR_CORNER)
    return reading(
      `With the rider on, the close coils are already shut, ${gap} back. The bike rides on the hard part, ${slope}; the soft part only lets it droop further with no rider on.`,
    )
  if (low > NEAR_CORNER)
    return reading(
      `The bike rides on the soft part, ${slope}. Another ${gap} down the close coils touch and the fork turns harder.`,
    )
  return reading(
    'The corner where the close coils touch is near where the bike rides, and the preload that you don’t know decides on which side of it. Measure that first.',
  )
}

function againstLinear({ input, output, say }: Context): Remark[] {
  const [here, linear] = [output.forceAtEnd, output.linearAtEnd]
  if (input.groups.length < 2 || !exists(here) || !exists(linear)) return []
  const first = `One rate that rides at the same height, ${span(say, output.sameLinear, 'N/mm', 2)} each leg, ends its travel with ${say.span(linear, 'N', 0)}; this one with ${say.span(here, 'N', 0)}`
  if (isInterval(here) || isInterval(linear))
    return [
      { kind: 'reading', text: `${first}. Neither is better: choose the slope where you use it.` },
    ]
  const share = here / linear - 1
  return [
    {
      kind: 'reading',
      text: `${first}, ${say.quantity(Math.abs(share), '%', 0)} ${share >= 0 ? 'more' : 'less'}. Neither is better: choose the slope where you use it.`,
    },
  ]
}

function preloadChanged({ input, inputSpread, before, change, say }: Context): Remark[] {
  if (!before || isInterval(inputSpread.preload) || isInterval(before.inputSpread.preload))
    return []
  if (Math.abs(input.preload - before.input.preload) <= SAME_LENGTH) return []
  const still = (moved: number | Interval | undefined): boolean =>
    typeof moved === 'number' && Math.abs(moved) <= SAME_RATE
  if (input.groups.length > 1 && !still(change.closingForce)) return []
  if (!still(change.riderRate) || input.riderLoad !== before.input.riderLoad) return []
  const rose = negated(change.riderTravel ?? 0)
  return [
    {
      kind: 'reading',
      text: `The preload moved the bike ${say.moved(rose, 'mm', 1, ['down', 'up'])} and shut no coil: the same load squeezes the spring to the same length, with the same coils touching.`,
    },
  ]
}

/** What the groups of coils mean where the bike rides. */
function remarks(context: Context): readonly Remark[] {
  const { input, output, say } = context
  const all = [
    ...place(context),
    ...stopped(context),
    ...preloadChanged(context),
    ...againstLinear(context),
  ]
  const [bind] = ends(output.bindAt) ?? [Infinity]
  if (bind < input.travel && exists(output.bindAt))
    all.push({
      kind: 'limit',
      text: `All coils touch at ${say.span(output.bindAt, 'mm', 0)}, before the travel of ${say.quantity(input.travel, 'mm', 0)} ends. The fork then stops on solid wire. It needs less preload or a longer spring.`,
    })
  all.push({
    kind: 'next',
    text: 'Turning the spring over changes none of these numbers. The maker’s sheet decides which end goes up; close coils uppermost is usual, for less unsprung mass and noise.',
  })
  return all
}

export default defineRemarks<typeof statement>(remarks)

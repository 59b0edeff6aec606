import type { Remark, RemarkContext } from './define.ts'
import { ends, middle } from './interval.ts'
import type { inputs, outputs } from './preload-versus-rate.fields.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>
type Held = Required<Context>

/** Preloads or rates closer than this are taken as equal: a hundredth of a millimetre, and of a newton per millimetre. */
const SAME_LENGTH = 1e-5
const SAME_RATE = 10

/** Height that differs from the preload by less than a twentieth needs no explaining: friction hides more. */
const NOTICEABLE = 0.05

/** A fork with less than a tenth of its travel left at rest has no room for a bump (common practice, no source). */
const LITTLE_LEFT = 0.1

const text = (kind: Remark['kind'], words: string): Remark => ({ kind, text: words })

/** Whether something other than preload and rate was changed too: then no change can be put down to one cause. */
function onlySpringsDiffer({ input, before }: Held): boolean {
  const others = ['load', 'travel', 'gas', 'airHeight', 'topOut', 'topOutRate', 'topOutLength'] as const
  return others.every((id) => input[id] === before.input[id])
}

function gained({ output, before, say }: Held): string {
  const [now, was] = [ends(output.forceAtFullTravel), ends(before.output.forceAtFullTravel)]
  if (!now || !was || was[0] <= 0) return ''
  const more = now[0] - was[0]
  return `At full travel the force is ${say.quantity(Math.abs(more), 'N', 0)} ${more >= 0 ? 'more' : 'less'}, ${say.quantity(Math.abs(more) / was[0], '%', 0)}: right in direction, small in size.`
}

/** A fork on its stop: preload raises nothing. */
function toppedOut({ input, output, say, before }: Context): Remark[] {
  const leave = middle(output.loadToLeaveTopStop) ?? 0
  const first = `The fork stands on its top stop. Preload raises nothing here: it raises the load needed to leave the stop, now ${say.quantity(leave, 'N', 0)}`
  const was = before ? middle(before.output.loadToLeaveTopStop) : null
  const second =
    was !== null && Math.abs(leave - was) > 0.5 ? `, ${say.quantity(was, 'N', 0)} before.` : `, against ${say.quantity(input.load, 'N', 0)} carried.`
  return [text('reading', first + second), text('next', 'Take preload out until the bike sinks off the stop, or the front will clack over every crest.')]
}

function preloadOnly(context: Held): Remark[] {
  const { input, output, before, say } = context
  const wound = input.preload - before.input.preload
  const rose = (middle(before.output.travelUsed) ?? 0) - (middle(output.travelUsed) ?? 0)
  const force = say.quantity(middle(output.springForce) ?? 0, 'N', 0)
  const reading = `${say.quantity(Math.abs(wound), 'mm', 0)} ${wound > 0 ? 'more' : 'less'} preload, and the front sits ${say.quantity(Math.abs(rose), 'mm', 1)} ${rose >= 0 ? 'higher' : 'lower'}.`
  const missing = 1 - rose / wound
  const all = [
    text(
      'reading',
      Math.abs(missing) < NOTICEABLE
        ? `${reading} The springs push with ${force} as before, on the same slope. ${gained(context)}`
        : `${reading} ${gained(context)}`,
    ),
  ]
  if (Math.abs(missing) >= NOTICEABLE) all.push(text('limit', whyLess(context, wound)))
  return all
}

/** The three exceptions: a top stop on the way, a top-out spring, trapped air. */
function whyLess({ input, output, before, say }: Held, wound: number): string {
  if ([output.where, before.output.where].includes('on its top stop')) return 'Part of the change was spent against the top stop, where preload moves nothing.'
  if ([output.where, before.output.where].includes('the top-out spring still pushes')) {
    return `The top-out spring still pushes over its last ${say.quantity(input.topOutLength, 'mm', 0)}. It takes part of each millimetre of preload until the fork is clear of it.`
  }
  if ([output.where, before.output.where].some((where) => where !== 'between its stops')) return 'Part of the change was spent at the end of the travel.'
  return `Sealed air pushes less when the fork sits higher, so ${say.quantity(Math.abs(wound), 'mm', 0)} of preload does not give its full height.`
}

function rateOnly(context: Held): Remark[] {
  const { output, before, say } = context
  const [now, was] = [middle(output.rateHere) ?? 0, middle(before.output.rateHere) ?? 0]
  const rose = (middle(before.output.travelUsed) ?? 0) - (middle(output.travelUsed) ?? 0)
  return [
    text(
      'reading',
      `Another rate is another slope: each millimetre deeper now takes ${say.quantity(now, 'N/mm', 1)}, before ${say.quantity(was, 'N/mm', 1)}. The front also sits ${say.quantity(Math.abs(rose), 'mm', 1)} ${rose >= 0 ? 'higher' : 'lower'}. The spring force is the load's, as before.`,
    ),
    text('next', 'Set the preload so that the height is back on its mark. Then the two springs differ by their slope alone.'),
  ]
}

function bothChanged({ output, before, say }: Held): Remark[] {
  const rose = (middle(before.output.travelUsed) ?? 0) - (middle(output.travelUsed) ?? 0)
  const [now, was] = [ends(output.forceAtFullTravel), ends(before.output.forceAtFullTravel)]
  const deep = now && was ? ` At full travel ${say.quantity(now[0], 'N', 0)} stand against ${say.quantity(was[0], 'N', 0)}.` : ''
  return [
    text(
      'reading',
      `Rate and preload both changed. At this load the front sits ${say.quantity(Math.abs(rose), 'mm', 1)} ${rose < 0 ? 'lower' : 'higher'}; deeper in the travel the two forks part.${deep}`,
    ),
  ]
}

function alone({ output, say }: Context): Remark[] {
  const used = say.quantity(middle(output.travelUsed) ?? 0, 'mm', 1)
  return [
    text(
      'reading',
      `The fork carries its load ${used} down. The springs are squeezed by ${say.quantity(middle(output.squeeze) ?? 0, 'mm', 1)} in all: that length belongs to the load and the rate, and preload only moves where it is found.`,
    ),
  ]
}

/** What the two set-ups mean for the rider. */
export function remarks(context: Context): readonly Remark[] {
  const { input, output, before } = context
  if (output.where === 'on its top stop') return toppedOut(context)
  const all: Remark[] = []
  if (output.where === 'at full travel')
    all.push(text('reading', 'The fork stands at the end of its travel under this load. No preload within reason cures that: it takes a stiffer spring.'))
  else if (before && onlySpringsDiffer(context as Held)) all.push(...compared(context as Held))
  else all.push(...alone(context))
  if (output.forceAtFullTravel === null)
    all.push({
      kind: 'caution',
      caution: 'overfilled-fork-locks',
      text: 'Oil fills the leg before the travel ends. The fork locks there and can burst its seals: this is no set-up to ride.',
    })
  if (output.where === 'between its stops' && (middle(output.travelUsed) ?? 0) > (1 - LITTLE_LEFT) * input.travel)
    all.push(text('next', 'Less than a tenth of the travel is left at rest. Look for a stiffer spring before more preload.'))
  return all
}

function compared(context: Held): Remark[] {
  const { input, before } = context
  const wound = Math.abs(input.preload - before.input.preload) > SAME_LENGTH
  const respringed = Math.abs(input.rate - before.input.rate) > SAME_RATE
  if (wound && respringed) return bothChanged(context)
  if (wound) return preloadOnly(context)
  return respringed ? rateOnly(context) : alone(context)
}

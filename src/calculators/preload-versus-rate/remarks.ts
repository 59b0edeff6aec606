import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type { Interval } from '../../units/interval.ts'
import { ends, exists, isInterval, negated } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>
type Held = Required<Context>
type Value = number | Interval

/** Preloads or rates closer than this are taken as equal: a hundredth of a millimetre, and of a newton per millimetre. */
const SAME_LENGTH = 1e-5
const SAME_RATE = 10

/** Height that differs from the preload by less than a twentieth needs no explaining: friction hides more. */
const NOTICEABLE = 0.05

/** A fork with less than a tenth of its travel left at rest has no room for a bump (common practice, no source). */
const LITTLE_LEFT = 0.1

const text = (kind: Remark['kind'], words: string): Remark => ({ kind, text: words })

const HEIGHT = ['lower', 'higher'] as const

/** How far the front came up [m]. */
const riseOf = ({ change }: Context): Value => negated(change.travelUsed ?? 0)

/** Whether something other than preload and rate was changed too: then no change can be put down to one cause. */
function onlySpringsDiffer({ input, before }: Held): boolean {
  const others = [
    'load',
    'travel',
    'gas',
    'airHeight',
    'topOut',
    'topOutRate',
    'topOutLength',
  ] as const
  return others.every((id) => input[id] === before.input[id])
}

function gained({ output, before, say }: Held): string {
  const [now, was] = [ends(output.forceAtFullTravel), ends(before.output.forceAtFullTravel)]
  // with something not known the two ranges lie apart by no one figure
  if (!now || !was || was[0] <= 0 || isInterval(output.springForce) || isInterval(output.rateHere))
    return ''
  const more = now[0] - was[0]
  const share = Math.abs(more) / was[0]
  const why =
    more > 0
      ? ', because the fork starts from higher up and has further to fall'
      : ', because the fork starts from lower down and has less far to fall'
  return `At full travel the force is ${say.quantity(Math.abs(more), 'N', 0)} ${more > 0 ? 'more' : 'less'}, ${say.quantity(share, '%', 0)}${why}.`
}

/** A fork on its stop: preload raises nothing. */
function toppedOut({ input, inputSpread, output, say, before, change }: Context): Remark[] {
  const leave = exists(output.loadToLeaveTopStop) ? say.span(output.loadToLeaveTopStop, 'N', 0) : ''
  const first = `The fork is on its top stop. Preload raises nothing here: it raises the load needed to leave the stop, now ${leave}`
  const [low, high] = ends(change.loadToLeaveTopStop) ?? [0, 0]
  const was = before?.output.loadToLeaveTopStop
  const second =
    exists(was) && Math.max(Math.abs(low), Math.abs(high)) > 0.5
      ? `, ${say.span(was, 'N', 0)} before.`
      : `, against ${say.span(inputSpread.load, 'N', 0)} carried.`
  const next =
    input.topOut === 'fitted'
      ? 'Take preload out until the bike sinks off the stop. On it, the wheel has no droop left to follow a hollow; the top-out spring softens the knock and does not give that back.'
      : 'Take preload out until the bike sinks off the stop, or the front will clack over every crest.'
  return [text('reading', first + second), text('next', next)]
}

/** What is not known leaves open where the fork stands. */
function open({ output, say, words }: Context): Remark[] {
  const used = exists(output.travelUsed) ? say.span(output.travelUsed, 'mm', 1) : ''
  return [
    text(
      'reading',
      `What you don’t know leaves open where the fork sits: ${used} of its travel used, which is ${words('where')}.`,
    ),
    text('next', 'Weigh the front, or test the spring, before you change the preload by this.'),
  ]
}

function preloadOnly(context: Held): Remark[] {
  const { input, output, say } = context
  const wound = input.preload - context.before.input.preload
  const rose = riseOf(context)
  const force = exists(output.springForce) ? say.span(output.springForce, 'N', 0) : ''
  const reading = `${say.quantity(Math.abs(wound), 'mm', 0)} ${wound > 0 ? 'more' : 'less'} preload, and the front sits ${say.moved(rose, 'mm', 1, HEIGHT)}.`
  const missing = Math.max(...(ends(rose) ?? [0]).map((rise) => Math.abs(1 - rise / wound)))
  if (missing >= NOTICEABLE)
    return [
      text('reading', `${reading} ${gained(context)}`.trimEnd()),
      text('limit', whyLess(context, wound)),
    ]
  return [
    text(
      'reading',
      `${reading} The springs push with ${force} as before, on the same slope. ${gained(context)}`.trimEnd(),
    ),
  ]
}

/** The three exceptions: a top stop on the way, a top-out spring, trapped air. */
function whyLess({ input, verdicts, before, say }: Held, wound: number): string {
  const places = [...verdicts.where, ...before.verdicts.where]
  if (places.includes('top-stop'))
    return 'Part of the change was spent against the top stop, where preload moves nothing.'
  if (places.includes('top-out')) {
    return `The top-out spring still pushes over its last ${say.quantity(input.topOutLength, 'mm', 0)}. It takes part of each millimetre of preload until the fork is clear of it.`
  }
  if (places.some((where) => where !== 'between'))
    return 'Part of the change was spent at the end of the travel.'
  return `Sealed air pushes less when the fork sits higher, so ${say.quantity(Math.abs(wound), 'mm', 0)} of preload does not give its full height.`
}

function rateOnly(context: Held): Remark[] {
  const { output, before, say } = context
  const slope = (value: unknown): string => (exists(value) ? say.span(value, 'N/mm', 1) : '')
  return [
    text(
      'reading',
      `Another rate is another slope: each millimetre deeper now takes ${slope(output.rateHere)}, before ${slope(before.output.rateHere)}. The front also sits ${say.moved(riseOf(context), 'mm', 1, HEIGHT)}. ${springShare(context)}`,
    ),
    text(
      'next',
      'Set the preload so that the height is back on its mark. Then the two springs differ by their slope alone.',
    ),
  ]
}

/** The load sets the spring force; where air or a top-out spring takes part, they share it. */
function springShare({ input, verdicts, before }: Held): string {
  if ([...verdicts.where, ...before.verdicts.where].includes('top-out'))
    return 'Springs and top-out spring together still carry the load, as before.'
  return input.gas === 'sealed'
    ? 'Springs and air together still carry the load, as before.'
    : 'The spring force is the load’s, as before.'
}

function bothChanged(context: Held): Remark[] {
  const { output, before, say } = context
  const [now, was] = [ends(output.forceAtFullTravel), ends(before.output.forceAtFullTravel)]
  const deep =
    now && was
      ? ` At full travel it takes ${say.quantity(now[0], 'N', 0)}, against ${say.quantity(was[0], 'N', 0)}.`
      : ''
  return [
    text(
      'reading',
      `Rate and preload both changed. At this load the front sits ${say.moved(riseOf(context), 'mm', 1, HEIGHT)}, and deeper in the travel the two forks differ more.${isInterval(output.rateHere) ? '' : deep}`,
    ),
  ]
}

function alone({ input, output, verdicts, say }: Context): Remark[] {
  const span = (value: Context['output']['squeeze']): string =>
    exists(value) ? say.span(value, 'mm', 1) : ''
  return [
    text(
      'reading',
      `The fork carries its load ${span(output.travelUsed)} down. The springs are squeezed by ${span(output.squeeze)} in all: ${
        verdicts.where.includes('top-out')
          ? 'the load and the top-out spring together press them that far.'
          : input.gas === 'sealed'
            ? 'that length belongs to the rate and to what the air leaves of the load, and preload hardly changes it.'
            : 'that length belongs to the load and the rate, and preload only moves where it is found.'
      }`,
    ),
  ]
}

function compared(context: Held): Remark[] {
  const { input, before } = context
  const wound = Math.abs(input.preload - before.input.preload) > SAME_LENGTH
  const respringed = Math.abs(input.rate - before.input.rate) > SAME_RATE
  // what is not known was not set: no change can be laid to it
  const unknown = (['rate', 'preload', 'load'] as const).some(
    (id) => isInterval(context.inputSpread[id]) !== isInterval(before.inputSpread[id]),
  )
  if (unknown) return alone(context)
  if (wound && respringed) return bothChanged(context)
  if (wound) return preloadOnly(context)
  return respringed ? rateOnly(context) : alone(context)
}

/** What the two set-ups mean for the rider. */
function remarks(context: Context): readonly Remark[] {
  const { input, output, verdicts, before } = context
  const only = verdicts.where.length === 1 ? verdicts.where[0] : undefined
  if (only === 'top-stop') return toppedOut(context)
  const all: Remark[] = []
  if (only === undefined) all.push(...open(context))
  else if (only === 'full-travel')
    all.push(
      text(
        'reading',
        'The fork is at the end of its travel under this load. No preload within reason cures that: it takes a stiffer spring.',
      ),
    )
  else if (before && onlySpringsDiffer(context as Held)) all.push(...compared(context as Held))
  else all.push(...alone(context))
  if (output.forceAtFullTravel === null || verdicts.where.includes('oil-stop'))
    all.push({
      kind: 'caution',
      caution: 'overfilled-fork-locks',
      text: 'Oil fills the leg before the travel ends. The fork locks there and can burst its seals: this is no set-up to ride.',
    })
  const [least, most] = ends(output.travelUsed) ?? [0, 0]
  const deep = (1 - LITTLE_LEFT) * input.travel
  if (only === 'between' && least > deep)
    all.push(
      text(
        'next',
        'Less than a tenth of the travel is left at rest (common practice, no published source). Look for a stiffer spring before more preload.',
      ),
    )
  else if (only === 'between' && most > deep)
    all.push(
      text(
        'next',
        'What you don’t know may leave less than a tenth of the travel at rest. Measure before you choose a spring.',
      ),
    )
  return all
}

export default defineRemarks<typeof statement>(remarks)

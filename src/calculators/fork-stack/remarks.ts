import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type { Interval } from '../../units/interval.ts'
import { ends, exists, negated } from '../../units/interval.ts'
import type statement from './statement.ts'

/** Spring travel kept clear of coil bind [m]: a coil that is 1 % longer or thicker than the data sheet says uses up about as much. Common practice, no source. */
export const BIND_CLEARANCE = 3e-3
/** Force on a cap [N] from which it jumps out of your hand as its thread ends: the weight of two kilograms. Common practice, no source. */
export const CAP_JUMPS = 20
/** Preload above this share of the spring's free length is a mistake in a length: fork springs give about 40 % in all, and the travel takes most of that. No source. */
export const MOST_PRELOADED = 0.15
/** A length that no saw and no rule tells from another [m]. */
const SAME_LENGTH = 5e-4

type Context = RemarkContext<typeof statement>

const next = (text: string): Remark => ({ kind: 'next', text })
const limit = (text: string): Remark => ({ kind: 'limit', text })

/** Whether the lengths entered squeeze the spring more than any fork does. */
const isAbsurd = ({ input, output }: Context): boolean =>
  (output.preload as number) > MOST_PRELOADED * input.springLength

function readingOf(context: Context): Remark[] {
  const { input, output, before, change, say } = context
  const preload = output.preload as number
  const moved = change.preload
  if (preload < 0) {
    const loose = `The spring hangs loose by ${say.quantity(-preload, 'mm', 1)} with the wheel hanging. It can step off its seat, and carries nothing for that much of the travel.`
    return [
      { kind: 'reading', text: loose },
      next('Measure the depth and the spring again before you cut. Then fit a longer spacer.'),
    ]
  }
  if (isAbsurd(context))
    return [
      {
        kind: 'reading',
        text: `By these lengths the spring is squeezed by ${say.quantity(preload, 'mm', 1)} with the wheel hanging, which is ${say.quantity(preload / input.springLength, '%', 0)} of its length. Fork springs have a few per cent (common practice, no published source).`,
      },
      next(
        'Measure the depth, the cap’s reach and every length again, and cut nothing by these figures.',
      ),
    ]
  if (
    before &&
    typeof moved === 'number' &&
    Math.abs(moved) > 1e-6 &&
    change.frontTravel !== undefined
  ) {
    const rise = negated(change.frontTravel)
    const onStop = isOnStop(output.frontTravel) || isOnStop(before.output.frontTravel)
    const height = onStop
      ? ''
      : `, and the front sits ${say.moved(rise, 'mm', 1, ['lower', 'higher'])}`
    const text = `There is ${say.quantity(Math.abs(moved), 'mm', 1)} ${moved < 0 ? 'less' : 'more'} preload than before${height}. The rate has not changed.`
    return [{ kind: 'reading', text }]
  }
  const text = `The stack holds the spring ${say.quantity(preload, 'mm', 1)} shorter than its free length. Preload moves the bike along its travel and leaves the rate alone.`
  return [{ kind: 'reading', text }]
}

/** Whether, over all that is not known, a bike alone may stand on its top stop. */
const isOnStop = (travel: number | Interval | null): boolean =>
  travel !== null && (ends(travel)?.[0] ?? 1) <= 0

/** The fork as it is now, on its top stop with the bike alone. */
function stopOf({ output }: Context): Remark[] {
  if (!isOnStop(output.frontTravel) || (output.preload as number) < 0) return []
  return [
    limit(
      'The bike alone does not push the fork off its top stop. The wheel has no droop left to follow a hollow, and more preload lifts nothing.',
    ),
  ]
}

/** Why the preload wanted is not to be had by a cut, or what has to be known first; undefined where nothing speaks against it. */
function objection({ input, output, say }: Context): string | undefined {
  const wanted = say.quantity(input.wanted, 'mm', 1)
  const margin = typeof output.wantedBindMargin === 'number' ? output.wantedBindMargin : null
  const travel = input.bike.fork.travel
  if (margin !== null && margin < 0)
    return `Cut nothing for ${wanted} of preload: the coils would touch ${say.quantity(-margin, 'mm', 1)} before the fork reaches its stop. It takes a spring with more room between its coils.`
  if (margin !== null && margin < BIND_CLEARANCE)
    return `Cut nothing for ${wanted} of preload: only ${say.quantity(margin, 'mm', 1)} of spring travel would be left at the stop, and a coil may be thicker than its data sheet says.`
  if (isOnStop(output.wantedTravel))
    return `Cut nothing for ${wanted} of preload: with so much the bike alone would not sink off its top stop.`
  if (input.wanted > MOST_PRELOADED * input.springLength)
    return `Cut nothing for ${wanted} of preload: no fork spring of this length is meant to have so much (common practice, no published source).`
  // with less preload than now the coils only come further apart
  if (margin === null && input.wanted > (output.preload as number))
    return `Before you cut for ${wanted} of preload, find out whether the spring can be squeezed by ${say.quantity(input.wanted + travel, 'mm', 0)}, preload and travel together, before its coils touch: enter its length with the coils touching.`
  return undefined
}

function spacerOf(context: Context): Remark[] {
  const { input, output, say } = context
  const spacer = output.spacer as number
  const [wanted, length] = [say.quantity(input.wanted, 'mm', 1), say.quantity(spacer, 'mm', 1)]
  if (Math.abs(spacer - input.spacerLength) <= SAME_LENGTH || isAbsurd(context)) return []
  if (spacer < 0)
    return [
      next(
        `Even without a spacer the stack is ${say.quantity(-spacer, 'mm', 1)} too long for the preload wanted. It takes a shorter spring or thinner washers.`,
      ),
    ]
  const against = objection(context)
  if (against !== undefined) return [next(against)]
  const by = say.quantity(Math.abs(spacer - input.spacerLength), 'mm', 1)
  return spacer < input.spacerLength
    ? [
        next(
          `For ${wanted} of preload at this setting, cut ${by} off the spacer, to ${length}. Cut both legs alike, ends square.`,
        ),
      ]
    : [
        next(
          `For ${wanted} of preload at this setting it takes a spacer of ${length}, ${by} longer than this one. Cut both legs alike, ends square.`,
        ),
      ]
}

function capOf({ input, output, say }: Context): Remark[] {
  const [now, then] = [ends(output.capForce)?.[1] ?? 0, ends(output.wantedCapForce)?.[1] ?? 0]
  if (Math.max(now, then) < CAP_JUMPS || !exists(output.capForce)) return []
  const changes =
    Math.abs((output.spacer as number) - input.spacerLength) > SAME_LENGTH &&
    exists(output.wantedCapForce)
  const after =
    changes && exists(output.wantedCapForce)
      ? `, and with the preload wanted it would push with ${say.span(output.wantedCapForce, 'N', 0)}`
      : ''
  return [
    {
      kind: 'caution',
      caution: 'cap-under-spring-force',
      text: `With the wheel hanging the spring pushes each cap with ${say.span(output.capForce, 'N', 0)}${after}.`,
    },
  ]
}

function bindOf({ output, say }: Context): Remark[] {
  const margin = output.bindMargin
  if (typeof margin !== 'number' || margin >= BIND_CLEARANCE) return []
  const short =
    margin < 0
      ? `The coils touch ${say.quantity(-margin, 'mm', 1)} before the fork reaches its stop.`
      : `Only ${say.quantity(margin, 'mm', 1)} of spring travel is left when the fork reaches its stop.`
  return [limit(`${short} Touching coils stop the fork dead: use less preload or another spring.`)]
}

/** What the stack means for the rider, and what to cut. */
export const remarks = (context: Context): readonly Remark[] => [
  ...readingOf(context),
  ...stopOf(context),
  ...spacerOf(context),
  ...capOf(context),
  ...bindOf(context),
]

export default defineRemarks<typeof statement>(remarks)

import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import type { Interval } from '../../units/interval.ts'
import { ends, exists, largest, sizeOf } from '../../units/interval.ts'
import type statement from './statement.ts'
import type { Say } from '../../units/say.ts'
import type { Unit } from '../../units/units.ts'

type Context = RemarkContext<typeof statement>
type Value = number | Interval

/** Two readings of a bathroom scale that shows half kilograms can differ by 1 kg with nothing changed [N]. */
const SCALE_NOISE = 9.80665
/** Below this a reading with a rule, ±0.5 mm twice, can't tell the change from none [m]. */
const RULE_NOISE = 1e-3
/** A change of this share of the trail is past the small step that a first ride should check: the trade's usual step at the fork, 5 mm of tube, is 1 %. */
const TRAIL_STEP = 0.02

const DEPTH = ['higher', 'deeper'] as const

/** The size of a change that may be a range, and the words for its direction. */
const sized = (say: Say, change: Value, unit: Unit, words: readonly [string, string]): string =>
  say.moved(change, unit, 1, words)

function whatItWas({ by, amount }: Context['input'], moved: Value, say: Say): string {
  const size = say.quantity(Math.abs(amount), 'mm', 1)
  const sunk = `${sized(say, moved, 'mm', DEPTH)} in its travel`
  if (by === 'preload')
    return `The change is ${size} ${amount > 0 ? 'more' : 'less'} fork preload. The front sits ${sunk}; the spring’s rate is what it was.`
  if (by === 'tubes') {
    return `The change is tubes ${size} ${amount > 0 ? 'up' : 'down'} through the yokes. The fork sits ${sunk}: the chassis moved on the fork. On a fork with its thick tubes at the bottom, seal to yoke also reads ${size} ${amount > 0 ? 'less' : 'more'}.`
  }
  if (by === 'shock')
    return `The change is a shock ${size} ${amount > 0 ? 'longer' : 'shorter'}. The back moves by that over the motion ratio, and the geometry at the front follows.`
  return `The change is a front tyre ${size} ${amount > 0 ? 'larger' : 'smaller'} in radius. The axle is that much ${amount > 0 ? 'higher' : 'lower'}; the fork sits ${sunk}.`
}

function loadSentence(change: Value, total: string, say: Say): string {
  const of = `${sized(say, change, 'kg load', ['less', 'more'])} of ${total}`
  if (largest(change) < SCALE_NOISE)
    return `The front tyre carries ${of}: the direction is as the trade says, the size too small for a bathroom scale.`
  return `The front tyre carries ${of}.`
}

/** Every height that a change brings nearer to something it may strike, or to the end of its grip. */
function clearances({ by, amount }: Context['input']): Remark[] {
  const caution = (id: string, text: string): Remark => ({ kind: 'caution', caution: id, text })
  const list: Remark[] = []
  if ((by === 'tubes' && amount > 0) || (by === 'tyre' && amount > 0))
    list.push(
      caution(
        'clearance-at-full-travel',
        'The tyre comes nearer to yokes and radiator at full travel, by the whole amount.',
      ),
    )
  if (by === 'tubes' && amount < 0)
    list.push(
      caution(
        'tubes-gripped-in-both-yokes',
        'Slid down, a tube must still be gripped over the full height of both yokes.',
      ),
    )
  if (by === 'shock' && amount < 0)
    list.push(
      caution(
        'rear-clearance',
        'With a shorter shock the rear tyre comes nearer to the bike at full travel.',
      ),
    )
  const lowers = by === 'tubes' ? amount > 0 : amount < 0
  if (lowers)
    list.push(
      caution(
        'ground-clearance-when-lowered',
        'Lower, the bike touches down at less lean than before.',
      ),
    )
  return list
}

function cautions(input: Context['input'], trailChange: Value, say: Say): Remark[] {
  const list: Remark[] = []
  if (largest(trailChange) >= TRAIL_STEP) {
    const [low] = ends(trailChange) ?? [0]
    const text = `This changes trail by ${say.span(sizeOf(trailChange), '%', 1)}, more than one small step (${say.quantity(TRAIL_STEP, '%', 0)}: common practice, no published source). Halve it, ride slowly, then decide.`
    list.push({
      kind: 'caution',
      caution: low < 0 ? 'change-of-geometry-and-speed' : 'small-steps-only',
      text,
    })
  }
  list.push(...clearances(input))
  if (input.by === 'shock')
    list.push(
      {
        kind: 'caution',
        caution: 'chain-slack-after-rear-change',
        text: 'Check the chain’s slack after the height has changed.',
      },
      {
        kind: 'caution',
        caution: 'stand-angle-after-height-change',
        text: 'The side stand now leans the bike at a different angle.',
      },
    )
  return list
}

/** What a change of height means, from the results before and after. */
function remarks(context: Context): readonly Remark[] {
  const { input, output, before, change, changeShare, say } = context
  const list: Remark[] = []
  const span = (value: Context['output']['trail']): string =>
    exists(value) ? say.span(value, 'mm', 1) : ''
  if (before && input.amount !== 0) {
    // the two wheels share one total, which no height changes
    const total = say.quantity(
      (ends(output.frontLoad)?.[0] ?? 0) + (ends(output.rearLoad)?.[1] ?? 0),
      'kg load',
      0,
    )
    const trail = changeShare.trail ?? 0
    const moved = change.frontTravel ?? 0
    list.push({
      kind: 'reading',
      text: `Trail is ${sized(say, trail, '%', ['shorter', 'longer'])}. ${loadSentence(change.frontLoad ?? 0, total, say)}`,
    })
    list.push({ kind: 'reading', text: whatItWas(input, moved, say) })
    list.push(
      nextStep(input.by, moved, span(output.exposedTube), say),
      ...cautions(input, trail, say),
    )
  } else {
    list.push({
      kind: 'reading',
      text: `The bike is on its mark: ${span(output.exposedTube)} of tube in sight, trail ${span(output.trail)}.`,
    })
  }
  if ((ends(output.frontTravel)?.[0] ?? 1) <= 0) {
    list.push({
      kind: 'limit',
      text: 'The fork is on its top stop. More preload lifts nothing from here: it only raises the load that the fork needs to move.',
    })
  }
  return list
}

function nextStep(by: Context['input']['by'], moved: Value, exposed: string, say: Say): Remark {
  if (largest(moved) < RULE_NOISE) {
    const also =
      by === 'shock'
        ? 'from the rear axle straight up to the tail, wheel hanging and standing'
        : 'the height of the bars above the ground as well'
    return {
      kind: 'next',
      text: `At the mark the tube moves ${say.quantity(largest(moved), 'mm', 1)}, less than a rule can tell. Measure ${also}.`,
    }
  }
  return {
    kind: 'next',
    text: `Measure the exposed tube after the change. The calculation expects ${exposed}, give or take the friction band.`,
  }
}

export default defineRemarks<typeof statement>(remarks)

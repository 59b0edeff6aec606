import type { Remark, RemarkContext } from './define.ts'
import type { inputs, outputs } from './ride-height.fields.ts'
import type { Say } from './say.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>

/** Two readings of a bathroom scale that shows half kilograms can differ by 1 kg with nothing changed [N]. */
const SCALE_NOISE = 9.80665
/** Below this a reading with a rule, ±0.5 mm twice, can't tell the change from none [m]. */
const RULE_NOISE = 1e-3
/** A change of this share of the trail is past the small step that a first ride should check: the trade's usual step at the fork, 5 mm of tube, is 1 %. */
const TRAIL_STEP = 0.02

const number = (value: unknown): number => (typeof value === 'number' ? value : 0)

function whatItWas({ by, amount }: Context['input'], moved: number, say: Say): string {
  const size = say.quantity(Math.abs(amount), 'mm', 1)
  const sunk = `${say.quantity(Math.abs(moved), 'mm', 1)} ${moved < 0 ? 'higher' : 'deeper'} in its travel`
  if (by === 'preload') return `The change is ${size} ${amount > 0 ? 'more' : 'less'} fork preload. The front stands ${sunk}; the spring’s rate is what it was.`
  if (by === 'tubes') {
    return `The change is tubes ${size} ${amount > 0 ? 'up' : 'down'} through the yokes. The fork stands ${sunk}: the chassis moved on the fork. On a fork with its thick tubes at the bottom, seal to yoke also reads ${size} ${amount > 0 ? 'less' : 'more'}.`
  }
  if (by === 'shock')
    return `The change is a shock ${size} ${amount > 0 ? 'longer' : 'shorter'}. The back moves by that over the motion ratio, and the geometry at the front follows.`
  return `The change is a front tyre ${size} ${amount > 0 ? 'larger' : 'smaller'} in radius. The axle stands that much ${amount > 0 ? 'higher' : 'lower'}; the fork stands ${sunk}.`
}

function loadSentence(change: number, total: number, say: Say): string {
  const size = say.quantity(Math.abs(change), 'kg load', 1)
  const of = `${size} ${change < 0 ? 'less' : 'more'} of ${say.quantity(total, 'kg load', 0)}`
  if (Math.abs(change) < SCALE_NOISE) return `The front tyre carries ${of}: the direction is as the trade says, the size too small for a bathroom scale.`
  return `The front tyre carries ${of}.`
}

function cautions(input: Context['input'], trailChange: number, say: Say): Remark[] {
  const list: Remark[] = []
  if (Math.abs(trailChange) >= TRAIL_STEP) {
    const text = `This changes trail by ${say.quantity(Math.abs(trailChange), '%', 1)}, more than one small step. Halve it, ride slowly, then decide.`
    list.push({ kind: 'caution', caution: trailChange < 0 ? 'change-of-geometry-and-speed' : 'small-steps-only', text })
  }
  const nearer = (input.by === 'tubes' && input.amount > 0) || (input.by === 'tyre' && input.amount > 0)
  if (nearer)
    list.push({
      kind: 'caution',
      caution: 'clearance-at-full-travel',
      text: 'The tyre comes nearer to yokes and radiator at full travel, by the whole amount.',
    })
  if (input.by === 'shock')
    list.push(
      { kind: 'caution', caution: 'chain-slack-after-rear-change', text: 'Check the chain’s slack after the height has changed.' },
      { kind: 'caution', caution: 'stand-angle-after-height-change', text: 'The stand now leans the bike at a different angle.' },
    )
  return list
}

/** What a change of height means, from the results before and after. */
export function remarks({ input, output, before, say }: Context): readonly Remark[] {
  const list: Remark[] = []
  const total = number(output.frontLoad) + number(output.rearLoad)
  if (before && input.amount !== 0) {
    const trail = number(output.trail) / number(before.output.trail) - 1
    const load = number(output.frontLoad) - number(before.output.frontLoad)
    const moved = number(output.frontTravel) - number(before.output.frontTravel)
    const length = `Trail is ${say.quantity(Math.abs(trail), '%', 1)} ${trail < 0 ? 'shorter' : 'longer'}.`
    list.push({ kind: 'reading', text: `${length} ${loadSentence(load, total, say)}` })
    list.push({ kind: 'reading', text: whatItWas(input, moved, say) })
    list.push(nextStep(input.by, moved, number(output.exposedTube), say), ...cautions(input, trail, say))
  } else {
    list.push({
      kind: 'reading',
      text: `The bike stands on its mark: ${say.quantity(number(output.exposedTube), 'mm', 1)} of tube in sight, trail ${say.quantity(number(output.trail), 'mm', 1)}.`,
    })
  }
  if (number(output.frontTravel) <= 0) {
    list.push({
      kind: 'limit',
      text: 'The fork stands on its top stop. More preload lifts nothing from here: it only raises the load that the fork needs to move.',
    })
  }
  return list
}

function nextStep(by: Context['input']['by'], moved: number, exposed: number, say: Say): Remark {
  if (Math.abs(moved) < RULE_NOISE) {
    const also = by === 'shock' ? 'from the rear axle straight up to the tail, wheel hanging and standing' : 'the height of the bars above the ground as well'
    return {
      kind: 'next',
      text: `At the mark the tube moves ${say.quantity(Math.abs(moved), 'mm', 1)}, less than a rule can tell. Measure ${also}.`,
    }
  }
  return {
    kind: 'next',
    text: `Measure the exposed tube after the change. The calculation expects ${say.quantity(exposed, 'mm', 1)}, give or take the friction band.`,
  }
}

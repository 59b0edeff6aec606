import { sagFromMarks } from '../core/index.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { Interval, Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import { measured } from './measured.ts'

/** A band this wide calls for freeing the fork before choosing anything by it: at 18 N/mm it is 90 N each way, half as much again as the 60 N of a fork in order (common practice, no source). */
export const STICKY_BAND = 10e-3

const tube = (label: string, hint: string, low: number, standard: number) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range: [low, 400], step: 0.5, default: standard, procedure: 'measure-front-sag' }) as const

const inputs = {
  extended: tube('Exposed tube, wheel hanging', 'Seal to the edge of the lower yoke, wheel clear of the ground.', 40, 150),
  settledDown: tube('Exposed tube, pushed down and let rise', 'Push down hard, let it come up slowly, read.', 10, 112),
  settledUp: tube('Exposed tube, lifted and let sink', 'Lift, let it sink slowly, read.', 10, 118),
  travel: {
    kind: 'quantity',
    label: 'Full travel',
    quantity: 'length',
    unit: 'mm',
    range: [50, 350],
    step: 1,
    default: 120,
    typical: [110, 140],
    typicalFrom: 'common practice for road bikes, no published source',
  },
  windowLow: {
    kind: 'quantity',
    label: 'Window, from',
    hint: 'With rider on a road bike 25 to 33 %, bike alone 10 to 20 %: common practice, no published source.',
    quantity: 'share',
    unit: '%',
    range: [0, 60],
    step: 1,
    default: 25,
    more: true,
  },
  windowHigh: { kind: 'quantity', label: 'Window, to', quantity: 'share', unit: '%', range: [0, 60], step: 1, default: 33, more: true },
  readingPlusMinus: {
    kind: 'quantity',
    label: 'Each reading is within ±',
    hint: 'A tape against a sitting rider: about 1 mm.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 5],
    step: 0.1,
    default: 1,
    more: true,
  },
} as const

const outputs = {
  sag: { label: 'Sag (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  rests: { label: 'Friction lets it rest from', quantity: 'length', unit: 'mm', digits: 1 },
  frictionBand: { label: 'Friction band (±)', quantity: 'length', unit: 'mm', digits: 1 },
  share: { label: 'Share of travel (±)', quantity: 'share', unit: '%', digits: 0 },
  window: { kind: 'text', label: 'Against the window' },
} as const

function refuseWrongOrder(extended: number, down: number, up: number): void {
  if (up < down)
    throw new InputRefusal('settledUp', 'The reading after lifting must not be below the one after pushing down. Check whether the two were swapped')
  if (extended < up)
    throw new InputRefusal('extended', 'The reading with the wheel hanging must be the longest of the three. Lift the wheel clear and read again')
}

/** Against a window, with what the ± leaves open. */
function against(share: Interval, low: number, high: number): string {
  if (share.low >= low && share.high <= high) return 'inside the window'
  if (share.high < low) return 'less sag than the window'
  if (share.low > high) return 'more sag than the window'
  return 'at an edge of the window: within the ±'
}

type Context = RemarkContext<typeof inputs, typeof outputs>

function readingOf({ output, input, say }: Context): Remark {
  const sag = say.quantity(middle(output.sag) ?? 0, 'mm', 1)
  const share = say.quantity(middle(output.share) ?? 0, '%', 0)
  const window = `${say.number(input.windowLow, '%', 0)} to ${say.quantity(input.windowHigh, '%', 0)}`
  const middleBand = say.quantity(middle(output.frictionBand) ?? 0, 'mm', 1)
  const places: Record<string, string> = { 'inside the window': 'inside', 'less sag than the window': 'less than', 'more sag than the window': 'more than' }
  const verdict = places[output.window ?? '']
  const place = verdict === undefined ? `at an edge of the window of ${window}, closer than the readings can tell` : `${verdict} the window of ${window}`
  return {
    kind: 'reading',
    text: `The bike settles about ${sag} down, ${share} of its travel: ${place}. Friction can hold it anywhere within ${middleBand} of travel.`,
  }
}

export default defineCalculator({
  id: 'sag',
  version: 1,
  title: 'Sag from three readings',
  question: 'Where does it sit?',
  answers: 'How far the bike sinks from full extension, and how sure the reading is.',
  assumes: [
    'The bike stands upright on level ground, tyres cold at their pressures.',
    'With a rider: in riding gear, both feet on the pegs, in the riding posture, held upright by a helper.',
    'Friction is as large going up as going down. The mean of the two readings then cancels it.',
    'Each ± is a limit: the true length lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre squash: a tyre of 180 N/mm under 1.2 kN sits about 6.7 mm lower, and none of it is sag.',
    'Friction that differs up and down. The true balance is then still between the two readings, but not at their mean.',
  ],
  inputs,
  outputs,
  compute({ extended, settledDown, settledUp, travel, windowLow, windowHigh, readingPlusMinus }) {
    refuseWrongOrder(extended, settledDown, settledUp)
    if (windowHigh < windowLow) throw new InputRefusal('windowHigh', 'The window must end at or above where it starts')
    if (extended - (settledDown + settledUp) / 2 > travel)
      throw new InputRefusal('travel', 'Full travel is less than the sag that was read. Check the travel and the readings')
    const { sag, frictionBand, share } = sagFromMarks({ extended, settledDown, settledUp, travel })
    const limits = [readingPlusMinus, readingPlusMinus, readingPlusMinus]
    const reading = measured(([e, d, u]) => e! - (d! + u!) / 2, [extended, settledDown, settledUp], limits)
    const band = measured(([d, u]) => u! - d!, [settledDown, settledUp], limits.slice(1))
    const part = { value: share!, low: reading.low / travel, high: reading.high / travel }
    return {
      sag: { ...reading, value: sag },
      rests: { low: extended - settledUp, high: extended - settledDown },
      frictionBand: { ...band, value: frictionBand },
      share: part,
      window: against(part, windowLow, windowHigh),
    }
  },
  remarks(context) {
    const { input, output, say } = context
    const band = middle(output.frictionBand) ?? 0
    const remarks: Remark[] = [readingOf(context)]
    if (band > STICKY_BAND)
      remarks.push({
        kind: 'next',
        text: `A band of ${say.quantity(band, 'mm', 1)} is wide. Free the fork before you choose a spring or a preload by this figure: a softer spring does not cure friction, it widens the band.`,
      })
    else if (output.window === 'inside the window')
      remarks.push({
        kind: 'next',
        text: 'Write all three readings down, not the sag alone. The right sag does not prove the right spring: many pairs of rate and preload give it. Read the sag of the bike alone too.',
      })
    else remarks.push({ kind: 'next', text: 'Preload moves the bike along its travel, close to a millimetre for a millimetre. Read again after each step.' })
    if (input.readingPlusMinus > 0 && band < 2 * input.readingPlusMinus)
      remarks.push({
        kind: 'limit',
        text: `The band is smaller than two readings within ±${say.quantity(input.readingPlusMinus, 'mm', 1)} can show. Read each three times and use the means.`,
      })
    return remarks
  },
})

import { compareMarks } from '../core/index.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import { measured } from './measured.ts'

/** Past this the legs no longer stand alike: each tube's height in the yokes is set to half a millimetre (common practice, no source). */
export const SIDE_TOLERANCE = 1e-3

/** A bigger band than this is worth curing before anything is judged by a mark: at 18 N/mm it is 90 N of friction each way (60 N is common; no source). */
export const STICKY_BAND = 10e-3

const ON_MARK = 'back on its mark'

/** A nanometre: what a difference of two read lengths may owe to rounding. */
const ROUNDING = 1e-9

const tube = (label: string, standard: number) =>
  ({ kind: 'quantity', label, quantity: 'length', unit: 'mm', range: [10, 400], step: 0.5, default: standard, procedure: 'record-a-baseline' }) as const

const inputs = {
  beforeLeft: tube('Exposed tube before, left', 115),
  beforeRight: tube('Exposed tube before, right', 115),
  afterLeft: tube('Exposed tube after, left', 124),
  afterRight: tube('Exposed tube after, right', 124.5),
  frictionBand: {
    kind: 'quantity',
    label: 'Friction band',
    hint: 'How far apart the reading after pushing down and the one after lifting stand.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 60],
    step: 0.5,
    default: 6,
    more: true,
    typical: [3, 8],
    typicalFrom: 'common practice for road forks, no published source',
    procedure: 'measure-front-sag',
  },
  travel: {
    kind: 'quantity',
    label: 'Full travel',
    quantity: 'length',
    unit: 'mm',
    range: [50, 350],
    step: 1,
    default: 120,
    more: true,
    typical: [110, 140],
    typicalFrom: 'common practice for road bikes, no published source',
  },
  readingPlusMinus: {
    kind: 'quantity',
    label: 'Each reading is within ±',
    hint: 'A steel rule read with care: about 0.5 mm.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 5],
    step: 0.1,
    default: 0.5,
    more: true,
  },
} as const

const outputs = {
  heightChange: { label: 'Change of height (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  onMark: { kind: 'text', label: 'Against its mark', lead: true },
  share: { label: 'Share of full travel', quantity: 'share', unit: '%', digits: 1, signed: true },
  sideDifference: { label: 'Left less right, after (±)', quantity: 'length', unit: 'mm', digits: 1 },
  sideBefore: { label: 'Left less right, before (±)', quantity: 'length', unit: 'mm', digits: 1, more: true },
  leftChange: { label: 'Change, left leg', quantity: 'length', unit: 'mm', digits: 1, signed: true, more: true },
  rightChange: { label: 'Change, right leg', quantity: 'length', unit: 'mm', digits: 1, signed: true, more: true },
} as const

type Context = RemarkContext<typeof inputs, typeof outputs>

function readingOf({ input, output, say }: Context): Remark {
  const change = middle(output.heightChange) ?? 0
  const size = say.quantity(Math.abs(change), 'mm', 1)
  const band = say.quantity(input.frictionBand, 'mm', 1)
  if (output.onMark === ON_MARK) {
    return {
      kind: 'reading',
      text: `Back on its mark, as far as these readings can tell: the height differs by ${size}, and friction alone can hold the bike anywhere within ${band}.`,
    }
  }
  return {
    kind: 'reading',
    text: `The front sits ${size} ${change > 0 ? 'higher' : 'lower'} than its mark. That is more than the ${band} that friction alone can hold, so something has moved it.`,
  }
}

function sidesOf({ output, say }: Context): Remark[] {
  const difference = middle(output.sideDifference) ?? 0
  if (Math.abs(difference) <= SIDE_TOLERANCE + ROUNDING) return []
  const before = middle(output.sideBefore) ?? 0
  const size = say.quantity(Math.abs(difference), 'mm', 1)
  const same = Math.abs(difference - before) <= SIDE_TOLERANCE + ROUNDING
  const text = same
    ? `The two legs differ by ${size}, as they did before. One axle joins them, so either the tubes stand unequal in the yokes or the readings were not taken from like edges.`
    : `The two legs now differ by ${size}. One axle joins them: a tube has moved in the yokes, or the axle clamp was tightened on a twisted leg.`
  return [
    { kind: 'next', text },
    { kind: 'caution', caution: 'unequal-legs', text: 'A fork whose legs stand unequal can bind and steer to one side.' },
  ]
}

export default defineCalculator({
  id: 'marks',
  version: 1,
  title: 'Against the mark',
  question: 'Where did it stand?',
  answers: 'How far the front has moved from the height you marked, and whether friction alone could explain it.',
  assumes: [
    'Lengths run from the seal to the lower yoke, so that a tube that slips in the yokes shows. On an upside-down fork they run from the seal to the axle clamp, and it does not: measure tube above the upper yoke as well.',
    'Both times the bike stood the same way: upright, same load, same fuel, same tyre pressures.',
    'Both times the fork settled the same way, for instance pushed down and let rise.',
    'Each ± is a limit: the true length lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre pressure: 0.2 bar less lets a loaded tyre sit about 1 mm lower, and the marks on the fork cannot show it.',
    'What the rear did. A front that sits 6 mm higher also tips the bike back by about a quarter of a degree.',
  ],
  inputs,
  outputs,
  compute({ beforeLeft, beforeRight, afterLeft, afterRight, frictionBand, travel, readingPlusMinus }) {
    const mean = (left: number, right: number): number => (left + right) / 2
    const marks = { before: mean(beforeLeft, beforeRight), after: mean(afterLeft, afterRight), frictionBand }
    if (Math.abs(marks.after - marks.before) > travel)
      throw new InputRefusal('travel', 'Full travel is less than the change between the marks. Check the readings and the travel')
    const { change, share, withinBand } = compareMarks({ ...marks, travel })
    const limits = [readingPlusMinus, readingPlusMinus, readingPlusMinus, readingPlusMinus]
    const heightChange = measured(([bl, br, al, ar]) => mean(al!, ar!) - mean(bl!, br!), [beforeLeft, beforeRight, afterLeft, afterRight], limits)
    const differ = (left: number, right: number) => measured(([l, r]) => l! - r!, [left, right], limits.slice(2))
    return {
      heightChange: { ...heightChange, value: change },
      onMark: withinBand ? ON_MARK : change > 0 ? 'higher than its mark' : 'lower than its mark',
      share: share ?? null,
      sideDifference: differ(afterLeft, afterRight),
      sideBefore: differ(beforeLeft, beforeRight),
      leftChange: compareMarks({ before: beforeLeft, after: afterLeft, frictionBand }).change,
      rightChange: compareMarks({ before: beforeRight, after: afterRight, frictionBand }).change,
    }
  },
  remarks(context) {
    const { input, output, say } = context
    const remarks: Remark[] = [readingOf(context), ...sidesOf(context)]
    if (input.frictionBand > STICKY_BAND)
      remarks.push({
        kind: 'next',
        text: `A band of ${say.quantity(input.frictionBand, 'mm', 1)} hides small changes. Free the fork first, then read the marks again.`,
      })
    else if (output.onMark === ON_MARK)
      remarks.push({
        kind: 'next',
        text: 'To see finer, push down, let rise and read; lift, let sink and read; then use the mean of the two. Friction then drops out, and only the error of the readings is left.',
      })
    else remarks.push({ kind: 'next', text: 'Take this change to the ride-height calculator. It tells what the geometry did.' })
    return remarks
  },
})

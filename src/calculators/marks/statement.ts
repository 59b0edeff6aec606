import { defineStatement } from '../../machine/statement.ts'
import { fullTravelOrTypical, readingWithin } from '../../machine/inputs/fork.ts'

const tube = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'length',
    unit: 'mm',
    range: [10, 400],
    step: 0.5,
    default: standard,
    procedure: 'record-a-baseline',
  }) as const

const inputs = {
  beforeLeft: tube('Exposed tube before, left', 115),
  beforeRight: tube('Exposed tube before, right', 115),
  afterLeft: tube('Exposed tube after, left', 124),
  afterRight: tube('Exposed tube after, right', 124.5),
  settled: {
    kind: 'choice',
    label: 'How did you settle it?',
    hint: 'Friction holds a fork a little deep after a push and a little high after a lift. Settled the same way, both readings are off by as much.',
    options: {
      same: 'the same way before and after',
      means: 'both ways each time, and the means entered',
      different: 'one way before, the other way after, or I don’t know',
    },
    default: 'same',
    more: true,
  },
  spread: {
    kind: 'quantity',
    label: 'Repeats differ by',
    hint: 'Of three readings settled alike, the longest less the shortest. Their mean goes in the boxes above.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 20],
    step: 0.5,
    default: 1,
    more: true,
    when: { settled: ['same', 'means'] },
    procedure: 'record-a-baseline',
  },
  frictionBand: {
    kind: 'quantity',
    label: 'Friction band',
    hint: 'The reading after a lift less the one after a push down.',
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
  travel: { ...fullTravelOrTypical, more: true },
  readingPlusMinus: readingWithin('A steel rule read with care: about 0.5 mm.', 0.5),
} as const

const outputs = {
  heightChange: {
    label: 'Change of height (± covers about 95 %)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  onMark: {
    kind: 'choice',
    label: 'Against its mark',
    lead: true,
    options: {
      'on-mark': 'back on its mark',
      higher: 'higher than its mark',
      lower: 'lower than its mark',
      friction: 'no more than friction alone can make',
      edge: 'about as much as friction alone can make',
    },
  },
  share: { label: 'Share of full travel', quantity: 'share', unit: '%', digits: 1, signed: true },
  against: {
    label: 'What it has to exceed to be real',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  sideDifference: {
    label: 'Left less right, after (±)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
  },
  sideBefore: {
    label: 'Left less right, before (±)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  leftChange: {
    label: 'Change, left leg',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    signed: true,
    more: true,
  },
  rightChange: {
    label: 'Change, right leg',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    signed: true,
    more: true,
  },
} as const

export default defineStatement({
  id: 'marks',
  order: 10,
  version: 2,
  // links of version 1 do not say how the fork was settled, and were judged by the friction band: so they still are
  earlier: {
    1: {
      given: { settled: 'different' },
      told: 'This link is from an earlier edition, which judged every change by the friction band. Say under “More values” how the fork was settled',
    },
  },
  title: 'Against the mark',
  question: 'Where did it stand?',
  answers:
    'How far the front has moved from the height you marked, and whether friction alone could explain it.',
  assumes: [
    'Lengths run from the seal to the lower yoke, so that a tube that slips in the yokes shows. On an upside-down fork they run from the seal to the axle clamp, and it does not: measure tube above the upper yoke as well.',
    'Both times the bike stood the same way: upright, same load, same fuel, same tyre pressures.',
    'Each ± is a limit: the true length lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
    'Settled alike, a height is the mean of three readings, and its ± comes from how far they lie apart: their spread over 1.69 is the deviation of one (the factor for three readings, from memory), with Student’s factor for four degrees of freedom.',
  ],
  leavesOut: [
    'Tyre pressure: 0.2 bar less lets a loaded tyre sit about 1 mm lower, and the marks on the fork cannot show it.',
    'Friction that changed because the fork was undone meanwhile. Readings taken after a push then move by the change over the rate: 20 N is about 1 mm at 18 N/mm.',
    'What the rear did. A front that sits 6 mm higher also tips the bike back by about a quarter of a degree.',
  ],
  inputs,
  outputs,
})

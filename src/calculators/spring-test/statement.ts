import { defineStatement } from '../../machine/statement.ts'

const inputs = {
  rows: {
    kind: 'table',
    label: 'Readings',
    hint: 'Type them, or paste two columns: length, then force.',
    procedure: 'test-a-spring',
    rows: [2, 60],
    columns: [
      { id: 'length', label: 'Length', quantity: 'length', unit: 'mm', range: [5, 700] },
      { id: 'force', label: 'Force', quantity: 'force', unit: 'N', range: [0, 20000] },
    ],
    default: [
      [330, 172],
      [310, 357],
      [290, 533],
      [270, 716],
      [250, 893],
      [230, 1080],
    ],
  },
  fit: {
    kind: 'choice',
    label: 'Look for',
    options: { line: 'one rate', two: 'two rates' },
    default: 'line',
  },
  freeLength: {
    kind: 'quantity',
    label: 'Free length',
    hint: 'Standing free. Two rates need it; one rate finds it for itself.',
    quantity: 'length',
    unit: 'mm',
    range: [10, 700],
    step: 0.5,
    default: 350,
    when: { fit: 'two' },
  },
  lengthPlusMinus: {
    kind: 'quantity',
    label: 'Each length is within ±',
    quantity: 'length',
    unit: 'mm',
    range: [0, 5],
    step: 0.1,
    default: 0.5,
    more: true,
  },
  forcePlusMinus: {
    kind: 'quantity',
    label: 'Each force is within ±',
    quantity: 'force',
    unit: 'N',
    range: [0, 200],
    step: 1,
    default: 5,
    more: true,
  },
} as const

const outputs = {
  rate: {
    label: 'Rate (± covers about 95 %)',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 2,
    lead: true,
  },
  within: { label: 'Its ± as a share', quantity: 'share', unit: '%', digits: 1 },
  secondRate: {
    label: 'Rate once the close coils touch',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 2,
  },
  closesAt: { label: 'Close coils touch after', quantity: 'length', unit: 'mm', digits: 0 },
  kind: {
    kind: 'choice',
    label: 'What the readings show',
    lead: true,
    options: {
      'one-slope': 'one slope, and no word on its error',
      'one-rate': 'one rate',
      'two-rates': 'two rates',
      'too-few': 'too few readings to look for two rates',
      'no-reason': 'no reason for two rates',
    },
  },
  rateError: { label: 'Standard error of the rate', quantity: 'rate', unit: 'N/mm', digits: 3 },
  scatter: { label: 'Scatter of a reading about the fit', quantity: 'force', unit: 'N', digits: 1 },
  worst: {
    label: 'Largest miss',
    quantity: 'force',
    unit: 'N',
    digits: 1,
    signed: true,
    more: true,
  },
  foundLength: {
    label: 'Length at which the line reaches no force',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  rSquared: { label: 'r²', quantity: 'ratio', unit: '', digits: 5, more: true },
  misses: {
    kind: 'table',
    label: 'Each reading against the fit',
    columns: [
      { id: 'length', label: 'Length', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'force', label: 'Force', quantity: 'force', unit: 'N', digits: 0 },
      { id: 'miss', label: 'Misses the fit by', quantity: 'force', unit: 'N', digits: 1 },
    ],
  },
} as const

export default defineStatement({
  id: 'spring-test',
  order: 30,
  version: 1,
  title: 'Spring test',
  question: 'Which spring?',
  answers:
    'What rate a set of force readings gives, how sure it is, and whether the spring has one rate or two.',
  assumes: [
    'The spring stands straight between flat plates, and the first stretch that seats its ends was left out.',
    'The readings were taken going one way.',
    'One rate: a straight line by least squares. Its ± is Student’s factor times the standard error, and never less than what the ± of the readings allows (JCGM 100).',
    'Two rates: each force starts from no force at the free length, and the second rate is kept only where an F test at 5 % asks for it.',
  ],
  leavesOut: [
    'Rubbing on the guide rod, which reads as force one way and as less of it the other.',
    'A scale that is wrong throughout by the same share: the rate is wrong by that share, and no scatter shows it.',
  ],
  inputs,
  outputs,
})

import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'Six millimetres up, just past a band of 5 mm',
    given: {
      beforeLeft: 115,
      beforeRight: 115,
      afterLeft: 121,
      afterRight: 121.5,
      frictionBand: 5,
      travel: 120,
      readingPlusMinus: 0,
    },
    expect: {
      heightChange: { value: 6.25, tolerance: 1e-9 },
      share: { value: 5.208333333, tolerance: 1e-6 },
      sideDifference: { value: -0.5, tolerance: 1e-9 },
    },
    core: ['compareMarks', 'shareOf'],
    working:
      'Worked by hand. Mean before (115 + 115)/2 = 115; mean after (121 + 121.5)/2 = 121.25; change 6.25 mm; 6.25/120 = 5.208 %. Left less right: 121 − 121.5 = −0.5 mm.',
  },
  {
    title: 'A lower front, the sides apart',
    given: {
      beforeLeft: 118,
      beforeRight: 117,
      afterLeft: 110,
      afterRight: 107,
      frictionBand: 4,
      travel: 150,
      readingPlusMinus: 0,
    },
    expect: {
      heightChange: { value: -9, tolerance: 1e-9 },
      share: { value: -6, tolerance: 1e-9 },
      leftChange: { value: -8, tolerance: 1e-9 },
      rightChange: { value: -10, tolerance: 1e-9 },
      sideBefore: { value: 1, tolerance: 1e-9 },
    },
    working:
      'Worked by hand. Left 110 − 118 = −8, right 107 − 117 = −10, mean −9 mm; −9/150 = −6 %. Before, left less right is 118 − 117 = 1 mm.',
  },
  {
    title: 'What a band of 5 mm has to be exceeded by',
    given: {
      beforeLeft: 115,
      beforeRight: 115,
      afterLeft: 121,
      afterRight: 121.5,
      settled: 'different',
      frictionBand: 5,
      travel: 120,
      readingPlusMinus: 0.5,
    },
    expect: {
      against: { value: 5, tolerance: 1e-9 },
      'heightChange.low': { value: 5.684, tolerance: 0.001 },
      'heightChange.high': { value: 6.816, tolerance: 0.001 },
    },
    working:
      'Worked by hand. Settled in different ways, a change is real past the whole band, 5 mm. Four readings within ±0.5 mm, each 0.5/√3 = 0.2887 mm, each with weight ½: √(4 × ¼) × 0.2887 = 0.2887; × 1.96 = 0.566. 6.25 − 0.566 = 5.684, 6.25 + 0.566 = 6.816.',
  },
]

export default checks

import type { WorkedCase } from '../../machine/worked.ts'

/** Cases worked by hand, in the definition's units. */
const checks: readonly WorkedCase[] = [
  {
    title: 'Five readings on a line but one',
    given: {
      rows: [
        [100, 0],
        [90, 100],
        [80, 200],
        [70, 310],
        [60, 400],
      ],
      fit: 'line',
      lengthPlusMinus: 0,
      forcePlusMinus: 0,
    },
    expect: {
      rate: { value: 10.1, tolerance: 1e-9 },
      rateError: { value: 0.15275, tolerance: 1e-4 },
      scatter: { value: 4.8305, tolerance: 1e-3 },
      within: { value: 4.813, tolerance: 0.002 },
      worst: { value: 7, tolerance: 1e-6 },
      foundLength: { value: 100, tolerance: 1e-6 },
      rSquared: { value: 0.999314, tolerance: 1e-6 },
      'misses.0.2': { value: 0, tolerance: 1e-6 },
      'misses.1.2': { value: -1, tolerance: 1e-6 },
      'misses.2.2': { value: -2, tolerance: 1e-6 },
      'misses.3.2': { value: 7, tolerance: 1e-6 },
      'misses.4.2': { value: -4, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. Mean length 80, mean force 202. Σ(x − 80)² = 1000; Σ(x − 80)(F − 202) = 20(−202) + 10(−102) + 0 − 10(108) − 20(198) = −10 100; slope −10.1. So 10.1 N/mm. The line misses by 0, −1, −2, 7, −4 N, squares 70: √(70/3) = 4.830 N of scatter. Error of the slope 4.830/√1000 = 0.1527 N/mm; Student’s t for 3 degrees of freedom is 3.182, so ±0.486 N/mm, 4.81 % of 10.1. No force at 80 + 202/10.1 = 100 mm. Squares about the mean force: 202² + 102² + 2² + 108² + 198² = 102 080, so r² = 1 − 70/102 080 = 0.999314.',
  },
  {
    title: 'Two rates that meet after 40 mm',
    given: {
      rows: [
        [290, 80],
        [280, 160],
        [270, 240],
        [260, 320],
        [250, 440],
        [240, 560],
        [230, 680],
      ],
      fit: 'two',
      freeLength: 300,
    },
    expect: {
      rate: { value: 8, tolerance: 1e-6 },
      secondRate: { value: 12, tolerance: 1e-6 },
      closesAt: { value: 40, tolerance: 1e-6 },
    },
    core: ['fitProgressive'],
    working:
      'Worked by hand. Up to 40 mm of squeeze 80 N for each 10 mm, 8 N/mm; beyond, 120 N for each 10 mm, 12 N/mm.',
  },
]

export default checks

import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'A rider on a road bike',
    given: { extended: 150, settledDown: 112, settledUp: 118, travel: 120, readingPlusMinus: 0 },
    expect: {
      sag: { value: 35, tolerance: 1e-9 },
      frictionBand: { value: 6, tolerance: 1e-9 },
      'rests.low': { value: 32, tolerance: 1e-9 },
      'rests.high': { value: 38, tolerance: 1e-9 },
      share: { value: 29.166666667, tolerance: 1e-6 },
    },
    core: ['sagFromMarks', 'shareOf'],
    working:
      'Worked by hand. Mean of 112 and 118 is 115; 150 − 115 = 35 mm; 118 − 112 = 6 mm; it rests anywhere from 150 − 118 = 32 to 150 − 112 = 38 mm; 35/120 = 29.17 %.',
  },
  {
    title: 'What ±1 mm in each reading makes of it',
    given: { extended: 150, settledDown: 112, settledUp: 118, travel: 120, readingPlusMinus: 1 },
    expect: {
      sag: { value: 35, tolerance: 1e-9 },
      'sag.low': { value: 33.614, tolerance: 0.001 },
      'sag.high': { value: 36.386, tolerance: 0.001 },
    },
    working:
      'Worked by hand (JCGM 100, 4.3.7 and 5.1.2). One reading within ±1 mm: 1/√3 = 0.577 mm. Sag is e − (d + u)/2: 0.577·√(1 + ¼ + ¼) = 0.707 mm; times 1.96 is ±1.386 mm: 33.614 to 36.386.',
  },
  {
    title: 'The bike alone',
    given: { extended: 140, settledDown: 119, settledUp: 126.4, travel: 130, readingPlusMinus: 0 },
    expect: {
      sag: { value: 17.3, tolerance: 1e-9 },
      frictionBand: { value: 7.4, tolerance: 1e-9 },
      share: { value: 13.307692308, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. (119 + 126.4)/2 = 122.7; 140 − 122.7 = 17.3 mm; 126.4 − 119 = 7.4 mm; 17.3/130 = 13.31 %.',
  },
]

export default checks

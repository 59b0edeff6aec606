import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'Five points of an 80 kg rider',
    given: { bike: 'middleweight-roadster', riderMass: 80 },
    expect: { spread: { value: 3.7, tolerance: 0.1 }, forkLoad: { value: 971, tolerance: 8 } },
    working:
      'Worked by hand, before the bike settles: the front carries 0.49 × 280 kg, of which 28 kg are unsprung: 109.2 kg × 9.81 × cos 25° = 971 N. Five points of 80 kg are 4 kg, or 35.6 N along the fork: 35.6 ÷ 971 = 3.7 %. The settled bike stands a fraction steeper, which the tolerances allow for.',
  },
  {
    title: 'A quarter more rider is not a quarter more fork',
    given: { bike: 'middleweight-roadster', riderMass: 100 },
    expect: { forkLoad: { value: 1054, tolerance: 8 }, spread: { value: 4.2, tolerance: 0.1 } },
    working:
      'Worked by hand: 20 kg × 0.465 × 9.81 × cos 25° = 83 N more on 971 N, 8.5 %. Five points of 100 kg are 5 kg, 44.5 N: 44.5 ÷ 1,054 = 4.2 %.',
  },
]

export default checks

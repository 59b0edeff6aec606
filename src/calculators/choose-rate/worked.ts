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
  {
    title: 'Static sag and preload alone choose, and the braking does not',
    given: {
      bike: 'middleweight-roadster',
      riderMass: 80,
      deceleration: 0.3,
      rates: [[8], [9], [10], [11]],
      staticLow: 15,
      staticHigh: 18,
      unused: 60,
      stiffest: 5,
    },
    expect: {
      candidates: { value: 10, tolerance: 0.001 },
      'candidates.low': { value: 9, tolerance: 0.001 },
      'candidates.high': { value: 11, tolerance: 0.001 },
      gentler: { value: 9, tolerance: 0.001 },
      harder: { value: 9, tolerance: 0.001 },
      fittedRate: { value: 9, tolerance: 1e-6 },
      spreadRate: { value: 0.365, tolerance: 0.005 },
    },
    working:
      'Worked by hand. At 35.2 mm with the rider the springs carry 904 N, whatever their rate: 8 N/mm a leg takes 904/16 − 35.2 = 21.3 mm of preload, 9 takes 15.0, 10 takes 10.0 and 11 takes 5.9. The bike alone puts 640 N on the fork. At 16 mm, and again at 22, the air gives 28 and 40 N: static sag is (640 − 28)/16 − 21.3 = 16.9, (640 − 33)/18 − 15 = 18.7, (640 − 36)/20 − 10 = 20.2 and (640 − 39)/22 − 5.9 = 21.4 mm, or 14.1, 15.6, 16.8 and 17.8 % of 120: from 9 to 11 they are between 15 and 18 %. Five points of 80 kg are 35.6 N along a fork that carries 974: 3.65 %, which is 0.365 of the 10 N/mm in the middle.',
  },
]

export default checks

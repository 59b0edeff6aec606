import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'Divide by the leverage twice',
    given: {
      springRate: 90,
      ratioAs: 'leverage',
      leverage: 2.3,
      preload: 11,
      turns: 0,
      gasForce: 0,
      linkage: 'constant',
    },
    expect: { wheelRate: { value: 17.01, tolerance: 0.005 } },
    working: 'Worked by hand: 90 ÷ 2.3² = 90 ÷ 5.29 = 17.01 N/mm. Once for force, once for travel.',
  },
  {
    title: 'Sag from two scale readings',
    given: {
      springRate: 90,
      ratioAs: 'motion',
      motionRatio: 0.435,
      preload: 11,
      turns: 0,
      gasForce: 185,
      staticLoad: 100,
      riderLoad: 143,
      unsprungMass: 24,
      linkage: 'constant',
    },
    expect: {
      staticSag: { value: 13.75, tolerance: 0.02 },
      riderSag: { value: 38.51, tolerance: 0.02 },
    },
    working:
      'Worked by hand: wheel rate 90 × 0.435² = 17.03 N/mm. At full extension the wheel carries (90 × 11 + 185) × 0.435 = 511.1 N. Bike alone (100 − 24) × 9.80665 = 745.3 N, so 234.2 ÷ 17.03 = 13.75 mm; with the rider 1,167.0 N, so 655.9 ÷ 17.03 = 38.51 mm.',
  },
  {
    title: 'A turn of the collar is its pitch times the leverage',
    given: {
      springRate: 90,
      motionRatio: 0.435,
      preload: 11,
      turns: 0,
      pitch: 1.5,
      linkage: 'constant',
    },
    expect: { heightPerTurn: { value: 3.448, tolerance: 0.001 } },
    working:
      'Worked by hand: 1.5 mm ÷ 0.435 = 3.448 mm at the axle, since the spring’s length under the same load does not change.',
  },
  {
    title: 'Two shocks near the axle',
    given: {
      springRate: 16,
      motionRatio: 0.9,
      preload: 7,
      turns: 0,
      gasForce: 0,
      shocks: 'two',
      staticLoad: 70.4,
      riderLoad: 105,
      unsprungMass: 19,
      travel: 100,
      linkage: 'constant',
    },
    expect: { wheelRate: { value: 25.92, tolerance: 0.005 } },
    working: 'Worked by hand: 2 × 16 × 0.9² = 25.92 N/mm.',
  },
]

export default checks

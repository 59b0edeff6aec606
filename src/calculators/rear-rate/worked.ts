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
      share: { value: 29.63, tolerance: 0.02 },
      preloadNow: { value: 11, tolerance: 1e-9 },
      rateExtended: { value: 17.03, tolerance: 0.001 },
      rateFull: { value: 17.03, tolerance: 0.001 },
      fullForce: { value: 2725, tolerance: 0.2 },
    },
    working:
      'Worked by hand: wheel rate 90 × 0.435² = 17.03 N/mm. At full extension the wheel carries (90 × 11 + 185) × 0.435 = 511.1 N. Bike alone (100 − 24) × 9.80665 = 745.3 N, so 234.2 ÷ 17.03 = 13.75 mm; with the rider 1,167.0 N, so 655.9 ÷ 17.03 = 38.51 mm, 29.63 % of 130. With a constant ratio the rate is the same all the way, and at full travel the wheel carries 511.1 + 17.030 × 130 = 2725.0 N.',
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
  {
    title: 'A ratio that grows from 0.40 to 0.50, and two turns of the collar',
    given: {
      springRate: 100,
      ratioAs: 'motion',
      motionRatio: 0.4,
      endRatio: 0.5,
      linkage: 'line',
      preload: 10,
      turns: 2,
      pitch: 1.5,
      gasForce: 0,
      travel: 120,
    },
    expect: {
      preloadNow: { value: 13, tolerance: 1e-9 },
      rateExtended: { value: 17.08, tolerance: 0.005 },
      rateFull: { value: 30.58, tolerance: 0.005 },
      fullForce: { value: 3350, tolerance: 0.1 },
    },
    working:
      'Worked by hand. 10 + 2 × 1.5 = 13 mm of preload. The ratio grows by 0.1/120 = 0.000833 for each millimetre. The wheel’s rate is rate × ratio² and spring force × that slope: extended 100 × 0.16 + 1300 × 0.000833 = 17.08 N/mm. The stroke to full travel is 0.45 × 120 = 54 mm, so the spring pushes 100 × 67 = 6700 N: 0.5 × 6700 = 3350 N at the wheel, and 100 × 0.25 + 6700 × 0.000833 = 30.58 N/mm.',
  },
]

export default checks

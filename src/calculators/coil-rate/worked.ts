import type { WorkedCase } from '../../machine/worked.ts'

/** Cases worked by hand, in the definition's units. */
const checks: readonly WorkedCase[] = [
  {
    title: 'A fork spring of 38 working coils',
    given: {
      wireDiameter: 4.5,
      outerDiameter: 27.5,
      totalCoils: 40,
      freeLength: 350,
      deflection: 135,
      material: 'drawn',
      ends: 'closedGround',
      deadCoils: 2,
      wirePlusMinus: 0.05,
    },
    expect: {
      rate: { value: 9.0355, tolerance: 5e-4 },
      solid: { value: 180, tolerance: 1e-9 },
      margin: { value: 35, tolerance: 1e-9 },
      wireShare: { value: 5.0966, tolerance: 1e-3 },
      force: { value: 1219.8, tolerance: 0.1 },
      activeCoils: { value: 38, tolerance: 1e-9 },
      leastGap: { value: 23.8, tolerance: 0.01 },
      outerShare: { value: 1.3043, tolerance: 1e-3 },
      coilsShare: { value: 0.6579, tolerance: 1e-3 },
    },
    core: ['leastGaps'],
    working:
      'Worked by hand. D = 27.5 − 4.5 = 23; 81 500 × 4.5⁴/(8 × 23³ × 38) = 81 500 × 410.0625/3 698 768 = 9.0355 N/mm. Solid 40 × 4.5 = 180; 350 − 180 − 135 = 35 mm. The rate goes with d⁴/D³, and with the outside held D loses what d gains: (4 + 3 × 4.5/23) × 0.05/4.5 = 5.10 %. 9.0355 × 135 = 1219.8 N. Of 40 coils 2 are dead: 38 work. The outside moves D³: 3 × 0.1/23 = 1.304 %; a quarter coil of 38 is 0.658 %. Least gap of EN 13906-1, from memory: 38 × (0.0015 × 23²/4.5 + 0.1 × 4.5) = 38 × (0.1763 + 0.45) = 23.80 mm.',
  },
  {
    title: 'The stress in it',
    given: {
      wireDiameter: 4.5,
      outerDiameter: 27.5,
      totalCoils: 40,
      freeLength: 350,
      deflection: 135,
      material: 'drawn',
      deadCoils: 2,
    },
    expect: {
      stress: { value: 1008.7, tolerance: 0.5 },
      index: { value: 5.1111, tolerance: 1e-3 },
    },
    working:
      'Worked by hand. C = 23/4.5 = 5.111; K = (4 × 5.111 + 2)/(4 × 5.111 − 3) = 22.444/17.444 = 1.2866. 8 × 1219.8 × 23/(π × 91.125) = 784.0 MPa; times K 1008.7 MPa.',
  },
  {
    title: 'Cut from 40 coils to 36, it is stiffer, not softer',
    given: {
      wireDiameter: 4.5,
      outerDiameter: 27.5,
      totalCoils: 36,
      freeLength: 350,
      deflection: 135,
      material: 'drawn',
      deadCoils: 2,
    },
    expect: { rate: { value: 10.0985, tolerance: 5e-4 } },
    working:
      'Worked by hand. 34 coils work instead of 38: 9.0355 × 38/34 = 10.0985 N/mm, 11.8 % more.',
  },
]

export default checks

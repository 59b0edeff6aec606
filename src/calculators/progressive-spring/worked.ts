import type { WorkedCase } from '../../machine/worked.ts'

/** Cases worked by hand, in the definition's units. */
const checks: readonly WorkedCase[] = [
  {
    title: 'Two lengths of coils, the close ones shut before the rider sits',
    given: {
      groups: [
        [24, 18],
        [12, 150],
      ],
      preload: 15,
      staticLoad: 640,
      riderLoad: 971,
      brakingLoad: 2200,
      travel: 120,
    },
    expect: {
      staticRate: { value: 16, tolerance: 1e-6 },
      staticTravel: { value: 25, tolerance: 1e-6 },
      riderRate: { value: 24, tolerance: 1e-6 },
      riderTravel: { value: 43.458333333, tolerance: 1e-6 },
      firstClosing: { value: 39, tolerance: 1e-6 },
      closingForce: { value: 864, tolerance: 1e-6 },
    },
    working:
      'Worked by hand, one leg. Together 1/(1/24 + 1/12) = 8 N/mm. The close coils touch at 24 × 18 = 432 N, after 432/8 = 54 mm, so at 39 mm of travel. Bike alone 320/8 − 15 = 25 mm. With rider 485.5 N: 18 + 485.5/12 − 15 = 43.458 mm, on 12 N/mm each, 24 the pair.',
  },
  {
    title: 'More preload under the same load: the same coils closed, at another height',
    given: {
      groups: [
        [24, 18],
        [12, 150],
      ],
      preload: 25,
      staticLoad: 640,
      riderLoad: 971,
      brakingLoad: 2200,
      travel: 120,
    },
    expect: {
      riderRate: { value: 24, tolerance: 1e-6 },
      riderTravel: { value: 33.458333333, tolerance: 1e-6 },
      closingForce: { value: 864, tolerance: 1e-6 },
      firstClosing: { value: 29, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. The force decides which coils are shut, and the load has not changed: 432 N each leg as before. All places move up by the 10 mm of preload.',
  },
  {
    title: 'One length only is a spring of one rate',
    given: { groups: [[9, 200]], preload: 15, riderLoad: 971, travel: 120 },
    expect: {
      riderRate: { value: 18, tolerance: 1e-6 },
      riderTravel: { value: 38.944444444, tolerance: 1e-6 },
      forceAtEnd: { value: 2430, tolerance: 1e-6 },
    },
    working: 'Worked by hand. 971/18 − 15 = 38.944 mm; 18 × 135 = 2430 N.',
  },
]

export default checks

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
  {
    title: 'On the brakes, at the end of travel, and one straight spring in its place',
    given: {
      groups: [
        [24, 15],
        [12, 150],
      ],
      preload: 15,
      staticLoad: 640,
      riderLoad: 971,
      brakingLoad: 2200,
      travel: 120,
    },
    expect: {
      brakingRate: { value: 24, tolerance: 1e-6 },
      brakingTravel: { value: 91.667, tolerance: 0.001 },
      endsAt: { value: 120, tolerance: 1e-6 },
      bindAt: { value: 150, tolerance: 1e-6 },
      sameLinear: { value: 8.7543, tolerance: 1e-4 },
      linearAtEnd: { value: 2363.7, tolerance: 0.1 },
      'closings.0.1': { value: 360, tolerance: 1e-6 },
      'closings.0.2': { value: 30, tolerance: 1e-6 },
      'closings.1.1': { value: 1800, tolerance: 1e-6 },
      'closings.1.2': { value: 150, tolerance: 1e-6 },
    },
    working:
      'Worked by hand, one leg. Together 8 N/mm until the close coils touch at 24 × 15 = 360 N: squeezed by 45 mm, 30 mm of travel. From there 12 N/mm, 24 the pair. Braking 1100 N: 45 + 740/12 = 106.667 mm, less 15 is 91.667. All coils touch at 12 × 150 = 1800 N: 45 + 1440/12 = 165 mm, 150 of travel, so the fork goes its 120. With the rider 485.5 N: 45 + 125.5/12 = 55.458 mm; one rate that is there too is 485.5/55.458 = 8.7543 N/mm, and at the end of travel 2 × 8.7543 × 135 = 2363.7 N.',
  },
]

export default checks

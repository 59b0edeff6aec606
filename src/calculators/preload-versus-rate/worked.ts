import type { WorkedCase } from '../../machine/worked.ts'

/** Cases worked by hand, in the definition's units. */
const checks: readonly WorkedCase[] = [
  {
    title: 'Fifteen millimetres of preload under 971 N',
    given: { rate: 9, preload: 15, load: 971, travel: 120 },
    expect: {
      travelUsed: { value: 38.944444444, tolerance: 1e-6 },
      springForce: { value: 971, tolerance: 1e-6 },
      squeeze: { value: 53.944444444, tolerance: 1e-6 },
      forceAtFullTravel: { value: 2430, tolerance: 1e-6 },
      loadToLeaveTopStop: { value: 270, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. Two legs of 9 N/mm make 18. Squeezed by 971/18 = 53.944 mm, of which 15 are preload: 38.944 mm of travel. At full travel 18 × (15 + 120) = 2430 N. To leave the stop 18 × 15 = 270 N.',
  },
  {
    title: 'Ten millimetres more: the same force and slope, ten millimetres of height',
    given: { rate: 9, preload: 25, load: 971, travel: 120 },
    expect: {
      travelUsed: { value: 28.944444444, tolerance: 1e-6 },
      springForce: { value: 971, tolerance: 1e-6 },
      rateHere: { value: 18, tolerance: 1e-9 },
      squeeze: { value: 53.944444444, tolerance: 1e-6 },
      forceAtFullTravel: { value: 2610, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. 971/18 = 53.944 mm again; less 25 leaves 28.944 mm. At full travel 18 × 145 = 2610 N, 7.4 % more than 2430.',
  },
  {
    title: 'On the top stop',
    given: { rate: 9, preload: 60, load: 971, travel: 120 },
    expect: {
      travelUsed: { value: 0, tolerance: 1e-9 },
      springForce: { value: 1080, tolerance: 1e-6 },
      loadToLeaveTopStop: { value: 1080, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. 18 × 60 = 1080 N is above 971 N, so the fork stands on its stop and the stop takes 109 N.',
  },
  {
    title: 'A top-out spring works against the main springs',
    given: {
      rate: 9,
      preload: 30,
      load: 500,
      travel: 120,
      topOut: 'fitted',
      topOutRate: 30,
      topOutLength: 8,
    },
    expect: {
      travelUsed: { value: 4.166666667, tolerance: 1e-6 },
      rateHere: { value: 48, tolerance: 1e-9 },
      loadToLeaveTopStop: { value: 300, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. 18 (30 + x) − 30 (8 − x) = 500 gives 540 − 240 + 48 x = 500, x = 4.167 mm. Both springs work: 18 + 30 = 48 N/mm. At x = 0: 300 N.',
  },
  {
    title: 'Air takes part of the load',
    given: { rate: 9, preload: 15, load: 971, travel: 120, gas: 'sealed', airHeight: 130 },
    expect: { travelUsed: { value: 35.1, tolerance: 0.05 } },
    working:
      'Worked by hand for one leg. Tube area π·43²/4 = 1452.2 mm², bore 1134.1 mm². Air at full extension 1134.1 × 130 − 56 000 + 1452.2 × 120 = 265 697 mm³; at 35.1 mm 214 725 mm³. Force 1452.2 × 0.101325 × (265 697/214 725 − 1) = 34.9 N, 69.9 N the pair. 18 (15 + 35.1) + 69.9 = 971.7 N: within 0.05 mm.',
  },
  {
    title: 'Half the load, the load, half as much again, and twice',
    given: { rate: 9, preload: 25, load: 971, travel: 120, gas: 'none', topOut: 'none' },
    expect: {
      'heights.0.0': { value: 485.5, tolerance: 1e-6 },
      'heights.0.1': { value: 1.9722, tolerance: 1e-4 },
      'heights.1.1': { value: 28.9444, tolerance: 1e-4 },
      'heights.2.1': { value: 55.9167, tolerance: 1e-4 },
      'heights.3.1': { value: 82.8889, tolerance: 1e-4 },
      'heights.3.2': { value: 18, tolerance: 1e-6 },
    },
    working:
      'Worked by hand. Two springs of 9 N/mm are 18 N/mm. 485.5/18 = 26.972, less 25 of preload is 1.972 mm; each 485.5 N more adds 26.972 mm: 28.944, 55.917, 82.889 mm. The slope stays 18 N/mm.',
  },
]

export default checks

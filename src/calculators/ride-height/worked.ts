import type { WorkedCase } from '../../machine/worked.ts'

/** Hand-worked cases of the ride-height calculator. */
const checks: readonly WorkedCase[] = [
  {
    title: 'Tubes 10 mm up through the roadster’s yokes',
    given: { by: 'tubes', amount: 10, rider: 80 },
    expect: {
      pitch: { value: -0.14, tolerance: 0.03 },
      wheelbase: { value: 1434.9, tolerance: 0.5 },
      trail: { value: 105.9, tolerance: 0.3 },
      frontLoad: { value: 138.6, tolerance: 0.3 },
      rearLoad: { value: 141.4, tolerance: 0.3 },
      frontShare: { value: 49.5, tolerance: 0.1 },
      rake: { value: 24.86, tolerance: 0.03 },
    },
    working:
      'Worked by hand from the bike before: pitch 0.24°, wheelbase 1439.3, trail 108.3 mm, 137.8 kg in front. The axle comes 10 mm up the fork and the fork sinks 0.5: 10.5 · cos 25.2° = 9.5 mm, which pitches the bike by 9.5/1440 rad = 0.38° to −0.14°. The base loses 10.5 · sin 25.2° = 4.4. A degree of rake is 6.1 mm of trail: 108.3 − 0.38 · 6.1 = 106.0. The centre, 310 mm above the axles’ line, comes 310 · 0.0066 = 2.0 mm forward and the base is shorter: 280 · (711/1434.9) = 138.7 kg, 49.5 %, and 141.3 at the rear. The rake is 25 − 0.14 = 24.86°.',
  },
  {
    title: 'Ten millimetres more preload in the roadster’s fork',
    given: { by: 'preload', amount: 10, rider: 80 },
    expect: {
      frontTravel: { value: 25.9, tolerance: 0.2 },
      exposedTube: { value: 124.1, tolerance: 0.2 },
    },
    working:
      'Worked by hand: the nose rises by 0.34°, so the fork carries (137.2 − 28) kg · 9.807 · cos 25.6° = 966 N. At 25.9 mm the springs give 18 · (25 + 25.9) = 916 N and the gas 2 · 14.52 cm² · 101 325 Pa · 37.6/228.1 = 49 N. Of the 10 mm the front rises 9.3; 150 − 25.9 = 124.1 mm of tube is in sight.',
  },
  {
    title: 'No change: the bike on its mark',
    given: { by: 'tyre', amount: 0, rider: 80 },
    expect: {
      frontTravel: { value: 35.2, tolerance: 0.2 },
      frontLoad: { value: 137.8, tolerance: 0.5 },
    },
    working:
      'Worked by hand: at 35.2 mm the springs give 18 · 50.2 = 904 N and the gas 70 N, the 974 N that (137.8 − 28) kg · 9.807 · cos 25.2° put along the fork.',
  },
]

export default checks

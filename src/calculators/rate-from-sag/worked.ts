import type { WorkedCase } from '../../machine/worked.ts'

/** Cases worked by hand, in the definition's units. */
const checks: readonly WorkedCase[] = [
  {
    title: 'Two sags of a fork of 18 N/mm without air',
    given: {
      extended: 150,
      staticReading: 129.4,
      riderReading: 111.1,
      staticLoad: 100,
      riderLoad: 137.2,
      unsprungMass: 28,
      rake: 25,
      gas: 'none',
    },
    expect: {
      staticForce: { value: 639.92, tolerance: 0.05 },
      riderForce: { value: 970.54, tolerance: 0.05 },
      rate: { value: 18.067, tolerance: 0.003 },
      preload: { value: 14.82, tolerance: 0.02 },
    },
    working:
      'Worked by hand. (100 − 28) × 9.80665 × cos 25° = 706.08 × 0.906308 = 639.92 N; (137.2 − 28) × 9.80665 × 0.906308 = 970.55 N. Sags 20.6 and 38.9 mm. 330.62/18.3 = 18.067 N/mm; 639.92/18.067 − 20.6 = 14.82 mm.',
  },
  {
    title: 'What ±1 mm and ±0.5 kg leave of it',
    given: {
      extended: 150,
      staticReading: 129.4,
      riderReading: 111.1,
      staticLoad: 100,
      riderLoad: 137.2,
      unsprungMass: 28,
      rake: 25,
      readingPlusMinus: 1,
      loadPlusMinus: 0.5,
      gas: 'none',
    },
    expect: {
      perLeg: { value: 9.033, tolerance: 0.002 },
      within: { value: 0.814, tolerance: 0.002 },
      correlation: { value: -0.944, tolerance: 0.002 },
    },
    working:
      'Worked by hand (JCGM 100). Lengths 1/√3 = 0.577 mm, difference 0.816 mm of 18.3: 4.46 %. Loads 0.5 × 9.80665 × 0.9063/√3 = 2.566 N, difference 3.63 N of 330.6: 1.10 %. Together 4.60 %; times 1.96 is ±9.0 %, ±0.814 N/mm on 9.033 each leg. Rate and preload together: with u the 0.577 mm of a length and v the 2.566 N of a load, one by one (rider tube, bike-alone tube, hanging tube, bike-alone load, rider load) the pair’s rate moves by 0.987 u, −0.987 u, 0, −0.0546 v, 0.0546 v, in N/mm and mm, and the preload by −1.936 u, 2.936 u, −1 u, 0.1625 v, −0.1071 v. The products add up to −1.603 + (−0.00887 − 0.00585) × 6.584 = −1.700 (4.809 × 0.3333 = 1.603); the rate’s own ± is 0.830, the preload’s 2.169; −1.700/(0.830 × 2.169) = −0.944.',
  },
  {
    title: 'The air taken out',
    given: {
      extended: 150,
      staticReading: 131.3,
      riderReading: 114.9,
      staticLoad: 100,
      riderLoad: 137.2,
      unsprungMass: 28,
      rake: 25,
      gas: 'sealed',
      airHeight: 130,
      tubeDiameter: 43,
      boreDiameter: 38,
      stackVolume: 56,
      travel: 120,
    },
    expect: {
      rate: { value: 20.16, tolerance: 0.02 },
      springPerLeg: { value: 9.0, tolerance: 0.06 },
      airRate: { value: 2.22, tolerance: 0.03 },
      springPreload: { value: 15.1, tolerance: 0.15 },
    },
    working:
      'Worked by hand. The fork of 9 N/mm a leg with 15 mm of preload and air sits at 18.7 and 35.1 mm. 330.6/16.4 = 20.16 N/mm: the air makes 18 read 20. Air at 18.7 mm: 2 × 147.14 × (265 697/238 541 − 1) = 33.5 N; at 35.1: 69.9 N. The air’s part is 36.4/16.4 = 2.22 N/mm. (330.6 − 36.4)/16.4 = 17.94, 8.97 each leg, preload (639.9 − 33.5)/17.94 − 18.7 = 15.1 mm; the tenth of a millimetre of the readings is the rest.',
  },
]

export default checks

import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'A rake of 25°, 30 mm of offset, a 300 mm radius',
    given: { rake: 25, forkOffset: 30, frontRadius: 300 },
    expect: {
      trail: { value: 106.8, tolerance: 0.05 },
      normalTrail: { value: 96.79, tolerance: 0.01 },
      perDegree: { value: 6.105, tolerance: 0.002 },
      perRadius: { value: 0.4663, tolerance: 0.0001 },
      flop: { value: 40.9, tolerance: 0.01 },
    },
    working:
      'Worked by hand: 300 · sin 25° = 126.79; less 30 is 96.79; ÷ cos 25° = 0.90631 gives 106.79 mm. The slope in rake is (300 − 30 · 0.42262)/0.82139 = 349.80 mm a radian, ÷ 57.296 = 6.105 mm a degree; a millimetre of radius gives tan 25° = 0.4663. Flop 106.79 · 0.42262 · 0.90631 = 40.90 mm.',
  },
  {
    title: 'The same trail from another rake and offset: they are not the same thing',
    given: { rake: 25.9, forkOffset: 35, frontRadius: 300 },
    expect: {
      trail: { value: 106.8, tolerance: 0.1 },
      perOffset: { value: -1.112, tolerance: 0.002 },
    },
    working:
      'Worked by hand: 300 · sin 25.9° = 131.04; less 35 is 96.04; ÷ cos 25.9° = 0.89956 gives 106.76 mm. One mm of offset is −1/cos 25.9° = −1.112 mm.',
  },
  {
    title: 'A measured bicycle: head angle 67.1°, offset 70.5 mm, radius 343.53 mm',
    given: {
      rake: 22.9,
      forkOffset: 70.5,
      frontRadius: 343.52982332,
      rakePlusMinus: 0,
      offsetPlusMinus: 0,
      radiusPlusMinus: 0,
    },
    expect: { trail: { value: 68.5808540382, tolerance: 1e-6 } },
    working:
      'Moore and Kooijman’s measured bicycles (BicycleParameters data set, the bicycle “Browser”): trail 0.0685808540382 m from 28.060 m over 13 turns.',
  },
]

export default checks

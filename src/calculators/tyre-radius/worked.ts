import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: '120/70-17',
    given: { marking: '120/70-17', radiusPlusMinus: 0 },
    expect: { radius: { value: 300, tolerance: 0.5 }, diameter: { value: 600, tolerance: 1 } },
    working:
      'UN Regulation No. 75: rim code 17 is 432 mm; 120 · 0.70 = 84 of height. 432/2 + 84 = 300 mm, a diameter of 600 (from memory, ±1).',
  },
  {
    title: '180/55-17',
    given: { end: 'rear', marking: '180/55-17', radiusPlusMinus: 0 },
    expect: { radius: { value: 315, tolerance: 0.5 }, diameter: { value: 630, tolerance: 1 } },
    working:
      'UN Regulation No. 75: 432/2 + 180 · 0.55 = 216 + 99 = 315 mm, a diameter of 630 (from memory, ±1).',
  },
  {
    title: '110/80-17 in place of 120/70-17: 4 mm higher at the front axle',
    given: { marking: '110/80-17', fitted: '120/70-17', radiusPlusMinus: 0 },
    expect: {
      radius: { value: 304, tolerance: 0.1 },
      trail: { value: 111.2, tolerance: 0.3 },
      rake: { value: 25.4, tolerance: 0.02 },
      wheelLoad: { value: 137.6, tolerance: 0.4 },
      squash: { value: 7.5, tolerance: 0.02 },
      loadedRadius: { value: 296.5, tolerance: 0.02 },
    },
    working:
      'Worked by hand: 216 + 110 · 0.80 = 304 mm. Four millimetres more radius add 4 · tan 25.2° = 1.9 mm to the trail, and lift the nose by 4/1440 rad = 0.16°, worth 6.1 · 0.16 = 1.0 mm more: 108.3 + 2.9 = 111.2. Held to 0.3 mm, since the hand sum is first order. The rake is 25.24 + 0.16 = 25.40°. The nose up takes 280 · 310/1440 · 0.0028 = 0.2 kg off the front’s 137.8. 137.6 kg · 9.807 = 1349 N press a tyre of 180 N/mm in by 7.50 mm, to 296.5.',
  },
]

export default checks

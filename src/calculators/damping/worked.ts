import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'The damping ratio of 112 kg on 22 N/mm',
    given: { compression: 700, rebound: 1500, sprungMass: 112, wheelRate: 22 },
    expect: {
      ratio: { value: 0.35, tolerance: 0.0005 },
      ratioCompression: { value: 0.223, tolerance: 0.0005 },
      ratioRebound: { value: 0.478, tolerance: 0.0005 },
    },
    working:
      'Worked by hand: 2√(22,000 × 112) = 3,139 N·s/m is critical. 1,100, 700 and 1,500 ÷ 3,139 = 0.350, 0.223 and 0.478.',
  },
  {
    title: 'At rest a damper carries nothing',
    given: { compression: 6000, rebound: 6000, sag: 38 },
    expect: { rest: { value: 38, tolerance: 1e-6 } },
    working:
      'A damper’s force is 0 at speed 0. At rest the spring alone carries the load, at 38 mm as given.',
  },
  {
    title: 'A shock absorber for a motorcycle, from a textbook',
    given: { compression: 554.4981, rebound: 554.4981, sprungMass: 200, wheelRate: 2.3582652 },
    expect: { ratio: { value: 0.4037, tolerance: 0.0001 } },
    working:
      'S. S. Rao, Mechanical Vibrations, Example 2.11: 200 kg, 2,358.27 N/m and 554.5 N·s/m, chosen so that each half swing is a quarter of the one before, which is a ratio of 0.4037.',
  },
]

export default checks

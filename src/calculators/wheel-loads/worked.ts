import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'The roadster alone: the share that its sheet gives',
    given: { rider: 0, passenger: 0, luggage: 0 },
    expect: {
      frontLoad: { value: 100, tolerance: 0.01 },
      rearLoad: { value: 100, tolerance: 0.01 },
      frontShare: { value: 50, tolerance: 0.005 },
    },
    working: 'The sheet says 200 kg with 50 % on the front wheel: 100 kg each. Worked by hand.',
  },
  {
    title: 'A rider of 80 kg on the roadster',
    given: { rider: 80 },
    expect: {
      frontLoad: { value: 137.8, tolerance: 0.5 },
      rearLoad: { value: 142.2, tolerance: 0.5 },
      'parts.1.1': { value: 37.2, tolerance: 0.5 },
      'parts.1.2': { value: 42.8, tolerance: 0.5 },
      'parts.1.3': { value: 46.5, tolerance: 0.5 },
      wheelbase: { value: 1439.3, tolerance: 1 },
    },
    working:
      'Worked by hand with the quoted pose: the rider sits 674 mm ahead of the rear axle of a 1450 mm wheelbase, so 80 · 674/1450 = 37.2 kg go to the front: 137.2. Where the bike settles its nose stands a quarter of a degree up; that and the shorter base of 1439 mm move it by half a kilogram, which is the tolerance.',
  },
]

export default checks

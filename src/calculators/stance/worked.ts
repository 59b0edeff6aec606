import type { WorkedCase } from '../../machine/worked.ts'

/** Hand-worked cases of the whole bike. */
const checks: readonly WorkedCase[] = [
  {
    title: 'The roadster with its rider, nothing changed',
    given: { forkPreloadChange: 0, rider: 80 },
    expect: {
      frontTravel: { value: 35.2, tolerance: 0.2 },
      rearTravel: { value: 38.1, tolerance: 0.6 },
      frontLoad: { value: 137.8, tolerance: 0.5 },
    },
    working:
      'Worked by hand. Front: (137.8 − 28) kg · 9.807 · cos 25.2° = 974 N; springs 18 · (15 + 35.2) = 904 N and gas 70 N carry it at 35.2 mm. Rear: (142.2 − 24) kg · 9.807 · 541/540 = 1161 N at the wheel is 1161/0.4348 = 2670 N at the shock, less 185 N of gas 2485 N: 27.6 mm of spring, 16.6 beyond the preload of 11, and 16.6/0.4348 = 38.2 mm at the wheel.',
  },
  {
    title: 'Ten millimetres more fork preload',
    given: { forkPreloadChange: 10, rider: 80 },
    expect: {
      frontTravel: { value: 25.9, tolerance: 0.2 },
      forkForce: { value: 966, tolerance: 3 },
    },
    working:
      'Worked by hand: the front carries (137.2 − 28) kg · 9.807 · cos 25.6° = 966 N along the fork. At 25.9 mm the springs give 18 · (25 + 25.9) = 916 N and the gas 49 N. The front rises by 9.3 of the 10 mm: the gas takes the rest. The load in the fork is within a hundredth of what it was.',
  },
  {
    title: 'Leaning: 35° presses as if the bike weighed 22 % more',
    given: { forkPreloadChange: 0, situation: 'leaning', lean: 35, rider: 80 },
    expect: {
      frontLoad: { value: 168.2, tolerance: 1.5 },
      rearLoad: { value: 173.6, tolerance: 1.5 },
    },
    working:
      'Worked by hand: 1/cos 35° = 1.2208, so 137.8 and 142.2 kg become 168.2 and 173.6; the two together 341.8. Both ends sink, which moves the share by less than half a point.',
  },
]

export default checks

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
  {
    title: 'Two scales, and travels that the roadster’s springs do not give',
    given: {
      from: 'scales',
      scaleFront: 100,
      scaleRear: 100,
      scaleFrontTravel: 22,
      scaleRearTravel: 10,
      rider: 0,
      forkPreloadChange: 0,
    },
    expect: {
      scaleFrontMisfit: { value: 3.3, tolerance: 0.15 },
      scaleRearMisfit: { value: -3.8, tolerance: 0.15 },
    },
    working:
      'Worked by hand. Front: (100 − 28) kg · 9.807 · cos 24.9° = 640 N, which 18 · (15 + 18.7) = 607 N of springs and 33 N of gas carry at 18.7 mm: 22 were read, 3.3 more. Rear: (100 − 24) kg · 9.807 = 745 N at the wheel is 745/0.4348 = 1714 N at the shock, less 185 of gas 1529 N: 16.99 mm of spring, 5.99 beyond the preload, 13.8 mm at the wheel; 10 were read, 3.8 less. The sines and cosines of the pose, left out here, are the tolerance.',
  },
  {
    title: 'Where the rear wheel carries nothing',
    given: { forkPreloadChange: 0, rider: 80 },
    expect: { liftDeceleration: { value: 1.1, tolerance: 0.06 } },
    working:
      'Worked by hand: the deceleration in g is the distance from the front contact back to the centre over its height: about 680 mm ÷ 620 mm = 1.10, both with the nose down.',
  },
]

export default checks

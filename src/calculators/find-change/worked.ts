import type { WorkedCase } from '../../machine/worked.ts'

const FREE = { rearRiderLow: 0, rearRiderHigh: 120, trailWithin: 20, allowed: 'adjusters' } as const

/** Hand-worked cases of the way to a change. */
const checks: readonly WorkedCase[] = [
  {
    title: 'The front nine millimetres up, by preload alone',
    given: { ...FREE, rider: 80, frontRiderLow: 25, frontRiderHigh: 26.2 },
    expect: {
      forkPreloadChange: { value: 10, tolerance: 0.01 },
      frontRiderSag: { value: 25.9, tolerance: 0.2 },
    },
    working:
      'Worked by hand. The front of the roadster stands 35.2 mm deep under 80 kg. Each millimetre of preload lifts it by 0.93 mm, since the gas gives way: (35.2 − 26.2) ÷ 0.93 = 9.7 mm, which is 10 mm in steps of half a millimetre. At 25.9 mm the springs give 18 · (25 + 25.9) = 916 N and the gas 49 N: 965 N, the load along the legs.',
  },
  {
    title: 'The rear eleven millimetres up, by the collar alone',
    given: {
      ...FREE,
      rider: 80,
      frontRiderLow: 0,
      frontRiderHigh: 120,
      rearRiderLow: 20,
      rearRiderHigh: 27,
    },
    expect: {
      rearPreloadChange: { value: 5, tolerance: 0.01 },
      rearRiderSag: { value: 26.6, tolerance: 0.6 },
    },
    working:
      'Worked by hand. The rear stands 38.1 mm deep, and a millimetre at the shock is 1 ÷ 0.4348 = 2.3 mm at the wheel: (38.1 − 27) ÷ 2.3 = 4.8 mm, which is 5 mm in steps of half a millimetre. That lifts it by 11.5 mm, to 26.6 mm.',
  },
  {
    title: 'A bike that is there already',
    given: { ...FREE, rider: 80, frontRiderLow: 34, frontRiderHigh: 36 },
    expect: { frontRiderSag: { value: 35.2, tolerance: 0.2 }, ways: { value: 0, tolerance: 0 } },
    working:
      'Worked by hand, as in the whole bike’s first case: the springs give 18 · (15 + 35.2) = 904 N and the gas 70 N, which carry the 974 N along the legs. 35.2 mm lie in the window, and nothing has to be changed.',
  },
]

export default checks

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
  {
    title: 'The front five millimetres lower by the tubes',
    given: {
      ...FREE,
      rider: 80,
      frontRiderLow: 34.8,
      frontRiderHigh: 36,
      frontHeightLow: -5.2,
      frontHeightHigh: -4.4,
      allowed: 'tubes',
    },
    expect: {
      tubeRaise: { value: 5, tolerance: 0.01 },
      trail: { value: 107.1, tolerance: 0.2 },
    },
    working:
      'Worked by hand. A millimetre of tube lowers the front by cos 25° = 0.906 mm, and what the fork sinks besides: between 4.4 and 5.2 mm lie 5 and 5.5 mm of tube, the smaller first. 4.75 mm over 1440 are 0.189° of pitch, and a degree is 6.1 mm of trail: 108.28 − 1.15 = 107.1 mm.',
  },
  {
    title: 'The back four and a half millimetres higher by the shock’s length',
    given: {
      ...FREE,
      rider: 80,
      frontRiderLow: 0,
      frontRiderHigh: 120,
      rearRiderLow: 37,
      rearRiderHigh: 39,
      rearHeightLow: 4,
      rearHeightHigh: 5,
      allowed: 'parts',
    },
    expect: { shockLengthChange: { value: 2, tolerance: 0.01 } },
    working:
      'Worked by hand. A millimetre at the shock is 1 ÷ 0.4348 = 2.3 mm at the axle: 1 mm lifts the back by 2.3, 2 mm by 4.6, 3 mm by 6.9. The sag’s window leaves no room for preload, which would lift it too.',
  },
  {
    title: 'Both sags at the front: a stiffer spring with less preload',
    given: {
      ...FREE,
      rider: 80,
      frontRiderLow: 34.5,
      frontRiderHigh: 36,
      frontStaticLow: 21,
      frontStaticHigh: 22,
      allowed: 'parts',
    },
    expect: {
      forkRate: { value: 10.5, tolerance: 0.001 },
      forkPreloadChange: { value: -7.5, tolerance: 0.01 },
    },
    working:
      'Worked by hand. The fork carries 640 N with the bike alone and 974 N with the rider; the air takes 39 N of it at 21.2 mm and 71 at 35.5, so the springs must give 302 N more over at most 36 − 21 = 15 mm: 20.1 N/mm or more for the pair. 10 N/mm a leg is just too soft, 10.5 the next. 601/21 − 21.2 = 7.4 mm of preload, which is 15 − 7.5.',
  },
  {
    title: 'Both sags at the rear: the same there',
    given: {
      ...FREE,
      rider: 80,
      frontRiderLow: 0,
      frontRiderHigh: 120,
      rearRiderLow: 37,
      rearRiderHigh: 39,
      rearStaticLow: 15,
      rearStaticHigh: 17,
      allowed: 'parts',
    },
    expect: {
      rearRate: { value: 95, tolerance: 0.001 },
      rearPreloadChange: { value: -1.5, tolerance: 0.01 },
    },
    working:
      'Worked by hand. The spring gives 90 · (11 + 38.05 · 0.4348) = 2479 N with the rider and 90 · (11 + 13.79 · 0.4348) = 1530 N without: 949 N over at most (39 − 15) · 0.4348 = 10.4 mm, so 91 N/mm or more, and 95 is on the shelf. 2479/95 = 26.1 mm of squeeze, 16.6 of them stroke (38.2 mm at the wheel): 9.5 of preload, 1.5 less. Alone 1530/95 − 9.5 = 6.6 mm, 15.2 at the wheel.',
  },
  {
    title: 'Two millimetres more in hand by the oil alone',
    given: {
      ...FREE,
      rider: 80,
      frontRiderLow: 33.5,
      frontRiderHigh: 36,
      frontHeightLow: -1,
      frontHeightHigh: 1.6,
      allowed: 'oil',
      reserve: 27,
      deceleration: 0.7,
    },
    expect: { oilHeightChange: { value: -20, tolerance: 0.01 } },
    working:
      'Worked by hand. Settled in a stop of 0.7 g the roadster’s fork has used 95.8 mm: springs 18 · 110.84 = 1995 N, and air of 265.70 cm³, 214.54 with the rider and 126.52 there, 294.3 · (265.70/214.54 · (214.54/126.52)^1.4 − 1) = 469 N, 2464 together. For 27 mm in hand it may use 93. With the oil 15 mm higher it gives 1944 + 509 = 2453 N there, too little; with 20 mm 1944 + 539 = 2483 N, enough. Oil goes in steps of 5 mm. The front rises by less than half a millimetre, and the window of heights leaves no room for the preload that would do the same.',
  },
]

export default checks

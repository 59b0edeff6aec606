import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'A roadster of 200 kg, rear axle raised by 300 mm',
    given: { frontLevel: 100, rearLevel: 100, otherWheelRaised: 105.7, lift: 300 },
    expect: { height: { value: 500, tolerance: 2 } },
    working:
      'Worked by hand for a height of 500 mm: both axles 12 mm apart in height, so the axles’ reach when raised is √(1450² + 12² − 312²) = 1416.1 mm and the turn 12.42° − 0.47° = 11.95°. The weight then acts 725 · cos 11.95° − 200 · sin 11.95° = 667.9 mm behind the front axle: the front carries 200 · (1 − 667.9/1416.1) = 105.7 kg.',
  },
  {
    title: 'The same, front axle raised',
    given: {
      frontLevel: 100,
      rearLevel: 100,
      otherWheelRaised: 105.7,
      lift: 300,
      lifted: 'front',
      frontRadius: 300,
      rearRadius: 300,
    },
    expect: { height: { value: 495.5, tolerance: 2 } },
    working:
      'Worked by hand with equal radii: the turn is asin(300/1450) = 11.94°, the reach 1418.6 mm. The rear carries 105.7 of 200, so the weight acts 1418.6 · 94.3/200 = 668.9 mm ahead of the rear axle; level it is 725. Height above the axle: (725 · cos 11.94° − 668.9)/sin 11.94° = 195.5 mm; with the axle at 300, 495.5 mm.',
  },
]

export default checks

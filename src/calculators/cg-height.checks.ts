import type { WorkedCheck } from './define.ts'

const checks: readonly WorkedCheck[] = [
  {
    title: 'A roadster of 200 kg, rear axle raised by 400 mm',
    given: { frontLevel: 100, rearLevel: 100, otherWheelRaised: 107.7, lift: 400 },
    expect: { height: { value: 500, tolerance: 1 } },
    working:
      'Worked by hand for a height of 500 mm: both axles 12 mm apart in height, so the axles’ reach when raised is √(1450² + 12² − 412²) = 1390.3 mm and the turn 16.50° − 0.47° = 16.03°. The weight then acts 725 · cos 16.03° − 200 · sin 16.03° = 641.6 mm behind the front axle: the front carries 200 · (1 − 641.6/1390.3) = 107.7 kg.',
  },
  {
    title: 'The same, front axle raised',
    given: { frontLevel: 100, rearLevel: 100, otherWheelRaised: 107.7, lift: 400, lifted: 'front', frontRadius: 300, rearRadius: 300 },
    expect: { height: { value: 494, tolerance: 2 } },
    working:
      'Worked by hand with equal radii: the turn is asin(400/1450) = 16.01°, the reach 1393.7 mm. The rear carries 107.7 of 200, so the weight acts 1393.7 · 92.3/200 = 643.2 mm ahead of the rear axle; level it is 725. Height above the axle: (725 · cos 16.01° − 643.2)/sin 16.01° = 194 mm; with the axle at 300, 494 mm.',
  },
]

export default checks

import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'A roadster of 200 kg, rear axle raised by 300 mm',
    given: { frontLevel: 100, rearLevel: 100, otherWheelRaised: 105.7, lift: 300 },
    expect: { height: { value: 500, tolerance: 2 } },
    core: ['centreOfGravityHeight'],
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
  {
    title: 'Where the mass is along the bike, and what half a kilogram is worth',
    given: {
      frontLevel: 90,
      rearLevel: 110,
      otherWheelRaised: 105.7,
      lift: 300,
      lifted: 'front',
      frontRadius: 300,
      rearRadius: 300,
      wheelbase: 1450,
    },
    expect: {
      ahead: { value: 652.5, tolerance: 1e-6 },
      frontShare: { value: 45, tolerance: 1e-9 },
      gained: { value: -4.3, tolerance: 1e-9 },
      perHalfKilogram: { value: 17.14, tolerance: 0.01 },
    },
    working:
      'Worked by hand. 90 of 200 kg is 45 %, and 0.45 × 1450 = 652.5 mm. The rear scale goes from 110 to 105.7 kg: −4.3. The turn is asin(300/1450) = 11.94°, its sine 0.20690, the reach √(1450² − 300²) = 1418.6 mm. Half a kilogram moves the place of the weight by 1418.6 × 0.5/200 = 3.547 mm, and the height by 3.547/0.20690 = 17.14 mm.',
  },
]

export default checks

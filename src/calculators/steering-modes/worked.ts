import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'The benchmark’s own two speeds',
    given: { trail: 80 },
    expect: {
      weaveEnds: { value: 15.452577, tolerance: 0.000005 },
      fallBegins: { value: 21.687343, tolerance: 0.000005 },
    },
    working:
      'Meijaard et al. 2007, section 5: 4.29238253634111 and 6.02426201538837 m/s, times 3.6.',
  },
  {
    title: 'The benchmark at 5 m/s',
    given: { trail: 80, speed: 18 },
    expect: {
      weave: { value: -0.77534188, tolerance: 1e-6 },
      fall: { value: -0.32286643, tolerance: 1e-6 },
      back: { value: -14.07838969, tolerance: 1e-6 },
      'motions.0.1': { value: -0.77534188, tolerance: 1e-6 },
      'motions.0.2': { value: 0.89399, tolerance: 1e-5 },
      'motions.0.3': { value: 0.710606, tolerance: 1e-6 },
      'motions.1.2': { value: 2.14685, tolerance: 1e-5 },
    },
    working:
      'Meijaard et al. 2007, table 2, at 5 m/s: weave −0.77534188219585, capsize −0.32286642900409, castering −14.0783896927982. The weave’s imaginary part there is 4.46486771378823: ÷ 2π it swings 0.710606 times a second; it halves in 0.693147 ÷ 0.775342 = 0.89399 s, the slow fall in 0.693147 ÷ 0.322866 = 2.14685 s.',
  },
  {
    title: 'Moment and flop of 80 mm of trail',
    given: { trail: 80, sideForce: 20 },
    expect: {
      moment: { value: 1.5217, tolerance: 0.0005 },
      flop: { value: 23.511, tolerance: 0.005 },
    },
    core: ['trailMoment', 'wheelFlop'],
    working:
      'Worked by hand: 20 N × 0.08 m × cos 18° = 1.5217 N·m; 80 mm × sin 18° × cos 18° = 80 × 0.30902 × 0.95106 = 23.51 mm.',
  },
]

export default checks

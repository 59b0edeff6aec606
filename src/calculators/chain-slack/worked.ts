import type { WorkedCase } from '../../machine/worked.ts'

const drive = {
  armLength: 560,
  sprocketAhead: 80,
  sprocketAbove: 0,
  frontTeeth: 17,
  rearTeeth: 42,
  pitch: 'fiveEighths',
  travel: 120,
  readingPlusMinus: 0,
  raise: 0,
} as const

const checks: readonly WorkedCase[] = [
  {
    title: 'In one line with the wheel hanging: what was read is the least',
    given: { ...drive, axleBelow: 0, slack: 35, at: 0 },
    expect: {
      tightest: { value: 35, tolerance: 1e-6 },
      tightestAt: { value: 0, tolerance: 1e-9 },
      least: { value: 0, tolerance: 1e-6 },
      growth: { value: 0, tolerance: 1e-9 },
      run: { value: 636.88, tolerance: 0.01 },
    },
    working:
      'Worked by hand. Pivot, sprocket and axle lie level, so the centres are 80 + 560 = 640 mm apart, the most there is: the chain is tightest here. 25 teeth more are 25 × 15.875 ÷ 2π = 63.16 mm of radius, and the run is √(640² − 63.16²) = 636.88 mm.',
  },
  {
    title: 'The axle 100 mm below the pivot: 60 mm leave 27 mm',
    given: { ...drive, axleBelow: 100, slack: 60, at: 0 },
    expect: {
      tightestAt: { value: 100, tolerance: 1e-6 },
      growth: { value: 2.24, tolerance: 0.005 },
      least: { value: 53.4, tolerance: 0.1 },
      tightest: { value: 27.3, tolerance: 0.1 },
    },
    working:
      'Worked by hand. The axle is √(560² − 100²) = 551.00 mm behind the pivot, so the centres are √(631.00² + 100²) = 638.87 mm apart, 1.126 mm less than the 640 mm in line. Both runs grow by the cosine of their tilt: 2 × 0.9951 × 1.126 = 2.24 mm. A movement of √(2 × 635.74 × 2.24 + 2.24²) = 53.4 mm takes up as much. 60 mm takes √(635.74² + 60²) − 635.74 = 2.825 mm, so 0.584 mm is left: √(2 × 636.88 × 0.584 + 0.584²) = 27.3 mm.',
  },
]

export default checks

import type { WorkedCase } from '../../machine/worked.ts'

const alone = { passenger: 0, luggage: 0, rearPreload: 0, rearRaise: 0, tubeRaise: 0 } as const

const checks: readonly WorkedCase[] = [
  {
    title: 'On an edge, the tangent alone',
    given: { ...alone, height: 300, halfWidth: 360, crown: 0 },
    expect: {
      heightNow: { value: 300, tolerance: 1e-6 },
      rigid: { value: 39.806, tolerance: 0.001 },
    },
    working:
      'Worked by hand. With nobody and nothing added the part is where it was measured. On a knife edge it touches at tan φ = 300 ÷ 360 = 0.8333, φ = 39.806°.',
  },
  {
    title: 'On round tyres, a triangle of 3, 4 and 5',
    given: { ...alone, height: 300, halfWidth: 250, crown: 50 },
    expect: { rigid: { value: 53.13, tolerance: 0.001 } },
    working:
      'Worked by hand. 50 + (300 − 50) cos φ − 250 sin φ is 0 for cos φ = 0.6 and sin φ = 0.8: 50 + 150 = 200. That is 53.13°.',
  },
]

export default checks

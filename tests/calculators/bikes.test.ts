import { describe, expect, test } from 'vitest'
import { bikeOf, payloadOf } from '../../src/bikes/bikes.ts'
import { solveStance } from '../../src/core/index.ts'
import { specs } from './bikes.ts'
import { expectNear } from './evaluated.ts'

describe('bikeOf', () => {
  test('bikeOf the commuter stands on both of its shocks', () => {
    const spec = specs['light-commuter']!
    const { rearTravel, rearLoad } = solveStance(bikeOf(spec), { payload: [payloadOf(spec.rider)] })
    // Worked by hand: bike 138 kg with 51 % behind, rider 70 kg at 560 of 1310 mm: 70.4 + 40.1 = 110.5 kg on the rear wheel. Less 19 kg unsprung 897 N,
    // straight above an arm so long that the lever is the arm's length within 1 %. Two shocks of 16 N/mm at 0.9 make 25.9 N/mm and push with 202 N at full
    // extension: (897 − 202)/25.9 = 26.8 mm. One shock alone would let it sink to 62 mm.
    expectNear(rearLoad / 9.80665, 110.5, 0.7)
    expectNear(rearTravel * 1e3, 26.8, 1)
    expect(bikeOf(spec).rear.shocks).toBe(2)
  })
})

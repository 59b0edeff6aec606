import { solveStance, STANDARD_GRAVITY } from '../../core/index.ts'
import type { LoadCase } from '../../core/index.ts'
import { aboard } from '../../bikes/aboard.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import type { BikeSpec } from '../../bikes/bikes.ts'
import type { Calculator } from '../../machine/calculator.ts'
import { evaluate } from '../../machine/evaluate.ts'
import type { Given } from '../../machine/given.ts'
import { settle } from './settle.ts'
import type { Settled } from './settle.ts'

/** A state of a calculator that settles a whole bike, and the same bike for the second method. */
interface WholeBikeCase {
  calculator: string
  given: Given
  loadCase(spec: BikeSpec): LoadCase
}

/** Gentle enough that no invented bike’s rear comes to its top stop. */
const GENTLE = 0.3
const RIDER = { rider: 80 }

/** The gas slowly to where the bike stands, then fast. */
function braking(spec: BikeSpec): LoadCase {
  const payload = aboard(spec, RIDER)
  const from = solveStance(bikeOf(spec), { payload }).frontTravel
  return { payload, deceleration: GENTLE * STANDARD_GRAVITY, gasState: { exponent: 1.4, from } }
}

const CASES: readonly WholeBikeCase[] = [
  {
    calculator: 'stance',
    given: { situation: 'rest', rider: 80, forkPreloadChange: 0 },
    loadCase: (spec) => ({ payload: aboard(spec, RIDER) }),
  },
  {
    calculator: 'stance',
    given: { situation: 'braking', deceleration: GENTLE, rider: 80, forkPreloadChange: 0 },
    loadCase: braking,
  },
  {
    calculator: 'braking-dive',
    given: { deceleration: GENTLE, rider: 80 },
    loadCase: braking,
  },
]

/** One result of a calculator beside what the second method gives [SI]. */
export interface SecondOutput {
  calculator: string
  output: keyof Settled
  apart: number
}

/** Results of calculators that settle a whole bike, against the second method: the worst over all bikes. */
export function secondOutputs(
  load: (id: string) => Calculator,
  bikes: Readonly<Record<string, BikeSpec>>,
): SecondOutput[] {
  const worst = new Map<string, SecondOutput>()
  for (const { calculator, given, loadCase } of CASES) {
    for (const [bike, spec] of Object.entries(bikes)) {
      const { now } = evaluate(load(calculator), { ...given, bike }, { bikes })
      const other = settle({ bike: bikeOf(spec), loadCase: loadCase(spec) })
      for (const output of Object.keys(other) as (keyof Settled)[]) {
        const ours = now?.output[output]
        const apart = typeof ours === 'number' ? Math.abs(ours - other[output]) : Infinity
        const key = `${calculator} ${output}`
        const before = worst.get(key)?.apart ?? 0
        worst.set(key, { calculator, output, apart: Math.max(before, apart) })
      }
    }
  }
  return [...worst.values()]
}

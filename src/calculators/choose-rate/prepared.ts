import { squeezedFrom } from '../../core/index.ts'
import type { BrakingQuestion, ChoiceOfBike, RateRow } from '../../core/index.ts'
import type { SetUp, Values } from './fitted.ts'

/** One state, prepared: the bike, and how hard it is braked [m/s²]. */
export interface Prepared {
  input: Values
  setUp: SetUp
  deceleration: number
  rows: readonly RateRow[]
}

/** The choice among rates for the rider now, at a deceleration [m/s²]. */
export function choiceOf(
  input: Values,
  { bike, rider, sag, riderForce }: SetUp,
  deceleration: number,
): ChoiceOfBike {
  const { travel } = bike.fork
  return {
    bike,
    riderForce,
    cases: {
      static: {},
      rider,
      braking: { ...rider, deceleration, gasState: squeezedFrom(sag) },
    },
    target: {
      riderSag: sag,
      staticSag: [input.staticLow * travel, input.staticHigh * travel],
      reserve: input.reserve,
      unused: input.unused,
      preload: input.leastPreload,
      frequency: input.stiffest,
    },
    dampingRatios: [input.dampingLow, input.dampingHigh],
  }
}

/** The bike as it is fitted, with its damping: for whom is asked. */
export const asFitted = (
  { dampingLow, dampingHigh }: Values,
  { bike }: SetUp,
  rider: SetUp['rider'],
): BrakingQuestion => ({
  bike,
  rider,
  braking: rider,
  dampingRatios: [dampingLow, dampingHigh],
})

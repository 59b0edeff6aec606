import { solveStance } from '../core/index.ts'
import type { Stance } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import { bikeOf, geometryOf } from './bikes.ts'
import type { BikeSpec, Fitted } from './bikes.ts'
import type { Given, InputValues, OutputValues } from './define.ts'
import type { inputs, outputs } from './ride-height.fields.ts'
import { aboard, motionRatioAt, quotedAs } from './whole-bike.ts'

type Values = InputValues<typeof inputs>

const MM = 1e-3

/** The one part that changes. A longer shock lifts the back by its length ÷ the motion ratio where the bike settles: the model needs one number. */
function fittedFor(spec: BikeSpec, { by, amount, rider }: Values): Fitted {
  if (by === 'preload') return { forkPreload: spec.fork.preload * MM + amount }
  if (by === 'tubes') return { tubeRaise: amount }
  if (by === 'tyre') return { frontRadius: spec.frontRadius * MM + amount }
  const settled = solveStance(bikeOf(spec), { payload: aboard(spec, { rider }) })
  return { rearRaise: amount / motionRatioAt(spec, settled.rearTravel) }
}

function settle(input: Values): { spec: BikeSpec; fitted: Fitted; stance: Stance } {
  const spec = quotedAs(input.bike, input.quotedFront, input.quotedRear)
  const fitted = fittedFor(spec, input)
  return { spec, fitted, stance: solveStance(bikeOf(spec, fitted), { payload: aboard(spec, input) }) }
}

/** SI in, SI out. */
export function compute(input: Values): OutputValues<typeof outputs> {
  const { spec, stance } = settle(input)
  const { rake, trail, wheelbase, frontLoad, frontShare, pitch, frontTravel, rearTravel, rearLoad } = stance
  return { exposedTube: spec.fork.exposedTube * MM - frontTravel, rake, trail, wheelbase, frontLoad, frontShare, pitch, frontTravel, rearTravel, rearLoad }
}

/** The bike on its mark: nothing changed. */
export const baseline = (): Given => ({ amount: 0 })

/** The bike as it stands after the change. */
export function picture(input: Values): BikePicture {
  const { spec, fitted, stance } = settle(input)
  return bikePicture(spec, geometryOf(spec, fitted), stance)
}

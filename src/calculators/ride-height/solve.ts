import { solveStance } from '../../core/index.ts'
import type { Stance } from '../../core/index.ts'
import { bikePicture } from '../../bikes/picture.ts'
import type { BikePicture } from '../../bikes/picture.ts'
import { bikeOf, geometryOf } from '../../bikes/bikes.ts'
import type { Fitted } from '../../bikes/bikes.ts'
import type { BikeSpec } from '../../bikes/inSI.ts'
import type { Given } from '../../machine/given.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import type statement from './statement.ts'
import { aboard, motionRatioAt, quotedAs } from '../../bikes/aboard.ts'

type Values = InputOf<typeof statement>

/** The one part that changes. A longer shock lifts the back by its length ÷ the motion ratio where the bike settles: the model needs one number. */
function fittedFor(spec: BikeSpec, { by, amount, rider }: Values): Fitted {
  if (by === 'preload') return { forkPreload: spec.fork.preload + amount }
  if (by === 'tubes') return { tubeRaise: amount }
  if (by === 'tyre') return { frontRadius: spec.frontRadius + amount }
  const settled = solveStance(bikeOf(spec), { payload: aboard(spec, { rider }) })
  return { rearRaise: amount / motionRatioAt(spec, settled.rearTravel) }
}

function settle(input: Values): { spec: BikeSpec; fitted: Fitted; stance: Stance } {
  const spec = quotedAs(input.bike, input.quotedFront, input.quotedRear)
  const fitted = fittedFor(spec, input)
  return {
    spec,
    fitted,
    stance: solveStance(bikeOf(spec, fitted), { payload: aboard(spec, input) }),
  }
}

/** SI in, SI out. */
function compute(solved: ReturnType<typeof settle>): OutputOf<typeof statement> {
  const { spec, stance } = solved
  const {
    rake,
    trail,
    wheelbase,
    frontLoad,
    frontShare,
    pitch,
    frontTravel,
    rearTravel,
    rearLoad,
  } = stance
  return {
    exposedTube: spec.fork.exposedTube - frontTravel,
    rake,
    trail,
    wheelbase,
    frontLoad,
    frontShare,
    pitch,
    frontTravel,
    rearTravel,
    rearLoad,
  }
}

/** The bike on its mark: nothing changed. */
const baseline = (): Given => ({ amount: 0 })

/** The bike as it stands after the change. */
function picture(solved: ReturnType<typeof settle>): BikePicture {
  const { spec, fitted, stance } = solved
  return bikePicture(spec, geometryOf(spec, fitted), stance)
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const solved = settle(input)
    return { outputs: compute(solved), picture: () => picture(solved) }
  },
  baseline,
})

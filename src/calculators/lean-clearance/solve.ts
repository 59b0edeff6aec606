import {
  leanToTouch,
  type LeanToTouch,
  solveStance,
  STANDARD_GRAVITY,
  type Stance,
  toChassis,
  touchAngle,
  type TouchPoint,
  type Tyres,
} from '../../core/index.ts'
import { aboard } from '../../bikes/aboard.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import type statement from './statement.ts'

type Values = InputOf<typeof statement>

interface Situation {
  /** the bike upright, as it is loaded and set now */
  upright: Stance
  point: TouchPoint
  touch: LeanToTouch | null
}

/** The part is fixed to the chassis where it was measured: upright, the rider alone aboard, nothing changed. */
function situationOf(input: Values): Situation {
  const { bike: spec, crown } = input
  const measured = solveStance(bikeOf(spec), { payload: aboard(spec, { rider: input.rider }) })
  const place = toChassis(measured, { x: input.ahead, z: input.height })
  const point = { ...place, halfWidth: input.halfWidth }
  const bike = bikeOf(spec, {
    rearPreload: spec.rear.preload + input.rearPreload,
    rearRaise: input.rearRaise,
    tubeRaise: input.tubeRaise,
  })
  const loadCase = { payload: aboard(spec, input) }
  // the radii of the sheet are those of the loaded tyres of that reading
  const tyres: Tyres = {
    front: { stiffness: input.tyreRate, load: Math.max(0, measured.frontLoad) },
    rear: { stiffness: input.tyreRate, load: Math.max(0, measured.rearLoad) },
  }
  return {
    upright: solveStance(bike, loadCase, { tyres }),
    point,
    touch: leanToTouch(bike, loadCase, point, { crownRadius: crown, tyres }),
  }
}

function resultsOf(
  { crown, halfWidth }: Values,
  { upright, point, touch }: Situation,
): OutputOf<typeof statement> {
  const heightNow = upright.toGround(point).z
  return {
    roll: touch?.roll ?? null,
    rigid: touchAngle({ height: heightNow, halfWidth, crownRadius: crown }),
    heightNow,
    squat: touch && heightNow - touch.height,
    effective: touch && touch.effectiveLean,
    sideways: touch && STANDARD_GRAVITY * Math.tan(touch.effectiveLean),
    frontTravel: touch && touch.stance.frontTravel,
    rearTravel: touch && touch.stance.rearTravel,
  }
}

/** SI in, SI out. */
const compute = (input: Values): OutputOf<typeof statement> => resultsOf(input, situationOf(input))

/** Before: the rider alone, nothing changed. */
const baseline = () => ({
  passenger: 0,
  luggage: 0,
  rearPreload: 0,
  rearRaise: 0,
  tubeRaise: 0,
})

/** The bike from behind: how far it is rolled [rad], and the part's height upright in that bend [m]. */
function picture(input: Values) {
  const { upright, point, touch } = situationOf(input)
  return {
    roll: touch?.roll ?? null,
    height: touch?.height ?? upright.toGround(point).z,
    wheelRadius: upright.rearAxle.z,
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input) }
  },
  baseline,
})

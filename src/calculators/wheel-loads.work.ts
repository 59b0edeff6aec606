import { solveStance, wheelLoads } from '../core/index.ts'
import type { PointMass, Stance } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import { bikeOf, geometryOf } from './bikes.ts'
import type { Cell, Given, InputValues, OutputValues } from './define.ts'
import type { inputs, outputs } from './wheel-loads.fields.ts'
import { aboard } from './whole-bike.ts'

type Values = InputValues<typeof inputs>

const stand = ({ bike, ...masses }: Values): Stance => solveStance(bikeOf(bike), { payload: aboard(bike, masses) })

/** What one mass puts on each wheel [N], standing where the loaded bike stands. */
function loadsOf(stance: Stance, { mass, x, z }: PointMass): { front: number; rear: number } {
  return wheelLoads({ masses: [{ mass, ...stance.toGround({ x, z }) }], wheelbase: stance.wheelbase })
}

function rows(input: Values, stance: Stance): Cell[][] {
  const loads = aboard(input.bike, input).map(({ name, ...mass }) => ({ name, ...loadsOf(stance, mass) }))
  const bike = {
    name: 'Bike alone',
    front: stance.frontLoad - loads.reduce((sum, { front }) => sum + front, 0),
    rear: stance.rearLoad - loads.reduce((sum, { rear }) => sum + rear, 0),
  }
  return [bike, ...loads].map(({ name, front, rear }) => [name, front, rear, front / (front + rear)])
}

/** SI in, SI out. */
export function compute(input: Values): OutputValues<typeof outputs> {
  const stance = stand(input)
  const { frontLoad, rearLoad, frontShare, rake, wheelbase } = stance
  return { frontLoad, rearLoad, frontShare, parts: rows(input, stance), rake, wheelbase }
}

/** Before: the bike alone. */
export const baseline = (): Given => ({ rider: 0, passenger: 0, luggage: 0 })

/** The bike as it stands, with everybody aboard [SI]. */
export function picture(input: Values): BikePicture {
  const stance = stand(input)
  return {
    ...bikePicture(input.bike, geometryOf(input.bike), stance),
    aboard: aboard(input.bike, input).map((place) => ({ ...place, ...stance.toGround(place) })),
  }
}

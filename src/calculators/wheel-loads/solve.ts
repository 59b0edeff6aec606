import { solveStance, wheelLoads } from '../../core/index.ts'
import type { PointMass, Stance } from '../../core/index.ts'
import { bikePicture } from '../../bikes/picture.ts'
import type { BikePicture } from '../../bikes/picture.ts'
import { bikeOf, geometryOf } from '../../bikes/bikes.ts'
import type { Cell } from '../../machine/cells.ts'
import type { Given } from '../../machine/given.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import type statement from './statement.ts'
import { aboard } from '../../bikes/aboard.ts'

type Values = InputOf<typeof statement>

const stand = ({ bike, ...masses }: Values): Stance =>
  solveStance(bikeOf(bike), { payload: aboard(bike, masses) })

/** What one mass puts on each wheel [N], standing where the loaded bike stands. */
function loadsOf(stance: Stance, { mass, x, z }: PointMass): { front: number; rear: number } {
  return wheelLoads({
    masses: [{ mass, ...stance.toGround({ x, z }) }],
    wheelbase: stance.wheelbase,
  })
}

function rows(input: Values, stance: Stance): Cell[][] {
  const loads = aboard(input.bike, input).map(({ part, ...mass }) => ({
    part,
    ...loadsOf(stance, mass),
  }))
  const bike = {
    part: 'bike',
    front: stance.frontLoad - loads.reduce((sum, { front }) => sum + front, 0),
    rear: stance.rearLoad - loads.reduce((sum, { rear }) => sum + rear, 0),
  }
  return [bike, ...loads].map(({ part, front, rear }) => [
    part,
    front,
    rear,
    front / (front + rear),
  ])
}

/** SI in, SI out. */
function compute(input: Values, stance: ReturnType<typeof stand>): OutputOf<typeof statement> {
  const { frontLoad, rearLoad, frontShare, rake, wheelbase } = stance
  return { frontLoad, rearLoad, frontShare, parts: rows(input, stance), rake, wheelbase }
}

/** Before: the bike alone. */
const baseline = (): Given => ({ rider: 0, passenger: 0, luggage: 0 })

/** The bike as it stands, with everybody aboard [SI]. */
function picture(input: Values, stance: ReturnType<typeof stand>): BikePicture {
  return {
    ...bikePicture(input.bike, geometryOf(input.bike), stance),
    aboard: aboard(input.bike, input).map((place) => ({ ...place, ...stance.toGround(place) })),
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const stance = stand(input)
    return { outputs: compute(input, stance), picture: () => picture(input, stance) }
  },
  baseline,
})

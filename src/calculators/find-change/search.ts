import { changeSearch, solveStance } from '../../core/index.ts'
import type { Aim, AimCases, Bike, FoundChange, Stance } from '../../core/index.ts'
import { aboard } from '../../bikes/aboard.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import { aimsOf } from './aims.ts'
import { meansOf, type Values } from './means.ts'

/** Gas squeezed by a brake has no time to shed its heat: 1.4, the ideal gas law’s fast end. */
const FAST = 1.4

function casesOf({ bike, rider, deceleration }: Values): AimCases {
  const payload = aboard(bike, { rider })
  return {
    static: {},
    rider: { payload },
    braking: { payload, deceleration, gasState: { exponent: FAST } },
  }
}

/** A bike under its loads, with the search on it. */
interface Ready {
  key: string
  bike: Bike
  cases: AimCases
  now: Stance
  find: ReturnType<typeof changeSearch>
}

let ready: Ready | null = null

/** The search on one bike is kept while only windows and means change, since what was solved for it still holds. */
function readyFor(input: Values): Ready {
  const key = JSON.stringify([input.bike, input.rider, input.deceleration])
  if (ready?.key === key) return ready
  const bike = bikeOf(input.bike)
  const cases = casesOf(input)
  const now = solveStance(bike, cases.rider)
  ready = { key, bike, cases, now, find: changeSearch(bike, cases) }
  return ready
}

/** One search: on what, for what, and what it found. */
export interface Solved extends Ready {
  aims: Aim[]
  found: FoundChange
}

/** Searches for what is asked. */
export function search(input: Values): Solved {
  const on = readyFor(input)
  const aims = aimsOf(input, on.now)
  return { ...on, aims, found: on.find({ aims, means: meansOf(input) }) }
}

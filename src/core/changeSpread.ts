import type { Bike, LoadCase } from './bike.ts'
import { type BikeChange, changeBike } from './bikeChange.ts'
import {
  aimReading,
  aimStances,
  axlePlaces,
  CASE_OF,
  type AimCase,
  type AimCases,
  type AimId,
} from './changeAims.ts'
import { nonNegative, record } from './domain.ts'
import type { Aim } from './changeTask.ts'
import { normalBelow } from './normal.ts'
import { solveStance } from './stance.ts'
import { propagate } from './uncertainty.ts'

/** How well a bike is known, as standard uncertainties: spring rates as a share [1], preload of each leg and of the shock [m], what is carried [kg]. */
export interface KnownWithin {
  rates: number
  preload: number
  carried: number
}

/** What a change leaves open of one aim: the standard uncertainty of its reading, in the aim's unit, and the chance that the aim is met [1]. */
export interface AimSpread {
  aim: AimId
  uncertainty: number
  chance: number
}

/** Off by how much, one at a time: rates of the fork springs and the shock's, preloads, what is carried, and rates of new springs. */
type Off = [number, number, number, number, number, number, number]

/**
 * How sure each aim of a change is while the bike is known only so well. Aims in `fromNow` (trail, rake, heights) are windows about where that same bike
 * stands now, so that what is off both before and after drops out of them. New springs are off by themselves. Refuses uncertainties below 0 and a
 * change that cannot be built. Source: `propagate`, first order; readings of normal distribution.
 */
export function spreadOfChange(
  bike: Bike,
  cases: AimCases,
  change: BikeChange,
  aims: readonly Aim[],
  known: KnownWithin,
  fromNow: readonly AimId[] = [],
): AimSpread[] {
  const { rates, preload, carried } = record('known', known)
  const { rearTravel } = solveStance(bike, cases.rider)
  const changed = changeBike(bike, change, rearTravel)
  const wanted = new Set<AimCase>(aims.map(({ id }) => CASE_OF[id]))
  const read = (off: Off): number[] => {
    const [one, under] = [offBike(bike, off), offCases(cases, off[4])]
    const now = aimStances(one, under, new Set([...wanted, 'rider'] as const))
    const places = axlePlaces(one, now.rider!)
    const after = aimStances(offBike(changed, withNewSprings(change, off)), under, wanted)
    return aims.map(({ id }) => {
      const reading = aimReading(id, after, places)
      return fromNow.includes(id) ? reading - aimReading(id, now, places) : reading
    })
  }
  const kept = new Map<string, number[]>()
  const readOnce = (off: number[]): number[] => {
    const had = kept.get(off.join())
    if (had !== undefined) return had
    const found = read(off as Off)
    kept.set(off.join(), found)
    return found
  }
  const exact: Off = [0, 0, 0, 0, 0, 0, 0]
  const each = [rates, rates, preload, preload, carried, rates, rates]
  const asIs = aimStances(bike, cases, new Set([...wanted, 'rider'] as const))
  const places = axlePlaces(bike, asIs.rider!)
  return aims.map(({ id, low, high }, at) => {
    const { value, uncertainty } = propagate((off) => readOnce(off)[at]!, exact, each)
    const origin = fromNow.includes(id) ? aimReading(id, asIs, places) : 0
    return { aim: id, uncertainty, chance: within(value + origin, uncertainty, low, high) }
  })
}

function within(value: number, uncertainty: number, low: number, high: number): number {
  if (nonNegative('uncertainty', uncertainty) === 0) return value >= low && value <= high ? 1 : 0
  return normalBelow((high - value) / uncertainty) - normalBelow((low - value) / uncertainty)
}

const scaled = <T extends { rate: number }>(spring: readonly T[], by: number): T[] =>
  spring.map((group) => ({ ...group, rate: group.rate * (1 + by) }))

function offBike(bike: Bike, [fork, rear, forkPreload, rearPreload]: Off): Bike {
  const legs = bike.fork.legs.map((leg) =>
    leg.spring.length === 0
      ? leg
      : { ...leg, spring: scaled(leg.spring, fork), preload: leg.preload + forkPreload },
  )
  const spring = scaled(bike.rear.spring, rear)
  return {
    ...bike,
    fork: { ...bike.fork, legs },
    rear: { ...bike.rear, spring, preload: bike.rear.preload + rearPreload },
  }
}

/** A new spring is off by itself, whatever the one is that it replaces. */
const withNewSprings = ({ forkRate, rearRate }: BikeChange, off: Off): Off => [
  forkRate === undefined ? off[0] : off[5],
  rearRate === undefined ? off[1] : off[6],
  off[2],
  off[3],
  off[4],
  0,
  0,
]

/** The loads with so many kilograms more carried, shared out as what is carried now. */
function offCases(cases: AimCases, more: number): AimCases {
  return {
    ...(cases.static === undefined ? {} : { static: cases.static }),
    rider: heavier(cases.rider, more),
    ...(cases.braking === undefined ? {} : { braking: heavier(cases.braking, more) }),
  }
}

function heavier(load: LoadCase, more: number): LoadCase {
  const carried = (load.payload ?? []).reduce((sum, { mass }) => sum + mass, 0)
  // who weighs nothing is not there
  if (carried === 0) return load
  const payload = load.payload!.map((part) => ({
    ...part,
    mass: part.mass * Math.max(0, 1 + more / carried),
  }))
  return { ...load, payload }
}

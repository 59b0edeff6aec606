import type { Bike } from './bike.ts'
import type { BikeChange } from './bikeChange.ts'
import type { AimCases, AimId } from './changeAims.ts'
import type { Mean } from './changeGrid.ts'
import type { Tally } from './changeTrial.ts'

/** One aim: what is to be read, from its low to its high end, in the unit of `aimReading`. */
export interface Aim {
  id: AimId
  low: number
  high: number
}

/** What is wanted, and what may be changed. */
export interface ChangeTask {
  aims: readonly Aim[]
  means: readonly Mean[]
  /** what is changed in any case, as springs that are bought already, and its work; every way holds it */
  base?: BikeChange
  baseWork?: number
  /** most means in one way */
  mostMeans?: number
  /** most ways told */
  mostWays?: number
  /** whether the nearest is looked for where no way meets all aims; it is unless this is false */
  nearest?: boolean
}

/** What is wanted of which bike under which loads, and what may be changed. */
export interface ChangeWanted extends ChangeTask {
  bike: Bike
  cases: AimCases
}

/** One way: its changes from now, what the bike then reads, its work, and the aims that it misses, each by how much. */
export interface Way {
  change: BikeChange
  readings: Partial<Record<AimId, number>>
  work: number
  /** sum of its changes, each as a share of the largest that is allowed [1] */
  size: number
  misses: { aim: AimId; by: number }[]
}

/**
 * Ways found, best first; `meets` is false where none meets all aims, and then the one way is the nearest. `whole` is false where a search gave up.
 * `alreadyThere`: the bike as it is meets them. `tally` counts what was solved and tried on this bike for these aims, and what was left out.
 */
export interface FoundChange {
  ways: Way[]
  meets: boolean
  alreadyThere: boolean
  whole: boolean
  tally: Tally
}

/** A search under way. */
export interface ChangeLook {
  /** goes on until all is looked at, or until `enough` says so; tells whether all was looked at. Without `enough` it goes to the end */
  work(enough?: () => boolean): boolean
  /** what was found so far: the ways that meet all aims, or once there are none, the nearest so far */
  found(): FoundChange
}

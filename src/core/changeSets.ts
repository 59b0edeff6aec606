import { cornersOf } from './changeCorners.ts'
import type { MeanGrid } from './changeGrid.ts'
import type { Response } from './changeResponse.ts'
import type { BoxSearch, Wanted } from './changeSearch.ts'
import type { Trial } from './changeTrial.ts'

/** What sets of means are made from. */
export interface SetsTask {
  grids: readonly MeanGrid[]
  responses: readonly (readonly Response[])[]
  wanted: readonly Wanted[]
  trial: Trial
}

// Boxes that one set of means is looked at in: far more than any case of a bike that can be built was seen to need.
const PATIENCE = 6000

/** Some of the means, by their places among the grids, and the work of all together. */
export interface MeansSet {
  places: number[]
  work: number
}

/** A set of means ready to search. */
export interface SearchedSet extends MeansSet {
  search: BoxSearch
}

/** Every set of up to so many means, least work first, then fewest, then in the order of their names. */
export function setsOf(task: SetsTask, most: number): SearchedSet[] {
  const sets: SearchedSet[] = []
  for (let code = 1; code < 2 ** task.grids.length; code++) {
    const places = task.grids.flatMap((_, i) => ((code >> i) & 1 ? [i] : []))
    if (places.length > most) continue
    const work = places.reduce((sum, i) => sum + task.grids[i]!.work, 0)
    sets.push({ places, work, search: searchOf(task, places) })
  }
  return sets.sort(
    (a, b) => a.work - b.work || a.places.length - b.places.length || earlier(a.places, b.places),
  )
}

export function earlier(a: readonly number[], b: readonly number[]): number {
  for (const [i, place] of a.entries()) if (place !== b[i]) return place - b[i]!
  return 0
}

function searchOf({ trial, wanted, ...task }: SetsTask, places: readonly number[]): BoxSearch {
  const grids = places.map((i) => task.grids[i]!)
  const responses = places.map((i) => task.responses[i]!)
  const corners = cornersOf({ grids, responses, trial })
  return { grids, responses, wanted, corners, patience: PATIENCE }
}

/** Whether a set costs more than another, in work or, at the same work, in changes: no size can make up for it. */
export const dearer = (a: MeansSet, b: MeansSet): boolean =>
  a.work > b.work || (a.work === b.work && a.places.length > b.places.length)

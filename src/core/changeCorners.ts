import { changeAt, type MeanGrid } from './changeGrid.ts'
import type { Response } from './changeResponse.ts'
import type { Trial, TrialReading } from './changeTrial.ts'

/** Reads the places of one set of means, each once. Places run alike with the grids. */
export interface Corners {
  place(place: readonly number[]): TrialReading | null
  /** what the corner of a box reads at which an aim is least, or most; null at a corner that cannot be built */
  corner(aim: number, most: boolean, low: readonly number[], high: readonly number[]): Corner
}

type Corner = TrialReading | null

interface CornersTask {
  grids: readonly MeanGrid[]
  responses: readonly (readonly Response[])[]
  trial: Trial
}

/** Sets up the reading of places: which corner bounds which aim depends on which means raise it. */
export function cornersOf({ grids, responses, trial }: CornersTask): Corners {
  const rises = (responses[0] ?? []).map((_, aim) => responses.map((row) => row[aim]!.rises))
  const lengths = grids.map(({ values }) => values.length)
  const known = new Map<number, Corner>()
  const at = grids.map(() => 0)
  const read = (): Corner => {
    let key = 0
    for (let i = 0; i < at.length; i++) key = key * lengths[i]! + at[i]!
    let found = known.get(key)
    if (found === undefined) known.set(key, (found = trial.read(changeAt(grids, at))))
    return found
  }
  return {
    place(place) {
      for (let i = 0; i < at.length; i++) at[i] = place[i]!
      return read()
    },
    corner(aim, most, low, high) {
      const ups = rises[aim]!
      for (let i = 0; i < at.length; i++) at[i] = ups[i] === most ? high[i]! : low[i]!
      return read()
    },
  }
}

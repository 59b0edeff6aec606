import type { MeanGrid } from './changeGrid.ts'
import type { Trial } from './changeTrial.ts'

/** How one aim answers to one means: which way, at most how steeply, and whether it is so weak that its direction may turn. */
export interface Response {
  rises: boolean
  slope: number
  weak: boolean
}

// A means that moves an aim by less than this share of what the strongest does: a side effect through the pitch, whose direction may turn.
const WEAK = 0.15

/** Responses by means and aim, each from four single changes: the ends of its grid and the steps next to now. */
export function responsesOf(grids: readonly MeanGrid[], trial: Trial): Response[][] {
  const now = trial.read({})
  const table = grids.map((grid) => probe(grid, trial, now?.readings ?? []))
  const aims = now?.readings.length ?? 0
  for (let aim = 0; aim < aims; aim++) {
    const full = table.map((row, i) => row[aim]!.slope * spanOf(grids[i]!))
    const strongest = Math.max(...full)
    table.forEach((row, i) => (row[aim]!.weak = full[i]! <= WEAK * strongest))
  }
  return table
}

const spanOf = ({ values, now }: MeanGrid): number =>
  values.length === 0 ? 0 : Math.max(values.at(-1)!, now) - Math.min(values[0]!, now)

function probe(grid: MeanGrid, trial: Trial, now: readonly number[]): Response[] {
  const { values, above } = grid
  const places = [...new Set([0, above - 1, above, values.length - 1])].filter(
    (place) => place >= 0 && place < values.length,
  )
  const response = now.map((): Response => ({ rises: true, slope: 0, weak: true }))
  const most = now.map(() => 0)
  for (const place of places) {
    const value = values[place]!
    const found = trial.read({ [grid.id]: value })
    found?.readings.forEach((reading, aim) => {
      const moved = reading - now[aim]!
      const slope = moved / (value - grid.now)
      response[aim]!.slope = Math.max(response[aim]!.slope, Math.abs(slope))
      if (Math.abs(moved) <= most[aim]!) return
      most[aim] = Math.abs(moved)
      response[aim]!.rises = slope >= 0
    })
  }
  return response
}

import type { Corners } from './changeCorners.ts'
import type { MeanGrid } from './changeGrid.ts'
import type { Response } from './changeResponse.ts'
import { heapOf } from './heap.ts'

/** Low and high end of what is wanted of one aim, and what counts as one unit of missing it, all in the aim's unit. */
export interface Wanted {
  low: number
  high: number
  unit: number
}

/** One set of means to search, with what is wanted. Lists of means run alike in `grids` and `responses`, lists of aims in `wanted`. */
export interface BoxSearch {
  grids: readonly MeanGrid[]
  responses: readonly (readonly Response[])[]
  wanted: readonly Wanted[]
  corners: Corners
  /** boxes looked at before it gives up */
  patience: number
}

/** A place of the grids, its size [1], by how many units it misses [1], and what it reads. */
export interface Place {
  place: number[]
  size: number
  miss: number
  readings: number[]
}

interface Box {
  low: number[]
  high: number[]
  /** no place in the box misses by less, none is smaller */
  miss: number
  size: number
  exact: number[] | null
}

/** What a search ended with; `whole` is false where it gave up before all was looked at. */
export interface Ended {
  found: Place | null
  whole: boolean
}

/** By how many units readings miss what is wanted, summed; rounding of a window's end counts as meeting it. */
export function missOf(readings: readonly number[], wanted: readonly Wanted[]): number {
  let miss = 0
  for (let aim = 0; aim < wanted.length; aim++)
    miss += outside(readings[aim]!, readings[aim]!, wanted[aim]!)
  return miss
}

const ROUNDING = 1e-9

// Boxes between two rests: a few milliseconds of stances.
const BOXES_A_STEP = 32

function outside(least: number, most: number, { low, high, unit }: Wanted): number {
  const by = Math.max(0, low - most, least - high) / unit
  return by < ROUNDING ? 0 : by
}

/**
 * The smallest place that meets all aims; with `nearerThan`, the place that misses by least, if by less than that. Best first over boxes of the grid:
 * readings rise or fall steadily with every means, so those at two opposite corners bound what a box can read; bounds are widened by what bends and by
 * weak side effects. Ties go to the lowest places. It rests every few boxes, so that whoever asked can drop it. Source: branch and bound on monotone functions, worked out here.
 */
export function* searchBoxes(search: BoxSearch, nearerThan = 0): Generator<undefined, Ended> {
  const { grids, patience } = search
  const queue = heapOf<Box>(before)
  const consider = (low: number[], high: number[]): void => {
    const box = boxOf(search, low, high, nearerThan)
    if (box !== null) queue.push(box)
  }
  if (grids.every(({ values }) => values.length > 0))
    consider(
      grids.map(() => 0),
      grids.map(({ values }) => values.length - 1),
    )
  for (let looked = 0; looked < patience; looked++) {
    if (looked % BOXES_A_STEP === BOXES_A_STEP - 1) yield
    const box = queue.pop()
    if (box === undefined) return { found: null, whole: true }
    const { low, high, size, miss, exact } = box
    if (exact !== null) return { found: { place: low, size, miss, readings: exact }, whole: true }
    const across = longest(search, box)
    const middle = (low[across]! + high[across]!) >> 1
    consider(low, withPlace(high, across, middle))
    consider(withPlace(low, across, middle + 1), high)
  }
  return { found: null, whole: false }
}

function withPlace(all: readonly number[], which: number, place: number): number[] {
  const changed = all.slice()
  changed[which] = place
  return changed
}

function before(a: Box, b: Box): boolean {
  if (a.miss !== b.miss) return a.miss < b.miss
  if (a.size !== b.size) return a.size < b.size
  for (let i = 0; i < a.low.length; i++) if (a.low[i] !== b.low[i]) return a.low[i]! < b.low[i]!
  for (let i = 0; i < a.low.length; i++) if (a.high[i] !== b.high[i]) return a.high[i]! < b.high[i]!
  return false
}

/** A box with its bounds; null where nothing in it may be offered, or nothing misses by less than what is asked for. */
function boxOf(search: BoxSearch, low: number[], high: number[], nearerThan: number): Box | null {
  const { grids, wanted, corners } = search
  const nearEnough = (miss: number): boolean => (nearerThan > 0 ? miss < nearerThan : miss === 0)
  let [size, single] = [0, true]
  for (let i = 0; i < grids.length; i++) {
    size += leastSize(grids[i]!, low[i]!, high[i]!)
    single &&= low[i] === high[i]
  }
  if (single) {
    const read = corners.place(low)
    if (read === null || !read.sound) return null
    const miss = missOf(read.readings, wanted)
    return nearEnough(miss) ? { low, high, size, miss, exact: read.readings } : null
  }
  let miss = 0
  for (let aim = 0; aim < wanted.length; aim++) {
    const least = corners.corner(aim, false, low, high)
    const most = corners.corner(aim, true, low, high)
    if (least === null || most === null) continue
    if (least.fault !== null && least.fault === most.fault) return null
    const slack = slackOf(search, aim, low, high)
    miss += outside(least.readings[aim]! - slack, most.readings[aim]! + slack, wanted[aim]!)
    if (!nearEnough(miss)) return null
  }
  return { low, high, size, miss, exact: null }
}

// Sizes fall towards no change and rise again: the least is at an end, or on either side of no change.
function leastSize({ sizes, above }: MeanGrid, low: number, high: number): number {
  if (high < above) return sizes[high]!
  return low < above ? Math.min(sizes[above - 1]!, sizes[above]!) : sizes[low]!
}

// Shares of what a means does over a box by which a bound is widened: bends are small, and a weak side effect may go either way.
const BEND = 0.05
const TURN = 2

function slackOf(
  { grids, responses }: BoxSearch,
  aim: number,
  low: readonly number[],
  high: readonly number[],
): number {
  let slack = 0
  for (let i = 0; i < grids.length; i++) {
    const { values } = grids[i]!
    const { slope, weak } = responses[i]![aim]!
    slack += (weak ? TURN : BEND) * slope * (values[high[i]!]! - values[low[i]!]!)
  }
  return slack
}

/** The means across which a box is cut in two: the one that moves its aims most. */
function longest({ grids, responses, wanted }: BoxSearch, { low, high }: Box): number {
  let [widest, most] = [-1, -1]
  for (let i = 0; i < grids.length; i++) {
    if (low[i] === high[i]) continue
    const { values } = grids[i]!
    const span = values[high[i]!]! - values[low[i]!]!
    for (let aim = 0; aim < wanted.length; aim++) {
      const moves = (responses[i]![aim]!.slope * span) / wanted[aim]!.unit
      if (moves > most) [widest, most] = [i, moves]
    }
  }
  return widest
}

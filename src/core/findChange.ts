import type { Bike } from './bike.ts'
import type { BikeChange } from './bikeChange.ts'
import { type AimCases, type AimId, AIMS } from './changeAims.ts'
import { buildable, changeAt, gridsOf, type Mean, type MeanGrid } from './changeGrid.ts'
import { responsesOf } from './changeResponse.ts'
import { missOf, searchBoxes } from './changeSearch.ts'
import {
  dearer,
  earlier,
  type MeansSet,
  type SearchedSet,
  type SetsTask,
  setsOf,
} from './changeSets.ts'
import { type Tally, type Trial, trialOf } from './changeTrial.ts'
import { DomainError, finite, list, oneOf, record, wholeNumber } from './domain.ts'

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

// One unit of missing an aim: what a fitter can read, or about what as much is worth in trail.
const UNITS: Readonly<Record<AimId, number>> = {
  frontStaticSag: 1e-3,
  frontRiderSag: 1e-3,
  rearStaticSag: 1e-3,
  rearRiderSag: 1e-3,
  trail: 1e-3,
  rake: Math.PI / 1800,
  frontShare: 5e-3,
  frontHeight: 1e-3,
  rearHeight: 1e-3,
  brakingReserve: 1e-3,
}

// By how many units, and by what share of what is missing, more work must come nearer to be told as the nearest way [1].
const WORTH_MORE_WORK = { units: 0.1, share: 0.05 }

const worthwhile = (miss: number): number =>
  miss - Math.max(WORTH_MORE_WORK.units, WORTH_MORE_WORK.share * miss)

/**
 * Which changes bring a bike to its aims: up to five different ways, least work first, then fewest changes, then smallest. Ways differ in what they
 * change, and none holds another: what works with less is not told again with more. Where none meets all aims, the way that misses by least, in
 * millimetres, tenths of a degree and half points of share, summed. A way whose bike stands at a stop at the aims' loads, or whose spring newly binds
 * within its travel, is none. The order of aims and means does not matter. Refuses an aim or means named twice, and ends upside down.
 * Source: `solveStance` at every place that is told.
 */
export function findChange(wanted: ChangeWanted): FoundChange {
  const { bike, cases } = record('wanted', wanted)
  return changeSearch(bike, cases)(wanted)
}

/**
 * `findChange` for one bike under its loads, to be called for one task after the other: what was solved for one is not solved again for the next.
 * Answers do not depend on what was asked before.
 */
export function changeSearch(bike: Bike, cases: AimCases): (task: ChangeTask) => FoundChange {
  record('bike', bike)
  record('cases.rider', record('cases', cases).rider)
  const trials = new Map<string, Trial>()
  return (wanted) => {
    const mostMeans = wholeNumber('mostMeans', record('wanted', wanted).mostMeans ?? 3, 1)
    const mostWays = wholeNumber('mostWays', wanted.mostWays ?? 5, 1)
    const aims = aimsOf(wanted.aims)
    const ids = aims.map(({ id }) => id)
    const trial = trials.get(ids.join()) ?? trialOf(bike, cases, ids)
    trials.set(ids.join(), trial)
    const now = trial.read({})
    if (now === null) throw new DomainError('bike', bike, 'must be one that can be solved as it is')
    const task = taskOf(gridsOf(bike, wanted.means), aims, trial)
    if (now.sound && missOf(now.readings, task.wanted) === 0)
      return told(task, { ways: [wayOf(task, NOTHING, now.readings, 0)], meets: true, whole: true })
    const sets = setsOf(task, mostMeans)
    const { ways, whole } = meeting(task, sets, mostWays)
    if (ways.length > 0) return told(task, { ways, meets: true, whole })
    if (wanted.nearest === false) return told(task, { ways, meets: false, whole })
    return told(task, nearest(task, sets, whole, now.sound ? now.readings : null))
  }
}

interface Task extends SetsTask {
  aims: readonly Aim[]
}

const NOTHING: MeansSet = { places: [], work: 0 }

function taskOf(all: readonly MeanGrid[], aims: readonly Aim[], trial: Trial): Task {
  const grids = buildable(all, trial).filter(({ values }) => values.length > 0)
  const wanted = aims.map(({ id, low, high }) => ({ low, high, unit: UNITS[id] }))
  return { grids, responses: responsesOf(grids, trial), aims, wanted, trial }
}

const told = (
  { trial }: Task,
  found: Pick<FoundChange, 'ways' | 'meets' | 'whole'>,
): FoundChange => ({
  ...found,
  alreadyThere: found.meets && found.ways.every(({ size }) => size === 0),
  tally: trial.tally(),
})

/** The aims in the fixed order of their names. */
function aimsOf(aims: readonly Aim[]): Aim[] {
  const sorted = list('aims', aims, 1).map((aim) => {
    const id = oneOf('aims.id', record('aims', aim).id, AIMS)
    if (finite('aims.low', aim.low) > finite('aims.high', aim.high))
      throw new DomainError('aims.low', aim.low, 'must not be above the high end')
    return { id, low: aim.low, high: aim.high }
  })
  if (new Set(sorted.map(({ id }) => id)).size < sorted.length)
    throw new DomainError('aims', aims, 'must name each aim once')
  return sorted.sort((a, b) => AIMS.indexOf(a.id) - AIMS.indexOf(b.id))
}

function meeting(task: Task, sets: readonly SearchedSet[], most: number) {
  const found: { set: MeansSet; way: Way }[] = []
  let whole = true
  for (const set of sets) {
    if (found.length >= most && dearer(set, found[most - 1]!.set)) break
    if (found.some((other) => other.set.places.every((i) => set.places.includes(i)))) continue
    const ended = searchBoxes(set.search)
    whole &&= ended.whole
    if (ended.found !== null)
      found.push({
        set,
        way: wayOf(task, set, ended.found.readings, ended.found.size, ended.found.place),
      })
  }
  found.sort(
    (a, b) =>
      a.way.work - b.way.work ||
      a.set.places.length - b.set.places.length ||
      a.way.size - b.way.size ||
      earlier(a.set.places, b.set.places),
  )
  return { ways: found.slice(0, most).map(({ way }) => way), whole }
}

/** The way that misses by least; more work must come clearly nearer. Nothing changed is a way too, unless the bike stands at a stop now. */
function nearest(task: Task, sets: readonly SearchedSet[], whole: boolean, now: number[] | null) {
  let best = now === null ? null : wayOf(task, NOTHING, now, 0)
  let least = now === null ? Infinity : missOf(now, task.wanted)
  for (const set of sets) {
    const nearer = least === Infinity ? least : worthwhile(least)
    if (nearer <= 0) break
    const { found, whole: all } = searchBoxes(set.search, nearer)
    whole &&= all
    if (found === null) continue
    best = wayOf(task, set, found.readings, found.size, found.place)
    least = found.miss
  }
  return { ways: best === null ? [] : [best], meets: false, whole }
}

function wayOf(
  { grids, aims, wanted }: Task,
  set: MeansSet,
  readings: readonly number[],
  size: number,
  place: readonly number[] = [],
): Way {
  const misses = aims.flatMap(({ id, low, high }, aim) => {
    const reading = readings[aim]!
    const one = [wanted[aim]!]
    if (missOf([reading], one) === 0) return []
    return [{ aim: id, by: reading < low ? reading - low : reading - high }]
  })
  return {
    change: changeAt(
      set.places.map((i) => grids[i]!),
      place,
    ),
    readings: Object.fromEntries(aims.map(({ id }, aim) => [id, readings[aim]!])),
    work: set.work,
    size,
    misses,
  }
}

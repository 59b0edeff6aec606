import type { BikeChange } from './bikeChange.ts'
import type { AimId } from './changeAims.ts'
import { buildable, changeAt, type MeanGrid } from './changeGrid.ts'
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
import type { Trial, TrialReading } from './changeTrial.ts'
import type { Aim, ChangeLook, FoundChange, Way } from './changeTask.ts'

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

/** What a look is for: the aims in their order, and what is changed in any case. */
interface Asked {
  aims: readonly Aim[]
  base: BikeChange
  baseWork: number
}

interface Limits {
  /** what the bike reads with nothing changed but the base */
  now: TrialReading
  mostMeans: number
  mostWays: number
  nearest: boolean
}

interface Task extends SetsTask, Asked {}

/** How far a search has come. */
type SoFar = Pick<FoundChange, 'ways' | 'meets' | 'whole'>
type Steps = Generator<undefined, void>

const NOTHING: MeansSet = { places: [], work: 0 }

/** A search of these grids, to be worked on in steps. */
export function lookFor(
  asked: Asked,
  all: readonly MeanGrid[],
  trial: Trial,
  limits: Limits,
): ChangeLook {
  const grids = buildable(all, trial).filter(({ values }) => values.length > 0)
  const wanted = asked.aims.map(({ id, low, high }) => ({ low, high, unit: UNITS[id] }))
  const task = { ...asked, grids, responses: responsesOf(grids, trial), wanted, trial }
  const soFar: SoFar = { ways: [], meets: false, whole: true }
  const steps = stepsOf(task, limits, soFar)
  let done = false
  const changesNothing = Object.keys(asked.base).length === 0
  return {
    work(enough = () => false) {
      while (!done) {
        done = steps.next().done === true
        if (enough()) break
      }
      return done
    },
    found: () => ({
      ...soFar,
      alreadyThere: changesNothing && soFar.meets && soFar.ways.every(({ size }) => size === 0),
      tally: trial.tally(),
    }),
  }
}

function* stepsOf(task: Task, { now, mostMeans, mostWays, nearest }: Limits, soFar: SoFar): Steps {
  if (now.sound && missOf(now.readings, task.wanted) === 0) {
    soFar.ways = [wayOf(task, NOTHING, now.readings, 0)]
    soFar.meets = true
    return
  }
  const sets = setsOf(task, mostMeans)
  yield* meeting(task, sets, mostWays, soFar)
  if (!soFar.meets && nearest) yield* nearestWay(task, sets, now.sound ? now.readings : null, soFar)
}

function* meeting(task: Task, sets: readonly SearchedSet[], most: number, soFar: SoFar): Steps {
  const found: { set: MeansSet; way: Way }[] = []
  for (const set of sets) {
    if (found.length >= most && dearer(set, found[most - 1]!.set)) return
    if (found.some((other) => other.set.places.every((i) => set.places.includes(i)))) continue
    yield
    const ended = yield* searchBoxes(set.search)
    soFar.whole &&= ended.whole
    if (ended.found === null) continue
    const { readings, size, place } = ended.found
    found.push({ set, way: wayOf(task, set, readings, size, place) })
    found.sort(
      (a, b) =>
        a.way.work - b.way.work ||
        a.set.places.length - b.set.places.length ||
        a.way.size - b.way.size ||
        earlier(a.set.places, b.set.places),
    )
    soFar.ways = found.slice(0, most).map(({ way }) => way)
    soFar.meets = true
  }
}

/** The way that misses by least; more work must come clearly nearer. Nothing changed is a way too, unless the bike stands at a stop now. */
function* nearestWay(
  task: Task,
  sets: readonly SearchedSet[],
  now: number[] | null,
  soFar: SoFar,
): Steps {
  if (now !== null) soFar.ways = [wayOf(task, NOTHING, now, 0)]
  let least = now === null ? Infinity : missOf(now, task.wanted)
  for (const set of sets) {
    const nearer = least === Infinity ? least : worthwhile(least)
    if (nearer <= 0) return
    yield
    const { found, whole } = yield* searchBoxes(set.search, nearer)
    soFar.whole &&= whole
    if (found === null) continue
    soFar.ways = [wayOf(task, set, found.readings, found.size, found.place)]
    least = found.miss
  }
}

function wayOf(
  { grids, aims, wanted, base, baseWork }: Task,
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
  const changed = changeAt(
    set.places.map((i) => grids[i]!),
    place,
  )
  return {
    change: { ...base, ...changed },
    readings: Object.fromEntries(aims.map(({ id }, aim) => [id, readings[aim]!])),
    work: baseWork + set.work,
    size,
    misses,
  }
}

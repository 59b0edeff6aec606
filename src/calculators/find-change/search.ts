import { changeDraws, changeLooks, solveStance, spreadOfChange } from '../../core/index.ts'
import type {
  Aim,
  AimCases,
  AimSpread,
  Bike,
  BikeChange,
  ChangeLook,
  ChangeTask,
  FoundChange,
  MeanId,
  Stance,
} from '../../core/index.ts'
import { aboard } from '../../bikes/aboard.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import type { InParts } from '../../machine/away.ts'
import { aimsOf, FROM_NOW } from './aims.ts'
import { COVERS, type FittedBike, fittedTo, ridden } from './fitted.ts'
import { keptFew } from './keptFew.ts'
import { baseOf, meansOf, type Values } from './means.ts'

/** Gas squeezed by a brake has no time to shed its heat: 1.4, the ideal gas law’s fast end. */
const FAST = 1.4

function casesOf({ bike, rider, passenger = 0, luggage = 0, deceleration }: Values): AimCases {
  const payload = aboard(bike, { rider, passenger, luggage })
  return {
    static: {},
    rider: { payload },
    braking: { payload, deceleration, gasState: { exponent: FAST } },
  }
}

/** A bike under its loads, fitted to what was read, with the search on it. */
interface Ready {
  bike: Bike
  cases: AimCases
  now: Stance
  fitted: FittedBike | null
  /** the loads of each bike drawn */
  drawnCases: AimCases[]
  begin(task: ChangeTask): ChangeLook
}

function makeReady(input: Values): Ready {
  const cases = casesOf(input)
  const sheet = bikeOf(input.bike)
  const [rider = null] = aboard(input.bike, { rider: input.rider })
  const fitted = fittedTo(input, sheet, rider)
  const bike = fitted?.bike ?? sheet
  const under = fitted ? ridden(cases, rider, fitted.rider) : cases
  return {
    bike,
    cases: under,
    now: solveStance(bike, under.rider),
    fitted,
    drawnCases: (fitted?.draws ?? []).map((one) => ridden(cases, rider, one.rider)),
    begin: changeLooks(bike, under),
  }
}

/** The search on one bike is kept while only windows and means change, since what was solved for it still holds. Two: a state, and the one before. */
const readyFor = keptFew(2, makeReady)

const readyOf = (input: Values): Ready => {
  const { bike, rider, passenger, luggage, deceleration } = input
  const { ratesWithin, preloadWithin, riderWithin, readWithin } = input
  const read = [
    input.frontStaticRead,
    input.frontRiderRead,
    input.rearStaticRead,
    input.rearRiderRead,
  ]
  const how = read.some((value) => value !== undefined)
    ? [read, ratesWithin, preloadWithin, riderWithin, readWithin]
    : []
  return readyFor(JSON.stringify([bike, rider, passenger, luggage, deceleration, how]), input)
}

/** One search: on what, for what, and what it has found so far. */
export interface Solved extends Ready {
  aims: Aim[]
  found: FoundChange
  /** whether all was looked at */
  done: boolean
  /** where no way meets all aims: what is not allowed now and would, by itself, let one do so; null while that is not known */
  wouldHelp: MeanId[] | null
  /** how sure each aim of a change is; each change is worked out once */
  spreadOf(change: BikeChange): AimSpread[]
}

/** A search that can rest: the ways first, then, where there are none, what would help. */
interface Running {
  work(enough: () => boolean): boolean
  solved(): Solved
}

function makeRunning(input: Values): Running {
  const on = readyOf(input)
  const aims = aimsOf(input, on.now)
  const task = { aims, means: meansOf(input), ...baseOf(input) }
  const ways = on.begin(task)
  const spreads = new Map<string, AimSpread[]>()
  const spread = spreadFor(input, on, aims)
  const spreadOf = (change: BikeChange): AimSpread[] => {
    const key = JSON.stringify(change)
    const known = spreads.get(key) ?? spread(change)
    spreads.set(key, known)
    return known
  }
  let helps: { id: MeanId; look: ChangeLook }[] | null = null
  let done = false
  return {
    work(enough) {
      if (done || !ways.work(enough)) return done
      if (ways.found().meets) return (done = true)
      helps ??= helping(input, on, task)
      done = helps.every(({ look }) => look.work(enough))
      return done
    },
    solved: () => ({
      ...on,
      aims,
      found: ways.found(),
      done,
      spreadOf,
      wouldHelp: done
        ? (helps ?? []).flatMap(({ id, look }) => (look.found().meets ? [id] : []))
        : null,
    }),
  }
}

/** For each of the means that are not allowed, the least work first, the search with it besides. */
function helping(input: Values, on: Ready, task: ChangeTask): { id: MeanId; look: ChangeLook }[] {
  return meansOf({ ...input, allowed: 'parts' })
    .filter(({ id }) => !task.means.some((mean) => mean.id === id))
    .sort((a, b) => a.work - b.work)
    .map((more) => ({
      id: more.id,
      look: on.begin({ ...task, means: [...task.means, more], mostWays: 1, nearest: false }),
    }))
}

function spreadFor(input: Values, on: Ready, aims: Aim[]): (change: BikeChange) => AimSpread[] {
  const { bike, cases, fitted, drawnCases } = on
  const rates = input.ratesWithin / COVERS
  if (fitted !== null) {
    const draws = fitted.draws.map((one, i) => ({ bike: one, cases: drawnCases[i]! }))
    return changeDraws({ bike, cases, draws, aims, fromNow: FROM_NOW, newRates: rates })
  }
  const known = {
    rates,
    preload: input.preloadWithin / COVERS,
    carried: input.riderWithin / COVERS,
  }
  return (change) => spreadOfChange(bike, cases, change, aims, known, FROM_NOW)
}

const runningFor = keptFew(2, makeRunning)

// In a worker the work on a state is shared out over several evaluations; elsewhere one does it all.
let until = Infinity
let touched: Solved[] = []
let told = ''

/** Searches for what is asked, as far as time allows. */
export function search(input: Values): Solved {
  const running = runningFor(JSON.stringify(input), input)
  running.work(() => performance.now() >= until)
  const solved = running.solved()
  touched.push(solved)
  return solved
}

/** Lets a worker search in parts, and look for new questions between them. */
export const inParts: InParts = {
  begin() {
    told = ''
  },
  allow(time) {
    until = performance.now() + time
    touched = []
  },
  cameTo() {
    if (touched.every(({ done }) => done)) return 'all'
    const ways = JSON.stringify(touched.map(({ found }) => found.ways))
    if (ways === told || touched.some(({ found }) => found.ways.length === 0)) return 'nothing'
    told = ways
    return 'some'
  },
}

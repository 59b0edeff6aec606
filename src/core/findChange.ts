import type { Bike } from './bike.ts'
import type { BikeChange } from './bikeChange.ts'
import { type AimCases, AIMS } from './changeAims.ts'
import { gridsOf } from './changeGrid.ts'
import { lookFor } from './changeLook.ts'
import type { Aim, ChangeLook, ChangeTask, ChangeWanted, FoundChange } from './changeTask.ts'
import { type Trial, trialOf } from './changeTrial.ts'
import { DomainError, finite, list, nonNegative, oneOf, record, wholeNumber } from './domain.ts'

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
  const begin = changeLooks(bike, cases)
  return (task) => {
    const look = begin(task)
    look.work()
    return look.found()
  }
}

/** `changeSearch` that can rest on the way: what it has found by the end does not depend on where it rested. */
export function changeLooks(bike: Bike, cases: AimCases): (task: ChangeTask) => ChangeLook {
  record('bike', bike)
  record('cases.rider', record('cases', cases).rider)
  const trials = new Map<string, Trial>()
  return (wanted) => {
    const { means, base = {}, mostMeans, mostWays, nearest } = record('wanted', wanted)
    const aims = aimsOf(wanted.aims)
    const ids = aims.map(({ id }) => id)
    const alone = trials.get(ids.join()) ?? trialOf(bike, cases, ids)
    trials.set(ids.join(), alone)
    const trial = onTopOf(alone, record('base', base))
    const now = trial.read({})
    if (now === null) throw new DomainError('bike', bike, 'must be one that can be solved as it is')
    if (means.some(({ id }) => base[id] !== undefined))
      throw new DomainError('means', means, 'must not name what is changed in any case')
    return lookFor(
      { aims, base, baseWork: nonNegative('baseWork', wanted.baseWork ?? 0) },
      gridsOf(bike, means),
      trial,
      {
        now,
        mostMeans: wholeNumber('mostMeans', mostMeans ?? 3, 1),
        mostWays: wholeNumber('mostWays', mostWays ?? 5, 1),
        nearest: nearest !== false,
      },
    )
  }
}

/** Trials on top of what is changed in any case. */
const onTopOf = (trial: Trial, base: BikeChange): Trial =>
  Object.keys(base).length === 0
    ? trial
    : { read: (change) => trial.read({ ...base, ...change }), tally: () => trial.tally() }

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

import { type BikeChange, changeBike } from './bikeChange.ts'
import {
  aimReading,
  aimStances,
  axlePlaces,
  CASE_OF,
  type AimCase,
  type AimCases,
  type AimId,
  type AimStances,
  type AxlePlaces,
} from './changeAims.ts'
import { attempt } from './changeParts.ts'
import type { AimSpread } from './changeSpread.ts'
import { DomainError, list, nonNegative, record } from './domain.ts'
import type { Aim } from './changeTask.ts'
import type { Bike } from './bike.ts'
import { normalStream, randomStream } from './random.ts'

/** What changes of a fitted bike are judged by. */
export interface DrawnTask {
  /** the bike that the aims are about, under its loads */
  bike: Bike
  cases: AimCases
  /** bikes as it may be, with the loads of each */
  draws: readonly { bike: Bike; cases: AimCases }[]
  aims: readonly Aim[]
  /** aims that are windows about where that same bike stands now */
  fromNow: readonly AimId[]
  /** standard uncertainty of the rate of a new spring, as a share [1] */
  newRates: number
}

/** One bike as it may be, where it stands now, and by what share new springs of fork and shock are off. */
interface Drawn {
  bike: Bike
  cases: AimCases
  now: AimStances
  places: AxlePlaces
  off: [number, number]
}

/**
 * How sure each aim of a change is over bikes drawn from a fit, as `sampleBike` gives them: the standard deviation of what they read, and the share of them
 * that meets the aim. A drawn bike on which the change cannot be made counts as one that misses. Refuses a task without bikes and uncertainties below 0.
 * Source: propagation of distributions, JCGM 101:2008 (from memory).
 */
export function changeDraws(task: DrawnTask): (change: BikeChange) => AimSpread[] {
  const { bike, cases, draws, aims, fromNow } = record('task', task)
  const wanted = new Set<AimCase>(aims.map(({ id }) => CASE_OF[id]))
  const normal = normalStream(randomStream(1))
  const newRates = nonNegative('newRates', task.newRates)
  const drawn = list('draws', draws, 1).flatMap((one): Drawn[] => {
    const off: [number, number] = [newRates * normal(), newRates * normal()]
    const now = attempt(() => aimStances(one.bike, one.cases, withRider(wanted)))
    return now ? [{ ...one, now, places: axlePlaces(one.bike, now.rider!), off }] : []
  })
  if (drawn.length === 0) throw new DomainError('draws', draws, 'must hold bikes that can stand')
  const asIs = aimStances(bike, cases, withRider(wanted))
  const places = axlePlaces(bike, asIs.rider!)
  const origins = aims.map(({ id }) => (fromNow.includes(id) ? aimReading(id, asIs, places) : 0))
  return (change) => {
    const read = drawn.map((one) => attempt(() => readingsOf(one, change, aims, fromNow, wanted)))
    return aims.map((aim, at) => {
      const values = read.flatMap((readings) =>
        readings === null ? [] : [readings[at]! + origins[at]!],
      )
      const met = values.filter((value) => value >= aim.low && value <= aim.high).length
      return { aim: aim.id, uncertainty: deviationOf(values), chance: met / drawn.length }
    })
  }
}

const withRider = (wanted: ReadonlySet<AimCase>) => new Set<AimCase>([...wanted, 'rider'])

function readingsOf(
  { bike, cases, now, places, off: [fork, rear] }: Drawn,
  change: BikeChange,
  aims: readonly Aim[],
  fromNow: readonly AimId[],
  wanted: ReadonlySet<AimCase>,
): number[] {
  const { forkRate, rearRate } = change
  const fitted = {
    ...change,
    ...(forkRate === undefined ? {} : { forkRate: forkRate * (1 + fork) }),
    ...(rearRate === undefined ? {} : { rearRate: rearRate * (1 + rear) }),
  }
  const after = aimStances(changeBike(bike, fitted, now.rider!.rearTravel), cases, wanted)
  return aims.map(({ id }) => {
    const reading = aimReading(id, after, places)
    return fromNow.includes(id) ? reading - aimReading(id, now, places) : reading
  })
}

/** Standard deviation of a sample; 0 for fewer than two. */
function deviationOf(values: readonly number[]): number {
  if (values.length < 2) return 0
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return Math.sqrt(squares / (values.length - 1))
}

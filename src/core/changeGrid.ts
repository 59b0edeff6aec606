import type { Bike } from './bike.ts'
import { type BikeChange, knownMean, type MeanId, MEANS } from './bikeChange.ts'
import type { Trial } from './changeTrial.ts'
import { DomainError, finite, list, nonNegative, positive, record } from './domain.ts'
import { springRate } from './spring.ts'

/**
 * One means of change: how far it may go either way from now, in which steps, and the work it takes [any unit, the same for all]. For `forkRate` and
 * `rearRate` the rates to be had [N/m] stand in place of limits and step.
 */
export interface Mean {
  id: MeanId
  low?: number
  high?: number
  step?: number
  rates?: readonly number[]
  work: number
}

/** A means as a search walks it: its values but "no change", from low to high, with the size of each as a share of the largest [1]. */
export interface MeanGrid {
  id: MeanId
  work: number
  values: number[]
  sizes: number[]
  /** the value of no change: 0, or the rate fitted now */
  now: number
  /** the first place whose value is above that of no change */
  above: number
}

const aboveNow = (values: readonly number[], now: number): number =>
  values.filter((value) => value <= now).length

/** The grids of the means allowed, in the fixed order of their names; refuses a means named twice and limits upside down. */
export function gridsOf(bike: Bike, means: readonly Mean[]): MeanGrid[] {
  const grids = list('means', means).map((mean) => gridOf(bike, record('means', mean)))
  const named = new Set(grids.map(({ id }) => id))
  if (named.size < grids.length) throw new DomainError('means', means, 'must name each means once')
  return grids.sort((a, b) => MEANS.indexOf(a.id) - MEANS.indexOf(b.id))
}

function gridOf(bike: Bike, mean: Mean): MeanGrid {
  const id = knownMean('means.id', mean.id)
  const isRate = id === 'forkRate' || id === 'rearRate'
  const now = isRate ? rateNow(bike, id) : 0
  const all = isRate ? ratesOf(mean) : stepsOf(mean)
  const values = all.filter((value) => Math.abs(value - now) > 1e-9 * Math.abs(now))
  const reach = Math.max(...values.map((value) => Math.abs(value - now)), Number.MIN_VALUE)
  return {
    id,
    work: nonNegative('means.work', mean.work),
    values,
    sizes: values.map((value) => Math.abs(value - now) / reach),
    now,
    above: aboveNow(values, now),
  }
}

function ratesOf({ rates }: Mean): number[] {
  const sorted = list('means.rates', rates!).map((rate) => positive('means.rates', rate))
  return [...new Set(sorted)].sort((a, b) => a - b)
}

// More steps than this are finer than any adjuster, and would only make the search long.
const MOST_STEPS = 400

function stepsOf({ low, high, step }: Mean): number[] {
  const width = positive('means.step', step)
  const from = Math.ceil(finite('means.low', low) / width - 1e-9)
  const to = Math.floor(finite('means.high', high) / width + 1e-9)
  if (low! > high!) throw new DomainError('means.low', low, 'must not be above the high end')
  if (to - from > MOST_STEPS)
    throw new DomainError('means.step', step, `must leave at most ${MOST_STEPS} steps`)
  return Array.from({ length: to - from + 1 }, (_, k) => exact((from + k) * width))
}

// Twelve digits: what a multiple of a step is short of the rounding of its product.
const exact = (value: number): number => Number(value.toPrecision(12))

/** The rate fitted now [N/m], of one leg that holds a spring or of one shock, where its preload leaves it. */
function rateNow(bike: Bike, id: 'forkRate' | 'rearRate'): number {
  if (id === 'rearRate') return springRate(bike.rear.spring, bike.rear.preload)
  const leg = bike.fork.legs.find(({ spring }) => spring.length > 0)
  return leg === undefined ? 0 : springRate(leg.spring, leg.preload)
}

/** The grids without the values at either end that cannot be built by themselves: a loose spring, coils that touch, no room above the oil. */
export function buildable(grids: readonly MeanGrid[], trial: Trial): MeanGrid[] {
  return grids.map((grid) => {
    const { values } = grid
    const builds = (value: number): boolean => trial.read({ [grid.id]: value }) !== null
    let [from, to] = [0, values.length]
    while (from < to && !builds(values[from]!)) from++
    while (to > from && !builds(values[to - 1]!)) to--
    return {
      ...grid,
      values: values.slice(from, to),
      sizes: grid.sizes.slice(from, to),
      above: Math.min(Math.max(0, grid.above - from), to - from),
    }
  })
}

/** The change at one place of several grids. */
export function changeAt(grids: readonly MeanGrid[], place: readonly number[]): BikeChange {
  const change: BikeChange = {}
  for (const [i, grid] of grids.entries()) change[grid.id] = grid.values[place[i]!]!
  return change
}

import {
  type Bike,
  type BikeChange,
  type ChangeWanted,
  type FoundChange,
  type Mean,
  MEANS,
} from '../../src/core/index.ts'
import { readAlone } from './changeCases.ts'

function valuesOf(mean: Mean, bike: Bike): (number | null)[] {
  const now =
    mean.id === 'forkRate' ? bike.fork.legs[0]!.spring[0]!.rate : bike.rear.spring[0]!.rate
  if (mean.rates) return [null, ...mean.rates.filter((rate) => rate !== now)]
  const steps = Math.round((mean.high! - mean.low!) / mean.step!)
  const all = Array.from({ length: steps + 1 }, (_, k) => mean.low! + k * mean.step!)
  return [null, ...all.filter((value) => Math.abs(value) > 1e-9)]
}

/** Every place of the grid with up to three changes, tried one by one: for each set of means that meets the aims, its work; and the least miss. */
export function bruteForce({ bike, cases, aims, means }: ChangeWanted): Map<string, number> {
  const meeting = new Map<string, number>()
  const ids = aims.map(({ id }) => id)
  const walk = (place: number, change: BikeChange, work: number): void => {
    if (Object.keys(change).length > 3) return
    const mean = means[place]
    if (mean === undefined) {
      const key = MEANS.filter((id) => change[id] !== undefined).join(' ')
      if (!meeting.has(key) && meets(change)) meeting.set(key, work)
      return
    }
    for (const value of valuesOf(mean, bike)) {
      if (value === null) walk(place + 1, change, work)
      else walk(place + 1, { ...change, [mean.id]: value }, work + mean.work)
    }
  }
  const meets = (change: BikeChange): boolean => {
    // a loose spring, or one whose coils touch when fitted, is none
    const leg = bike.fork.legs[0]!
    const preload = leg.preload + (change.forkPreloadChange ?? 0)
    if (preload < 0 || preload >= (leg.spring[0]!.closes ?? Infinity)) return false
    if (bike.rear.preload + (change.rearPreloadChange ?? 0) < 0) return false
    const { readings, sound } = readAlone(bike, cases, change, ids)
    return (
      sound &&
      aims.every(({ id, low, high }) => readings[id] >= low - 1e-12 && readings[id] <= high + 1e-12)
    )
  }
  walk(0, {}, 0)
  return meeting
}

/** The sets that hold no other set that meets the aims, with their work, least work first: what ways should be told. */
export function leastSets(meeting: Map<string, number>): { key: string; work: number }[] {
  const names = (key: string): string[] => key.split(' ').filter((name) => name !== '')
  const all = [...meeting].map(([key, work]) => ({ key, work }))
  return all
    .filter(
      ({ key }) =>
        !all.some(
          (other) =>
            other.key !== key && names(other.key).every((name) => names(key).includes(name)),
        ),
    )
    .sort((a, b) => a.work - b.work || names(a.key).length - names(b.key).length)
}

/** What is wrong with a search's answer against brute force; empty if nothing is. */
export function faultsOf(wanted: ChangeWanted, found: FoundChange): string[] {
  const faults: string[] = []
  const expected = leastSets(bruteForce(wanted))
  if (!found.whole) faults.push('gave up')
  if (found.meets !== expected.length > 0)
    faults.push(`meets ${found.meets}, brute force found ${expected.length} sets`)
  if (!found.meets) return faults
  const works = found.ways.map(({ work }) => work).join()
  const least = expected.slice(0, 5).map(({ work }) => work)
  if (works !== least.join()) faults.push(`work ${works}, brute force ${least.join()}`)
  const ids = wanted.aims.map(({ id }) => id)
  for (const { change, readings } of found.ways) {
    const alone = readAlone(wanted.bike, wanted.cases, change, ids)
    if (!alone.sound) faults.push('stands at a stop')
    for (const { id, low, high } of wanted.aims) {
      // a hundredth of a millimetre, of a milliradian, of a tenth of a per cent
      if (!(Math.abs(alone.readings[id] - readings[id]!) < 1e-5)) faults.push(`says another ${id}`)
      if (alone.readings[id] < low - 1e-9 || alone.readings[id] > high + 1e-9)
        faults.push(`misses ${id}`)
    }
  }
  return faults
}

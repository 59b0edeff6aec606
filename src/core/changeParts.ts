import type { Bike } from './bike.ts'
import { type BikeChange, changeBike, type MeanId } from './bikeChange.ts'
import { type Chassis, chassis } from './chassis.ts'
import { DomainError } from './domain.ts'
import { type ForkCurve, forkCurve } from './fork.ts'
import type { GasState } from './gas.ts'
import { type RearCurve, rearCurve } from './rear.ts'

/** One part of a changed bike, ready to evaluate; `number` tells it from the others of its kind. */
export interface Part<Built> {
  number: number
  built: Built
}

/** A fork under the gas states of the loads, which come in the order in which they were given. */
export type ForkCurves = readonly ForkCurve[]

/** The parts of a bike with a change; null where one of them cannot be built. */
export interface Parts {
  fork: Part<ForkCurves>
  rear: Part<RearCurve>
  body: Part<Chassis>
}

/**
 * Keeps the parts of changed bikes, each built once however many changes share it: fork, rear end and chassis are changed by different means. `states`
 * are the gas states of the loads, `rearTravel` [m] as for `changeBike`. Every part passes the guards of the core when it is built.
 */
export function partsOf(
  bike: Bike,
  states: readonly (GasState | undefined)[],
  rearTravel: number,
): (change: BikeChange) => Parts | null {
  const forks = keptBy(['forkPreloadChange', 'forkRate', 'oilHeightChange'], (change) => {
    const { fork } = changeBike(bike, change)
    return states.map((state) => forkCurve(fork, state))
  })
  const rears = keptBy(['rearPreloadChange', 'rearRate'], (change) =>
    rearCurve(changeBike(bike, change).rear),
  )
  const bodies = keptBy(['tubeRaise', 'shockLengthChange'], (change) =>
    chassis(changeBike(bike, change, rearTravel).geometry),
  )
  return (change) => {
    const [fork, rear, body] = [forks(change), rears(change), bodies(change)]
    return fork === null || rear === null || body === null ? null : { fork, rear, body }
  }
}

/** A map of maps, one level for each means, the part at the last of them. */
interface Shelf<Built> {
  below: Map<number | undefined, Shelf<Built>>
  part: Part<Built> | null | undefined
}

const emptyShelf = <Built>(): Shelf<Built> => ({ below: new Map(), part: undefined })

/** Builds what some means change, once for each of their values; null where it cannot be built. */
function keptBy<Built>(
  means: readonly MeanId[],
  build: (change: BikeChange) => Built,
): (change: BikeChange) => Part<Built> | null {
  const top = emptyShelf<Built>()
  let count = 0
  return (change) => {
    let shelf = top
    for (const mean of means) {
      const value = change[mean]
      let next = shelf.below.get(value)
      if (next === undefined) shelf.below.set(value, (next = emptyShelf()))
      shelf = next
    }
    if (shelf.part === undefined) {
      const built = attempt(() => build(only(means, change)))
      shelf.part = built === null ? null : { number: count++, built }
    }
    return shelf.part
  }
}

const only = (means: readonly MeanId[], change: BikeChange): BikeChange =>
  Object.fromEntries(
    means.flatMap((mean) => (change[mean] === undefined ? [] : [[mean, change[mean]]])),
  )

/** What cannot be built is null, since it is no way; anything else is a fault. */
export function attempt<Built>(build: () => Built): Built | null {
  try {
    return build()
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}

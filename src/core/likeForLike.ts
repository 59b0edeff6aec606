import type { Bike, LoadCase } from './bike.ts'
import { WARM_OIL } from './constants.ts'
import { type ChoiceOfBike, riderForceOf, type RateRow, rowMaker } from './choose.ts'
import { DomainError, finite, positive } from './domain.ts'
import { bareForce, forceNeeded, withoutSprings } from './forceNeeded.ts'
import { forkLimit, type Fork } from './fork.ts'
import { bracketedRoot } from './root.ts'

/** Rates between which one is looked for [N/m]: no fork spring of a road bike is softer or stiffer. */
const RATES = [1e3, 60e3] as const

/** A difference of lengths [m], 0 where it is less than a hundredth of a micrometre: a search then ends there. */
const settledTo = (difference: number): number => (Math.abs(difference) < 1e-8 ? 0 : difference)

/**
 * The spring, set to the rider sag of the choice's target, that leaves so much [m] in hand on the brakes at the least; null where none does, or
 * none with a preload of 0 or more. So a new rider gets what the fitted spring left another. Refuses what `chooseRate` refuses.
 */
export function rateLeaving(choice: ChoiceOfBike, wanted: number): RateRow | null {
  finite('wanted', wanted)
  const row = rowMaker(choice)
  const beyond = (rate: number): number => settledTo(row(rate).reserve[0] - wanted)
  const [softest, stiffest] = [beyond(RATES[0]), beyond(RATES[1])]
  if (softest > 0 || stiffest < 0) return null
  const found = row(bracketedRoot(beyond, RATES[0], RATES[1], softest, stiffest))
  return found.preload === null ? null : found
}

/** The bike with its oil so much higher in each leg that holds gas [m]: less air. */
export function withOilRaised(bike: Bike, rise: number): Bike {
  const legs = bike.fork.legs.map((leg) =>
    leg.gas === undefined
      ? leg
      : { ...leg, gas: { ...leg.gas, airHeight: leg.gas.airHeight - rise } },
  )
  return { ...bike, fork: { ...bike.fork, legs } }
}

/** The most that the oil may rise before warm oil leaves no air at full travel [m]; none in a fork without gas. */
function mostOil(bike: Bike): number | null {
  const locks = (rise: number): boolean =>
    forkLimit(withOilRaised(bike, rise).fork, { temperature: WARM_OIL }).cause === 'locked'
  const least = Math.min(...bike.fork.legs.flatMap(({ gas }) => gas?.airHeight ?? []))
  if (!Number.isFinite(least) || locks(0)) return null
  let [free, locked] = [0, least]
  // a hundred millimetres halved twenty times are a ten-thousandth of one
  for (let i = 0; i < 20; i++) {
    const middle = (free + locked) / 2
    if (isEmpty(bike.fork, middle) || locks(middle)) locked = middle
    else free = middle
  }
  return free
}

/** Whether no room is left above the oil of a collapsed leg. */
const isEmpty = ({ legs }: Fork, rise: number): boolean =>
  legs.some(
    ({ gas }) =>
      gas !== undefined &&
      (Math.PI / 4) * gas.boreDiameter ** 2 * (gas.airHeight - rise) <= (gas.stackVolume ?? 0),
  )

/**
 * How far the oil has to rise [m], the springs staying at a rate [N/m] and set to the rider sag of the choice's target, until so much [m] is left in
 * hand on the brakes at the least: the other means. Null without gas, or where warm oil would lock the fork first.
 */
export function oilRiseLeaving(choice: ChoiceOfBike, rate: number, wanted: number): number | null {
  positive('rate', rate)
  const most = mostOil(choice.bike)
  if (most === null) return null
  const riderForce = choice.riderForce ?? riderForceOf(choice)
  const beyond = (rise: number): number =>
    settledTo(
      rowMaker({ ...choice, riderForce, bike: withOilRaised(choice.bike, rise) })(rate).reserve[0] -
        wanted,
    )
  // less oil is looked for as far down as there is more of it
  const [least, highest] = [beyond(-most), beyond(most)]
  return least > 0 || highest < 0 ? null : bracketedRoot(beyond, -most, most, least, highest)
}

/** A fork's springs as two sags tell them. */
export interface SagsRead {
  bike: Bike
  cases: { static: LoadCase; rider: LoadCase }
  /** used travel [m], bike alone and with the rider */
  staticSag: number
  riderSag: number
}

/**
 * Rate of each spring [N/m] and preload [m] at which the bike stands at both sags, gas and top-out spring taken out. Neither is held to what a
 * spring can have: a rate or preload below 0 says that the readings do not fit the bike. Refuses a rider sag that is not the deeper one.
 */
export function springFromSags({ bike, cases, staticSag, riderSag }: SagsRead): {
  rate: number
  preload: number
} {
  if (!(riderSag > staticSag))
    throw new DomainError('riderSag', riderSag, 'must be deeper than the static sag')
  const [alone, ridden] = [
    springForceAt(bike, cases.static, staticSag),
    springForceAt(bike, cases.rider, riderSag),
  ]
  const rate = (ridden - alone) / (riderSag - staticSag)
  return { rate, preload: ridden / rate - riderSag }
}

/** What each spring must give [N] for the bike to stand at a sag [m] in a case. */
export function springForceAt(bike: Bike, loadCase: LoadCase, sag: number): number {
  const bare = bareForce(withoutSprings(bike.fork), sag, loadCase.gasState)
  const legs = bike.fork.legs.filter((leg) => leg.spring.length > 0).length
  return (forceNeeded(bike, loadCase, sag) - bare) / legs
}

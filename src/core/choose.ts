import type { Bike, LoadCase } from './bike.ts'
import { between, DomainError, list, nonNegative, positive, record } from './domain.ts'
import { bareForce, forceNeeded, withoutSprings } from './forceNeeded.ts'
import type { Fork } from './fork.ts'
import { inHand } from './inHand.ts'
import { springLimit } from './spring.ts'
import { solveStance, type Stop } from './stance.ts'

/**
 * What a set-up should do: rider sag [m], a window for static sag [m, m], travel to keep in hand under braking [m]; and, where given, the most
 * travel that the hardest braking may leave unused [m], the least preload [m], and the highest ride frequency [rad/s].
 */
export interface ChoiceTarget {
  riderSag: number
  staticSag: readonly [number, number]
  reserve: number
  unused?: number
  preload?: number
  frequency?: number
}

/** Which fork springs to compare, on which bike, under which loads. */
export interface Choice {
  bike: Bike
  cases: { static: LoadCase; rider: LoadCase; braking: LoadCase }
  target: ChoiceTarget
  /** per leg that holds a spring [N/m] */
  rates: readonly number[]
  /** damping ratios between which the fork's lies [1] */
  dampingRatios?: readonly number[]
  /** times between which the brake comes on [s] */
  rampTimes?: readonly number[]
}

/** Why a rate misses the target. */
export type Miss =
  | 'no preload gives the rider sag'
  | 'static sag below the window'
  | 'static sag above the window'
  | 'bottoms under braking'
  | 'reserve below the target'
  | 'coil bind before full travel'
  | 'leaves travel unused'
  | 'little preload'
  | 'rides too stiffly'

/** One rate and what it does; travels are along the steering axis [m]. */
export interface RateRow {
  /** per leg [N/m] */
  rate: number
  /** preload that gives the rider sag [m]; null if none from 0 to coil bind does (the other figures then belong to the nearest that can be set) */
  preload: number | null
  riderSag: number
  staticSag: number
  brakingTravel: number
  /** how far beyond `brakingTravel` a brake put on quickly takes the fork [m], low and high */
  overshoot: [number, number]
  /** travel left beyond that, low and high [m]; below 0 the stop is reached */
  reserve: [number, number]
  /** deflection left before coil bind at full travel [m]; null if the spring never binds */
  coilBindMargin: number | null
  /** undamped ride frequency of the front with the rider [rad/s]; null where it carries nothing or the fork has no slope there */
  rideFrequency: number | null
  misses: Miss[]
}

/**
 * Compares fork spring rates [N/m per leg] on a whole bike: for each, the preload [m] that gives the wanted rider sag, and from there static sag,
 * travel under braking with its overshoot, what is left, and coil bind. Each rate stands for a straight spring that closes where the fitted one
 * does, in each leg that holds a spring. The cases are solved as given, gas state included. `misses` names, in this order: no preload from 0 to coil
 * bind gives the rider sag; static sag outside its window; the fork at its stop while braking; the lower end of the reserve below the target; coils
 * that touch before full travel; then, where the target names them, the lower end of the reserve above what may be left unused, less preload than the
 * least, a ride frequency above the highest. Refuses a rider sag outside the travel, a window upside down, a fork without a spring, rates of 0 or below.
 * Source: `solveStance` and `rampOvershoot`.
 */
export function chooseRate(choice: Choice & Pick<ChoiceOfBike, 'riderForce'>): RateRow[] {
  const row = rowMaker(choice)
  return list('rates', choice.rates).map((rate) => row(positive('rates', rate)))
}

/** Everything of a choice but the rates; with the force that the fork must give at the rider sag wanted [N], where several choices share it. */
export interface ChoiceOfBike extends Omit<Choice, 'rates'> {
  riderForce?: number
}

/** That force: it hangs on the bike's pose alone, not on springs, oil, or how hard it is braked. */
export const riderForceOf = ({ bike, cases, target }: ChoiceOfBike): number =>
  forceNeeded(bike, cases.rider, target.riderSag)

/** What one rate [N/m] after another does in the same choice. */
export function rowMaker(choice: ChoiceOfBike): (rate: number) => RateRow {
  const { bike, cases, target } = record('choice', choice)
  const { travel } = record('bike.fork', record('bike', bike).fork)
  record('cases', cases)
  for (const name of ['static', 'rider', 'braking'] as const) record(`cases.${name}`, cases[name])
  const riderSag = between('target.riderSag', record('target', target).riderSag, 0, travel)
  const [low, high] = list('target.staticSag', target.staticSag, 2)
  if (nonNegative('target.staticSag', low) > nonNegative('target.staticSag', high)) {
    throw new DomainError(
      'target.staticSag',
      target.staticSag,
      'must give the lower end of the window first',
    )
  }
  nonNegative('target.reserve', target.reserve)
  const springForceNeeded =
    (choice.riderForce ?? riderForceOf(choice)) -
    bareForce(withoutSprings(bike.fork), riderSag, cases.rider.gasState)
  return (rate) => {
    const spring = { rate, closes: closesAt(bike.fork) }
    const fitted = fit(
      springForceNeeded / (legsWithSpring(bike.fork) * rate) - riderSag,
      riderSag,
      spring.closes,
    )
    return rowFor(choice, spring, fitted)
  }
}

const legsWithSpring = (fork: Fork): number =>
  fork.legs.filter((leg) => leg.spring.length > 0).length

/** Deflection at which the first of the fitted springs binds [m], or null. */
function closesAt(fork: Fork): number | null {
  const limits = fork.legs.flatMap((leg) => springLimit(leg.spring) ?? [])
  return limits.length > 0 ? Math.min(...limits) : null
}

/** The preload that is set: the one found, or the nearest that can be. */
function fit(
  preload: number,
  riderSag: number,
  closes: number | null,
): { preload: number; meets: boolean } {
  if (!(preload >= 0)) return { preload: 0, meets: false }
  if (closes !== null && preload + riderSag > closes)
    return { preload: Math.max(0, closes - riderSag), meets: false }
  return { preload, meets: true }
}

type Fitted = ReturnType<typeof fit>

function rowFor(
  { bike, cases, target, dampingRatios, rampTimes }: ChoiceOfBike,
  spring: { rate: number; closes: number | null },
  fitted: Fitted,
): RateRow {
  const changed = withSprings(bike, spring.rate, fitted.preload)
  const hand = inHand({
    bike: changed,
    rider: cases.rider,
    // as given: without a gas state the gas moves slowly
    braking: { ...cases.braking, gasState: cases.braking.gasState ?? {} },
    ...(dampingRatios && { dampingRatios }),
    ...(rampTimes && { rampTimes }),
  })
  const row: Omit<RateRow, 'misses'> = {
    rate: spring.rate,
    preload: fitted.meets ? fitted.preload : null,
    riderSag: hand.riderSag,
    staticSag: solveStance(changed, cases.static).frontTravel,
    brakingTravel: hand.brakingTravel,
    overshoot: hand.overshoot,
    reserve: hand.reserve,
    coilBindMargin:
      spring.closes === null ? null : spring.closes - fitted.preload - bike.fork.travel,
    rideFrequency: hand.rideFrequency,
  }
  return { ...row, misses: missesOf(row, target, hand.stop) }
}

/** The bike with straight springs of a rate [N/m] and preload [m] in each leg that holds a spring, which close where the fitted ones do. */
export function withSprings(bike: Bike, rate: number, preload: number): Bike {
  const closes = closesAt(bike.fork)
  const group = closes === null ? { rate } : { rate, closes }
  const legs = bike.fork.legs.map((leg) =>
    leg.spring.length > 0 ? { ...leg, spring: [group], preload } : leg,
  )
  return { ...bike, fork: { ...bike.fork, legs } }
}

// Sums of lengths differ from a target that they meet by rounding.
const ROUNDING = 1e-9

function missesOf(
  row: Omit<RateRow, 'misses'>,
  { staticSag: [low, high], reserve, unused, preload, frequency }: ChoiceTarget,
  stop: Stop,
): Miss[] {
  const missed: readonly (readonly [Miss, boolean])[] = [
    ['no preload gives the rider sag', row.preload === null],
    ['static sag below the window', row.staticSag < low - ROUNDING],
    ['static sag above the window', row.staticSag > high + ROUNDING],
    ['bottoms under braking', stop === 'bottomed' || stop === 'coilBound'],
    ['reserve below the target', row.reserve[0] < reserve - ROUNDING],
    ['coil bind before full travel', (row.coilBindMargin ?? Infinity) < -ROUNDING],
    ['leaves travel unused', row.reserve[0] > (unused ?? Infinity) + ROUNDING],
    ['little preload', row.preload !== null && row.preload < (preload ?? 0) - ROUNDING],
    ['rides too stiffly', (row.rideFrequency ?? 0) > (frequency ?? Infinity) * (1 + ROUNDING)],
  ]
  return missed.flatMap(([miss, holds]) => (holds ? [miss] : []))
}

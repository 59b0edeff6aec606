import type { Bike, LoadCase } from './bike.ts'
import { brakingOvershoot } from './brakingOvershoot.ts'
import { between, DomainError, list, nonNegative, positive, record } from './domain.ts'
import { forkForce, forkLimit, type Fork } from './fork.ts'
import { forceNeeded } from './forceNeeded.ts'
import { springLimit } from './spring.ts'
import { solveStance, type Stance } from './stance.ts'

/** What a set-up should do: rider sag [m], a window for static sag [m, m], travel to keep in hand under braking [m]. */
export interface ChoiceTarget {
  riderSag: number
  staticSag: readonly [number, number]
  reserve: number
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
  misses: Miss[]
}

/**
 * Compares fork spring rates [N/m per leg] on a whole bike: for each, the preload [m] that gives the wanted rider sag, and from there static sag,
 * travel under braking with its overshoot, what is left, and coil bind. Each rate stands for a straight spring that closes where the fitted one
 * does, in each leg that holds a spring. The cases are solved as given, gas state included. `misses` names, in this order: no preload from 0 to coil
 * bind gives the rider sag; static sag outside its window; the fork at its stop while braking; the lower end of the reserve below the target; coils
 * that touch before full travel. Refuses a rider sag outside the travel, a window upside down, a fork without a spring, rates of 0 or below.
 * Source: `solveStance` and `rampOvershoot`.
 */
export function chooseRate(choice: Choice): RateRow[] {
  const { bike, cases, target } = record('choice', choice)
  const { travel } = record('bike.fork', record('bike', bike).fork)
  record('cases', cases)
  for (const name of ['static', 'rider', 'braking'] as const) record(`cases.${name}`, cases[name])
  const riderSag = between('target.riderSag', record('target', target).riderSag, 0, travel)
  const [low, high] = list('target.staticSag', target.staticSag, 2)
  if (nonNegative('target.staticSag', low) > nonNegative('target.staticSag', high)) {
    throw new DomainError('target.staticSag', target.staticSag, 'must give the lower end of the window first')
  }
  nonNegative('target.reserve', target.reserve)
  const spread = { dampingRatios: choice.dampingRatios ?? [0.3, 0.4], rampTimes: choice.rampTimes ?? [0.1, 0.2] }
  const bare = withoutSprings(bike.fork)
  const springForceNeeded = forceNeeded(bike, cases.rider, riderSag) - forceOf(bare, riderSag, cases.rider)
  return list('rates', choice.rates).map((rate) => {
    const spring = { rate: positive('rates', rate), closes: closesAt(bike.fork) }
    const fitted = fit(springForceNeeded / (legsWithSpring(bike.fork) * rate) - riderSag, riderSag, spring.closes)
    return rowFor(choice, spring, fitted, spread)
  })
}

const legsWithSpring = (fork: Fork): number => fork.legs.filter((leg) => leg.spring.length > 0).length

/** Deflection at which the first of the fitted springs binds [m], or null. */
function closesAt(fork: Fork): number | null {
  const limits = fork.legs.flatMap((leg) => springLimit(leg.spring) ?? [])
  return limits.length > 0 ? Math.min(...limits) : null
}

function withoutSprings(fork: Fork): Fork {
  if (!list('bike.fork.legs', fork.legs, 1).some((leg) => list('bike.fork.legs.spring', record('bike.fork.legs', leg).spring).length > 0)) {
    throw new DomainError('bike.fork.legs', fork.legs, 'must hold a spring in one leg at least')
  }
  return { ...fork, legs: fork.legs.map((leg) => ({ ...leg, spring: [], preload: 0 })) }
}

/** What gas and top-out spring give at a travel [N]; past a hydraulic lock no spring is needed, so as much as it takes. */
function forceOf(fork: Fork, x: number, { gasState }: LoadCase): number {
  return x < forkLimit(fork, gasState).travel ? forkForce(fork, x, gasState) : Number.MAX_VALUE
}

/** The preload that is set: the one found, or the nearest that can be. */
function fit(preload: number, riderSag: number, closes: number | null): { preload: number; meets: boolean } {
  if (!(preload >= 0)) return { preload: 0, meets: false }
  if (closes !== null && preload + riderSag > closes) return { preload: Math.max(0, closes - riderSag), meets: false }
  return { preload, meets: true }
}

type Fitted = ReturnType<typeof fit>

function rowFor({ bike, cases, target }: Choice, spring: { rate: number; closes: number | null }, fitted: Fitted, spread: Spread): RateRow {
  const group = spring.closes === null ? { rate: spring.rate } : { rate: spring.rate, closes: spring.closes }
  const legs = bike.fork.legs.map((leg) => (leg.spring.length > 0 ? { ...leg, spring: [group], preload: fitted.preload } : leg))
  const changed: Bike = { ...bike, fork: { ...bike.fork, legs } }
  const rider = solveStance(changed, cases.rider)
  const braking = solveStance(changed, cases.braking)
  const overshoot = brakingOvershoot(changed.fork, rider, braking, cases.braking.gasState, spread)
  const left = braking.frontLimit.travel - braking.frontTravel
  const row: Omit<RateRow, 'misses'> = {
    rate: spring.rate,
    preload: fitted.meets ? fitted.preload : null,
    riderSag: rider.frontTravel,
    staticSag: solveStance(changed, cases.static).frontTravel,
    brakingTravel: braking.frontTravel,
    overshoot,
    reserve: [left - overshoot[1], left - overshoot[0]],
    coilBindMargin: spring.closes === null ? null : spring.closes - fitted.preload - bike.fork.travel,
  }
  return { ...row, misses: missesOf(row, target, braking) }
}

type Spread = Parameters<typeof brakingOvershoot>[4]

// Sums of lengths differ from a target that they meet by rounding.
const ROUNDING = 1e-9

function missesOf(row: Omit<RateRow, 'misses'>, { staticSag: [low, high], reserve }: ChoiceTarget, braking: Stance): Miss[] {
  const misses: Miss[] = []
  if (row.preload === null) misses.push('no preload gives the rider sag')
  if (row.staticSag < low - ROUNDING) misses.push('static sag below the window')
  if (row.staticSag > high + ROUNDING) misses.push('static sag above the window')
  if (braking.frontStop === 'bottomed' || braking.frontStop === 'coilBound') misses.push('bottoms under braking')
  if (row.reserve[0] < reserve - ROUNDING) misses.push('reserve below the target')
  if ((row.coilBindMargin ?? Infinity) < -ROUNDING) misses.push('coil bind before full travel')
  return misses
}

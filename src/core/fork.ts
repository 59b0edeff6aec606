import { finite, list, nonNegative, positive, record, representable, within } from './domain.ts'
import {
  beforeLock,
  type Gas,
  type GasCurve,
  gasCurve,
  gasCurveEnergy,
  gasCurveForce,
  gasCurveFrom,
  gasCurveRate,
  type GasState,
} from './gas.ts'
import { bracketedRoot } from './root.ts'
import {
  beforeCoilBind,
  type CoilGroup,
  curveEnergy,
  curveForce,
  curveRate,
  type SpringCurve,
  springCurve,
} from './spring.ts'

/** One fork leg: its spring (empty: none), the spring's compression at full extension [m], and its trapped gas (absent: none). */
export interface Leg {
  spring: readonly CoilGroup[]
  preload: number
  gas?: Gas
}

/** A spring that pulls the last `length` [m] before full extension shut, at `rate` [N/m]; for the pair of legs, or at the rear wheel. */
export interface TopOut {
  rate: number
  length: number
}

/** A fork: travel [m] along the steering axis, its legs, and friction of the pair [N]. */
export interface Fork {
  travel: number
  legs: readonly Leg[]
  topOut?: TopOut
  friction?: number
}

/** Where the travel of one end of the bike ends, and why. */
export interface TravelLimit {
  travel: number
  cause: 'bottomed' | 'coilBound' | 'locked'
}

interface LegCurve {
  spring: SpringCurve
  preload: number
  gas: GasCurve | null
}

/** A fork ready to evaluate many times. */
export interface ForkCurve {
  legs: LegCurve[]
  topOut: TopOut
  limit: TravelLimit
}

const NO_TOP_OUT: TopOut = { rate: 0, length: 0 }

/** The top-out spring in use; refuses a rate or length below 0. */
export function topOutOf(topOut: TopOut | undefined): TopOut {
  if (topOut == null) return NO_TOP_OUT
  nonNegative('topOut.rate', record('topOut', topOut).rate)
  nonNegative('topOut.length', topOut.length)
  return topOut
}

/** A fork ready to evaluate, its gas in a state; refuses what makes no sense in the fork, its legs or the state. */
export function forkCurve(fork: Fork, state?: GasState): ForkCurve {
  const travel = positive('travel', record('fork', fork).travel)
  nonNegative('friction', fork.friction ?? 0)
  const legs = list('legs', fork.legs, 1).map((leg) => legCurve(record('legs', leg), travel, state))
  let limit: TravelLimit = { travel, cause: 'bottomed' }
  for (const { spring, preload, gas } of legs) {
    const bound = Math.max(0, spring.limit - preload)
    if (bound < limit.travel) limit = { travel: bound, cause: 'coilBound' }
    if (gas && gas.lock <= limit.travel) limit = { travel: gas.lock, cause: 'locked' }
  }
  return { legs, topOut: topOutOf(fork.topOut), limit }
}

/** A fork curve whose gas is squeezed slowly to another travel [m] short of its lock, and fast from there. */
export function forkCurveFrom(curve: ForkCurve, from: number): ForkCurve {
  return {
    ...curve,
    legs: curve.legs.map((leg) =>
      leg.gas === null ? leg : { ...leg, gas: gasCurveFrom(leg.gas, from) },
    ),
  }
}

function legCurve(leg: Leg, travel: number, state: GasState | undefined): LegCurve {
  const spring = springCurve(leg.spring)
  const preload = beforeCoilBind(spring, 'preload', finite('preload', leg.preload))
  return { spring, preload, gas: leg.gas == null ? null : gasCurve(leg.gas, travel, state) }
}

/** Force [N] of a fork curve at a travel [m] within its limit. */
export function forkCurveForce(curve: ForkCurve, x: number): number {
  let force = -curve.topOut.rate * Math.max(0, curve.topOut.length - x)
  for (const leg of curve.legs) {
    force += curveForce(leg.spring, leg.preload + x)
    if (leg.gas) force += gasCurveForce(leg.gas, x)
  }
  return force
}

/** Slope [N/m] of a fork curve to the right of a travel [m] within its limit. */
export function forkCurveRate(curve: ForkCurve, x: number): number {
  let rate = x < curve.topOut.length ? curve.topOut.rate : 0
  for (const leg of curve.legs) {
    rate += curveRate(leg.spring, leg.preload + x)
    if (leg.gas) rate += gasCurveRate(leg.gas, x)
  }
  return rate
}

// One step of rounding short of the lock: the pressure is still a number there.
/** The last travel [m] at which a limit can be evaluated: short of a lock, which is never reached. */
export function lastTravel(limit: TravelLimit): number {
  return limit.cause === 'locked' ? limit.travel * (1 - 1e-12) : limit.travel
}

function curveReaching(fork: Fork, state: GasState | undefined, ...travels: number[]): ForkCurve {
  const curve = forkCurve(fork, state)
  for (const x of travels) {
    within('x', x, 0, fork.travel)
    for (const { spring, preload, gas } of curve.legs) {
      beforeCoilBind(spring, 'x', preload + x)
      if (gas) beforeLock(gas, 'x', x)
    }
  }
  return curve
}

/**
 * Force [N] of both legs along the steering axis at used travel x [m], without friction. Refuses x outside 0…travel, past coil bind or at
 * hydraulic lock. Source: sum of springs in parallel, gas and top-out spring.
 */
export function forkForce(fork: Fork, x: number, state?: GasState): number {
  return representable('force', forkCurveForce(curveReaching(fork, state, x), x))
}

/** Slope [N/m] of `forkForce` to the right of x [m], for the pair; refuses what `forkForce` refuses. */
export function forkRate(fork: Fork, x: number, state?: GasState): number {
  return representable('rate', forkCurveRate(curveReaching(fork, state, x), x))
}

/** Work [J] to press the fork from travel x0 to x1 [m], the integral of `forkForce`; refuses what `forkForce` refuses. */
export function forkEnergy(fork: Fork, x0: number, x1: number, state?: GasState): number {
  const { legs, topOut } = curveReaching(fork, state, x0, x1)
  const stored = (x: number): number => (topOut.rate / 2) * Math.max(0, topOut.length - x) ** 2
  let energy = stored(x1) - stored(x0)
  for (const { spring, preload, gas } of legs) {
    energy += curveEnergy(spring, preload + x1) - curveEnergy(spring, preload + x0)
    if (gas) energy += gasCurveEnergy(gas, x0, x1)
  }
  return representable('energy', energy)
}

/** Where the fork's travel ends: the first of the stop, a leg with every coil group closed, and a leg without gas volume (never reached). */
export function forkLimit(fork: Fork, state?: GasState): TravelLimit {
  return { ...forkCurve(fork, state).limit }
}

/** Used travel [m] at which the pair carries a force [N] along the steering axis, held to 0…limit. Refuses a force that is not finite. */
export function forkTravel(fork: Fork, force: number, state?: GasState): number {
  const curve = forkCurve(fork, state)
  return heldTravel(
    (x) => forkCurveForce(curve, x),
    lastTravel(curve.limit),
    finite('force', force),
  )
}

/** Travel [m] at which a rising force law carries a force [N], held to 0…last. */
export function heldTravel(forceAt: (x: number) => number, last: number, force: number): number {
  const short = forceAt(0) - force
  if (short >= 0) return 0
  const over = forceAt(last) - force
  return over <= 0 ? last : bracketedRoot((x) => forceAt(x) - force, 0, last, short, over)
}

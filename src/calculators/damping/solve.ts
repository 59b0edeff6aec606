import {
  curveForce,
  damperForce,
  dampingRatio,
  rideOver,
  sample,
  springCurve,
  STANDARD_GRAVITY,
} from '../../core/index.ts'
import type { Damper, End, Law, Profile, Ride } from '../../core/index.ts'
import type statement from './statement.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'

/** Share of a step within which the body counts as settled: the usual 5 % of control engineering. */
const SETTLED = 0.05
/** Stiffness of both stops [N/m]: ten times a tyre, so that a bottomed fork reads as a knock. Invented. */
const STOP_RATE = 2e6
/** Long enough for a body of 1 Hz to come to rest from a step [s]. */
const DURATION = 2.5
/** Error of a step [1]: three times this already changes the last digit shown in one state of five. */
const TOLERANCE = 1e-5

type Values = InputOf<typeof statement>

function lawOf(input: Values, coefficient: number): Law {
  const { law, knee, after } = input
  if (law === 'digressive')
    return {
      kind: 'digressive',
      knee: { velocity: knee, force: coefficient * knee },
      after: coefficient * after,
    }
  if (law === 'square') return { kind: 'square', coefficient: coefficient / knee }
  return { kind: 'linear', coefficient }
}

const damperOf = (input: Values): Damper => ({
  compression: lawOf(input, input.compression),
  rebound: lawOf(input, input.rebound),
})

/** The end of the bike: its spring is preloaded so that it rests at the sag given; a negative preload is a spring loose near full extension. */
function endOf(input: Values): End {
  const { sprungMass, unsprungMass, wheelRate, sag, travel, tyreRate } = input
  const preload = (sprungMass * STANDARD_GRAVITY) / wheelRate - sag
  const spring = springCurve([{ rate: wheelRate }])
  return {
    sprungMass,
    unsprungMass,
    travel,
    tyreRate,
    stopRate: STOP_RATE,
    force: (x) => curveForce(spring, preload + x),
    damper: damperOf(input),
  }
}

function rideOf(input: Values): Ride {
  if (input.sag >= input.travel)
    throw new InputRefusal(
      'sag',
      'The travel used at rest must be less than the full travel. Check both',
    )
  const profile: Profile = {
    kind: input.road,
    height: input.height,
    length: input.length,
    speed: input.speed,
  }
  return rideOver(profile, endOf(input), { duration: DURATION, relativeTolerance: TOLERANCE })
}

/** At slow speed; a plain hole has no slow coefficient, and takes the one that its force at the knee gives. */
function ratiosOf({ sprungMass, wheelRate, compression, rebound }: Values): {
  ratio: number
  compression: number
  rebound: number
} {
  const ratio = (damping: number): number =>
    dampingRatio({ mass: sprungMass, stiffness: wheelRate, damping })
  return {
    ratio: ratio((compression + rebound) / 2),
    compression: ratio(compression),
    rebound: ratio(rebound),
  }
}

// Loops: spread into a call or mapped first, the thousand samples took a fifth as long as the ride.
function largest(values: readonly number[]): number {
  let most = -Infinity
  for (const value of values) most = Math.max(most, value)
  return most
}

function smallest(values: readonly number[]): number {
  let least = Infinity
  for (const value of values) least = Math.min(least, value)
  return least
}

/** How far the body goes beyond the step's height, in the step's direction [m]; 0 if it never does. */
const overshootOf = ({ body }: Ride, height: number): number =>
  Math.max(0, height < 0 ? height - smallest(body) : largest(body) - height)

/** Time after which the body stays within 5 % of the road's height about its end [s]; null if it is still moving when the ride ends. A flat road moves nothing. */
function settlingOf({ body, time }: Ride, end: number, size: number): number | null {
  if (size === 0) return 0
  let next = body.length
  while (next > 0 && Math.abs(body[next - 1]! - end) <= SETTLED * size) next--
  if (next === 0) return 0
  return next < time.length ? time[next]! : null
}

function meanOfLastHalf(values: readonly number[]): number {
  const half = values.slice(values.length >> 1)
  return half.reduce((sum, value) => sum + value, 0) / half.length
}

/** SI in, SI out. */
function compute(input: Values, ride: ReturnType<typeof rideOf>): OutputOf<typeof statement> {
  const { ratio, compression, rebound } = ratiosOf(input)
  return {
    ratio,
    ratioCompression: compression,
    ratioRebound: rebound,
    // a stop gives a little; what goes into it is no travel of the fork
    peakTravel: Math.min(largest(ride.travel), input.travel),
    overshoot: input.road === 'step' ? overshootOf(ride, input.height) : null,
    settling:
      input.road === 'waves'
        ? null
        : settlingOf(ride, input.road === 'step' ? input.height : 0, Math.abs(input.height)),
    leastLoad: smallest(ride.tyreForce),
    rest: ride.travel[0] ?? input.sag,
    meanTravel: input.road === 'waves' ? meanOfLastHalf(ride.travel) : null,
  }
}

/** Before: 700 N·s/m both ways, growing evenly with speed. */
const baseline = () => ({ compression: 700, rebound: 700, law: 'linear' })
const exampleBaseline = true

/** Heights [m] of road, wheel and body against time [s], and the damper's force [N] against speed [m/s]. */
function picture(input: Values, ride: ReturnType<typeof rideOf>) {
  const damper = damperOf(input)
  const top = 0.8
  const speeds = sample(-top, top, 80)
  return {
    time: ride.time,
    body: ride.body,
    wheel: ride.wheel,
    road: ride.road,
    force: speeds.map((speed): [number, number] => [speed, damperForce(damper, speed)]),
    events: ride.events,
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const ride = rideOf(input)
    return { outputs: compute(input, ride), picture: () => picture(input, ride) }
  },
  baseline,
  exampleBaseline,
})

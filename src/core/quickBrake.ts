import type { Bike, LoadCase } from './bike.ts'
import { STANDARD_GRAVITY } from './constants.ts'
import { list, nonNegative, positive, record } from './domain.ts'
import { forkRate } from './fork.ts'
import { liftDeceleration } from './lift.ts'
import { rearWheelRate } from './rear.ts'
import { solveStance, type Stance, type StanceOptions } from './stance.ts'

/**
 * A body on two springs, seen from the side: mass [kg], radius of gyration in pitch [m], distances
 * of the axles from its centre [m], height of the centre above the ground [m], vertical rates [N/m]
 * and damping ratios [1] of the ends, each taken with the mass that rests on it.
 */
export interface HalfBike {
  mass: number
  gyrationRadius: number
  toFront: number
  toRear: number
  height: number
  frontRate: number
  rearRate: number
  frontDamping: number
  rearDamping: number
}

/**
 * Steps of a tenth of a millisecond would change the peak by less than 1e-7 of itself; of one, by
 * 1e-5.
 */
const STEP = 1e-3
/**
 * The peak comes within the slowest half wave after the ramp; two seconds are enough for ends of 1
 * Hz and above.
 */
const LONGEST = 2

type State = [heave: number, pitch: number, heaveRate: number, pitchRate: number]

/**
 * Share [1] by which braking that grows evenly over `rampTime` [s] takes more load off the rear
 * wheel, at its peak, than the same braking held: 0 where the ends are damped so much that nothing
 * is passed. Linear springs and dampers, tyres without give, `brakeAlongFork` the part of the brake
 * force [1] that presses the fork together by itself (the front's share times tan rake), which the
 * front load gives back at first. Refuses masses, lengths and rates not above 0. Source: heave and
 * pitch of a body on two damped springs (Rao, Mechanical Vibrations, ch. 5), stepped by Runge and
 * Kutta's fourth order.
 */
export function rearUnloadingOvershoot(
  half: HalfBike,
  { rampTime, brakeAlongFork = 0 }: { rampTime: number; brakeAlongFork?: number },
): number {
  const slope = slopeOf(checkedHalf(half), brakeAlongFork)
  const ramp = nonNegative('rampTime', rampTime)
  const steady = half.height / (half.toFront + half.toRear)
  const force = (time: number): number => (ramp === 0 ? 1 : Math.min(1, time / ramp))
  let state: State = [0, 0, 0, 0]
  let most = 0
  for (let step = 0; step * STEP < ramp + LONGEST; step++) {
    const time = step * STEP
    state = rungeKutta(slope, state, force(time), force(time + STEP / 2), force(time + STEP))
    most = Math.max(most, -slope(state, force(time + STEP)).rearLoad)
  }
  return Math.max(0, most / steady - 1)
}

function checkedHalf(half: HalfBike): HalfBike {
  for (const name of ['mass', 'gyrationRadius', 'toFront', 'toRear', 'height'] as const)
    positive(name, record('half', half)[name])
  for (const name of ['frontRate', 'rearRate'] as const) positive(name, half[name])
  for (const name of ['frontDamping', 'rearDamping'] as const) nonNegative(name, half[name])
  return half
}

type Slope = (state: State, force: number) => { rate: State; rearLoad: number }

/**
 * Rates of change per newton of brake force, and what that does to the rear wheel's load; heave is
 * positive up, pitch nose-down.
 */
function slopeOf(half: HalfBike, brakeAlongFork: number): Slope {
  const { mass, gyrationRadius, toFront: b, toRear: c, height, frontRate, rearRate } = half
  const damping = (rate: number, ratio: number, share: number): number =>
    2 * ratio * Math.sqrt(rate * mass * share)
  const frontDamper = damping(frontRate, half.frontDamping, c / (b + c))
  const rearDamper = damping(rearRate, half.rearDamping, b / (b + c))
  const inertia = mass * gyrationRadius ** 2
  return ([z, pitch, rise, turn], force) => {
    const frontLoad =
      frontRate * (b * pitch - z) + frontDamper * (b * turn - rise) - brakeAlongFork * force
    const rearLoad = rearRate * (-z - c * pitch) + rearDamper * (-rise - c * turn)
    const rate: State = [
      rise,
      turn,
      (frontLoad + rearLoad) / mass,
      (height * force - b * frontLoad + c * rearLoad) / inertia,
    ]
    return { rate, rearLoad }
  }
}

/**
 * Natural frequencies of a half-bike without damping [rad/s], the lower first: bounce and pitch,
 * each a mixture of both unless the ends are matched. Refuses masses, lengths and rates not above
 * 0. Source: Rao, Mechanical Vibrations, ch. 5.
 */
export function bounceAndPitch(half: HalfBike): { low: number; high: number } {
  const slope = slopeOf(checkedHalf(half), 0)
  const [, , a = 0, b = 0] = slope([-1, 0, 0, 0], 0).rate
  const [, , c = 0, d = 0] = slope([0, -1, 0, 0], 0).rate
  const [middle, spread] = [(a + d) / 2, Math.hypot((a - d) / 2, Math.sqrt(Math.max(0, b * c)))]
  // the product of both squares, without the difference of two near numbers
  const high = middle + spread
  return { low: Math.sqrt(Math.max(0, a * d - b * c) / high), high: Math.sqrt(high) }
}

function rungeKutta(slope: Slope, from: State, start: number, middle: number, end: number): State {
  const moved = (by: State, share: number): State =>
    from.map((value, place) => value + share * STEP * by[place]!) as State
  const k1 = slope(from, start).rate
  const k2 = slope(moved(k1, 0.5), middle).rate
  const k3 = slope(moved(k2, 0.5), middle).rate
  const k4 = slope(moved(k3, 1), end).rate
  return moved(
    k1.map((value, place) => (value + 2 * k2[place]! + 2 * k3[place]! + k4[place]!) / 6) as State,
    1,
  )
}

/** A bike as a half-bike about a stance, with one set of what is not known about it. */
export function halfBikeOf(
  bike: Bike,
  stance: Stance,
  open: { gyrationRadius: number; frontDamping: number; rearDamping: number },
): HalfBike {
  const { centreOfGravity, wheelbase, frontTravel, rearTravel, rake } = stance
  return {
    ...open,
    mass: (stance.frontLoad + stance.rearLoad) / STANDARD_GRAVITY,
    toFront: wheelbase - centreOfGravity.x,
    toRear: centreOfGravity.x,
    height: centreOfGravity.z,
    frontRate: forkRate(bike.fork, frontTravel) / Math.cos(rake) ** 2,
    rearRate: rearWheelRate(bike.rear, rearTravel),
  }
}

/**
 * What a lift is reckoned over: every value of each list. Damping ratios [1], times in which the
 * brake comes on [s], radii of gyration in pitch [m], slopes [rad, positive downhill; absent:
 * level].
 */
export interface LiftSpread {
  frontDamping: readonly number[]
  rearDamping: readonly number[]
  rampTimes: readonly number[]
  gyrationRadii: readonly number[]
  slopes?: readonly number[]
}

/**
 * Lowest and highest deceleration [m/s²] at which the rear wheel lifts, over all that is given, and
 * `steady`, for a brake put on slowly on the load case's own slope; null where nothing up to 20
 * m/s² lifts it. A quick brake passes its steady unloading by `rearUnloadingOvershoot`, so it lifts
 * at that much less. The ends are taken as linear about the stance at rest; a shock that tops out
 * before, and tyres, are left out of the overshoot. Refuses empty lists and what `liftDeceleration`
 * refuses. Source: `liftDeceleration` and `rearUnloadingOvershoot`.
 */
export function liftBand(
  bike: Bike,
  loadCase: LoadCase,
  spread: LiftSpread,
  options: StanceOptions = {},
): { low: number; high: number; steady: number } | null {
  const rest = solveStance(bike, { ...loadCase, deceleration: 0, slope: 0 }, options)
  const { frontBrakeShare = 1, slope: own = 0 } = loadCase
  const brakeAlongFork = frontBrakeShare * Math.tan(rest.rake)
  const overshoots = list('frontDamping', spread.frontDamping, 1).flatMap((frontDamping) =>
    list('rearDamping', spread.rearDamping, 1).flatMap((rearDamping) =>
      list('gyrationRadii', spread.gyrationRadii, 1).flatMap((gyrationRadius) => {
        const half = halfBikeOf(bike, rest, { gyrationRadius, frontDamping, rearDamping })
        return list('rampTimes', spread.rampTimes, 1).map((rampTime) =>
          rearUnloadingOvershoot(half, { rampTime, brakeAlongFork }),
        )
      }),
    ),
  )
  const lifts = [own, ...list('slopes', spread.slopes ?? [own], 1)].map((slope) =>
    liftDeceleration(bike, { ...loadCase, slope }, options),
  )
  const [steady] = lifts
  const found = lifts.filter((lift) => lift !== null)
  if (steady === undefined || steady === null || found.length < lifts.length) return null
  // what the slope itself takes off is steady: only what the brake adds is passed
  const quick = found.map((lift) => lift / (1 + Math.max(...overshoots)))
  return { low: Math.min(...quick), high: Math.max(...found), steady }
}

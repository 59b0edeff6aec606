import { DomainError, positive, record, within } from './domain.ts'
import { type End, type Motion, motionOf, type RideEventKind } from './end.ts'
import { stepFactor, stepper, type Stepper } from './integrate.ts'
import { eventLocator } from './lookout.ts'
import { type Profile, roadOf } from './road.ts'

export type { End, RideEventKind } from './end.ts'
export type { Profile } from './road.ts'

/** Something that happened at a time [s]. `aboveKnee` and `belowKnee` belong to whichever way the damper moves. */
export interface RideEvent {
  time: number
  kind: RideEventKind
}

/** A ride in evenly spaced samples. Heights [m] count from rest, up positive; travel [m] is used travel; time [s], tyre force [N]. */
export interface Ride {
  time: number[]
  road: number[]
  body: number[]
  wheel: number[]
  travel: number[]
  tyreForce: number[]
  events: RideEvent[]
}

// A sample each 2.5 ms shows a wheel's hop (about 15 Hz) in 27 points; at least 400 intervals, at most 4,000.
const INTERVAL = 0.0025
const [FEWEST, MOST] = [400, 4000]
// Motion smaller than this is computed to the tolerance times this: 10 mm and 0.1 m/s.
const FLOOR = [0.01, 0.1, 0.01, 0.1]
const LONGEST_STEP = 0.02
// Share of a step below which a crossing counts as made at its start.
const AT_ONCE = 0.01
const MOST_STEPS = 1_000_000

/**
 * One end of a bike over a road, from rest under gravity, for `duration` [s]. Steps adapt to `relativeTolerance` [1, 1e-12 to 1e-2] a step (of 10 mm
 * and 0.1 m/s where the motion is smaller); changes of damper law, stops and the tyre leaving the road are located and never stepped over. Arrays are
 * sampled each 2.5 ms (400 to 4,000 even intervals, both ends included). A bottomed or airborne end is a result. Refuses masses, rates, travel and
 * duration of 0 or below, and a force law without a finite value in 0…travel. Source: quarter-vehicle model (Gillespie, ch. 5, from memory),
 * integrated with Dormand and Prince 5(4) (Hairer, Nørsett and Wanner, II.4–II.6).
 */
export function rideOver(
  profile: Profile,
  end: End,
  options: { duration: number; relativeTolerance?: number },
): Ride {
  const duration = positive('duration', record('options', options).duration)
  const tolerance = within('relativeTolerance', options.relativeTolerance ?? 1e-6, 1e-12, 1e-2)
  const road = roadOf(profile)
  const motion = motionOf(end, road)
  const intervals = Math.min(MOST, Math.max(FEWEST, Math.ceil(duration / INTERVAL - 1e-9)))
  // Of their length from the start: arrays that grow value by value took a tenth of a ride.
  const blank = (): number[] => new Array<number>(intervals + 1)
  const ride: Ride = {
    time: blank(),
    road: blank(),
    body: blank(),
    wheel: blank(),
    travel: blank(),
    tyreForce: blank(),
    events: [],
  }
  const sample = (place: number, time: number, y: Float64Array): void => {
    const body = y[0]!
    const wheel = y[2]!
    ride.time[place] = time
    ride.road[place] = road.height(time)
    ride.body[place] = body
    ride.wheel[place] = wheel
    ride.travel[place] = motion.restTravel + wheel - body
    ride.tyreForce[place] = motion.tyreForce(time, y)
  }
  const solver = stepper(motion.slopes, 0, [0, 0, 0, 0], FLOOR, tolerance)
  const state = new Float64Array(4)
  sample(0, 0, solver.y)
  let next = 1
  const stops = [...road.changes.filter((time) => time < duration), duration]
  const longest = (time: number): number =>
    Math.min(LONGEST_STEP, time <= (road.changes[0] ?? Infinity) ? road.period / 8 : LONGEST_STEP)
  run(solver, motion, stops, longest, ride.events, (from, to) => {
    for (; next <= intervals; next++) {
      const time = next === intervals ? duration : (duration * next) / intervals
      if (time > to) break
      solver.inside(to > from ? (time - from) / (to - from) : 1, state)
      sample(next, time, state)
    }
  })
  return ride
}

/** Steps through all the stops, handing each accepted step to `onStep` before it becomes the past. */
function run(
  solver: Stepper,
  motion: Motion,
  stops: number[],
  longest: (t: number) => number,
  events: RideEvent[],
  onStep: (t0: number, t1: number) => void,
) {
  const locator = eventLocator(motion.watches, solver)
  let t = 0
  let wish = 1e-4
  let steps = 0
  for (const stop of stops) {
    while (t < stop) {
      if (++steps > MOST_STEPS)
        throw new DomainError(
          'end',
          steps,
          'is too stiff for this duration: shorten it, or lower the rates',
        )
      let h = Math.min(wish, longest(t))
      // No crumb is left before a stop.
      const last = t + 1.01 * h >= stop
      if (last) h = stop - t
      const error = solver.attempt(t, h)
      if (!(error <= 1)) {
        wish = h * (Number.isFinite(error) ? stepFactor(error) : 0.2)
        continue
      }
      const crossing = locator.next(t, h)
      wish = Math.max(crossing || last ? wish : 0, h * stepFactor(error))
      let next = last ? stop : t + h
      if (crossing) {
        // The step is taken again up to the crossing, so that the state there is as good as any.
        next = t + crossing.share * h
        events.push({ time: next, kind: crossing.kind })
        // Across as soon as the step began: from there rounding, or a step too long for what follows, can flip it for ever. A shorter one tells.
        if (crossing.share < AT_ONCE) wish = h / 4
        if (next <= t) continue
        solver.attempt(t, next - t)
      }
      onStep(t, next)
      solver.accept()
      locator.passed(next, solver.y)
      t = next
    }
  }
}

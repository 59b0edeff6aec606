import { fourSlopes } from './fourSlopes.ts'

/* One end of a bike over a road, by the plainest of all methods: Runge and Kutta’s four slopes in equal steps of 50 µs, and no look for where a law changes. */

export interface Quarter {
  sprungMass: number
  unsprungMass: number
  wheelRate: number
  sag: number
  tyreRate: number
  /** force of the damper [N] at a speed [m/s], compression positive */
  damper(speed: number): number
  /** height of the road under the tyre [m] at a time [s] */
  road(time: number): number
}

type State = readonly [body: number, bodySpeed: number, wheel: number, wheelSpeed: number]

const GRAVITY = 9.80665
const STEP = 5e-5
/** Steps between two readings, 2.5 ms apart. */
const READ_EVERY = 50

/** Travel used [m], height of the body [m] and load on the tyre [N], 2.5 ms apart. */
export function rideInSteps(end: Quarter, duration: number) {
  const { sprungMass, unsprungMass, wheelRate, sag, tyreRate } = end
  const weight = (sprungMass + unsprungMass) * GRAVITY
  const load = (time: number, wheel: number): number =>
    Math.max(0, weight + tyreRate * (end.road(time) - wheel))
  const slopes = (time: number, [body, bodySpeed, wheel, wheelSpeed]: State): State => {
    const lift = wheelRate * (wheel - body) + end.damper(wheelSpeed - bodySpeed)
    return [
      bodySpeed,
      lift / sprungMass,
      wheelSpeed,
      (load(time, wheel) - weight - lift) / unsprungMass,
    ]
  }
  let state: State = [0, 0, 0, 0]
  const read = { travel: [sag], body: [0], load: [load(0, 0)], time: [0] }
  const steps = Math.round(duration / STEP)
  for (let i = 0; i < steps; i++) {
    state = fourSlopes(slopes, state, i * STEP, STEP)
    if ((i + 1) % READ_EVERY > 0) continue
    read.time.push((i + 1) * STEP)
    read.travel.push(sag + state[2] - state[0])
    read.body.push(state[0])
    read.load.push(load((i + 1) * STEP, state[2]))
  }
  return read
}

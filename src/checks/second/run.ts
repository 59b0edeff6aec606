import {
  DomainError,
  forkEnergy,
  forkForce,
  randomStream,
  solveStance,
  STANDARD_GRAVITY,
} from '../../core/index.ts'
import type { Fork, GasState, Stance } from '../../core/index.ts'
import { drawBike } from './bikes.ts'
import type { Drawn } from './bikes.ts'
import { settle } from './settle.ts'
import type { Settled } from './settle.ts'

/** How far the two methods lie apart at the most, and how well two laws hold, over all bikes that were compared. */
export interface SecondRun {
  compared: number
  /** bikes that stand on a stop, where there is nothing to balance */
  onStops: number
  /** bikes that the core refuses to settle */
  refused: number
  worst: Settled
  /** the fork's stored energy against its force added up over the travel [share] */
  energy: number
  /** both wheel loads against the weight [share] */
  weight: number
  /** load moved forward by the brake against mass × deceleration × height ÷ wheelbase [share] */
  transfer: number
}

/** The same bikes in every build: what a build shows can be had again. */
const SEED = 20261126

const TRAVELS = ['frontTravel', 'rearTravel', 'rake', 'trail', 'wheelbase'] as const

/** Simpson's rule in small pieces, for a force [N] over a travel [m]. */
function added(force: (x: number) => number, to: number): number {
  const pieces = 400
  const step = to / pieces
  let sum = 0
  for (let i = 0; i < pieces; i++)
    sum += (step / 6) * (force(i * step) + 4 * force((i + 0.5) * step) + force((i + 1) * step))
  return sum
}

function energyOff(fork: Fork, to: number, state: GasState | undefined): number {
  const byForce = added((x) => forkForce(fork, x, state), to)
  return Math.abs(forkEnergy(fork, 0, to, state) - byForce) / Math.abs(byForce)
}

/** Mass of everything [kg]. */
function massOf({ bike, loadCase: { payload = [] } }: Drawn): number {
  return payload.reduce(
    (sum, { mass }) => sum + mass,
    bike.sprung.mass + bike.frontUnsprungMass + bike.rearUnsprungMass,
  )
}

function lawsOff(drawn: Drawn, stance: Stance): { weight: number; transfer: number } {
  const { deceleration = 0, lean = 0 } = drawn.loadCase
  const weight = (massOf(drawn) * STANDARD_GRAVITY) / Math.cos(lean)
  const { frontLoad, rearLoad, centreOfGravity, wheelbase } = stance
  const moved = (massOf(drawn) * deceleration * centreOfGravity.z) / wheelbase
  const still = (weight * centreOfGravity.x) / wheelbase
  return {
    weight: Math.abs(frontLoad + rearLoad - weight) / weight,
    transfer: Math.abs(frontLoad - still - moved) / weight,
  }
}

const between = ({ frontStop, rearStop, frontTravel, rearTravel }: Stance): boolean =>
  frontStop === 'none' && rearStop === 'none' && frontTravel > 0 && rearTravel > 0

function stanceOf({ bike, loadCase }: Drawn): Stance | null {
  try {
    return solveStance(bike, loadCase)
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}

/** Settles so many random bikes by both methods. */
export function runSecondMethod(count: number): SecondRun {
  const next = randomStream(SEED)
  const run: SecondRun = {
    compared: 0,
    onStops: 0,
    refused: 0,
    worst: { frontTravel: 0, rearTravel: 0, rake: 0, trail: 0, wheelbase: 0 },
    energy: 0,
    weight: 0,
    transfer: 0,
  }
  while (run.compared < count) {
    const drawn = drawBike(next)
    const stance = stanceOf(drawn)
    if (stance === null) run.refused++
    else if (!between(stance)) run.onStops++
    else {
      const other = settle(drawn)
      for (const name of TRAVELS)
        run.worst[name] = Math.max(run.worst[name], Math.abs(other[name] - stance[name]))
      const { weight, transfer } = lawsOff(drawn, stance)
      run.weight = Math.max(run.weight, weight)
      run.transfer = Math.max(run.transfer, transfer)
      const off = energyOff(drawn.bike.fork, stance.frontTravel, drawn.loadCase.gasState)
      run.energy = Math.max(run.energy, off)
      run.compared++
    }
  }
  return run
}

/** The worst that may be [m, rad]: differences of 20 µm leave some 1e-10 of error, and a law holds to the roundings of a sum, or of Simpson's rule at the kinks of a spring. */
export const ALLOWED = { apart: 1e-8, energy: 1e-5, law: 1e-11 } as const

/** What is wrong with a run; empty where nothing is. */
export function secondFailures({ worst, energy, weight, transfer }: SecondRun): string[] {
  const apart = TRAVELS.filter((name) => !(worst[name] <= ALLOWED.apart)).map(
    (name) => `${name} differs by ${worst[name]} between the two methods`,
  )
  if (!(energy <= ALLOWED.energy)) apart.push(`a fork’s energy is off its force by ${energy}`)
  if (!(weight <= ALLOWED.law)) apart.push(`wheel loads are off the weight by ${weight}`)
  if (!(transfer <= ALLOWED.law)) apart.push(`load transfer is off by ${transfer}`)
  return apart
}

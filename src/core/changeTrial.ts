import type { Bike } from './bike.ts'
import type { BikeChange } from './bikeChange.ts'
import {
  aimReading,
  axlePlaces,
  CASE_OF,
  stopOf,
  type AimCases,
  type AimCase,
  type AimId,
  type AimStances,
} from './changeAims.ts'
import { attempt, type Parts, partsOf } from './changeParts.ts'
import { type ForkCurve, forkCurveFrom } from './fork.ts'
import { findBalance, type Travels } from './newton.ts'
import { type Scene, setScene } from './scene.ts'
import { solveStance, type Stance, stanceOf } from './stance.ts'

/**
 * What a change of the bike reads, aim by aim, and whether it may be offered. `fault` names what speaks against it where it does so by a margin, so
 * that two opposite corners of a box with the same fault leave no hope between them; null without one.
 */
export interface TrialReading {
  readings: number[]
  sound: boolean
  fault: string | null
}

/** Why a change is never offered: a spring binds or a fork locks within its travel, or an end stands at a stop. */
export type LeftOut = 'binds' | 'toppedOut' | 'bottomed'

/** Tries changes on one bike. */
export interface Trial {
  /** null where the change cannot be built: past coil bind, a loose spring, no room above the oil */
  read(change: BikeChange): TrialReading | null
  /** what was done so far: stances solved, changes tried, and how many of them may not be offered */
  tally(): Tally
}

export interface Tally {
  stances: number
  tried: number
  leftOut: Record<LeftOut, number>
}

/**
 * Sets up trials: every change is solved by the whole stance, once, and remembered. Loads, masses and what a change leaves alone are worked out once for
 * all of them. A change is sound when no end stands at a stop at the loads of the aims, and when no spring binds and no fork locks within its travel
 * that does not do so now.
 */
export function trialOf(bike: Bike, cases: AimCases, aims: readonly AimId[]): Trial {
  const wanted = new Set<AimCase>(aims.map((aim) => CASE_OF[aim]))
  const rider = solveStance(bike, cases.rider)
  const places = axlePlaces(bike, rider)
  const solver = solverOf(bike, cases, wanted, rider)
  const known = new Map<number, TrialReading | null>()
  const leftOut = { binds: 0, toppedOut: 0, bottomed: 0 }
  const compute = (parts: Parts): TrialReading | null => {
    const stances = solver.solve(parts)
    if (stances === null) return null
    const binds = newlyBinds(stances.rider ?? stances.static, rider)
    const stop = stopOf(stances)
    if (binds !== null) leftOut.binds++
    else if (stop !== 'none') leftOut[stop === 'extended' ? 'toppedOut' : 'bottomed']++
    return {
      readings: aims.map((aim) => aimReading(aim, stances, places)),
      sound: binds === null && stop === 'none',
      fault: binds ?? firmStop(stances),
    }
  }
  return {
    read(change) {
      const parts = solver.parts(change)
      if (parts === null) return null
      const key = (parts.fork.number * MANY + parts.rear.number) * MANY + parts.body.number
      const had = known.get(key)
      if (had !== undefined) return had
      const found = compute(parts)
      known.set(key, found)
      return found
    },
    tally: () => ({ stances: solver.stances(), tried: known.size, leftOut: { ...leftOut } }),
  }
}

// more rear ends or chassis than any search builds, and few enough for all three numbers to go into one
const MANY = 2 ** 17

interface Solver {
  parts(change: BikeChange): Parts | null
  /** null where the parts do not go together */
  solve(parts: Parts): AimStances | null
  stances(): number
}

/** Solves changed bikes under the loads wanted, each from where its parts last balanced. */
function solverOf(bike: Bike, cases: AimCases, wanted: ReadonlySet<AimCase>, now: Stance): Solver {
  // on the brakes the gas starts from where the bike settles with the rider, which moves with every change: from full extension here
  const braking = cases.braking ?? {}
  const loads = [
    cases.static ?? {},
    cases.rider,
    { ...braking, gasState: { ...braking.gasState, from: 0 } },
  ]
  const scenes = loads.map((load) => setScene(bike, load, 0))
  const states = loads.map(({ gasState }) => gasState)
  const starts: Travels[] = []
  let count = 0
  const solveOne = (load: number, { rear, body }: Parts, curve: ForkCurve): Stance => {
    const scene: Scene = { ...scenes[load]!, fork: curve, rear: rear.built, body: body.built }
    const found = findBalance(scene, starts[load])
    starts[load] ??= { front: found.front, rear: found.rear }
    count++
    return stanceOf(scene, found)
  }
  const solve = (parts: Parts): AimStances => {
    const [alone, settled, stopping] = parts.fork.built as [ForkCurve, ForkCurve, ForkCurve]
    const found: AimStances = {}
    if (wanted.has('static')) found.static = solveOne(0, parts, alone)
    if (wanted.has('rider') || wanted.has('braking')) found.rider = solveOne(1, parts, settled)
    if (!wanted.has('braking')) return found
    const from = Math.min(found.rider!.frontTravel, bike.fork.travel)
    found.braking = solveOne(2, parts, forkCurveFrom(stopping, from))
    return found
  }
  return {
    parts: partsOf(bike, states, now.rearTravel),
    solve: (parts) => attempt(() => solve(parts)),
    stances: () => count,
  }
}

/** A spring that binds, or a fork that locks, within its travel where it does not do so now. */
function newlyBinds(stance: Stance | undefined, now: Stance): string | null {
  if (stance === undefined) return null
  if (stance.frontLimit.cause !== 'bottomed' && now.frontLimit.cause === 'bottomed')
    return 'front binds'
  if (stance.rearLimit.cause !== 'bottomed' && now.rearLimit.cause === 'bottomed')
    return 'rear binds'
  return null
}

/** More than the other end's changes can take off a stop, a few kilograms at the wheel [N]. */
const FIRM = 50

/** The first end that is pressed firmly against a stop at which it may not stand. */
function firmStop(stances: AimStances): string | null {
  for (const load of ['static', 'rider', 'braking'] as const) {
    const stance = stances[load]
    if (stance === undefined) continue
    if (Math.abs(stance.frontStopForce) > FIRM) return `${load} front ${stance.frontStop}`
    const rear = load === 'braking' && stance.rearStop === 'extended' ? 0 : stance.rearStopForce
    if (Math.abs(rear) > FIRM) return `${load} rear ${stance.rearStop}`
  }
  return null
}

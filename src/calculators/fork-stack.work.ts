import { forkForce, forkStack, forkTravel, METRIC_THREAD_PITCHES, solveStance, spacerFor, springForce, turnsToTravel } from '../core/index.ts'
import type { CoilGroup, Fork } from '../core/index.ts'
import { bikeOf, forkOf } from './bikes.ts'
import { InputRefusal } from './define.ts'
import type { Given, InputValues, OutputValues } from './define.ts'
import type { inputs, outputs } from './fork-stack.fields.ts'

type Values = InputValues<typeof inputs>

const pitchOf = (input: Values): number => (input.thread === 'measured' ? input.pitch : METRIC_THREAD_PITCHES[input.thread]!)

function setUp(input: Values) {
  const screw = turnsToTravel({ turns: input.turnsIn, pitch: pitchOf(input) })
  if (screw > input.range + 1e-9) {
    const most = Math.floor((input.range / pitchOf(input)) * 4) / 4
    throw new InputRefusal(
      'turnsIn',
      `Adjuster, turns in from fully out: its range ends after ${most} turns of this thread. Enter fewer turns or a longer range`,
    )
  }
  const stack = {
    tubeDepth: input.tubeDepth,
    capReach: input.capReach,
    springLength: input.springLength,
    washers: input.washers.map(([thickness = 0]) => thickness),
  }
  const [setting] = forkStack({ ...stack, spacerLength: input.spacerLength, settings: [screw] })
  return { screw, stack, preload: setting!.preload }
}

/** Turns of every row: from fully out in even steps, the end of the range included. */
function settingsOf(input: Values): number[] {
  const most = input.range / pitchOf(input)
  const step = Math.max(input.step, most / 40)
  const turns: number[] = []
  for (let at = 0; at < most - 1e-9; at += step) turns.push(at)
  return [...turns, most]
}

function springOf(rate: number, free: number, solid: number | undefined): CoilGroup[] {
  if (solid === undefined) return [{ rate }]
  if (solid >= free) throw new InputRefusal('solidLength', 'Length with the coils touching must be below the free length of the spring')
  return [{ rate, closes: free - solid }]
}

const holds = ([group]: CoilGroup[], preload: number): boolean => group?.closes === undefined || preload <= group.closes

/** The bike's fork with this stack; null where the cap would press the coils solid before it reaches its thread. */
function forkWith(input: Values, spring: CoilGroup[], preload: number): Fork | null {
  if (!holds(spring, preload)) return null
  const fork = forkOf(input.bike)
  return { ...fork, legs: fork.legs.map((leg) => ({ ...leg, spring, preload })) }
}

/** Fork travel used with the bike alone on its wheels [m], the load along the fork as the standard bike has it: it hardly depends on the height. */
function heightAt(input: Values, spring: CoilGroup[], preload: number): number | null {
  const fork = forkWith(input, spring, preload)
  return fork && forkTravel(fork, solveStance(bikeOf(input.bike)).forkForce)
}

function fullForce(input: Values, spring: CoilGroup[], preload: number): number | null {
  const fork = forkWith(input, spring, preload)
  const bound = spring[0]?.closes !== undefined && preload + input.bike.fork.travel * 1e-3 > spring[0].closes
  return fork && !bound ? forkForce(fork, fork.travel) : null
}

function stateOf(spring: CoilGroup[], preload: number): string {
  if (preload < 0) return 'loose'
  return holds(spring, preload) ? 'held' : 'coils touch'
}

/** SI in, SI out. */
export function compute(input: Values): OutputValues<typeof outputs> {
  const { screw, preload, stack } = setUp(input)
  const spring = springOf(input.rate, input.springLength, input.solidLength)
  const reference = heightAt(input, spring, preload)
  const rows = settingsOf(input).map((turns) => {
    const at = turnsToTravel({ turns, pitch: pitchOf(input) })
    const [row] = forkStack({ ...stack, spacerLength: input.spacerLength, settings: [at] })
    const height = heightAt(input, spring, row!.preload)
    return [turns, row!.preload, height === null || reference === null ? null : reference - height, stateOf(spring, row!.preload)]
  })
  return {
    preload,
    spacer: spacerFor({ ...stack, setting: screw, preload: input.wanted }),
    frontTravel: reference,
    capForce: holds(spring, preload) ? springForce(spring, preload) : null,
    screw,
    fullTravelForce: fullForce(input, spring, preload),
    bindMargin: input.solidLength === undefined ? null : input.springLength - input.solidLength - preload - input.bike.fork.travel * 1e-3,
    settings: rows,
  }
}

/** The adjuster fully out. */
export const baseline = (): Given => ({ turnsIn: 0 })

/** How far the adjuster is wound in, the preload that gives and the adjuster's range [m]. */
export function picture(input: Values) {
  const { screw, preload } = setUp(input)
  return { screw, preload, adjusterRange: input.range }
}

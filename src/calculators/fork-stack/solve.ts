import {
  forkForce,
  forkStack,
  forkTravel,
  METRIC_THREAD_PITCHES,
  solveStance,
  spacerFor,
  springForce,
  turnsToTravel,
} from '../../core/index.ts'
import type { CoilGroup, Fork } from '../../core/index.ts'
import { bikeOf, forkOf } from '../../bikes/bikes.ts'
import type { Given } from '../../machine/given.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type statement from './statement.ts'

type Values = InputOf<typeof statement>

const pitchOf = (input: Values): number =>
  input.thread === 'measured' ? input.pitch : METRIC_THREAD_PITCHES[input.thread]!

/** A sum of lengths [m] without the rounding of its parts: a spring that just fills its room is held, and a picometre short of it would be loose. */
const withoutRounding = (length: number): number => Number(length.toFixed(12))

function setUp(input: Values) {
  const screw = turnsToTravel({ turns: input.turnsIn, pitch: pitchOf(input) })
  if (screw > input.range + 1e-9) {
    const most = Math.floor((input.range / pitchOf(input)) * 4) / 4
    throw new InputRefusal(
      'turnsIn',
      `The adjuster’s range ends after ${most} turns of this thread. Enter fewer turns or a longer range`,
    )
  }
  const stack = {
    tubeDepth: input.tubeDepth,
    capReach: input.capReach,
    springLength: input.springLength,
    washers: input.washers.map(([thickness = 0]) => thickness),
  }
  const [setting] = forkStack({ ...stack, spacerLength: input.spacerLength, settings: [screw] })
  const preload = withoutRounding(setting!.preload)
  if (preload >= input.springLength)
    throw new InputRefusal(
      'tubeDepth',
      'There is no room at all left for the spring in a tube of this depth: spacer, washers, cap and adjuster fill it. Measure the depth and the lengths again',
    )
  return { screw, stack, preload }
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
  if (solid >= free)
    throw new InputRefusal(
      'solidLength',
      'The length with the coils touching must be less than the free length of the spring. Check both',
    )
  return [{ rate, closes: withoutRounding(free - solid) }]
}

const holds = ([group]: CoilGroup[], preload: number): boolean =>
  group?.closes === undefined || preload <= group.closes

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
  const bound =
    spring[0]?.closes !== undefined && preload + input.bike.fork.travel > spring[0].closes
  return fork && !bound ? forkForce(fork, fork.travel) : null
}

/** Spring travel left at full fork travel for a preload [m]; null where nobody knows when the coils touch. */
function bindMarginOf({ springLength, solidLength, bike }: Values, preload: number): number | null {
  return solidLength === undefined ? null : springLength - solidLength - preload - bike.fork.travel
}

const capForceOf = (spring: CoilGroup[], preload: number): number | null =>
  holds(spring, preload) ? springForce(spring, preload) : null

function stateOf(spring: CoilGroup[], preload: number): string {
  if (preload < 0) return 'loose'
  return holds(spring, preload) ? 'held' : 'solid'
}

/** SI in, SI out. */
function compute(input: Values, solved: ReturnType<typeof setUp>): OutputOf<typeof statement> {
  const { screw, preload, stack } = solved
  const spring = springOf(input.rate, input.springLength, input.solidLength)
  const reference = heightAt(input, spring, preload)
  const rows = settingsOf(input).map((turns) => {
    const at = turnsToTravel({ turns, pitch: pitchOf(input) })
    const [row] = forkStack({ ...stack, spacerLength: input.spacerLength, settings: [at] })
    const reached = withoutRounding(row!.preload)
    const height = heightAt(input, spring, reached)
    return [
      turns,
      reached,
      height === null || reference === null ? null : reference - height,
      stateOf(spring, reached),
    ]
  })
  return {
    preload,
    spacer: spacerFor({ ...stack, setting: screw, preload: input.wanted }),
    frontTravel: reference,
    capForce: capForceOf(spring, preload),
    screw,
    fullTravelForce: fullForce(input, spring, preload),
    bindMargin: bindMarginOf(input, preload),
    wantedTravel: heightAt(input, spring, input.wanted),
    wantedCapForce: capForceOf(spring, input.wanted),
    wantedBindMargin: bindMarginOf(input, input.wanted),
    settings: rows,
  }
}

/** The adjuster fully out. */
const baseline = (): Given => ({ turnsIn: 0 })

/** How far the adjuster is wound in, the preload that gives and the adjuster's range [m]. */
function picture(input: Values, solved: ReturnType<typeof setUp>) {
  const { screw, preload } = solved
  return { screw, preload, adjusterRange: input.range }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const solved = setUp(input)
    return { outputs: compute(input, solved), picture: () => picture(input, solved) }
  },
  baseline,
})

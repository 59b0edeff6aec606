import {
  forkForce,
  forkLimit,
  forkRate,
  forkTravel,
  sample,
  springForce,
} from '../../core/index.ts'
import type { Fork, Gas } from '../../core/index.ts'
import type { Given } from '../../machine/given.ts'
import type { CodeOf, InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import type statement from './statement.ts'

type Input = InputOf<typeof statement>
type Output = OutputOf<typeof statement>

/** The leg for the trapped air: invented, as in the middleweight roadster. 56 cm³ of spring, spacer and cap stand in the bore. */
const LEG = { tubeDiameter: 0.043, boreDiameter: 0.038, stackVolume: 56e-6 }

/** Air pressed fast, as on the brakes; 1 is pressed slowly, and a stroke lies between the two (the ideal gas law's two ends). */
const FAST = 1.4

/** A leg that oil fills before its stop only creeps over the last tenth: the air is then ten times as stiff as at the start. */
const LOCKING = 0.9

/** The loads of the table, as shares of the load given. */
const SHARES = [0.5, 1, 1.5, 2]

function forkOf(setUp: Input): Fork {
  const gas: Gas | undefined =
    setUp.gas === 'sealed' ? { ...LEG, airHeight: setUp.airHeight } : undefined
  const leg = { spring: [{ rate: setUp.rate }], preload: setUp.preload, ...(gas ? { gas } : {}) }
  const topOut =
    setUp.topOut === 'fitted'
      ? { rate: setUp.topOutRate, length: Math.min(setUp.topOutLength, setUp.travel) }
      : undefined
  return { travel: setUp.travel, legs: [leg, leg], ...(topOut ? { topOut } : {}) }
}

/** Without air one number; with it from slow to fast squeezing. Null where oil fills the leg before the stop. */
function atFullTravel(fork: Fork, from: number, sealed: boolean): number | Interval | null {
  if (forkLimit(fork).cause === 'locked') return null
  const slow = forkForce(fork, fork.travel)
  return sealed ? { low: slow, high: forkForce(fork, fork.travel, { exponent: FAST, from }) } : slow
}

/** Whether a value is really above another, and not by rounding: 594 N squeeze 9 N/mm each by 33 mm; newtons or metres. */
const exceeds = (value: number, other: number): boolean => value - other > 1e-9 * Math.abs(other)

function stands(
  setUp: Input,
  load: number,
  used: number,
  topStop: number,
  limit: { travel: number; cause: string },
): CodeOf<typeof statement, 'where'> {
  if (!exceeds(load, topStop)) return 'top-stop'
  if (limit.cause === 'locked' && exceeds(used, LOCKING * limit.travel)) return 'oil-stop'
  if (!exceeds(limit.travel, used)) return 'full-travel'
  return setUp.topOut === 'fitted' && exceeds(setUp.topOutLength, used) ? 'top-out' : 'between'
}

/** SI in, SI out. */
function compute(input: Input): Output {
  const fork = forkOf(input)
  const limit = forkLimit(fork)
  const used = forkTravel(fork, input.load)
  const topStop = Math.max(0, forkForce(fork, 0))
  return {
    travelUsed: used,
    springForce: 2 * springForce(fork.legs[0]!.spring, input.preload + used),
    rateHere: forkRate(fork, used),
    squeeze: input.preload + used,
    forceAtFullTravel: atFullTravel(fork, used, input.gas === 'sealed'),
    loadToLeaveTopStop: topStop,
    where: stands(input, input.load, used, topStop, limit),
    heights: SHARES.map((share) => {
      const there = forkTravel(fork, share * input.load)
      return [share * input.load, there, forkRate(fork, there)]
    }),
  }
}

/** The standard set-up: rate [N/mm] and preload [mm]. */
const baseline = (): Given => ({ rate: 9, preload: 15 })
const exampleBaseline = true

/** Force against travel [m, N], and the loads of the table with travel and slope there [N, m, N/m]. */
function picture(input: Input, output: Output) {
  const fork = forkOf(input)
  // a locked leg's force grows without end: stop the curve a hundredth short
  const { travel, cause } = forkLimit(fork)
  const last = cause === 'locked' ? travel * 0.99 : travel
  const curve = sample(0, last, 60).map((x): readonly [number, number] => [x, forkForce(fork, x)])
  // on the top stop the fork carries any load up to its first force, without moving
  const stop: readonly [number, number][] = curve[0]![1] > 0 ? [[0, 0]] : []
  return {
    curve: [...stop, ...curve],
    heights: output.heights as readonly (readonly [number, number, number])[],
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input, outputs) }
  },
  baseline,
  exampleBaseline,
})

import {
  forkForce,
  forkLimit,
  forkRate,
  forkTravel,
  sample,
  springDeflection,
  springForce,
  springLimit,
} from '../../core/index.ts'
import type { CoilGroup, Fork } from '../../core/index.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type statement from './statement.ts'

type Values = InputOf<typeof statement>

const springOf = ({ groups }: Pick<Values, 'groups'>): CoilGroup[] =>
  groups.map(([rate, closes]) => ({ rate: rate!, closes: closes! }))

function forkOf(input: Values): Fork {
  const spring = springOf(input)
  if (input.preload > (springLimit(spring) ?? Infinity))
    throw new InputRefusal(
      'preload',
      'The preload must be less than what squeezes every coil shut. Enter less preload, or coils with more room between them',
    )
  const leg = { spring, preload: input.preload }
  return { travel: input.travel, legs: [leg, leg] }
}

interface Closing {
  rate: number
  /** of one leg */
  force: number
  travel: number
}

/** Each length of coils in the order in which they touch: the lowest force first. */
function closingsOf(input: Values): Closing[] {
  const spring = springOf(input)
  return spring
    .map(({ rate, closes }) => ({ rate, force: springForce([{ rate }], closes!) }))
    .sort((a, b) => a.force - b.force)
    .map(({ rate, force }) => ({
      rate,
      force,
      travel: springDeflection(spring, force) - input.preload,
    }))
}

function when({ staticLoad, riderLoad, brakingLoad, travel }: Values, closing: Closing): string {
  if (closing.travel <= 0) return 'preload'
  if (closing.travel > travel) return 'never'
  const pair = 2 * closing.force
  if (pair <= staticLoad) return 'bike'
  if (pair <= riderLoad) return 'rider'
  return pair <= brakingLoad ? 'braking' : 'deeper'
}

/** SI in, SI out. */
function compute(input: Values): OutputOf<typeof statement> {
  const fork = forkOf(input)
  const limit = forkLimit(fork).travel
  // on solid wire, and on the stop, more load moves nothing: there is no slope
  const at = (force: number): { travel: number; rate: number | null } => {
    const travel = forkTravel(fork, force)
    return { travel, rate: travel < limit ? forkRate(fork, travel) : null }
  }
  const [still, rider, braking] = [at(input.staticLoad), at(input.riderLoad), at(input.brakingLoad)]
  const closings = closingsOf(input)
  const first = input.groups.length > 1 ? closings[0] : undefined
  const sameLinear =
    rider.travel > 0 && rider.travel < limit
      ? input.riderLoad / 2 / (input.preload + rider.travel)
      : null
  return {
    riderRate: rider.rate,
    riderTravel: rider.travel,
    staticRate: still.rate,
    staticTravel: still.travel,
    brakingRate: braking.rate,
    brakingTravel: braking.travel,
    firstClosing: first ? first.travel : null,
    closingForce: first ? 2 * first.force : null,
    forceAtEnd: forkForce(fork, limit),
    endsAt: limit,
    bindAt: closings.at(-1)!.travel,
    sameLinear,
    linearAtEnd:
      sameLinear === null ? null : 2 * springForce([{ rate: sameLinear }], input.preload + limit),
    closings: closings.map((closing) => [
      closing.rate,
      closing.force,
      closing.travel,
      when(input, closing),
    ]),
  }
}

/** Force [N] and slope [N/m] against travel [m], the corners, and the one rate that rides at the same height. */
function picture(input: Values, output: OutputOf<typeof statement>) {
  const fork = forkOf(input)
  const limit = forkLimit(fork).travel
  const corners = closingsOf(input)
    .map(({ travel }) => travel)
    .filter((travel) => travel > 0 && travel < limit)
  const even = sample(0, limit, 40)
  // a corner is two rates at one place: the slope is drawn as a step
  const places = [...even, ...corners].sort((a, b) => a - b)
  const sameLinear = output.sameLinear as number | null
  const just = limit * 1e-7
  return {
    // on the top stop the fork carries any load up to its first force, without moving
    force: [
      [0, 0] as const,
      ...places.map((x): readonly [number, number] => [x, forkForce(fork, x)]),
    ],
    rate: places.flatMap((x): (readonly [number, number])[] =>
      x > just
        ? [
            [x, forkRate(fork, x - just)],
            [x, forkRate(fork, x)],
          ]
        : [[x, forkRate(fork, x)]],
    ),
    corners: corners.map((x): readonly [number, number] => [x, forkForce(fork, x)]),
    linear:
      sameLinear === null
        ? []
        : places.map((x): readonly [number, number] => [
            x,
            2 * springForce([{ rate: sameLinear }], input.preload + x),
          ]),
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input, outputs) }
  },
})

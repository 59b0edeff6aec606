import {
  DomainError,
  rearLimit,
  rearTravel,
  rearWheelForce,
  rearWheelRate,
  sample,
} from '../../core/index.ts'
import type { CodeOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import { measured } from '../../machine/measured.ts'
import type statement from './statement.ts'
import type { Values } from './values.ts'
import { limitsOf, moved, partsOf, ratioAt, rearOf } from './parts.ts'
import type { Parts } from './parts.ts'

type Estimate = Interval & { value: number }

/** How the wheel would move on past either stop [N/m]: as the spring alone has it, a slope that no ± of a reading touches. */
interface BeyondStops {
  extended: number
  full: number
}

function beyondStops(parts: Parts, limit: number): BeyondStops {
  const slope = (x: number): number =>
    parts.shocks * parts.springRate * ratioAt(parts.ratio, x) ** 2
  return { extended: slope(0), full: slope(limit) }
}

/**
 * Where the wheel would settle under a force [m] if neither stop held it. A stop hides how far a reading may be out, since more load moves nothing; so the
 * ± is reckoned without the stops, and ends at them only afterwards. Past a stop the force beyond what the stop meets is what counts, so that a back is
 * sure to be on it where the ± of the forces does not reach back.
 */
function unstopped(parts: Parts, force: number, beyond: BeyondStops): number {
  const rear = rearOf(parts)
  const { travel } = rearLimit(rear)
  const [first, last] = [rearWheelForce(rear, 0), rearWheelForce(rear, travel)]
  if (force < first) return (force - first) / beyond.extended
  return force > last ? travel + (force - last) / beyond.full : rearTravel(rear, force)
}

/** Where the back stands with the rider, given the ± of the sag. */
function standsAt(
  { low, high, value }: Estimate,
  limit: number,
): CodeOf<typeof statement, 'stands'> {
  if (low >= limit) return 'bottomed'
  if (high <= 0) return 'topped-out'
  if (high >= limit) return value >= limit ? 'bottomed' : 'may-bottom'
  return low <= 0 ? (value <= 0 ? 'topped-out' : 'may-top-out') : 'between'
}

/** No reading is below full extension or past the stop; one that is sure to be there has no ± left. */
function held({ value, low, high }: Estimate, limit: number): Estimate | number {
  const within = (travel: number): number => Math.min(limit, Math.max(0, travel))
  const [least, most] = [within(low), within(high)]
  return least === most ? least : { value: within(value), low: least, high: most }
}

function resultsOf(input: Values): OutputOf<typeof statement> {
  const base = partsOf(input)
  const at = (move: (parts: Parts) => number): Estimate =>
    measured((values) => move(moved(base, values)), [0, 0, 0, 0, 0], limitsOf(input))
  const rear = rearOf(base)
  const limit = rearLimit(rear).travel
  const beyond = beyondStops(base, limit)
  const free = at((parts) => unstopped(parts, parts.riderForce, beyond))
  const riderSag = held(free, limit)
  return {
    wheelRate: at((parts) =>
      rearWheelRate(rearOf(parts), rearTravel(rearOf(parts), parts.riderForce)),
    ),
    riderSag,
    staticSag: held(
      at((parts) => unstopped(parts, parts.staticForce, beyond)),
      limit,
    ),
    stands: standsAt(free, limit),
    heightPerTurn: heightPerTurn(input, base),
    preloadNow: base.preload,
    share: (typeof riderSag === 'number' ? riderSag : riderSag.value) / input.travel,
    rateExtended: rearWheelRate(rear, 0),
    rateFull: rearWheelRate(rear, limit),
    fullForce: rearWheelForce(rear, limit),
  }
}

/** A linkage whose wheel force falls with travel has no one place to settle: refused at the field where it was given. */
function settling<Result>(input: Values, work: () => Result): Result {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof DomainError) || error.parameter !== 'motionRatio') throw error
    const field =
      input.linkage === 'table'
        ? 'ratios'
        : input.ratioAs === 'leverage'
          ? 'endLeverage'
          : 'endRatio'
    throw new InputRefusal(
      field,
      'With this ratio the force at the wheel would fall as it moves up: the bike could not settle. Enter a ratio that changes less',
    )
  }
}

/** Rise of the axle's end of the bike for one turn in from here, under the rider [m]. */
function heightPerTurn(input: Values, parts: Parts): number {
  const turned = { ...parts, preload: parts.preload + input.pitch }
  return rearTravel(rearOf(parts), parts.riderForce) - rearTravel(rearOf(turned), parts.riderForce)
}

/** SI in, SI out. */
const compute = (input: Values): OutputOf<typeof statement> =>
  settling(input, () => resultsOf(input))

/** Before: the collar not turned. */
const baseline = () => ({ turns: 0 })

/** Motion ratio, force [N] and rate [N/m] at the wheel along its travel [m], with the two loads [N] that the bike settles under. */
function picture(input: Values) {
  const base = partsOf(input)
  const rear = rearOf(base)
  const { travel } = rearLimit(rear)
  const along = sample(0, travel, 52)
  return {
    ratio: along.map((x): [number, number] => [x, ratioAt(base.ratio, x)]),
    force: along.map((x): [number, number] => [x, rearWheelForce(rear, x)]),
    rate: along.map((x): [number, number] => [x, rearWheelRate(rear, x)]),
    staticForce: base.staticForce,
    riderForce: base.riderForce,
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input) }
  },
  baseline,
})

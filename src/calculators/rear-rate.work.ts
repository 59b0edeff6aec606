import { DomainError, rearLimit, rearTravel, rearWheelForce, rearWheelRate } from '../core/index.ts'
import { InputRefusal } from './define.ts'
import type { Interval, OutputValues } from './define.ts'
import { measured } from './measured.ts'
import type { outputs, Values } from './rear-rate.fields.ts'
import { limitsOf, moved, partsOf, ratioAt, rearOf } from './rear-rate.parts.ts'
import type { Parts } from './rear-rate.parts.ts'

function resultsOf(input: Values): OutputValues<typeof outputs> {
  const base = partsOf(input)
  const at = (move: (parts: Parts) => number): Interval & { value: number } => measured((values) => move(moved(base, values)), [0, 0, 0, 0, 0], limitsOf(input))
  const rear = rearOf(base)
  const limit = rearLimit(rear).travel
  const riderSag = at((parts) => rearTravel(rearOf(parts), parts.riderForce))
  return {
    wheelRate: at((parts) => rearWheelRate(rearOf(parts), rearTravel(rearOf(parts), parts.riderForce))),
    riderSag: clipped(riderSag, limit),
    staticSag: clipped(
      at((parts) => rearTravel(rearOf(parts), parts.staticForce)),
      limit,
    ),
    heightPerTurn: heightPerTurn(input, base),
    preloadNow: base.preload,
    share: riderSag.value / input.travel,
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
    const field = input.linkage === 'table' ? 'ratios' : input.ratioAs === 'leverage' ? 'endLeverage' : 'endRatio'
    throw new InputRefusal(
      field,
      'With this ratio the force at the wheel would fall as it moves up: the bike could not settle. Enter a ratio that changes less',
    )
  }
}

/** No reading is below full extension or past the stop. */
const clipped = ({ value, low, high }: Interval & { value: number }, limit: number): Interval => ({ value, low: Math.max(0, low), high: Math.min(limit, high) })

/** Rise of the axle's end of the bike for one turn in from here, under the rider [m]. */
function heightPerTurn(input: Values, parts: Parts): number {
  const turned = { ...parts, preload: parts.preload + input.pitch }
  return rearTravel(rearOf(parts), parts.riderForce) - rearTravel(rearOf(turned), parts.riderForce)
}

/** SI in, SI out. */
export const compute = (input: Values): OutputValues<typeof outputs> => settling(input, () => resultsOf(input))

/** Before: the collar not turned. */
export const baseline = () => ({ turns: 0 })

/** Motion ratio, force [N] and rate [N/m] at the wheel along its travel [m], with the two loads [N] that the bike settles under. */
export function picture(input: Values) {
  const base = partsOf(input)
  const rear = rearOf(base)
  const { travel } = rearLimit(rear)
  const along = Array.from({ length: 53 }, (_, place) => (place / 52) * travel)
  return {
    ratio: along.map((x): [number, number] => [x, ratioAt(base.ratio, x)]),
    force: along.map((x): [number, number] => [x, rearWheelForce(rear, x)]),
    rate: along.map((x): [number, number] => [x, rearWheelRate(rear, x)]),
    staticForce: base.staticForce,
    riderForce: base.riderForce,
  }
}

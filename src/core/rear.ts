import {
  DomainError,
  finite,
  nonNegative,
  positive,
  record,
  representable,
  wholeNumber,
  within,
} from './domain.ts'
import { heldTravel, type TopOut, topOutOf, type TravelLimit } from './fork.ts'
import {
  type MotionRatio,
  type RatioCurve,
  ratioAt,
  ratioCurve,
  ratioPiece,
  strokeAt,
  travelAtStroke,
} from './ratio.ts'
import {
  beforeCoilBind,
  type CoilGroup,
  curveForce,
  curveRate,
  type SpringCurve,
  springCurve,
} from './spring.ts'

/**
 * The rear end: vertical axle travel [m], number of shocks, and per shock its spring, preload [m] and gas force (pressure × rod area) [N];
 * motion ratio; top-out spring and friction [N] at the wheel.
 */
export interface Rear {
  travel: number
  shocks?: number
  spring: readonly CoilGroup[]
  preload: number
  gasForce?: number
  motionRatio: MotionRatio
  topOut?: TopOut
  friction?: number
}

/** A rear end ready to evaluate many times. */
export interface RearCurve {
  shocks: number
  spring: SpringCurve
  preload: number
  gasForce: number
  ratio: RatioCurve
  topOut: TopOut
  limit: TravelLimit
}

/** A rear end ready to evaluate; refuses what makes no sense in it, and a wheel force that falls anywhere in its travel. */
export function rearCurve(rear: Rear): RearCurve {
  const travel = positive('travel', record('rear', rear).travel)
  nonNegative('friction', rear.friction ?? 0)
  const spring = springCurve(rear.spring)
  const preload = beforeCoilBind(spring, 'preload', finite('preload', rear.preload))
  const ratio = ratioCurve(rear.motionRatio, travel)
  const curve: RearCurve = {
    shocks: wholeNumber('shocks', rear.shocks ?? 1, 1),
    spring,
    preload,
    gasForce: nonNegative('gasForce', rear.gasForce ?? 0),
    ratio,
    topOut: topOutOf(rear.topOut),
    limit: limitOf(spring, preload, ratio, travel),
  }
  refuseFalling(curve)
  return curve
}

function limitOf(
  spring: SpringCurve,
  preload: number,
  ratio: RatioCurve,
  travel: number,
): TravelLimit {
  const stroke = Math.max(0, spring.limit - preload)
  if (stroke >= strokeAt(ratio, travel)) return { travel, cause: 'bottomed' }
  return { travel: travelAtStroke(ratio, stroke), cause: 'coilBound' }
}

// Between joints (of the ratio, of the spring, the end of the top-out spring) the slope is k m² + f m′ with m straight and f quadratic in
// travel; its own slope is 3 k m m′, which keeps its sign. It can be below 0 only where m′ is, and there it falls: looking at the end of a piece is enough.
function refuseFalling(curve: RearCurve): void {
  const { ratio, spring, preload, topOut, limit } = curve
  const joints = [...ratio.travels, topOut.length, limit.travel]
  for (const deflection of spring.deflections) {
    if (deflection > preload) joints.push(travelAtStroke(ratio, deflection - preload))
  }
  const ends = joints.filter((x) => x <= limit.travel).sort((a, b) => a - b)
  // A fall that only rounding makes, in figures meant to be level, is no fall.
  const rounding = 1e-9 * Math.abs(rearCurveForce(curve, limit.travel))
  for (const [i, high] of ends.slice(1).entries()) {
    const low = ends[i]!
    if (slopeFrom(curve, (low + high) / 2, high) * (high - low) < -rounding) {
      throw new DomainError('motionRatio', high, 'must not make the wheel force fall with travel')
    }
  }
}

// The slope at x as the piece that holds `inside` has it: at a joint the two sides differ.
function slopeFrom(curve: RearCurve, inside: number, x: number): number {
  const { ratio, spring, preload, gasForce, shocks, topOut } = curve
  const piece = ratioPiece(ratio, inside)
  const m = ratio.ratios[piece]! + ratio.slopes[piece]! * (x - ratio.travels[piece]!)
  const stiffening = curveRate(spring, preload + strokeAt(ratio, inside)) * m * m
  const turning =
    (curveForce(spring, preload + strokeAt(ratio, x)) + gasForce) * ratio.slopes[piece]!
  return shocks * (stiffening + turning) + (inside < topOut.length ? topOut.rate : 0)
}

/** Wheel force [N] of a rear curve at a travel [m] within its limit. */
export function rearCurveForce(curve: RearCurve, x: number): number {
  const shock = curveForce(curve.spring, curve.preload + strokeAt(curve.ratio, x)) + curve.gasForce
  return (
    curve.shocks * shock * ratioAt(curve.ratio, x) -
    curve.topOut.rate * Math.max(0, curve.topOut.length - x)
  )
}

/** Wheel rate [N/m] of a rear curve to the right of a travel [m] within its limit. */
export function rearCurveRate(curve: RearCurve, x: number): number {
  return slopeFrom(curve, x, x)
}

function curveReaching(rear: Rear, x: number): RearCurve {
  const curve = rearCurve(rear)
  within('x', x, 0, rear.travel)
  beforeCoilBind(curve.spring, 'x', curve.preload + strokeAt(curve.ratio, x))
  return curve
}

/**
 * Vertical force [N] at the rear axle at used travel x [m], without friction. Refuses x outside 0…travel or past coil bind, and a rear end
 * whose wheel force falls anywhere in its travel. Source: virtual work, F = shocks × shock force × d(stroke)/d(travel).
 */
export function rearWheelForce(rear: Rear, x: number): number {
  return representable('force', rearCurveForce(curveReaching(rear, x), x))
}

/** Slope [N/m] of `rearWheelForce` to the right of x [m], with the term from a changing ratio; refuses what `rearWheelForce` refuses. */
export function rearWheelRate(rear: Rear, x: number): number {
  return representable('rate', rearCurveRate(curveReaching(rear, x), x))
}

/** Where the rear travel [m] ends: at the stop, or where every coil of the spring touches. */
export function rearLimit(rear: Rear): TravelLimit {
  return { ...rearCurve(rear).limit }
}

/** Used travel [m] at which the rear end carries a force [N] at the axle, held to 0…limit. Refuses a force that is not finite. */
export function rearTravel(rear: Rear, force: number): number {
  const curve = rearCurve(rear)
  return heldTravel((x) => rearCurveForce(curve, x), curve.limit.travel, finite('force', force))
}

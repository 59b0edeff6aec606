import { STANDARD_GRAVITY } from './constants.ts'
import { type Damper, isOneLine, kneeOf, lawOf } from './damper.ts'
import { DomainError, positive, record } from './domain.ts'
import type { Road } from './road.ts'
import { bracketedRoot } from './root.ts'

/** One end of a bike, all at the wheel: what it carries, its suspension, its tyre. */
export interface End {
  /** [kg] */
  sprungMass: number
  /** [kg] */
  unsprungMass: number
  /** suspension force [N] at a used travel [m]; called for 0…travel alone */
  force(x: number): number
  /** [m] */
  travel: number
  /** [N/m] */
  tyreRate: number
  /** stiffness of the stops at both ends of the travel [N/m] */
  stopRate: number
  damper: Damper
}

/** What a watched quantity's passing through 0 means, rising and falling. */
export type RideEventKind =
  | 'compression'
  | 'rebound'
  | 'aboveKnee'
  | 'belowKnee'
  | 'bottoms'
  | 'leavesBottomStop'
  | 'topsOut'
  | 'leavesTopStop'
  | 'lands'
  | 'leavesRoad'

/** A quantity that the ride must not step over: its value, how small counts as 0, and what its passing 0 is called. */
export interface Watch {
  value(time: number, y: Float64Array): number
  band: number
  /** its side of 0 before the ride begins, where time 0 itself may already lie across (a sharp drop) */
  startSide?: 1 | -1
  rising: RideEventKind
  falling: RideEventKind
}

/** Equations of motion of one end over a road: state y = (body, its velocity, wheel, its velocity), heights from rest, up positive. */
export interface Motion {
  /** used travel at rest [m] */
  restTravel: number
  slopes(time: number, y: Float64Array, slope: Float64Array): void
  tyreForce(time: number, y: Float64Array): number
  watches: Watch[]
}

/** Suspension force [N] with the stops, for any travel [m]; refuses a force law that returns what is no number. */
function withStops(end: End): (x: number) => number {
  const { travel, stopRate } = end
  const force = (x: number): number => {
    const value = end.force(x)
    if (!Number.isFinite(value))
      throw new DomainError('end.force', value, `must return a finite number at travel ${x}`)
    return value
  }
  return (x) => {
    if (x < 0) return force(0) + stopRate * x
    return x > travel ? force(travel) + stopRate * (x - travel) : force(x)
  }
}

/** Travel [m] at which the suspension carries a weight [N]; on a stop if it must. */
function rest(force: (x: number) => number, { travel, stopRate }: End, weight: number): number {
  const short = force(0) - weight
  if (short >= 0) return -short / stopRate
  const over = force(travel) - weight
  return over <= 0
    ? travel - over / stopRate
    : bracketedRoot((x) => force(x) - weight, 0, travel, short, over)
}

/** The equations of one end over a road; refuses masses, rates and travel of 0 or below. */
export function motionOf(end: End, road: Road): Motion {
  const body = positive('end.sprungMass', record('end', end).sprungMass)
  const wheel = positive('end.unsprungMass', end.unsprungMass)
  const tyreRate = positive('end.tyreRate', end.tyreRate)
  positive('end.travel', end.travel)
  positive('end.stopRate', end.stopRate)
  if (typeof end.force !== 'function')
    throw new DomainError('end.force', end.force, 'must be a function of travel')
  const compression = lawOf('end.damper.compression', record('end.damper', end.damper).compression)
  const rebound = lawOf('end.damper.rebound', end.damper.rebound)
  const force = withStops(end)
  const restTravel = rest(force, end, body * STANDARD_GRAVITY)
  const restLoad = (body + wheel) * STANDARD_GRAVITY
  const tyreStretch = (time: number, y: Float64Array): number =>
    restLoad + tyreRate * (road.height(time) - y[2]!)
  const tyreForce = (time: number, y: Float64Array): number => Math.max(0, tyreStretch(time, y))
  const slopes = (time: number, y: Float64Array, slope: Float64Array): void => {
    const closing = y[3]! - y[1]!
    const suspension =
      force(restTravel + y[2]! - y[0]!) + (closing >= 0 ? compression(closing) : -rebound(-closing))
    slope[0] = y[1]!
    slope[1] = suspension / body - STANDARD_GRAVITY
    slope[2] = y[3]!
    slope[3] = (tyreForce(time, y) - suspension) / wheel - STANDARD_GRAVITY
  }
  return { restTravel, slopes, tyreForce, watches: watchesOf(end, restTravel, tyreStretch) }
}

// Smaller than anything that can be felt or measured: below it a sign is rounding.
const SPEED_BAND = 1e-9
const TRAVEL_BAND = 1e-12
const FORCE_BAND = 1e-7

function watchesOf(end: End, restTravel: number, tyreStretch: Watch['value']): Watch[] {
  const travel = (y: Float64Array): number => restTravel + y[2]! - y[0]!
  const closing = (y: Float64Array): number => y[3]! - y[1]!
  const watches: Watch[] = [
    { value: tyreStretch, band: FORCE_BAND, startSide: 1, rising: 'lands', falling: 'leavesRoad' },
    { value: (_, y) => travel(y), band: TRAVEL_BAND, rising: 'leavesTopStop', falling: 'topsOut' },
    {
      value: (_, y) => travel(y) - end.travel,
      band: TRAVEL_BAND,
      rising: 'bottoms',
      falling: 'leavesBottomStop',
    },
  ]
  if (!isOneLine(end.damper))
    watches.push({
      value: (_, y) => closing(y),
      band: SPEED_BAND,
      rising: 'compression',
      falling: 'rebound',
    })
  const [knee, reboundKnee] = [kneeOf(end.damper.compression), kneeOf(end.damper.rebound)]
  if (knee !== null)
    watches.push({
      value: (_, y) => closing(y) - knee,
      band: SPEED_BAND,
      rising: 'aboveKnee',
      falling: 'belowKnee',
    })
  if (reboundKnee !== null)
    watches.push({
      value: (_, y) => -closing(y) - reboundKnee,
      band: SPEED_BAND,
      rising: 'aboveKnee',
      falling: 'belowKnee',
    })
  return watches
}

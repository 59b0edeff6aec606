import {
  DomainError,
  finite,
  nonNegative,
  oneOf,
  positive,
  record,
  representable,
} from './domain.ts'
import { propagate } from './uncertainty.ts'

/**
 * A weighing on one scale per wheel: both loads with the bike level, then the load on the wheel that stays down with the other axle raised by
 * `lift` [m]. Loads in any one unit; lengths [m]. `uncertainty`, standard: of each load, in that unit, and of each length [m] (absent: 0).
 */
export interface LiftWeighing {
  wheelbase: number
  frontLevel: number
  rearLevel: number
  lifted: 'front' | 'rear'
  lift: number
  otherWheelRaised: number
  frontRadius: number
  rearRadius: number
  uncertainty?: { load: number; length?: number }
}

/**
 * Height [m] of the centre of gravity above level ground, suspension locked, wheels free to roll; with `uncertainty` also its standard
 * uncertainty [m]. Exact in the lift: no small angles. Refuses lengths not above 0, a lift beyond the wheelbase, and a raised load above the whole.
 * Source: moments about the axle that stays down, before and after turning the bike by the lift.
 */
export function centreOfGravityHeight(
  weighing: LiftWeighing & { uncertainty: { load: number; length?: number } },
): { height: number; uncertainty: number }
export function centreOfGravityHeight(weighing: LiftWeighing & { uncertainty?: undefined }): number
export function centreOfGravityHeight(
  weighing: LiftWeighing,
): number | { height: number; uncertainty: number }
export function centreOfGravityHeight(
  weighing: LiftWeighing,
): number | { height: number; uncertainty: number } {
  const { lifted, lift, frontRadius, rearRadius, uncertainty } = record('weighing', weighing)
  const rear = oneOf('lifted', lifted, ['front', 'rear']) === 'rear'
  const [stays, goes] = rear
    ? [weighing.frontLevel, weighing.rearLevel]
    : [weighing.rearLevel, weighing.frontLevel]
  const [down, up] = rear ? [frontRadius, rearRadius] : [rearRadius, frontRadius]
  refuse(weighing, stays + goes)
  const values = [weighing.wheelbase, lift, down, up, stays, goes, weighing.otherWheelRaised]
  if (uncertainty == null) return representable('height', height(values))
  const load = nonNegative('uncertainty.load', record('uncertainty', uncertainty).load)
  const length = nonNegative('uncertainty.length', uncertainty.length ?? 0)
  const result = propagate(height, values, [length, length, length, length, load, load, load])
  return { height: result.value, uncertainty: result.uncertainty }
}

function refuse(weighing: LiftWeighing, total: number): void {
  const wheelbase = positive('wheelbase', weighing.wheelbase)
  nonNegative('frontLevel', weighing.frontLevel)
  nonNegative('rearLevel', weighing.rearLevel)
  positive('frontRadius', weighing.frontRadius)
  positive('rearRadius', weighing.rearRadius)
  if (total === 0)
    throw new DomainError('rearLevel', weighing.rearLevel, 'must not be 0 when the front reads 0')
  const raised = nonNegative('otherWheelRaised', weighing.otherWheelRaised)
  if (raised > total)
    throw new DomainError('otherWheelRaised', raised, 'must not be above both level loads together')
  if (positive('lift', weighing.lift) >= wheelbase)
    throw new DomainError('lift', weighing.lift, 'must be below the wheelbase')
}

/** `down` and `up` are the radii of the wheel that stays down and of the lifted one; `back` counts from the axle that stays down. */
function height(values: number[]): number {
  const [wheelbase, lift, down, up, stays, goes, raised] = values as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ]
  const total = stays + goes
  const rise = up - down
  const reach = Math.sqrt(finite('lift', wheelbase ** 2 + rise ** 2 - (rise + lift) ** 2))
  const turn = Math.atan2(rise + lift, reach) - Math.atan2(rise, wheelbase)
  const back = (wheelbase * goes) / total
  const backRaised = (reach * (total - raised)) / total
  return down + (back * Math.cos(turn) - backRaised) / Math.sin(turn)
}

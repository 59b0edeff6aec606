import type { CoilGroup, Fork, GasState, Rear } from '../../core/index.ts'
import { halve } from './searches.ts'

/* The forces of springs and air by themselves, written down without a look at the core: a stack by its inverse, the air by pressure and volume. */

/** Deflection of a stack of coil groups under a force [N]. */
const deflection = (groups: readonly CoilGroup[], force: number): number =>
  groups.reduce((sum, { rate, closes }) => sum + Math.min(force / rate, closes ?? Infinity), 0)

/** Force of a stack [N] at a deflection [m], by halving on the force. */
export function stackForce(groups: readonly CoilGroup[], by: number): number {
  if (by <= 0 || groups.length === 0) return 0
  let most = 1
  while (deflection(groups, most) < by) most *= 2
  return halve((force) => deflection(groups, force) < by, [0, most], 80)
}

const PRESSURE = 101325

/** Force of the air in one leg [N] at a used travel [m]: slowly to where the stroke begins, then with its exponent. */
function airForce(
  gas: NonNullable<Fork['legs'][number]['gas']>,
  travel: number,
  used: number,
  { exponent = 1, from = 0 }: GasState,
): number {
  const area = (Math.PI / 4) * gas.tubeDiameter ** 2
  const room = (x: number): number =>
    (Math.PI / 4) * gas.boreDiameter ** 2 * gas.airHeight -
    (gas.stackVolume ?? 0) +
    area * (travel - x)
  const there = (PRESSURE * room(0)) / room(from)
  return area * (there * (room(from) / room(used)) ** exponent - PRESSURE)
}

/** Force of a fork along its axis [N]. */
export function forkPush(fork: Fork, used: number, state: GasState = {}): number {
  const legs = fork.legs.reduce(
    (sum, leg) =>
      sum +
      stackForce(leg.spring, leg.preload + used) +
      (leg.gas ? airForce(leg.gas, fork.travel, used, state) : 0),
    0,
  )
  const { rate, length } = fork.topOut ?? { rate: 0, length: 0 }
  return legs - rate * Math.max(0, length - used)
}

/** Stroke of the shock [m] at a used wheel travel [m], by adding up the ratio in small pieces (Simpson's rule). */
export function stroke({ motionRatio }: Rear, used: number): number {
  if ('table' in motionRatio) throw new RangeError('the second method knows straight ratios only')
  const ratio = (x: number): number => motionRatio.initial + (motionRatio.slope ?? 0) * x
  const pieces = 8
  const step = used / pieces
  let sum = 0
  for (let i = 0; i < pieces; i++)
    sum += (step / 6) * (ratio(i * step) + 4 * ratio((i + 0.5) * step) + ratio((i + 1) * step))
  return sum
}

/** Force along all shocks [N]. */
export const shockPush = (rear: Rear, used: number): number =>
  (rear.shocks ?? 1) *
  (stackForce(rear.spring, rear.preload + stroke(rear, used)) + (rear.gasForce ?? 0))

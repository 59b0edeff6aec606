import { InputRefusal } from '../../machine/work.ts'
import type { Values } from './values.ts'
import { STANDARD_GRAVITY, turnsToTravel } from '../../core/index.ts'
import type { MotionRatio, Rear } from '../../core/index.ts'

/** The rear end as compute uses it [SI], preload with the collar where it is, forces at the axle less what moves with the wheel. */
export interface Parts {
  travel: number
  shocks: number
  springRate: number
  preload: number
  gasForce: number
  ratio: MotionRatio
  staticForce: number
  riderForce: number
}

export const rearOf = ({ travel, shocks, springRate, preload, gasForce, ratio }: Parts): Rear => ({
  travel,
  shocks,
  spring: [{ rate: springRate }],
  preload,
  gasForce,
  motionRatio: ratio,
})

/** Readings moved by an error each: spring rate and ratio as shares, preload, static and rider load. */
export function moved(
  parts: Parts,
  [rate = 0, ratio = 0, preload = 0, standing = 0, rider = 0]: readonly number[],
): Parts {
  return {
    ...parts,
    springRate: parts.springRate * (1 + rate),
    ratio: scaled(parts.ratio, 1 + ratio),
    preload: parts.preload + preload,
    staticForce: parts.staticForce + standing,
    riderForce: parts.riderForce + rider,
  }
}

export function limitsOf({
  ratePlusMinus,
  ratioPlusMinus,
  readingPlusMinus,
  loadPlusMinus,
}: Values): number[] {
  return [ratePlusMinus, ratioPlusMinus, readingPlusMinus, loadPlusMinus, loadPlusMinus]
}

const scaled = (ratio: MotionRatio, by: number): MotionRatio =>
  'table' in ratio
    ? { table: ratio.table.map(([x, m]) => [x, m * by] as const) }
    : { initial: ratio.initial * by, slope: (ratio.slope ?? 0) * by }

/** Puts the inputs together; refuses what cannot go together at its field. */
export function partsOf(input: Values): Parts {
  if (input.riderLoad < input.staticLoad)
    throw new InputRefusal(
      'riderLoad',
      'With the rider the rear scale cannot read less than with the bike alone. Check whether the two were swapped',
    )
  const weight = input.unsprungMass * STANDARD_GRAVITY
  if (weight >= input.staticLoad)
    throw new InputRefusal(
      'unsprungMass',
      'What moves with the wheel must weigh less than the rear scale reads with the bike alone. Check both',
    )
  const preload = input.preload + turnsToTravel({ turns: input.turns, pitch: input.pitch })
  return {
    travel: input.travel,
    shocks: input.shocks === 'two' ? 2 : 1,
    springRate: input.springRate,
    preload,
    gasForce: input.gasForce,
    ratio: ratioOf(input),
    staticForce: input.staticLoad - weight,
    riderForce: input.riderLoad - weight,
  }
}

/** The motion ratio, whichever way round it was given. */
function ratioOf(input: Values): MotionRatio {
  const asMotion = (ratio: number): number => (input.ratioAs === 'leverage' ? 1 / ratio : ratio)
  if (input.linkage === 'table') {
    const table = input.ratios
      .map(([x = 0, ratio = 1]): [number, number] => [x, asMotion(ratio)])
      .sort((a, b) => a[0] - b[0])
    if (table[0]![0] > 0 || table.at(-1)![0] < input.travel - 1e-9)
      throw new InputRefusal(
        'ratios',
        'The table must reach from 0 to the full wheel travel. Add the missing row',
      )
    if (table.some(([x], row) => row > 0 && x <= table[row - 1]![0]))
      throw new InputRefusal(
        'ratios',
        'The table has two rows for one wheel travel. Take one of them out',
      )
    return { table }
  }
  const initial = input.ratioAs === 'leverage' ? 1 / input.leverage : input.motionRatio
  if (input.linkage === 'constant') return { initial }
  const end = input.ratioAs === 'leverage' ? 1 / input.endLeverage : input.endRatio
  return { initial, slope: (end - initial) / input.travel }
}

/** Motion ratio at a travel [m]. */
export function ratioAt(ratio: MotionRatio, x: number): number {
  if (!('table' in ratio)) return ratio.initial + (ratio.slope ?? 0) * x
  const next = Math.max(
    1,
    ratio.table.findIndex(([at]) => at >= x),
  )
  const [from, to] = [ratio.table[next - 1]!, ratio.table[next]!]
  return from[1] + ((to[1] - from[1]) * (x - from[0])) / (to[0] - from[0])
}

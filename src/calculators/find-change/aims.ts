import type { Aim, AimId, Stance } from '../../core/index.ts'
import { InputRefusal } from '../../machine/work.ts'
import type { Values } from './means.ts'

/** Aims about where the same bike stands now: what is not known of it is the same before and after. */
export const FROM_NOW: readonly AimId[] = ['trail', 'rake', 'frontHeight', 'rearHeight']

/** Windows with two ends, of which either or both may be left out. */
const ENDS = [
  ['frontRiderSag', 'frontRiderLow', 'frontRiderHigh'],
  ['rearRiderSag', 'rearRiderLow', 'rearRiderHigh'],
  ['frontStaticSag', 'frontStaticLow', 'frontStaticHigh'],
  ['rearStaticSag', 'rearStaticLow', 'rearStaticHigh'],
  ['frontShare', 'frontShareLow', 'frontShareHigh'],
  ['frontHeight', 'frontHeightLow', 'frontHeightHigh'],
  ['rearHeight', 'rearHeightLow', 'rearHeightHigh'],
] as const

/** What an end that is left out stands for: no sag, share or height reaches it. */
const OPEN = { low: { frontHeight: -1, rearHeight: -1 } as Partial<Record<AimId, number>>, high: 1 }

/** A window of which both ends may be left out: none if both are. */
function windowOf(id: AimId, low?: number, high?: number): Aim[] {
  if (low === undefined && high === undefined) return []
  return [{ id, low: low ?? OPEN.low[id] ?? 0, high: high ?? OPEN.high }]
}

/** Whether a window has no end upwards, or downwards. */
export const isOpen = ({ id, low, high }: Aim): { below: boolean; above: boolean } => ({
  below: low === (OPEN.low[id] ?? 0),
  above: high >= OPEN.high,
})

/** The aims that are asked for [SI]; trail and rake about how the bike stands now. */
export function aimsOf(input: Values, now: Pick<Stance, 'trail' | 'rake'>): Aim[] {
  const windows = ENDS.flatMap(([id, low, high]) => {
    if ((input[low] ?? -Infinity) > (input[high] ?? Infinity))
      throw new InputRefusal(
        high,
        'This window must not end below where it begins. Enter its two ends the other way round',
      )
    return windowOf(id, input[low], input[high])
  })
  const { trailWithin, rakeWithin, reserve } = input
  return [
    ...windows,
    ...windowOf('trail', now.trail - trailWithin, now.trail + trailWithin),
    ...(rakeWithin === undefined
      ? []
      : windowOf('rake', now.rake - rakeWithin, now.rake + rakeWithin)),
    ...windowOf('brakingReserve', reserve),
  ]
}

import { payloadOf } from './bikes.ts'
import type { BikeSpec } from './inSI.ts'

/** What may be aboard, in words. */
export const PART_LABELS = {
  rider: 'Rider',
  passenger: 'Passenger',
  luggage: 'Luggage',
} as const

export type Part = keyof typeof PART_LABELS

/** Masses aboard [kg]; absent or 0: nobody. */
export interface Aboard {
  rider?: number
  passenger?: number
  luggage?: number
}

const PARTS = ['rider', 'passenger', 'luggage'] as const

/** Rider, passenger and luggage [kg] at the places where they sit on this bike [m, datum frame]. */
export const aboard = (
  spec: BikeSpec,
  masses: Aboard,
): { part: Part; mass: number; x: number; z: number }[] =>
  PARTS.map((part) => ({ part, ...payloadOf(spec[part], masses[part] ?? 0) })).filter(
    ({ mass }) => mass > 0,
  )

/** The bike with its rake and wheelbase quoted at other travels [m] than its sheet's; undefined keeps the bike's own. */
export function quotedAs(spec: BikeSpec, frontTravel?: number, rearTravel?: number): BikeSpec {
  if (frontTravel === undefined && rearTravel === undefined) return spec
  const { quotedAt } = spec
  return {
    ...spec,
    quotedAt: {
      frontTravel: frontTravel ?? quotedAt.frontTravel,
      rearTravel: rearTravel ?? quotedAt.rearTravel,
    },
  }
}

/** Shock stroke per wheel travel [1] at a used rear travel [m]: as the bike's sheet has it, a straight line. */
export function motionRatioAt(spec: BikeSpec, rearTravel: number): number {
  return spec.rear.motionRatio.initial + spec.rear.motionRatio.slope * rearTravel
}

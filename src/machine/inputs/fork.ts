import type { QuantityInput } from '../statement.ts'

/** Asked wherever a share of the fork's travel, or its end, comes in. */
export const fullTravel = {
  kind: 'quantity',
  label: 'Full travel',
  quantity: 'length',
  unit: 'mm',
  range: [50, 350],
  step: 1,
  default: 120,
} as const satisfies QuantityInput

/** The same where the share alone depends on it, so that a typical travel will do. */
export const fullTravelOrTypical = {
  ...fullTravel,
  typical: [110, 140],
  typicalFrom: 'common practice for road bikes, no published source',
} as const satisfies QuantityInput

/**
 * What the spring of one leg of a road fork commonly has [N/mm] (common practice, no source). People also quote the rate of the pair; a
 * number past this range whose half lies in it is asked about, and never changed unasked.
 */
export const RATE_OF_ONE_LEG = [6, 13] as const

/** The limit of error of a length read off the fork. */
export const readingWithin = (hint: string, standard: number) =>
  ({
    kind: 'quantity',
    label: 'Each reading is within ±',
    hint,
    quantity: 'length',
    unit: 'mm',
    range: [0, 5],
    step: 0.1,
    default: standard,
    more: true,
  }) as const

import type { QuantityInput } from '../statement.ts'

const QUOTED =
  'Makers quote them at full extension or settled, and seldom say which; 0 to 30 mm covers both.'

/** Asked wherever rake and wheelbase come from a sheet: the pose that the sheet means. */
export const quotedFront = {
  kind: 'quantity',
  label: 'Front travel used when rake and wheelbase were quoted',
  hint: '0 if they hold for a bike at full extension.',
  quantity: 'length',
  unit: 'mm',
  range: [0, 60],
  step: 1,
  optional: true,
  empty: 'as this bike’s sheet has it',
  typical: [0, 30],
  typicalFrom: QUOTED,
  more: true,
} as const satisfies QuantityInput

export const quotedRear = {
  ...quotedFront,
  label: 'Rear travel used when rake and wheelbase were quoted',
} as const satisfies QuantityInput

export const riderMass = {
  kind: 'quantity',
  label: 'Rider in riding gear',
  quantity: 'mass',
  unit: 'kg',
  range: [0, 160],
  step: 1,
  default: 80,
  procedure: 'weigh-the-bike',
} as const satisfies QuantityInput

export const passengerMass = {
  ...riderMass,
  label: 'Passenger',
  range: [0, 140],
  default: 0,
} as const satisfies QuantityInput
export const luggageMass = {
  ...riderMass,
  label: 'Luggage',
  range: [0, 80],
  default: 0,
} as const satisfies QuantityInput

import { RATE_OF_ONE_LEG } from '../../machine/inputs/fork.ts'
import type { QuantityInput } from '../../machine/statement.ts'
import { luggageMass, passengerMass, riderMass } from '../../machine/inputs/wholeBike.ts'
import { clearances, measured } from './readings.ts'

const sag = <const D extends number>(label: string, standard: D, more?: true) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'length',
    unit: 'mm',
    range: [0, 120],
    step: 1,
    default: standard,
    ...(more ? { more } : {}),
  }) as const
const maybe = <
  const T extends Pick<QuantityInput, 'label' | 'quantity' | 'unit' | 'range' | 'step' | 'hint'>,
>(
  input: T,
) => ({ kind: 'quantity', optional: true, empty: 'not asked for', more: true, ...input }) as const
const aboard = { default: undefined, optional: true, empty: 'nobody', more: true } as const
const maybeSag = (label: string) =>
  maybe({ label, quantity: 'length', unit: 'mm', range: [0, 60], step: 1 })
const rates = (label: string, standard: readonly number[], range: readonly [number, number]) =>
  ({
    kind: 'table',
    label,
    columns: [{ id: 'rate', label: 'Rate', quantity: 'rate', unit: 'N/mm', range }],
    rows: [1, 10],
    default: standard.map((rate) => [rate]),
    more: true,
    when: { allowed: 'parts' },
  }) as const
const heights = {
  quantity: 'length',
  unit: 'mm',
  range: [-40, 40],
  step: 1,
  hint: 'Against now, with the rider, over the axle. Below 0 is lower.',
} as const
const share = (label: string) =>
  maybe({ label, quantity: 'share', unit: '%', range: [30, 70], step: 0.5 })
const pitch = (label: string) =>
  maybe({ label, quantity: 'length', unit: 'mm', range: [0.25, 5], step: 0.05 })

/** What is asked: the bike, who rides it, what should come out, and what may be changed. */
export const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  rider: { ...riderMass, default: 95 },
  frontRiderLow: sag('Front sag with the rider, from', 34),
  frontRiderHigh: sag('Front sag with the rider, to', 38),
  rearRiderLow: sag('Rear sag with the rider, from', 36, true),
  rearRiderHigh: sag('Rear sag with the rider, to', 40, true),
  trailWithin: {
    kind: 'quantity',
    label: 'Trail may move either way by',
    quantity: 'length',
    unit: 'mm',
    range: [0.2, 20],
    step: 0.2,
    default: 1,
    more: true,
  },
  allowed: {
    kind: 'choice',
    label: 'What may be changed',
    options: {
      adjusters: 'preload at both ends',
      tubes: 'that, and the tubes in the yokes',
      oil: 'those, and the oil height',
      parts: 'all of it, springs and shock length too',
    },
    default: 'tubes',
    more: true,
  },
  forkAdjuster: {
    kind: 'choice',
    label: 'Fork preload is changed',
    options: {
      outside: 'by an adjuster in the cap',
      inside: 'by another spacer: the fork is opened',
    },
    default: 'outside',
    more: true,
  },
  newForkRate: {
    kind: 'quantity',
    label: 'New fork springs go in, one leg',
    hint: 'Their rate, where they are bought already: every way then fits them.',
    quantity: 'rate',
    unit: 'N/mm',
    range: [3, 20],
    step: 0.1,
    oneLeg: RATE_OF_ONE_LEG,
    optional: true,
    empty: 'none bought',
    more: true,
  },
  forkRates: rates('Fork springs on offer, one leg', [8, 8.5, 9, 9.5, 10, 10.5, 11], [3, 20]),
  rearRates: rates('Shock springs on offer', [80, 85, 90, 95, 100, 105, 110], [8, 250]),
  frontStaticLow: maybeSag('Front static sag, from'),
  frontStaticHigh: maybeSag('Front static sag, to'),
  rearStaticLow: maybeSag('Rear static sag, from'),
  rearStaticHigh: maybeSag('Rear static sag, to'),
  rakeWithin: maybe({
    label: 'Rake may move either way by',
    quantity: 'angle',
    unit: '°',
    range: [0.05, 3],
    step: 0.05,
  }),
  frontShareLow: share('Front’s share of the load, from'),
  frontShareHigh: share('Front’s share of the load, to'),
  frontHeightLow: maybe({ label: 'Front higher, from', ...heights }),
  frontHeightHigh: maybe({ label: 'Front higher, to', ...heights }),
  rearHeightLow: maybe({ label: 'Rear higher, from', ...heights }),
  rearHeightHigh: maybe({ label: 'Rear higher, to', ...heights }),
  reserve: maybe({
    label: 'Front travel left on the brakes, at least',
    quantity: 'length',
    unit: 'mm',
    range: [0, 40],
    step: 1,
  }),
  deceleration: {
    kind: 'quantity',
    label: 'Braking to keep it for',
    quantity: 'acceleration',
    unit: 'g',
    range: [0.2, 1.1],
    step: 0.05,
    default: 0.7,
    more: true,
  },
  passenger: { ...passengerMass, ...aboard },
  luggage: { ...luggageMass, ...aboard, empty: 'none' },
  ...clearances,
  ...measured,
  forkPitch: pitch('Fork adjuster, each turn'),
  rearPitch: pitch('Shock collar, each turn'),
  ratesWithin: {
    kind: 'quantity',
    label: 'Springs keep to their rates within',
    quantity: 'share',
    unit: '%',
    range: [0, 10],
    step: 0.5,
    default: 3,
    more: true,
  },
  preloadWithin: {
    kind: 'quantity',
    label: 'Preload is known within',
    quantity: 'length',
    unit: 'mm',
    range: [0, 5],
    step: 0.5,
    default: 1,
    more: true,
  },
  riderWithin: {
    kind: 'quantity',
    label: 'The rider’s weight is known within',
    quantity: 'mass',
    unit: 'kg',
    range: [0, 10],
    step: 1,
    default: 2,
    more: true,
  },
} as const

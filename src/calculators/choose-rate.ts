import { bikeOf, payloadOf } from './bikes.ts'
import type { BikeSpec } from './bikes.ts'
import { chooseRateRemarks } from './choose-rate.remarks.ts'
import { candidatesOf, rateSpread } from './choose-rate.band.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { Cell, InputValues } from './define.ts'
import { chooseRate, forkForceFromAxleLoad, solveStance, STANDARD_GRAVITY } from '../core/index.ts'
import type { Bike, LoadCase, RateRow } from '../core/index.ts'

const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  riderMass: {
    kind: 'quantity',
    label: 'Rider in riding gear',
    hint: 'Helmet, boots and back protector add 8 to 12 kg.',
    procedure: 'weigh-the-bike',
    quantity: 'mass',
    unit: 'kg',
    range: [40, 180],
    step: 1,
    default: 80,
  },
  riderSag: {
    kind: 'quantity',
    label: 'Sag with the rider, wanted',
    procedure: 'measure-front-sag',
    quantity: 'length',
    unit: 'mm',
    range: [15, 70],
    step: 1,
    default: 36,
  },
  rates: {
    kind: 'table',
    label: 'Spring rates to be had, one leg',
    columns: [{ id: 'rate', label: 'Rate', quantity: 'rate', unit: 'N/mm', range: [3, 20] }],
    rows: [1, 8],
    default: [[8], [8.5], [9], [9.5], [10], [10.5], [11], [11.5]],
  },
  riderShare: {
    kind: 'quantity',
    label: 'Share of the rider on the front wheel',
    hint: 'The front scale with the rider, less without, over the rider’s mass.',
    procedure: 'weigh-the-bike',
    more: true,
    quantity: 'share',
    unit: '%',
    range: [20, 70],
    step: 0.5,
    optional: true,
    empty: 'the bike’s own rider position',
    typical: [41, 51],
    typicalFrom: 'five points either way of an upright seat on a road bike; common practice, no published source',
  },
  staticLow: { kind: 'quantity', label: 'Static sag, window from', more: true, quantity: 'share', unit: '%', range: [0, 40], step: 1, default: 10 },
  staticHigh: { kind: 'quantity', label: 'Static sag, window to', more: true, quantity: 'share', unit: '%', range: [0, 50], step: 1, default: 20 },
  deceleration: {
    kind: 'quantity',
    label: 'Braking to keep room for',
    more: true,
    quantity: 'acceleration',
    unit: 'g',
    range: [0.2, 1.1],
    step: 0.05,
    default: 0.7,
  },
  reserve: { kind: 'quantity', label: 'Travel to keep in hand then', more: true, quantity: 'length', unit: 'mm', range: [0, 40], step: 1, default: 5 },
  dampingLow: { kind: 'quantity', label: 'Damping ratio from', more: true, quantity: 'ratio', unit: '', range: [0.05, 1], step: 0.05, default: 0.3 },
  dampingHigh: { kind: 'quantity', label: 'Damping ratio to', more: true, quantity: 'ratio', unit: '', range: [0.05, 1], step: 0.05, default: 0.4 },
  stroke: {
    kind: 'quantity',
    label: 'Spring travel to touching coils',
    hint: 'Free length less the length with the coils touching.',
    more: true,
    optional: true,
    empty: 'not known',
    quantity: 'length',
    unit: 'mm',
    range: [60, 400],
    step: 1,
  },
} as const

const outputs = {
  candidates: { label: 'Rates worth trying, one leg', quantity: 'rate', unit: 'N/mm', digits: 1, lead: true },
  spread: { label: 'Five points of rider share, either way: rate ±', quantity: 'share', unit: '%', digits: 1, lead: true },
  spreadRate: { label: 'That is, on the middle of the band, ±', quantity: 'rate', unit: 'N/mm', digits: 2 },
  forkLoad: { label: 'Load along the fork with the rider, both legs', quantity: 'force', unit: 'N', digits: 0 },
  front: { label: 'Front scale with the rider', quantity: 'load', unit: 'kg load', digits: 1 },
  rows: {
    kind: 'table',
    label: 'Each rate, set to the sag wanted',
    columns: [
      { id: 'rate', label: 'Rate', quantity: 'rate', unit: 'N/mm', digits: 1 },
      { id: 'preload', label: 'Preload', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'staticSag', label: 'Static sag', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'braking', label: 'Braking', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'overshoot', label: 'Overshoot', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'reserve', label: 'In hand', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'bind', label: 'Coil bind', quantity: 'length', unit: 'mm', digits: 0 },
      { kind: 'text', id: 'misses', label: 'Misses' },
    ],
  },
} as const

type Values = InputValues<typeof inputs>

export default defineCalculator({
  id: 'choose-rate',
  version: 1,
  title: 'Fork springs worth trying',
  question: 'Which spring?',
  answers: 'Which of the springs that can be had are worth trying for this rider, and what each would do.',
  assumes: [
    'Both legs take the same straight spring.',
    'Preload is set so that each spring gives the same sag with the rider.',
    'Braking is with the front brake alone, on a straight level road, the gas squeezed fast.',
    'Oil height stays as it is.',
  ],
  leavesOut: [
    'Friction: a band of 5 mm or more in every sag.',
    'Bumps met while braking, which use the same travel.',
    'A passenger or luggage, unless you count them as the rider.',
    'Tyre squash, chain pull and the air’s drag.',
  ],
  inputs,
  outputs,
  compute(input) {
    const bike = bikeWith(input)
    const rows = rowsOf(input)
    const rider = solveStance(bike, caseOf(input, shareOf(input)))
    // the load along the fork for a front load moved by so many points of the rider, in the pose as it stands
    const along = (points: number): number =>
      forkForceFromAxleLoad({
        wheelLoad: rider.frontLoad + points * input.riderMass * STANDARD_GRAVITY,
        unsprungMass: bike.frontUnsprungMass,
        rake: rider.rake,
      })
    const spread = rateSpread(along)
    const band = candidatesOf(rows)
    return {
      candidates: band === null ? null : band.low === band.high ? band.low : { low: band.low, high: band.high },
      spread,
      spreadRate: band === null ? null : (spread * (band.low + band.high)) / 2,
      forkLoad: rider.forkForce,
      front: rider.frontLoad,
      rows: rows.map((row): Cell[] => [
        row.rate,
        row.preload,
        row.staticSag,
        row.brakingTravel,
        { low: row.overshoot[0], high: row.overshoot[1] },
        { low: row.reserve[0], high: row.reserve[1] },
        row.coilBindMargin,
        row.misses.length === 0 ? 'none' : row.misses.join('; '),
      ]),
    }
  },
  picture(input) {
    const rows = rowsOf(input)
    const travel = input.bike.fork.travel * 1e-3
    return { rows, travel, staticWindow: [input.staticLow * travel, input.staticHigh * travel] as const, riderSag: input.riderSag, reserve: input.reserve }
  },
  remarks: chooseRateRemarks,
})

/** The rider's own share of mass on the front wheel [1]: where they sit along the wheelbase. */
const shareOf = ({ riderShare, bike }: Values): number => riderShare ?? bike.rider.x / bike.wheelbase

function caseOf({ bike, riderMass }: { bike: BikeSpec; riderMass: number }, share: number): LoadCase {
  return { payload: [{ ...payloadOf(bike.rider, riderMass), x: share * bike.wheelbase * 1e-3 }] }
}

/** The standard bike; with a spring travel known, its springs close there. */
function bikeWith({ bike: spec, stroke }: Values): Bike {
  const bike = bikeOf(spec)
  if (stroke === undefined) return bike
  const legs = bike.fork.legs.map((leg) => ({ ...leg, spring: leg.spring.map((group) => ({ ...group, closes: stroke })) }))
  return { ...bike, fork: { ...bike.fork, legs } }
}

const known = new WeakMap<Values, RateRow[]>()

/** The table is asked for twice, for results and picture: computed once. */
function rowsOf(input: Values): RateRow[] {
  const had = known.get(input)
  if (had) return had
  const rows = computeRows(input)
  known.set(input, rows)
  return rows
}

function computeRows(input: Values): RateRow[] {
  const travel = input.bike.fork.travel * 1e-3
  refuse(input, travel)
  const bike = bikeWith(input)
  const rider = caseOf(input, shareOf(input))
  return chooseRate({
    bike,
    cases: { static: {}, rider, braking: { ...rider, deceleration: input.deceleration, gasState: { exponent: 1.4, from: input.riderSag } } },
    target: { riderSag: input.riderSag, staticSag: [input.staticLow * travel, input.staticHigh * travel], reserve: input.reserve },
    rates: input.rates.map(([rate = 0]) => rate).sort((a, b) => a - b),
    dampingRatios: [input.dampingLow, input.dampingHigh],
  })
}

function refuse(input: Values, travel: number): void {
  if (input.staticLow > input.staticHigh) throw new InputRefusal('staticHigh', 'Static sag, window to must not be below where the window begins')
  if (input.dampingLow > input.dampingHigh) throw new InputRefusal('dampingHigh', 'Damping ratio to must not be below where it begins')
  if (input.riderSag >= travel) throw new InputRefusal('riderSag', 'Sag with the rider, wanted must be below the fork’s full travel')
  if (input.stroke !== undefined && input.stroke <= input.riderSag + 5e-3)
    throw new InputRefusal('stroke', 'Spring travel to touching coils must be more than the sag wanted and 5 mm')
  if (input.stroke !== undefined && input.stroke * 1e3 <= input.bike.fork.preload)
    throw new InputRefusal('stroke', 'Spring travel to touching coils must be more than the preload of the fitted spring')
}

import { chooseRate, forkForceFromAxleLoad, solveStance, STANDARD_GRAVITY } from '../core/index.ts'
import type { Bike, LoadCase, RateRow } from '../core/index.ts'
import { bikeOf, payloadOf } from './bikes.ts'
import type { BikeSpec } from './bikes.ts'
import { candidatesOf, rateSpread } from './choose-rate.band.ts'
import type { inputs, outputs } from './choose-rate.fields.ts'
import { InputRefusal } from './define.ts'
import type { Cell, InputValues, OutputValues } from './define.ts'

type Values = InputValues<typeof inputs>

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

/** SI in, SI out. */
export function compute(input: Values): OutputValues<typeof outputs> {
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
}

/** The table's rows and what they are held against [SI]. */
export function picture(input: Values) {
  const rows = rowsOf(input)
  const travel = input.bike.fork.travel * 1e-3
  return { rows, travel, staticWindow: [input.staticLow * travel, input.staticHigh * travel] as const, riderSag: input.riderSag, reserve: input.reserve }
}

import {
  chooseRate,
  decelerationReaching,
  forkForceFromAxleLoad,
  solveStance,
  STANDARD_GRAVITY,
} from '../../core/index.ts'
import type { Miss, RateRow } from '../../core/index.ts'
import { BRAKING_DOUBT, candidatesOf, rateSpread } from './band.ts'
import { setUpOf } from './fitted.ts'
import type { SetUp, Values } from './fitted.ts'
import { likeForLike, range } from './likeForLike.ts'
import { asFitted, choiceOf } from './prepared.ts'
import type { Prepared } from './prepared.ts'
import type statement from './statement.ts'
import type { Cell } from '../../machine/cells.ts'
import type { OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'

type Outputs = OutputOf<typeof statement>

/** The codes of what a rate misses. */
const MISSES: Readonly<Record<Miss, string>> = {
  'no preload gives the rider sag': 'no-preload',
  'static sag below the window': 'static-below',
  'static sag above the window': 'static-above',
  'bottoms under braking': 'bottoms',
  'reserve below the target': 'reserve',
  'coil bind before full travel': 'coil-bind',
  'leaves travel unused': 'unused',
  'little preload': 'little-preload',
  'rides too stiffly': 'stiff',
}

function rowsAt(input: Values, setUp: SetUp, deceleration: number): RateRow[] {
  if (setUp.fitted === null) return []
  const rates = input.rates.map(([rate = 0]) => rate).sort((a, b) => a - b)
  return chooseRate({ ...choiceOf(input, setUp, deceleration), rates })
}

function refuse(input: Values, { sag }: SetUp): void {
  if (input.staticLow > input.staticHigh)
    throw new InputRefusal(
      'staticHigh',
      'The window of the static sag must not end below where it begins. Enter its two ends the other way round',
    )
  if (input.dampingLow > input.dampingHigh)
    throw new InputRefusal(
      'dampingHigh',
      'The highest damping ratio must not be below the lowest. Enter the two the other way round',
    )
  if (input.reserve > input.unused)
    throw new InputRefusal(
      'unused',
      'The ceiling must not be below the floor, or no spring can meet both. Raise it, or lower the floor',
    )
  if (input.stroke !== undefined && input.stroke <= sag + 5e-3)
    throw new InputRefusal(
      'stroke',
      'The spring must be able to travel 5 mm further than the sag wanted before its coils touch. Measure its length with the coils touching again',
    )
}

/** How hard the table brakes [m/s²]: as the reader says, or as a cable tie does. */
function hardness(input: Values, setUp: SetUp): number {
  if (input.deepest === undefined || setUp.fitted === null) return input.deceleration
  const { travel } = setUp.bike.fork
  if (input.deepest > travel)
    throw new InputRefusal(
      'deepest',
      'The tie cannot have been pushed further than the fork’s full travel. Check both',
    )
  const reached = decelerationReaching(asFitted(input, setUp, setUp.rider), input.deepest)
  if (reached === null)
    throw new InputRefusal(
      'deepest',
      'No braking takes these springs to that depth: with this rider they stand deeper at rest, or a stop of 1.5 g does not get there. Check the stroke and the rider',
    )
  return reached
}

/** What the shelf holds between floor and ceiling, and how far the judgement of hard braking moves it. */
function shelf({ input, setUp, deceleration, rows }: Prepared) {
  const band = candidatesOf(rows)
  const softestAt = (by: number): number | null =>
    candidatesOf(rowsAt(input, setUp, Math.max(0, deceleration + by)))?.low ?? null
  return {
    band,
    candidates:
      band === null ? null : band.low === band.high ? band.low : { low: band.low, high: band.high },
    gentler: softestAt(-BRAKING_DOUBT),
    harder: softestAt(BRAKING_DOUBT),
    rows: rows.map((row): Cell[] => [
      row.rate,
      row.preload,
      row.staticSag,
      row.brakingTravel,
      range(row.overshoot),
      range(row.reserve),
      row.coilBindMargin,
      row.rideFrequency,
      row.misses.map((miss) => MISSES[miss]).join(' '),
    ]),
  }
}

/** SI in, SI out. */
function compute(prepared: Prepared): Outputs {
  const { input, setUp, deceleration } = prepared
  const { bike, fitted } = setUp
  const rider = solveStance(bike, setUp.rider)
  // the load along the fork for a front load moved by so many points of the rider, in the pose as it stands
  const along = (points: number): number =>
    forkForceFromAxleLoad({
      wheelLoad: rider.frontLoad + points * input.riderMass * STANDARD_GRAVITY,
      unsprungMass: bike.frontUnsprungMass,
      rake: rider.rake,
    })
  const spread = rateSpread(along)
  const { band, ...found } = shelf(prepared)
  return {
    ...likeForLike(prepared),
    ...found,
    spread,
    spreadRate: band === null ? null : (spread * (band.low + band.high)) / 2,
    forkLoad: rider.forkForce,
    front: rider.frontLoad,
    fittedRate: fitted?.known ?? null,
    fromSags: fitted?.fromSags ?? null,
    fittedPreload: fitted?.preload ?? null,
    sagWanted: setUp.sag,
    hardness: deceleration,
  }
}

/** The table's rows and what they are held against [SI]. */
function picture({ input, setUp, rows }: Prepared) {
  const { travel } = setUp.bike.fork
  return {
    rows,
    travel,
    staticWindow: [input.staticLow * travel, input.staticHigh * travel] as const,
    riderSag: setUp.sag,
    reserve: input.reserve,
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const setUp = setUpOf(input)
    refuse(input, setUp)
    const deceleration = hardness(input, setUp)
    const prepared = { input, setUp, deceleration, rows: rowsAt(input, setUp, deceleration) }
    return { outputs: compute(prepared), picture: () => picture(prepared) }
  },
})

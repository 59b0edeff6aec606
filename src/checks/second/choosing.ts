import { aboard } from '../../bikes/aboard.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import { inSI } from '../../bikes/inSI.ts'
import type { BikeSheet } from '../../bikes/sheet.ts'
import { STANDARD_GRAVITY } from '../../core/index.ts'
import type { Bike } from '../../core/index.ts'
import type { OneCase } from './oneCase.ts'
import { fourSlopes } from './fourSlopes.ts'
import { forkPush } from './laws.ts'
import { secant } from './searches.ts'
import { tell } from './told.ts'

/** Gentle enough that the rear stays off its top stop. */
const BRAKING = 0.3
const [MM, N_PER_MM] = [1e-3, 1e3]

/** How far a mass on a damped spring passes its place when the load comes on evenly over a time, as a share: followed in steps of a few thousandths of a swing. */
export function passes(frequency: number, damping: number, ramp: number): number {
  const step = 2e-3 / frequency
  type State = readonly [x: number, v: number]
  const slopes = (time: number, [x, v]: State): State => [
    v,
    frequency ** 2 * (Math.min(1, time / ramp) - x) - 2 * damping * frequency * v,
  ]
  let state: State = [0, 0]
  let most = 0
  for (let i = 0; i * step < ramp + 4 / frequency; i++) {
    state = fourSlopes(slopes, state, i * step, step)
    most = Math.max(most, state[0])
  }
  return Math.max(0, most - 1)
}

const withLegs = (bike: Bike, rate: number, preload: number, oil = 0): Bike => ({
  ...bike,
  fork: {
    ...bike.fork,
    legs: bike.fork.legs.map((leg) => ({
      ...leg,
      spring: [{ rate }],
      preload,
      ...(leg.gas ? { gas: { ...leg.gas, airHeight: leg.gas.airHeight - oil } } : {}),
    })),
  },
})

/** What a bike leaves of its fork travel on the brakes, at the least and the most [m]. */
export function leftInHand(
  bike: Bike,
  payload: ReturnType<typeof aboard>,
  from?: number,
  g = BRAKING,
) {
  const rest = tell({ bike, loadCase: { payload } })
  const gasState = { exponent: 1.4, from: from ?? rest.frontTravel }
  const deceleration = g * STANDARD_GRAVITY
  const braked = tell({ bike, loadCase: { payload, deceleration, gasState } })
  const dive = braked.frontTravel - rest.frontTravel
  const push = (x: number): number => forkPush(bike.fork, x, gasState)
  const upright = Math.cos(rest.rake)
  const stiffness = (push(braked.frontTravel) - push(rest.frontTravel)) / dive / upright ** 2
  const frequency = Math.sqrt(stiffness / (rest.forkForce / (STANDARD_GRAVITY * upright)))
  const over = [0.3, 0.4].flatMap((damping) =>
    [0.1, 0.2].map((ramp) => dive * passes(frequency, damping, ramp)),
  )
  const left = bike.fork.travel - braked.frontTravel
  return {
    rest,
    braked,
    low: left - Math.max(...over),
    high: left - Math.min(...over),
    deepest: braked.frontTravel + Math.max(...over),
    overshoot: { low: Math.min(...over), high: Math.max(...over) },
  }
}

/** The preload [m] at which springs of a rate let the bike stand at a sag [m]. */
function preloadFor(
  bike: Bike,
  payload: ReturnType<typeof aboard>,
  rate: number,
  sag: number,
  oil = 0,
): number {
  const off = (preload: number): number =>
    tell({ bike: withLegs(bike, rate, preload, oil), loadCase: { payload } }).frontTravel - sag
  return secant(off, [0.01, 0.012], 1e-12)
}

/** The roadster as it is chosen for: whom its springs suit, and a heavier rider now. */
function prepared(sheet: BikeSheet) {
  const spec = inSI(sheet)
  const bike = bikeOf(spec)
  const [suited, now] = [80, 95].map((rider) => aboard(spec, { rider })) as [
    ReturnType<typeof aboard>,
    ReturnType<typeof aboard>,
  ]
  const sag = tell({ bike, loadCase: { payload: suited } }).frontTravel
  return { bike, now, sag, own: leftInHand(bike, suited) }
}

type Prepared = ReturnType<typeof prepared>

/** A rate in the fork, set to the sag, and what it then does. */
function rowOf({ bike, now, sag }: Prepared, rate: number, oil = 0) {
  const preload = preloadFor(bike, now, rate, sag, oil)
  const set = withLegs(bike, rate, preload, oil)
  return { preload, alone: tell({ bike: set, loadCase: {} }), ...leftInHand(set, now, sag) }
}

/** A choice among two rates for the heavier rider. */
function heavierCase(ready: Prepared): OneCase {
  const { bike, now, sag, own } = ready
  const ridden = leftInHand(bike, now)
  const [fitted, stiffer] = [rowOf(ready, 9000), rowOf(ready, 9500)]
  const same = secant((rate) => rowOf(ready, rate).low - own.low, [9000, 9500], 1e-10)
  const push = forkRateBy(withLegs(bike, 9000, fitted.preload), sag)
  const upright = Math.cos(fitted.rest.rake)
  return {
    calculator: 'choose-rate',
    given: { riderMass: 95, deceleration: BRAKING, rates: [[9], [9.5]] },
    core: [
      ...['inHand', 'chooseRate', 'rateLeaving', 'oilRiseLeaving', 'withOilRaised'],
      ...['squeezedFrom', 'brakingOvershoot', 'rampOvershoot'],
    ],
    others: {
      'inHand.low': own.low,
      'inHand.high': own.high,
      'inHandNow.low': ridden.low,
      'inHandNow.high': ridden.high,
      sagWanted: sag,
      sameRate: same,
      sameOver: same / 9000 - 1,
      oilInstead: secant((rise) => rowOf(ready, 9000, rise).low - own.low, [0, 0.01], 1e-10),
      stepMore: stiffer.low - fitted.low,
      oilTen: rowOf(ready, 9000, 0.01).low - fitted.low,
      'rows.0.1': fitted.preload,
      'rows.1.1': stiffer.preload,
      'rows.1.2': stiffer.alone.frontTravel,
      'rows.1.3': stiffer.braked.frontTravel,
      'rows.1.4.low': stiffer.overshoot.low,
      'rows.1.4.high': stiffer.overshoot.high,
      'rows.1.5.low': stiffer.low,
      'rows.1.5.high': stiffer.high,
      'rows.0.7': Math.sqrt((push * STANDARD_GRAVITY) / (fitted.rest.forkForce * upright)),
    },
    // followed in steps, a peak is found to a ten-millionth, and a search ends at a hundredth of a micrometre
    allowed: 2e-6,
  }
}

/** The spring choice, each figure from settled bikes. */
export function choosing(sheet: BikeSheet): OneCase[] {
  const ready = prepared(sheet)
  const { bike, now, own } = ready
  const alone = tell({ bike, loadCase: {} }).frontTravel
  const suits = tell({ bike, loadCase: { payload: now } }).frontTravel
  return [
    heavierCase(ready),
    {
      calculator: 'choose-rate',
      given: { riderMass: 80, deepest: own.deepest / MM, deceleration: 0.5 },
      core: ['decelerationReaching'],
      others: { hardness: BRAKING * STANDARD_GRAVITY },
      allowed: 2e-6,
    },
    {
      calculator: 'choose-rate',
      given: {
        ...{ from: 'own', ownMass: sheet.mass, ownTravel: sheet.fork.travel, riderMass: 95 },
        ...{ staticNow: alone / MM, riderNow: suits / MM, readingPlusMinus: 0 },
      },
      core: ['springFromSags'],
      others: {
        fromSags: sheet.fork.springRate * N_PER_MM,
        fittedRate: sheet.fork.springRate * N_PER_MM,
        fittedPreload: sheet.fork.preload * MM,
      },
      allowed: 1e-6,
    },
    {
      calculator: 'braking-dive',
      given: { deceleration: BRAKING, rider: 80 },
      core: [],
      others: {
        'peak.low': own.braked.frontTravel + own.overshoot.low,
        'peak.high': own.deepest,
        'reserve.low': own.low,
        'reserve.high': own.high,
      },
      allowed: 2e-6,
    },
  ]
}

const forkRateBy = ({ fork }: Bike, used: number): number =>
  (forkPush(fork, used + 1e-6) - forkPush(fork, used - 1e-6)) / 2e-6

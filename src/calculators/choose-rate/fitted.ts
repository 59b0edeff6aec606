import {
  DomainError,
  forceNeeded,
  solveStance,
  STANDARD_GRAVITY,
  springForceAt,
  springFromSags,
  withSprings,
} from '../../core/index.ts'
import type { Bike, LoadCase } from '../../core/index.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import type { BikeSpec } from '../../bikes/inSI.ts'
import { measured } from '../../machine/measured.ts'
import type { InputOf } from '../../machine/values.ts'
import { InputRefusal } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import type statement from './statement.ts'

export type Values = InputOf<typeof statement>

/** A rider sag that nothing was read of [share of travel]: the middle of what is common on road bikes (common practice, no published source). */
const USUAL_SAG = 0.3

/** The bike that is reckoned with, and what is known of its springs. */
export interface SetUp {
  /** with the fitted springs where they are known */
  bike: Bike
  /** who the springs are for now, and whom the fitted ones suit */
  rider: LoadCase
  standard: LoadCase
  standardMass: number
  /** null: neither a rate nor two sags are known */
  fitted: Springs | null
  /** sag with the rider at which springs are compared [m], and what the fork must give there [N] */
  sag: number
  riderForce: number
}

/** The fitted springs [SI]. */
export interface Springs {
  rate: number
  preload: number
  /** where the rate comes from two sags: with its ±; else the rate itself */
  known: number | (Interval & { value: number })
  /** the rate that two sags tell, where both were read */
  fromSags: (Interval & { value: number }) | null
}

function caseOf(input: Values, spec: BikeSpec, mass: number): LoadCase {
  const share = input.riderShare ?? spec.rider.x / spec.wheelbase
  return { payload: [{ ...spec.rider, mass, x: share * spec.wheelbase }] }
}

/** The bike with the reader's own mass, load and travel in place of the invented bike's. */
function sheetOf(input: Values): BikeSpec {
  const spec = input.bike
  if (input.from === 'invented') return spec
  const frontShare =
    input.ownFront === undefined
      ? spec.frontShare
      : input.ownFront / (input.ownMass * STANDARD_GRAVITY)
  if (frontShare > 0.8)
    throw new InputRefusal(
      'ownFront',
      'The front scale must read less than the bike weighs, about half of it. Check both',
    )
  return {
    ...spec,
    mass: input.ownMass,
    frontShare,
    fork: { ...spec.fork, travel: input.ownTravel },
  }
}

/** The bike; with a spring travel known, its springs close there. */
function bikeWith(spec: BikeSpec, { stroke }: Values): Bike {
  const bike = weighed(() => bikeOf(spec))
  if (stroke === undefined) return bike
  const legs = bike.fork.legs.map((leg) => ({
    ...leg,
    spring: leg.spring.map((group) => ({ ...group, closes: stroke })),
  }))
  return { ...bike, fork: { ...bike.fork, legs } }
}

/** A bike that weighs no more than its wheels is refused at the field that gave its mass. */
function weighed(work: () => Bike): Bike {
  try {
    return work()
  } catch (error) {
    if (error instanceof DomainError && error.parameter === 'reading')
      throw new InputRefusal(
        'ownMass',
        'The bike must weigh more than its wheels, brakes and axles. Check its mass',
      )
    throw error
  }
}

function refuseSags({ staticNow, riderNow, ownTravel }: Values): void {
  if (riderNow !== undefined && riderNow >= ownTravel)
    throw new InputRefusal(
      'riderNow',
      'The sag with the rider must be less than the full travel. Check both',
    )
  if (staticNow === undefined) return
  if (staticNow >= ownTravel || (riderNow !== undefined && staticNow >= riderNow))
    throw new InputRefusal(
      'staticNow',
      'The sag of the bike alone must be less than with the rider. Check whether the two were swapped',
    )
}

/** Rate by both sags, with its ± [N/m], or null where one was not read. */
function rateBySags(input: Values, bike: Bike, rider: LoadCase): Springs['fromSags'] {
  const { staticNow, riderNow, readingPlusMinus } = input
  if (staticNow === undefined || riderNow === undefined) return null
  const cases = { static: {}, rider }
  const read = measured(
    ([alone, ridden]) => springFromSags({ bike, cases, staticSag: alone!, riderSag: ridden! }).rate,
    [staticNow, riderNow],
    [readingPlusMinus, readingPlusMinus],
  )
  if (read.value < 1e3 || read.value > 60e3)
    throw new InputRefusal(
      'riderNow',
      'These two sags would need springs that no fork has. Measure both again, and check the masses',
    )
  return read
}

/** Preload at which springs of a rate [N/m] stand at the sag that was read [m]; undefined where none was. */
function preloadBySag(
  { staticNow, riderNow }: Values,
  bike: Bike,
  rider: LoadCase,
  rate: number,
): number | undefined {
  const sag = riderNow ?? staticNow
  if (sag === undefined) return undefined
  const preload = springForceAt(bike, riderNow === undefined ? {} : rider, sag) / rate - sag
  if (preload < 0)
    throw new InputRefusal(
      riderNow === undefined ? 'staticNow' : 'riderNow',
      'Springs of this rate would sag less than that even without preload. Check the sag, and whether the rate is for one leg',
    )
  return preload
}

/** The springs in the reader's own fork, where enough is known of them. */
function ownSprings(
  input: Values,
  bike: Bike,
  rider: LoadCase,
  standard: LoadCase,
): Springs | null {
  refuseSags(input)
  const fromSags = rateBySags(input, bike, rider)
  const known = input.fittedRate ?? fromSags
  if (known === null || known === undefined) return null
  const rate = typeof known === 'number' ? known : known.value
  const sag = input.riderSag ?? USUAL_SAG * input.ownTravel
  const preload =
    preloadBySag(input, bike, rider, rate) ??
    Math.max(0, springForceAt(bike, standard, sag) / rate - sag)
  return { rate, preload, known, fromSags }
}

/** A rider who sags less than this stands at full extension [m]. */
const NO_SAG = 1e-3

function refuseSag(sag: number, travel: number): void {
  if (sag < NO_SAG)
    throw new InputRefusal(
      'riderSag',
      'The fitted springs hold the rider whom they suit at full extension, so there is no sag to compare at. Enter the sag that is wanted, or check rate and sags',
    )
  if (sag >= travel)
    throw new InputRefusal(
      'riderSag',
      'The sag wanted must be less than the full travel of this bike’s fork',
    )
}

/** Everything that the sums start from [SI]. */
export function setUpOf(input: Values): SetUp {
  const spec = sheetOf(input)
  const standard = bikeWith(spec, input)
  const standardMass = input.standardMass ?? spec.rider.mass
  const rider = caseOf(input, spec, input.riderMass)
  const suited = caseOf(input, spec, standardMass)
  const { springRate, preload } = spec.fork
  const fitted =
    input.from === 'invented'
      ? { rate: springRate, preload, known: springRate, fromSags: null }
      : ownSprings(input, standard, rider, suited)
  if (input.stroke !== undefined && input.stroke <= (fitted?.preload ?? 0))
    throw new InputRefusal(
      'stroke',
      'The spring must be able to travel further than the preload of the one fitted before its coils touch. Measure its length with the coils touching again',
    )
  const bike = fitted === null ? standard : withSprings(standard, fitted.rate, fitted.preload)
  const sag =
    input.riderSag ??
    (fitted === null ? USUAL_SAG * bike.fork.travel : solveStance(bike, suited).frontTravel)
  refuseSag(sag, bike.fork.travel)
  const riderForce = forceNeeded(bike, rider, sag)
  return { bike, rider, standard: suited, standardMass, fitted, sag, riderForce }
}

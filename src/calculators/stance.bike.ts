import { bikeFromScales, DomainError, forkLimit, rearLimit } from '../core/index.ts'
import type { Bike } from '../core/index.ts'
import { bikeOf, forkOf, geometryOf, rearOf } from './bikes.ts'
import type { BikeSpec, Fitted } from './bikes.ts'
import { InputRefusal } from './define.ts'
import type { InputValues } from './define.ts'
import type { inputs } from './stance.inputs.ts'
import { motionRatioAt, quotedAs } from './whole-bike.ts'

export type StanceGiven = InputValues<typeof inputs>

const MM = 1e-3
const DEGREE = Math.PI / 180

const inMillimetres = (value: number | undefined, own: number): number => (value === undefined ? own : value / MM)
const inRate = (value: number | undefined, own: number): number => (value === undefined ? own : value * MM)

function forkSpec({ fork }: BikeSpec, given: StanceGiven): BikeSpec['fork'] {
  return {
    ...fork,
    travel: inMillimetres(given.forkTravel, fork.travel),
    springRate: inRate(given.forkRate, fork.springRate),
    preload: inMillimetres(given.forkPreload, fork.preload),
    airHeight: inMillimetres(given.airHeight, fork.airHeight),
  }
}

function rearSpec({ rear }: BikeSpec, given: StanceGiven): BikeSpec['rear'] {
  return {
    ...rear,
    travel: inMillimetres(given.rearTravelFull, rear.travel),
    springRate: inRate(given.rearRate, rear.springRate),
    preload: inMillimetres(given.rearPreload, rear.preload),
    motionRatio: given.motionRatio === undefined ? rear.motionRatio : { initial: given.motionRatio, slope: 0 },
  }
}

/** The bike's sheet with the reader's own figures in place of its own. */
export function sheetOf(given: StanceGiven): BikeSpec {
  const spec = quotedAs(given.bike, given.quotedFront, given.quotedRear)
  if (given.from === 'bike') return spec
  return {
    ...spec,
    wheelbase: inMillimetres(given.wheelbase, spec.wheelbase),
    rake: given.rake === undefined ? spec.rake : given.rake / DEGREE,
    forkOffset: inMillimetres(given.forkOffset, spec.forkOffset),
    frontRadius: inMillimetres(given.frontRadius, spec.frontRadius),
    rearRadius: inMillimetres(given.rearRadius, spec.rearRadius),
    mass: given.mass ?? spec.mass,
    frontShare: given.frontShare === undefined ? spec.frontShare : given.frontShare * 100,
    centreOfGravityHeight: inMillimetres(given.centreOfGravityHeight, spec.centreOfGravityHeight),
    fork: forkSpec(spec, given),
    rear: rearSpec(spec, given),
  }
}

function changed(input: string, label: string, base: number, change: number): number {
  const value = base + change
  if (!(value > 0)) throw new InputRefusal(input, `${label}: this takes away all there is. Enter a smaller reduction`)
  return value
}

/** What is fitted after the changes; a change of 0 leaves the sheet's figure to the digit. `settledRear` [m] is where the shock's ratio is read. */
export function fittedOf(spec: BikeSpec, given: StanceGiven, settledRear: number): Fitted {
  const { fork, rear } = spec
  return {
    ...(given.forkRateChange === 0
      ? {}
      : { forkRate: changed('forkRateChange', 'Fork spring rate per leg, change', fork.springRate * 1e3, given.forkRateChange) }),
    ...(given.forkPreloadChange === 0 ? {} : { forkPreload: fork.preload * MM + given.forkPreloadChange }),
    ...(given.oilHeightChange === 0
      ? {}
      : { airHeight: changed('oilHeightChange', 'Oil level down from the top, change', fork.airHeight * MM, given.oilHeightChange) }),
    ...(given.tubeRaise === 0 ? {} : { tubeRaise: given.tubeRaise }),
    ...(given.frontRadiusChange === 0 ? {} : { frontRadius: spec.frontRadius * MM + given.frontRadiusChange }),
    ...(given.rearRadiusChange === 0 ? {} : { rearRadius: spec.rearRadius * MM + given.rearRadiusChange }),
    ...(given.rearRateChange === 0 ? {} : { rearRate: changed('rearRateChange', 'Shock spring rate, change', rear.springRate * 1e3, given.rearRateChange) }),
    ...(given.rearPreloadChange === 0 ? {} : { rearPreload: rear.preload * MM + given.rearPreloadChange }),
    ...(given.shockLengthChange === 0 ? {} : { rearRaise: given.shockLengthChange / motionRatioAt(spec, settledRear) }),
  }
}

function readingOf(given: StanceGiven, fork: number, rear: number) {
  if (given.scaleFrontTravel > fork)
    throw new InputRefusal('scaleFrontTravel', 'Front travel used on the scales is more than the fork has. Measure it from full extension')
  if (given.scaleRearTravel > rear)
    throw new InputRefusal('scaleRearTravel', 'Rear travel used on the scales is more than the rear has. Measure it from full extension')
  return {
    frontLoad: given.scaleFront,
    rearLoad: given.scaleRear,
    frontTravel: given.scaleFrontTravel,
    rearTravel: given.scaleRearTravel,
    centreOfGravityHeight: given.scaleHeight,
  }
}

/** The whole bike with what is fitted: from its sheet, or from what it weighed on two scales. */
export function wholeBike(spec: BikeSpec, given: StanceGiven, fitted: Fitted): Bike {
  if (given.from !== 'scales') return bikeOf(spec, fitted)
  const [fork, rear] = [forkOf(spec), rearOf(spec)]
  const parts = { geometry: geometryOf(spec), frontUnsprungMass: spec.frontUnsprungMass, rearUnsprungMass: spec.rearUnsprungMass, fork, rear }
  try {
    const weighed = bikeFromScales({ ...parts, reading: readingOf(given, forkLimit(fork).travel, rearLimit(rear).travel) })
    return { ...weighed, geometry: geometryOf(spec, fitted), fork: forkOf(spec, fitted), rear: rearOf(spec, fitted) }
  } catch (error) {
    if (error instanceof DomainError && error.parameter === 'reading')
      throw new InputRefusal('scaleFront', 'Front scale and rear scale together must read more than the wheels and axles weigh')
    throw error
  }
}

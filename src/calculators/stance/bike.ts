import { bikeFromScales, DomainError, forkLimit, rearLimit } from '../../core/index.ts'
import type { Bike } from '../../core/index.ts'
import { bikeOf, forkOf, geometryOf, rearOf } from '../../bikes/bikes.ts'
import type { Fitted } from '../../bikes/bikes.ts'
import type { BikeSpec } from '../../bikes/inSI.ts'
import type { InputOf } from '../../machine/values.ts'
import { InputRefusal } from '../../machine/work.ts'
import type statement from './statement.ts'
import { motionRatioAt, quotedAs } from '../../bikes/aboard.ts'

export type StanceGiven = InputOf<typeof statement>

function ownFork({ fork }: BikeSpec, given: StanceGiven): BikeSpec['fork'] {
  return {
    ...fork,
    travel: given.forkTravel ?? fork.travel,
    springRate: given.forkRate ?? fork.springRate,
    preload: given.forkPreload ?? fork.preload,
    airHeight: given.airHeight ?? fork.airHeight,
  }
}

function ownRear({ rear }: BikeSpec, given: StanceGiven): BikeSpec['rear'] {
  return {
    ...rear,
    travel: given.rearTravelFull ?? rear.travel,
    springRate: given.rearRate ?? rear.springRate,
    preload: given.rearPreload ?? rear.preload,
    motionRatio:
      given.motionRatio === undefined ? rear.motionRatio : { initial: given.motionRatio, slope: 0 },
  }
}

/** The bike with the reader's own figures in place of its own. */
export function sheetOf(given: StanceGiven): BikeSpec {
  const spec = quotedAs(given.bike, given.quotedFront, given.quotedRear)
  if (given.from === 'bike') return spec
  return {
    ...spec,
    wheelbase: given.wheelbase ?? spec.wheelbase,
    rake: given.rake ?? spec.rake,
    forkOffset: given.forkOffset ?? spec.forkOffset,
    frontRadius: given.frontRadius ?? spec.frontRadius,
    rearRadius: given.rearRadius ?? spec.rearRadius,
    mass: given.mass ?? spec.mass,
    frontShare: given.frontShare ?? spec.frontShare,
    centreOfGravityHeight: given.centreOfGravityHeight ?? spec.centreOfGravityHeight,
    fork: ownFork(spec, given),
    rear: ownRear(spec, given),
  }
}

function changed(input: string, what: string, base: number, change: number): number {
  const value = base + change
  if (!(value > 0))
    throw new InputRefusal(
      input,
      `This reduction takes away all there is of the ${what}. Enter a smaller one`,
    )
  return value
}

/** What is fitted after the changes; a change of 0 leaves the sheet's figure to the digit. `settledRear` [m] is where the shock's ratio is read. */
export function fittedOf(spec: BikeSpec, given: StanceGiven, settledRear: number): Fitted {
  const { fork, rear } = spec
  return {
    ...(given.forkRateChange === 0
      ? {}
      : {
          forkRate: changed(
            'forkRateChange',
            'fork springs’ rate',
            fork.springRate,
            given.forkRateChange,
          ),
        }),
    ...(given.forkPreloadChange === 0
      ? {}
      : { forkPreload: fork.preload + given.forkPreloadChange }),
    ...(given.oilHeightChange === 0
      ? {}
      : {
          airHeight: changed(
            'oilHeightChange',
            'room above the oil',
            fork.airHeight,
            given.oilHeightChange,
          ),
        }),
    ...(given.tubeRaise === 0 ? {} : { tubeRaise: given.tubeRaise }),
    ...(given.frontRadiusChange === 0
      ? {}
      : { frontRadius: spec.frontRadius + given.frontRadiusChange }),
    ...(given.rearRadiusChange === 0
      ? {}
      : { rearRadius: spec.rearRadius + given.rearRadiusChange }),
    ...(given.rearRateChange === 0
      ? {}
      : {
          rearRate: changed(
            'rearRateChange',
            'shock spring’s rate',
            rear.springRate,
            given.rearRateChange,
          ),
        }),
    ...(given.rearPreloadChange === 0
      ? {}
      : { rearPreload: rear.preload + given.rearPreloadChange }),
    ...(given.shockLengthChange === 0
      ? {}
      : { rearRaise: given.shockLengthChange / motionRatioAt(spec, settledRear) }),
  }
}

function readingOf(given: StanceGiven, fork: number, rear: number) {
  if (given.scaleFrontTravel > fork)
    throw new InputRefusal(
      'scaleFrontTravel',
      'More front travel was used on the scales than the fork has. Measure it from full extension',
    )
  if (given.scaleRearTravel > rear)
    throw new InputRefusal(
      'scaleRearTravel',
      'More rear travel was used on the scales than the rear has. Measure it from full extension',
    )
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
  if (given.from !== 'scales')
    return weighed(
      () => bikeOf(spec, fitted),
      'mass',
      'The bike must weigh more than its wheels, brakes and axles. Check its mass',
    )
  const [fork, rear] = [forkOf(spec), rearOf(spec)]
  const parts = {
    geometry: geometryOf(spec),
    frontUnsprungMass: spec.frontUnsprungMass,
    rearUnsprungMass: spec.rearUnsprungMass,
    fork,
    rear,
  }
  const reading = readingOf(given, forkLimit(fork).travel, rearLimit(rear).travel)
  const bike = weighed(
    () => bikeFromScales({ ...parts, reading }),
    'scaleFront',
    'Both scales together must read more than the wheels, brakes and axles weigh. Check both readings',
  )
  return {
    ...bike,
    geometry: geometryOf(spec, fitted),
    fork: forkOf(spec, fitted),
    rear: rearOf(spec, fitted),
  }
}

/** A bike that weighs no more than its unsprung parts is refused at the field that gave its mass. */
function weighed(work: () => Bike, input: string, text: string): Bike {
  try {
    return work()
  } catch (error) {
    if (error instanceof DomainError && error.parameter === 'reading')
      throw new InputRefusal(input, text)
    throw error
  }
}

import { DomainError, estimateSpring, forkForceFromAxleLoad, propagate } from '../core/index.ts'
import type { Fork, SpringEstimate } from '../core/index.ts'
import { InputRefusal } from './define.ts'
import type { InputValues, OutputValues } from './define.ts'
import { about, expanded, standardFromLimit } from './measured.ts'
import type { inputs, outputs } from './rate-from-sag.fields.ts'

type Input = InputValues<typeof inputs>

/** How far beyond the deeper reading the line is drawn. */
const BEYOND = 1.25

function refuseWrongOrder(input: Input): void {
  if (input.staticReading <= input.riderReading)
    throw new InputRefusal('riderReading', 'With the rider the exposed tube must be shorter than with the bike alone')
  if (input.extended < input.staticReading) throw new InputRefusal('extended', 'With the wheel hanging the exposed tube must be the longest')
  if (input.riderLoad <= input.staticLoad) throw new InputRefusal('riderLoad', 'The load with the rider must be above the load of the bike alone')
  if (input.gas === 'sealed' && input.travel < input.extended - input.riderReading)
    throw new InputRefusal('travel', 'Full travel is less than the sag with the rider. Check the travel and the readings')
  if (input.gas === 'sealed' && input.boreDiameter >= input.tubeDiameter)
    throw new InputRefusal('boreDiameter', 'The bore must be smaller than the outside of the tube')
}

/** The fork whose air is to be taken out; its springs do not enter. */
function airOf({ travel, tubeDiameter, boreDiameter, airHeight, stackVolume }: Input): Fork {
  const leg = { spring: [], preload: 0, gas: { tubeDiameter, boreDiameter, airHeight, stackVolume } }
  return { travel, legs: [leg, leg] }
}

/** Forces along the fork [N], each within the same ± limit. */
function forcesOf(input: Input): { staticForce: number; riderForce: number; limit: number } {
  const along = (wheelLoad: number): number => forkForceFromAxleLoad({ wheelLoad, unsprungMass: input.unsprungMass, rake: input.rake })
  const staticForce = along(input.staticLoad)
  if (staticForce < 0) throw new InputRefusal('unsprungMass', 'Front unsprung mass must be less than what the front wheel carries')
  return { staticForce, riderForce: along(input.riderLoad), limit: propagate(([load]) => along(load!), [input.riderLoad], [input.loadPlusMinus]).uncertainty }
}

function estimateOf(input: Input): SpringEstimate {
  const { staticForce, riderForce, limit } = forcesOf(input)
  const { extended, staticReading, riderReading } = input
  const uncertainty = { reading: standardFromLimit(input.readingPlusMinus), force: standardFromLimit(limit) }
  const readings = { extended, staticReading, riderReading, staticForce, riderForce, uncertainty }
  if (input.gas !== 'sealed') return estimateSpring(readings)
  try {
    return estimateSpring({ ...readings, fork: airOf(input) })
  } catch (error) {
    // the readings are in order by now: what is left are sizes that leave no room for air
    if (error instanceof DomainError)
      throw new InputRefusal('airHeight', 'With these sizes no air is left above the oil. Check oil height, tube, and what stands in it')
    throw error
  }
}

/** The line through the two readings at a sag [m], and its standard uncertainty there [N]. */
function lineAt(input: Input, sag: number): { sag: number; force: number; error: number } {
  const { staticForce, riderForce, limit } = forcesOf(input)
  const line = ([first, second, low, high]: number[]): number => low! + ((high! - low!) * (sag - (input.extended - first!))) / (first! - second!)
  const limits = [input.readingPlusMinus, input.readingPlusMinus, limit, limit]
  const { value, uncertainty } = propagate(line, [input.staticReading, input.riderReading, staticForce, riderForce], limits.map(standardFromLimit))
  return { sag, force: value, error: expanded(uncertainty) }
}

/** SI in, SI out. */
export function compute(input: Input): OutputValues<typeof outputs> {
  refuseWrongOrder(input)
  const { staticForce, riderForce } = forcesOf(input)
  const { rate, preload, rateUncertainty, preloadUncertainty, correlation, springRate, springPreload } = estimateOf(input)
  // two springs a step apart are told apart when the ± of a leg's rate is no wider than the step
  const tells = expanded(rateUncertainty / 2) <= input.step
  return {
    rate: about(rate, rateUncertainty),
    perLeg: about(rate / 2, rateUncertainty / 2),
    within: expanded(rateUncertainty / 2),
    // the air comes off both forces and leaves their ± as it was
    springPerLeg: springRate === undefined ? null : about(springRate / 2, rateUncertainty / 2),
    preload: about(preload, preloadUncertainty),
    springPreload: springPreload ?? null,
    verdict: tells ? 'these readings tell them apart' : 'these readings cannot tell them apart',
    staticForce,
    riderForce,
    correlation,
  }
}

/** Both readings as sag [m] and force along the fork [N], their ± limits, and the line through them. */
export function picture(input: Input) {
  const { staticForce, riderForce, limit } = forcesOf(input)
  const deepest = BEYOND * (input.extended - input.riderReading)
  return {
    static: { sag: input.extended - input.staticReading, force: staticForce },
    rider: { sag: input.extended - input.riderReading, force: riderForce },
    limits: { length: input.readingPlusMinus, force: limit },
    line: Array.from({ length: 25 }, (_, index) => lineAt(input, (deepest * index) / 24)),
  }
}

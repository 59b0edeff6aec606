import {
  DomainError,
  estimateSpring,
  forkForceFromAxleLoad,
  propagate,
  sample,
} from '../../core/index.ts'
import type { Fork, SpringEstimate } from '../../core/index.ts'
import type { CodeOf, InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import { isInterval } from '../../units/interval.ts'
import { about, expanded, standardFromLimit } from '../../machine/measured.ts'
import type statement from './statement.ts'

type Input = InputOf<typeof statement>

/** How far beyond the deeper reading the line is drawn. */
const BEYOND = 1.25

function refuseWrongOrder(input: Input): void {
  if (input.staticReading <= input.riderReading)
    throw new InputRefusal(
      'riderReading',
      'With the rider the exposed tube must be shorter than with the bike alone. Check whether the two were swapped',
    )
  if (input.extended < input.staticReading)
    throw new InputRefusal(
      'extended',
      'The reading with the wheel hanging must be the longest of the three. Lift the wheel clear and read again',
    )
  if (input.riderLoad <= input.staticLoad)
    throw new InputRefusal(
      'riderLoad',
      'The load with the rider must be above that of the bike alone. Check whether the two were swapped',
    )
  if (input.gas === 'sealed' && input.travel < input.extended - input.riderReading)
    throw new InputRefusal(
      'travel',
      'Full travel is less than the sag with the rider. Check the travel and the readings',
    )
}

/** The fork whose air is to be taken out; its springs do not enter. */
function airOf({ travel, tubeDiameter, boreDiameter, airHeight, stackVolume }: Input): Fork {
  const leg = {
    spring: [],
    preload: 0,
    gas: { tubeDiameter, boreDiameter, airHeight, stackVolume },
  }
  return { travel, legs: [leg, leg] }
}

/** Forces along the fork [N], each within the same ± limit. */
function forcesOf(input: Input): { staticForce: number; riderForce: number; limit: number } {
  const along = (wheelLoad: number): number =>
    forkForceFromAxleLoad({ wheelLoad, unsprungMass: input.unsprungMass, rake: input.rake })
  const staticForce = along(input.staticLoad)
  if (staticForce < 0)
    throw new InputRefusal(
      'unsprungMass',
      'The front unsprung mass must be less than the front scale reads with the bike alone. Check both',
    )
  return {
    staticForce,
    riderForce: along(input.riderLoad),
    limit: propagate(([load]) => along(load!), [input.riderLoad], [input.loadPlusMinus])
      .uncertainty,
  }
}

function estimateOf(input: Input): SpringEstimate {
  const { staticForce, riderForce, limit } = forcesOf(input)
  const { extended, staticReading, riderReading } = input
  const uncertainty = {
    reading: standardFromLimit(input.readingPlusMinus),
    force: standardFromLimit(limit),
  }
  const readings = { extended, staticReading, riderReading, staticForce, riderForce, uncertainty }
  if (input.gas !== 'sealed') return estimateSpring(readings)
  try {
    return estimateSpring({ ...readings, fork: airOf(input) })
  } catch (error) {
    // the readings are in order by now: what is left are sizes that leave no room for air
    if (error instanceof DomainError)
      throw new InputRefusal(
        'airHeight',
        'With these sizes no air is left above the oil. Check oil height, tube, and what stands in it',
      )
    throw error
  }
}

/** The line through the two readings at a sag [m], and its standard uncertainty there [N]. */
function lineAt(input: Input, sag: number): { sag: number; force: number; error: number } {
  const { staticForce, riderForce, limit } = forcesOf(input)
  const line = ([first, second, low, high]: number[]): number =>
    low! + ((high! - low!) * (sag - (input.extended - first!))) / (first! - second!)
  const limits = [input.readingPlusMinus, input.readingPlusMinus, limit, limit]
  const { value, uncertainty } = propagate(
    line,
    [input.staticReading, input.riderReading, staticForce, riderForce],
    limits.map(standardFromLimit),
  )
  return { sag, force: value, error: expanded(uncertainty) }
}

/** Whether a leg's rate, known within this interval, is one spring of the shelf: of springs a step apart only one lies within a ± of half a step. */
function verdictOf(leg: Interval, { step, gas }: Input): CodeOf<typeof statement, 'verdict'> {
  if ((leg.high - leg.low) / 2 > step / 2) return 'not-apart'
  return gas === 'sealed' ? 'apart' : 'air-first'
}

/** With something not known, how far the rate lies open decides. */
const judge = (
  input: Input,
  { perLeg, springPerLeg }: OutputOf<typeof statement>,
): { verdict: CodeOf<typeof statement, 'verdict'>[] } => ({
  verdict: [springPerLeg, perLeg]
    .filter(isInterval)
    .slice(0, 1)
    .map((leg) => verdictOf(leg, input)),
})

/** SI in, SI out. */
function compute(input: Input): OutputOf<typeof statement> {
  refuseWrongOrder(input)
  const { staticForce, riderForce } = forcesOf(input)
  const {
    rate,
    preload,
    rateUncertainty,
    preloadUncertainty,
    correlation,
    springRate,
    springPreload,
  } = estimateOf(input)
  if (springRate !== undefined && springRate <= 0)
    throw new InputRefusal(
      'airHeight',
      'With air of these sizes no spring is left, because the air alone would carry more than the rider adds. Check the oil height, both loads and both readings',
    )
  const perLeg = about(rate / 2, rateUncertainty / 2)
  return {
    rate: about(rate, rateUncertainty),
    perLeg,
    within: expanded(rateUncertainty / 2),
    // the air comes off both forces and leaves their ± as it was
    springPerLeg: springRate === undefined ? null : about(springRate / 2, rateUncertainty / 2),
    preload: about(preload, preloadUncertainty),
    airRate: springRate === undefined ? null : rate - springRate,
    springPreload: springPreload ?? null,
    verdict: verdictOf(perLeg, input),
    staticForce,
    riderForce,
    correlation,
  }
}

/** Both readings as sag [m] and force along the fork [N], their ± limits, and the line through them. */
function picture(input: Input) {
  const { staticForce, riderForce, limit } = forcesOf(input)
  const deepest = BEYOND * (input.extended - input.riderReading)
  return {
    static: { sag: input.extended - input.staticReading, force: staticForce },
    rider: { sag: input.extended - input.riderReading, force: riderForce },
    limits: { length: input.readingPlusMinus, force: limit },
    line: sample(0, deepest, 24).map((sag) => lineAt(input, sag)),
  }
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input) }
  },
  judge,
})

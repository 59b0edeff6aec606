import { DomainError, estimateSpring, forkForceFromAxleLoad, propagate } from '../core/index.ts'
import type { Fork, SpringEstimate } from '../core/index.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import { about, expanded, standardFromLimit } from './measured.ts'
import { remarksOf } from './rate-from-sag.remarks.ts'

const tube = (label: string, hint: string, standard: number) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range: [10, 400], step: 0.1, default: standard, procedure: 'measure-front-sag' }) as const
const onScale = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    hint: 'Front wheel on a scale, rear wheel on a block as high as the scale.',
    quantity: 'load',
    unit: 'kg load',
    range: [20, 400],
    step: 0.1,
    default: standard,
    procedure: 'weigh-the-bike',
  }) as const
const gasPart = (label: string, hint: string, range: readonly [number, number], standard: number) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range, step: 0.5, default: standard, more: true, when: { gas: 'sealed' } }) as const

const inputs = {
  staticReading: tube('Exposed tube, bike alone', 'The mean of the two settled readings.', 131.3),
  riderReading: tube('Exposed tube, with rider', 'The mean of the two settled readings.', 114.9),
  staticLoad: onScale('Front wheel load, bike alone', 100),
  riderLoad: onScale('Front wheel load, with rider', 137.2),
  extended: { ...tube('Exposed tube, wheel hanging', 'Needed for the preload, not for the rate.', 150), more: true },
  unsprungMass: {
    kind: 'quantity',
    label: 'Front unsprung mass',
    hint: 'Wheel, tyre, discs, calipers, sliders, mudguard.',
    quantity: 'mass',
    unit: 'kg',
    range: [5, 60],
    step: 0.5,
    default: 28,
    typical: [20, 35],
    typicalFrom: 'common practice for road bikes, no published source',
    more: true,
  },
  rake: {
    kind: 'quantity',
    label: 'Rake',
    quantity: 'angle',
    unit: '°',
    range: [15, 40],
    step: 0.1,
    default: 25,
    typical: [23, 28],
    typicalFrom: 'common practice for road bikes, no published source',
    more: true,
    procedure: 'measure-geometry',
  },
  readingPlusMinus: { kind: 'quantity', label: 'Each length is within ±', quantity: 'length', unit: 'mm', range: [0, 10], step: 0.1, default: 1, more: true },
  loadPlusMinus: { kind: 'quantity', label: 'Each load is within ±', quantity: 'load', unit: 'kg load', range: [0, 10], step: 0.1, default: 0.5, more: true },
  step: {
    kind: 'quantity',
    label: 'Step between springs on offer, each leg',
    quantity: 'rate',
    unit: 'N/mm',
    range: [0.1, 3],
    step: 0.1,
    default: 0.5,
    more: true,
  },
  gas: { kind: 'choice', label: 'Take the air out', options: { none: 'no', sealed: 'yes, I have its sizes' }, default: 'sealed', more: true },
  airHeight: gasPart('Oil height', 'Top of the tube down to the oil, fork collapsed, spring out.', [60, 250], 130),
  tubeDiameter: gasPart('Tube, outside', 'The tube that slides through the seal.', [25, 65], 43),
  boreDiameter: gasPart('Tube, bore', 'Inside the tube that holds spring and oil.', [20, 60], 38),
  stackVolume: {
    kind: 'quantity',
    label: 'Spring, spacer and cap in the tube',
    quantity: 'volume',
    unit: 'cm³',
    range: [0, 150],
    step: 1,
    default: 56,
    typical: [40, 80],
    typicalFrom: 'reckoned from common wire and spacers, no published source',
    more: true,
    when: { gas: 'sealed' },
  },
  travel: {
    kind: 'quantity',
    label: 'Full travel',
    quantity: 'length',
    unit: 'mm',
    range: [50, 350],
    step: 1,
    default: 120,
    more: true,
    when: { gas: 'sealed' },
  },
} as const

const outputs = {
  rate: { label: 'Fork as it stands, both legs (± about 95 %)', quantity: 'rate', unit: 'N/mm', digits: 1, lead: true },
  perLeg: { label: 'That is, each leg (±)', quantity: 'rate', unit: 'N/mm', digits: 2 },
  within: { label: '± of each leg’s rate', quantity: 'rate', unit: 'N/mm', digits: 2, more: true },
  springPerLeg: { label: 'Spring without the air, each leg (±)', quantity: 'rate', unit: 'N/mm', digits: 2, lead: true },
  preload: { label: 'Preload as it seems (±)', quantity: 'length', unit: 'mm', digits: 0 },
  springPreload: { label: 'Preload without the air', quantity: 'length', unit: 'mm', digits: 0 },
  verdict: { kind: 'text', label: 'Neighbouring springs' },
  staticForce: { label: 'Load along the fork, bike alone', quantity: 'force', unit: 'N', digits: 0, more: true },
  riderForce: { label: 'Load along the fork, with rider', quantity: 'force', unit: 'N', digits: 0, more: true },
  correlation: { label: 'Correlation of rate and preload', quantity: 'ratio', unit: '', digits: 2, more: true },
} as const

export type RateFromSagInputs = typeof inputs
export type RateFromSagOutputs = typeof outputs

interface Read {
  extended: number
  staticReading: number
  riderReading: number
  staticLoad: number
  riderLoad: number
  unsprungMass: number
  rake: number
  readingPlusMinus: number
  loadPlusMinus: number
  gas: string
  airHeight: number
  tubeDiameter: number
  boreDiameter: number
  stackVolume: number
  travel: number
}

function refuseWrongOrder(input: Read): void {
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
function airOf({ travel, tubeDiameter, boreDiameter, airHeight, stackVolume }: Read): Fork {
  const leg = { spring: [], preload: 0, gas: { tubeDiameter, boreDiameter, airHeight, stackVolume } }
  return { travel, legs: [leg, leg] }
}

/** Forces along the fork [N], each within the same ± limit. */
function forcesOf(input: Read): { staticForce: number; riderForce: number; limit: number } {
  const along = (wheelLoad: number): number => forkForceFromAxleLoad({ wheelLoad, unsprungMass: input.unsprungMass, rake: input.rake })
  const staticForce = along(input.staticLoad)
  if (staticForce < 0) throw new InputRefusal('unsprungMass', 'Front unsprung mass must be less than what the front wheel carries')
  return { staticForce, riderForce: along(input.riderLoad), limit: propagate(([load]) => along(load!), [input.riderLoad], [input.loadPlusMinus]).uncertainty }
}

function estimateOf(input: Read): SpringEstimate {
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
function lineAt(input: Read, sag: number): { sag: number; force: number; error: number } {
  const { staticForce, riderForce, limit } = forcesOf(input)
  const line = ([first, second, low, high]: number[]): number => low! + ((high! - low!) * (sag - (input.extended - first!))) / (first! - second!)
  const limits = [input.readingPlusMinus, input.readingPlusMinus, limit, limit]
  const { value, uncertainty } = propagate(line, [input.staticReading, input.riderReading, staticForce, riderForce], limits.map(standardFromLimit))
  return { sag, force: value, error: expanded(uncertainty) }
}

/** How far beyond the deeper reading the line is drawn. */
const BEYOND = 1.25

export default defineCalculator({
  id: 'rate-from-sag',
  version: 1,
  title: 'Rate from two sags',
  question: 'Which spring?',
  answers: 'What rate and preload two readings of sag and load point to, and whether they can tell one spring from the next.',
  assumes: [
    'Both legs are alike and hold a spring of one rate.',
    'Each length is the mean of a reading after pushing down and one after lifting, so that friction cancels.',
    'Bike upright and held, rider in riding posture, both wheels level while one stands on the scale.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Friction that is not cancelled: 3 mm between two settled readings that were not averaged is 16 % of an 18 mm difference.',
    'The turn of the bike between the two readings: 1° of rake is under 1 % of the force.',
    'The error in the sizes of the air: 5 mm of oil height moves the spring rate by about 0.3 %.',
    'A top-out spring that still pushes with the bike alone. Then the lower reading tells of both springs.',
  ],
  inputs,
  outputs,
  compute(input) {
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
  },
  picture(input) {
    const { staticForce, riderForce, limit } = forcesOf(input)
    const deepest = BEYOND * (input.extended - input.riderReading)
    return {
      static: { sag: input.extended - input.staticReading, force: staticForce },
      rider: { sag: input.extended - input.riderReading, force: riderForce },
      limits: { length: input.readingPlusMinus, force: limit },
      line: Array.from({ length: 25 }, (_, index) => lineAt(input, (deepest * index) / 24)),
    }
  },
  remarks: remarksOf,
})

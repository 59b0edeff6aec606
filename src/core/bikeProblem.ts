import {
  BIKE_PARAMETERS,
  figureOf,
  isBikeParameter,
  leastOf,
  type Ridden,
  withFigures,
} from './bikeParameters.ts'
import type { Bike, PointMass } from './bike.ts'
import { DomainError, list, record } from './domain.ts'
import { type At, checkedObservation, type Observation } from './observation.ts'
import { type Estimate, estimateOf, type Range, standardUncertainty } from './plusMinus.ts'
import { decelerationOf, predict, type Stances, stancesOf } from './predict.ts'

/**
 * Figures that readings depend on besides the bike: exposed tube and rear length at full extension [m]; free lengths of the springs [m]; the exponent of
 * the gas in a braking [1]; where between the lowest and the highest overshoot it lies [1].
 */
export const ASIDES = [
  'frontExtended',
  'rearExtended',
  'frontFreeLength',
  'rearFreeLength',
  'brakingExponent',
  'overshoot',
] as const
export type AsideParameter = (typeof ASIDES)[number]

/**
 * What is known of the bike before it was read: a bike (a stand-in's figures, where nothing is known), who rides it, and how far each figure that the fit
 * may change can be off. A figure without a range stays as it is.
 */
export interface Prior {
  bike: Bike
  rider?: PointMass
  ranges: Partial<Record<(typeof BIKE_PARAMETERS)[number] | AsideParameter, Range>>
}

/** One unknown of a fit: where it starts, the unit in which it is counted, what is known of it beforehand, and how far it can go. */
export interface Unknown {
  name: string
  start: number
  unit: number
  prior: Estimate | null
  least: number
  most: number
}

/** Readings and prior, made ready: unknowns counted in their units, rows of what is left over. */
export interface BikeProblem {
  /** by name */
  observations: readonly Observation[]
  /** standard uncertainty of each reading */
  uncertainties: number[]
  unknowns: Unknown[]
  /** the unknowns that have a prior; their rows follow the observations' */
  known: number[]
  ridden: Ridden
  /** bikes tried, with the stances solved for each */
  solved: Map<string, Stances>
}

/** What is known of every braking: between slow and fast gas, between the ends of the band of overshoots. */
const USUAL: Partial<Record<AsideParameter, Range>> = {
  brakingExponent: { low: 1, high: 1.4 },
  overshoot: { low: 0, high: 1 },
}

// Slow gas and fast gas: no exponent lies beyond.
const EXPONENTS: [number, number] = [1, 1.4]

/** Makes a problem ready; refuses readings and ranges that make no sense, two readings of one name, and what the bike does not have. */
export function bikeProblem(observations: readonly Observation[], prior: Prior): BikeProblem {
  const { bike, rider, ranges } = record('prior', prior)
  const ridden: Ridden = { bike: record('prior.bike', bike), rider: rider ?? null }
  const checked = list('observations', observations).map((observation) => ({
    observation,
    uncertainty: checkedObservation(observation),
  }))
  checkNames(observations)
  // Sums depend on their order in the last digits, and searches on those: readings are taken by name, so that their order changes nothing.
  checked.sort((one, other) => (one.observation.name < other.observation.name ? -1 : 1))
  const sorted = checked.map(({ observation }) => observation)
  const known = Object.entries(record('prior.ranges', ranges)).filter(
    (entry): entry is [string, Range] => entry[1] != null,
  )
  for (const [name] of known) {
    if (!isBikeParameter(name) && !(ASIDES as readonly string[]).includes(name))
      throw new DomainError('prior.ranges', name, 'must name parameters of a fit')
  }
  const given = new Map(known)
  const ofBike = BIKE_PARAMETERS.filter((name) => given.has(name)).map((name) =>
    fromPrior(name, given.get(name)!, figureOf(ridden, name), leastOf(name)),
  )
  const aside = ASIDES.filter((name) => given.has(name) || isNeeded(name, observations)).map(
    (name) => asideUnknown(name, given.get(name), sorted, ridden),
  )
  const unknowns = [...ofBike, ...aside, ...decelerations(sorted)]
  const uncertainties = checked.map(({ uncertainty }) => uncertainty)
  return {
    observations: sorted,
    uncertainties,
    unknowns,
    known: unknowns.flatMap(({ prior: own }, j) => (own ? [j] : [])),
    ridden,
    solved: new Map(),
  }
}

function checkNames(observations: readonly Observation[]): void {
  const taken = new Set<string>([
    ...BIKE_PARAMETERS,
    ...ASIDES,
    ...observations.map(({ name }) => decelerationOf(name)),
  ])
  for (const { name } of observations) {
    if (taken.has(name))
      throw new DomainError(
        'observations.name',
        name,
        'must not be another reading’s, nor a parameter’s',
      )
    taken.add(name)
  }
}

function fromPrior(
  name: string,
  range: Range,
  figure: number | null,
  least = -Infinity,
  most = Infinity,
): Unknown {
  const prior = estimateOf(`prior.ranges.${name}`, range, figure)
  if (prior.value < least || prior.value > most)
    throw new DomainError(`prior.ranges.${name}`, prior.value, `must lie from ${least} to ${most}`)
  return { name, start: prior.value, unit: prior.uncertainty, prior, least, most }
}

function isNeeded(name: AsideParameter, observations: readonly Observation[]): boolean {
  return observations.some((observation) => {
    if (observation.kind === 'deepest') return name === 'brakingExponent' || name === 'overshoot'
    if (observation.kind === 'length') return name === `${observation.at}Extended`
    return observation.kind === 'springForce' && name === `${observation.at}FreeLength`
  })
}

// Where a length is first looked for, and how finely: a centimetre is near enough to begin with.
const LENGTH_UNIT = 0.01

function asideUnknown(
  name: AsideParameter,
  range: Range | undefined,
  observations: readonly Observation[],
  ridden: Ridden,
): Unknown {
  const [least, most] = name === 'brakingExponent' ? EXPONENTS : [-Infinity, Infinity]
  const own = range ?? USUAL[name]
  if (own) return fromPrior(name, own, null, least, most)
  const at: At = name.startsWith('front') ? 'front' : 'rear'
  const start = name.endsWith('Extended')
    ? extendedFrom(observations, ridden, at)
    : freeLengthFrom(observations, ridden, at)
  return { name, start, unit: LENGTH_UNIT, prior: null, least, most }
}

// One wrong reading does not move the middle one.
function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return (
    (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2
  )
}

/** The length at full extension that the readings speak of, on the prior's bike. */
function extendedFrom(observations: readonly Observation[], ridden: Ridden, at: At): number {
  const stances = stancesOf(ridden, () => 0)
  const readings = observations.filter(
    (observation) => observation.kind === 'length' && observation.at === at,
  )
  return median(readings.map((reading) => reading.value - predict(reading, stances)))
}

function freeLengthFrom(observations: readonly Observation[], ridden: Ridden, at: At): number {
  const rate = figureOf(ridden, at === 'front' ? 'frontRate' : 'rearRate')
  return median(
    observations.flatMap((one) =>
      one.kind === 'springForce' && one.at === at ? [one.length + one.value / rate] : [],
    ),
  )
}

function decelerations(observations: readonly Observation[]): Unknown[] {
  return observations.flatMap((one): Unknown[] => {
    if (one.kind !== 'deepest') return []
    const uncertainty = standardUncertainty(
      `${one.name}.decelerationPlusMinus`,
      one.decelerationPlusMinus,
    )
    const prior = { value: one.deceleration, uncertainty }
    return [
      {
        name: decelerationOf(one.name),
        start: prior.value,
        unit: uncertainty,
        prior,
        least: 0,
        most: Infinity,
      },
    ]
  })
}

/** The values of unknowns counted in their units from their starts. */
export function valuesAt({ unknowns }: BikeProblem, counted: readonly number[]): number[] {
  return unknowns.map(({ start, unit }, j) => start + unit * counted[j]!)
}

/** The bike and rider with these values. */
export function riddenAt({ ridden, unknowns }: BikeProblem, values: readonly number[]): Ridden {
  return withFigures(
    ridden,
    unknowns.map(({ name }) => name),
    values,
  )
}

/** What should be read with these values. */
export function predictedAt(problem: BikeProblem, values: readonly number[]): number[] {
  const { unknowns, observations } = problem
  const aside = (name: string): number =>
    values[unknowns.findIndex((unknown) => unknown.name === name)]!
  const stances = { ...stancesAt(problem, values), aside }
  return observations.map((observation) => predict(observation, stances))
}

const KEPT = 200

// Slopes ask for the same bike again and again with another free length or exponent: its stances are kept.
function stancesAt({ solved, unknowns, ridden }: BikeProblem, values: readonly number[]): Stances {
  const names = unknowns.map(({ name }) => name).filter(isBikeParameter)
  const key = names.map((_, j) => values[j]).join(' ')
  const known = solved.get(key)
  if (known) return known
  if (solved.size >= KEPT) solved.clear()
  const stances = stancesOf(withFigures(ridden, names, values), () => 0)
  solved.set(key, stances)
  return stances
}

/** What is left over of every reading and of every prior, each in its standard uncertainty: predicted less read. */
export function leftOverAt(problem: BikeProblem, counted: readonly number[]): Float64Array {
  const { observations, uncertainties, unknowns, known } = problem
  const values = valuesAt(problem, counted)
  const left = new Float64Array(observations.length + known.length)
  predictedAt(problem, values).forEach(
    (predicted, i) => (left[i] = (predicted - observations[i]!.value) / uncertainties[i]!),
  )
  known.forEach((j, k) => {
    const { value, uncertainty } = unknowns[j]!.prior!
    left[observations.length + k] = (values[j]! - value) / uncertainty
  })
  return left
}

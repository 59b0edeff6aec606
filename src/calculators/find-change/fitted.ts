import { coverageFactor, fitBike, sampleBike } from '../../core/index.ts'
import type {
  AimCases,
  Bike,
  BikeFit,
  DrawnBike,
  Observation,
  PointMass,
  Prior,
} from '../../core/index.ts'
import { InputRefusal } from '../../machine/work.ts'
import type { Values } from './means.ts'

/** About 95 % of what a reader calls "within" [1]. */
export const COVERS = coverageFactor({ degreesOfFreedom: Infinity, probability: 0.95 })

const READ = [
  ['frontStaticRead', 'front', false],
  ['frontRiderRead', 'front', true],
  ['rearStaticRead', 'rear', false],
  ['rearRiderRead', 'rear', true],
] as const

type ReadId = (typeof READ)[number][0]

/** A sag as it was read and as the fitted bike has it [m]. */
export interface FittedSag {
  input: ReadId
  read: number
  fitted: number
}

/** A bike fitted to the sags that were read, with its rider, and bikes as it may be. */
export interface FittedBike {
  bike: Bike
  rider: PointMass | null
  draws: readonly DrawnBike[]
  /** the sags that the fitted bike does not have, within what is said of the readings */
  apart: FittedSag[]
}

/* Where an end's sag was read, the preload follows from it: what a spacer, a seat and a worn spring add up to is known to no better than this. And nobody
   sits to the centimetre. Common practice, no source [m]. */
const PRELOAD_OPEN = 0.01
const SEAT = 0.04

/** A reading that stands out by more than this many of its own standard deviations is told as one that does not go with the rest [1]. */
const STANDS_OUT = 2.5
/** Bikes drawn: the ± that they give is good to about a twentieth of itself. */
const DRAWS = 200

/** The bike fitted to what was read; null where nothing was. */
export function fittedTo(input: Values, bike: Bike, rider: PointMass | null): FittedBike | null {
  const observations = READ.flatMap(([id, at, on]): Observation[] => {
    const value = input[id]
    if (value === undefined) return []
    checkTravel(id, value, bike, at, on ? rider : undefined)
    return [
      {
        kind: 'travel',
        name: id,
        at,
        settled: 'mean',
        value,
        plusMinus: { standard: input.readWithin / COVERS },
        ...(on ? { rider: true } : {}),
      },
    ]
  })
  if (observations.length === 0) return null
  const fit = fitBike(observations, priorOf(input, bike, rider))
  checkFit(input, fit)
  return {
    bike: fit.bike,
    rider: fit.rider,
    draws: sampleBike(fit, DRAWS, 1),
    apart: apartIn(fit),
  }
}

function checkTravel(
  id: ReadId,
  value: number,
  bike: Bike,
  at: 'front' | 'rear',
  rider: PointMass | null | undefined,
): void {
  if (rider === null)
    throw new InputRefusal(id, 'This sag was read with a rider on. Enter what the rider weighs')
  if (value >= (at === 'front' ? bike.fork : bike.rear).travel)
    throw new InputRefusal(
      id,
      'This bike has no more travel than that. Measure from full extension, or choose another bike',
    )
}

function priorOf(input: Values, bike: Bike, rider: PointMass | null): Prior {
  const reads = (at: 'front' | 'rear'): boolean =>
    READ.some(([id, end]) => end === at && input[id] !== undefined)
  const within = (limit: number) => (limit > 0 ? { standard: limit / COVERS } : undefined)
  const preload = (at: 'front' | 'rear') =>
    within(reads(at) ? Math.max(input.preloadWithin, PRELOAD_OPEN) : input.preloadWithin)
  const [front, rear] = [bike.fork.legs[0]!.spring[0]!.rate, bike.rear.spring[0]!.rate]
  const ranges = {
    frontRate: within(front * input.ratesWithin),
    frontPreload: preload('front'),
    rearRate: within(rear * input.ratesWithin),
    rearPreload: preload('rear'),
    ...(rider === null ? {} : { riderMass: within(input.riderWithin), riderX: within(SEAT) }),
  }
  const known = Object.entries(ranges).filter(([, range]) => range !== undefined)
  return { bike, ...(rider === null ? {} : { rider }), ranges: Object.fromEntries(known) }
}

/** A spring that would have to be loose in its leg says that a reading or a figure of the bike is wrong. */
function checkFit(input: Values, { bike, converged }: BikeFit): void {
  const loose = {
    front: bike.fork.legs.some(({ spring, preload }) => spring.length > 0 && preload < 0),
    rear: bike.rear.preload < 0,
  }
  for (const [id, at] of READ)
    if (input[id] !== undefined && (loose[at] || !converged))
      throw new InputRefusal(
        id,
        'With this bike’s springs the sag is not to be had by any preload. Measure it again, or look at the spring’s rate',
      )
}

const apartIn = ({ residuals }: BikeFit): FittedSag[] =>
  residuals.flatMap(({ name, read, fitted, normalised }) => {
    const input = READ.find(([id]) => id === name)?.[0]
    return input === undefined || Math.abs(normalised) < STANDS_OUT ? [] : [{ input, read, fitted }]
  })

/** The loads of a bike with another rider aboard in the first one's place. */
export function ridden(cases: AimCases, was: PointMass | null, rider: PointMass | null): AimCases {
  if (was === null || rider === null) return cases
  const swapped = ({ payload = [], ...load }: AimCases['rider']): AimCases['rider'] => ({
    ...load,
    payload: payload.map((one) => (one.x === was.x && one.z === was.z ? rider : one)),
  })
  return {
    ...cases,
    rider: swapped(cases.rider),
    ...(cases.braking === undefined ? {} : { braking: swapped(cases.braking) }),
  }
}

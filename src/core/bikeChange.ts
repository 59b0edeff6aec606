import type { Bike } from './bike.ts'
import { DomainError, finite, nonNegative, positive, record } from './domain.ts'
import type { Leg } from './fork.ts'
import { ratioAt, ratioCurve } from './ratio.ts'
import { springLimit, type CoilGroup } from './spring.ts'

/** What may be changed on a bike, in the order in which ways are told. */
export const MEANS = [
  'forkPreloadChange',
  'tubeRaise',
  'forkRate',
  'oilHeightChange',
  'rearPreloadChange',
  'rearRate',
  'shockLengthChange',
] as const

export type MeanId = (typeof MEANS)[number]

/**
 * Changes from how a bike stands now: fork preload of each leg, tubes up through the yokes, oil level down from the top, shock preload and shock
 * length [m]; `forkRate` and `rearRate` are new rates, per leg and per shock [N/m]. What is not named stays as it is.
 */
export type BikeChange = Partial<Record<MeanId, number>>

/**
 * A bike with changes made, from how it stands now. `rearTravel` [m] is where a longer shock is turned into a rise of the back: length over the
 * motion ratio there. A new rate stands for a straight spring that closes where the fitted one does. Refuses a preload below 0, no room above the
 * oil, and a rate of 0 or below. Source: the meanings of `Bike`; nothing is solved here.
 */
export function changeBike(bike: Bike, change: BikeChange, rearTravel = 0): Bike {
  const { geometry, fork, rear } = record('bike', bike)
  record('change', change)
  const legs = fork.legs.map((leg) => changedLeg(leg, change))
  const lift = finite('shockLengthChange', change.shockLengthChange ?? 0)
  const raise =
    lift === 0
      ? 0
      : lift / ratioAt(ratioCurve(rear.motionRatio, rear.travel), finite('rearTravel', rearTravel))
  return {
    ...bike,
    geometry: {
      ...geometry,
      tubeRaise: (geometry.tubeRaise ?? 0) + finite('tubeRaise', change.tubeRaise ?? 0),
      rearRaise: (geometry.rearRaise ?? 0) + raise,
    },
    fork: { ...fork, legs },
    rear: {
      ...rear,
      spring: changedSpring(rear.spring, 'rearRate', change.rearRate),
      preload: changedPreload(rear.preload, 'rearPreloadChange', change.rearPreloadChange),
    },
  }
}

function changedLeg(leg: Leg, change: BikeChange): Leg {
  const gas =
    leg.gas == null || change.oilHeightChange === undefined
      ? leg.gas
      : {
          ...leg.gas,
          airHeight: positive(
            'oilHeightChange',
            leg.gas.airHeight + finite('oilHeightChange', change.oilHeightChange),
          ),
        }
  // a leg without a spring has nothing to preload or to swap
  const sprung = leg.spring.length > 0
  return {
    ...(gas == null ? {} : { gas }),
    spring: sprung ? changedSpring(leg.spring, 'forkRate', change.forkRate) : leg.spring,
    preload: sprung
      ? changedPreload(leg.preload, 'forkPreloadChange', change.forkPreloadChange)
      : leg.preload,
  }
}

function changedSpring(
  spring: readonly CoilGroup[],
  name: 'forkRate' | 'rearRate',
  rate: number | undefined,
): readonly CoilGroup[] {
  if (rate === undefined) return spring
  const closes = springLimit(spring)
  return [{ rate: positive(name, rate), ...(closes === null ? {} : { closes }) }]
}

function changedPreload(
  preload: number,
  name: 'forkPreloadChange' | 'rearPreloadChange',
  change: number | undefined,
): number {
  return change === undefined ? preload : nonNegative(name, preload + finite(name, change))
}

/** Refuses a name that is no mean. */
export function knownMean(parameter: string, id: string): MeanId {
  const known = MEANS.find((mean) => mean === id)
  if (known === undefined)
    throw new DomainError(parameter, id, `must be one of ${MEANS.join(', ')}`)
  return known
}

import type { Bike, PointMass } from './bike.ts'
import { DomainError, list, record } from './domain.ts'
import type { Fork, Leg } from './fork.ts'
import type { CoilGroup } from './spring.ts'

/** A bike and who rides it (null: nobody). */
export interface Ridden {
  bike: Bike
  rider: PointMass | null
}

/**
 * Figures of a bike that a fit may change: spring rates where the springs begin to move [N/m], of one leg and one shock, and preloads [m]; friction of the
 * pair of legs along the axis and of the rear at the wheel [N]; `airHeight` [m]; sprung mass [kg] at (x, z) [m]; the rider's mass [kg] and place [m].
 */
export const BIKE_PARAMETERS = [
  'frontRate',
  'frontPreload',
  'frontFriction',
  'airHeight',
  'rearRate',
  'rearPreload',
  'rearFriction',
  'sprungMass',
  'sprungX',
  'sprungZ',
  'riderMass',
  'riderX',
  'riderZ',
] as const

export type BikeParameter = (typeof BIKE_PARAMETERS)[number]

interface Figure {
  /** null where the bike has no such part */
  read: (ridden: Ridden) => number | null
  write: (ridden: Ridden, value: number) => Ridden
  /** the least that it can physically be */
  least: number
}

// No spring or mass is lighter than this; 0 itself would leave nothing to divide by.
const LEAST = 1e-3

const sprungLeg = (fork: Fork): Leg | undefined =>
  list('bike.fork.legs', record('bike.fork', fork).legs).find((leg) => leg.spring.length > 0)
const gassyLeg = (fork: Fork): Leg | undefined =>
  list('bike.fork.legs', record('bike.fork', fork).legs).find((leg) => leg.gas != null)

/** Rate [N/m] of coil groups in series before any of them closes, or null without a group. */
export function firstRate(spring: readonly CoilGroup[]): number | null {
  return spring.length === 0 ? null : 1 / spring.reduce((sum, { rate }) => sum + 1 / rate, 0)
}

/** Coil groups of which every one is stiffer by one factor; they close where they did. */
export function scaledSpring(spring: readonly CoilGroup[], factor: number): CoilGroup[] {
  return spring.map((group) => ({ ...group, rate: group.rate * factor }))
}

const withFork = ({ bike, rider }: Ridden, fork: Partial<Fork>): Ridden => ({
  bike: { ...bike, fork: { ...bike.fork, ...fork } },
  rider,
})
const withRear = ({ bike, rider }: Ridden, rear: Partial<Bike['rear']>): Ridden => ({
  bike: { ...bike, rear: { ...bike.rear, ...rear } },
  rider,
})
const withSprung = ({ bike, rider }: Ridden, sprung: Partial<PointMass>): Ridden => ({
  bike: { ...bike, sprung: { ...bike.sprung, ...sprung } },
  rider,
})
const withRider = ({ bike, rider }: Ridden, place: Partial<PointMass>): Ridden => ({
  bike,
  rider: rider && { ...rider, ...place },
})
const withLegs = (ridden: Ridden, change: (leg: Leg) => Leg): Ridden =>
  withFork(ridden, { legs: ridden.bike.fork.legs.map(change) })

const FIGURES: Record<BikeParameter, Figure> = {
  frontRate: {
    read: ({ bike }) => firstRate(sprungLeg(bike.fork)?.spring ?? []),
    write: (ridden, rate) => {
      const factor = rate / firstRate(sprungLeg(ridden.bike.fork)?.spring ?? [])!
      return withLegs(ridden, (leg) => ({ ...leg, spring: scaledSpring(leg.spring, factor) }))
    },
    least: LEAST,
  },
  frontPreload: {
    read: ({ bike }) => sprungLeg(bike.fork)?.preload ?? null,
    write: (ridden, preload) => {
      const more = preload - sprungLeg(ridden.bike.fork)!.preload
      return withLegs(ridden, (leg) =>
        leg.spring.length > 0 ? { ...leg, preload: leg.preload + more } : leg,
      )
    },
    least: -Infinity,
  },
  frontFriction: {
    read: ({ bike }) => bike.fork.friction ?? 0,
    write: (ridden, friction) => withFork(ridden, { friction }),
    least: 0,
  },
  airHeight: {
    read: ({ bike }) => gassyLeg(bike.fork)?.gas?.airHeight ?? null,
    write: (ridden, airHeight) => {
      const more = airHeight - gassyLeg(ridden.bike.fork)!.gas!.airHeight
      return withLegs(ridden, (leg) =>
        leg.gas ? { ...leg, gas: { ...leg.gas, airHeight: leg.gas.airHeight + more } } : leg,
      )
    },
    least: 0,
  },
  rearRate: {
    read: ({ bike }) => firstRate(bike.rear.spring),
    write: (ridden, rate) =>
      withRear(ridden, {
        spring: scaledSpring(ridden.bike.rear.spring, rate / firstRate(ridden.bike.rear.spring)!),
      }),
    least: LEAST,
  },
  rearPreload: {
    read: ({ bike }) => (bike.rear.spring.length > 0 ? bike.rear.preload : null),
    write: (ridden, preload) => withRear(ridden, { preload }),
    least: -Infinity,
  },
  rearFriction: {
    read: ({ bike }) => bike.rear.friction ?? 0,
    write: (ridden, friction) => withRear(ridden, { friction }),
    least: 0,
  },
  sprungMass: {
    read: ({ bike }) => bike.sprung.mass,
    write: (ridden, mass) => withSprung(ridden, { mass }),
    least: LEAST,
  },
  sprungX: {
    read: ({ bike }) => bike.sprung.x,
    write: (ridden, x) => withSprung(ridden, { x }),
    least: -Infinity,
  },
  sprungZ: {
    read: ({ bike }) => bike.sprung.z,
    write: (ridden, z) => withSprung(ridden, { z }),
    least: -Infinity,
  },
  riderMass: {
    read: ({ rider }) => rider?.mass ?? null,
    write: (ridden, mass) => withRider(ridden, { mass }),
    least: 0,
  },
  riderX: {
    read: ({ rider }) => rider?.x ?? null,
    write: (ridden, x) => withRider(ridden, { x }),
    least: -Infinity,
  },
  riderZ: {
    read: ({ rider }) => rider?.z ?? null,
    write: (ridden, z) => withRider(ridden, { z }),
    least: -Infinity,
  },
}

export const isBikeParameter = (name: string): name is BikeParameter => Object.hasOwn(FIGURES, name)

/** A figure of a bike; refuses one that the bike does not have: air without gas, a rate without a spring, a rider's where nobody rides. */
export function figureOf(ridden: Ridden, parameter: BikeParameter): number {
  const value = FIGURES[parameter].read(ridden)
  if (value === null)
    throw new DomainError(`ranges.${parameter}`, value, 'must belong to a part that the bike has')
  return value
}

/** The bike with some of its figures changed. Springs keep their shape: one factor for all their groups, and for both legs. */
export function withFigures(
  ridden: Ridden,
  parameters: readonly string[],
  values: ArrayLike<number>,
): Ridden {
  return parameters.reduce(
    (changed, name, j) =>
      isBikeParameter(name) ? FIGURES[name].write(changed, values[j]!) : changed,
    ridden,
  )
}

/** The least that a figure can physically be. */
export const leastOf = (parameter: BikeParameter): number => FIGURES[parameter].least

import type { PointMass } from './bike.ts'
import { DomainError, list, nonNegative, oneOf, positive, record } from './domain.ts'
import { type PlusMinus, standardUncertainty } from './plusMinus.ts'

/** Which end of the bike was read. */
export type At = 'front' | 'rear'

interface Reading {
  /** what the reader calls it; no two alike */
  name: string
  /** what was read [m], or [N] for loads and spring forces */
  value: number
  plusMinus: PlusMinus
}

interface Carrying {
  /** whether the prior's rider sits on it */
  rider?: boolean
  /** what else is on it: masses [kg] at places of the datum frame [m], known well enough to count as exact */
  payload?: readonly PointMass[]
}

/**
 * How the suspension came to rest: the wheel hanging free; settled after pushing down, which friction leaves deeper; after lifting up, which it leaves
 * higher; or the mean of both.
 */
export type Settled = 'hanging' | 'down' | 'up' | 'mean'

/** A length [m] that shrinks as the suspension goes in: exposed tube at the front, a vertical length above the axle at the rear. */
export interface LengthReading extends Reading, Carrying {
  kind: 'length'
  at: At
  settled: Settled
}

/** A used travel [m] worked out already, along the steering axis at the front, vertical at the rear. */
export interface TravelReading extends Reading, Carrying {
  kind: 'travel'
  at: At
  settled: 'down' | 'up' | 'mean'
}

/**
 * A load [N] on the scale under one wheel. `raised`: the axle that was lifted, and how far beyond level [m]. `held`: the used travels [m] that straps or
 * blocks held (absent: the springs settle where they will, without friction).
 */
export interface LoadReading extends Reading, Carrying {
  kind: 'load'
  at: At
  raised?: { axle: At; by: number }
  held?: { frontTravel: number; rearTravel: number }
}

/** A force [N] that one spring alone gave on a tester, pressed to a length [m]. */
export interface SpringForceReading extends Reading {
  kind: 'springForce'
  at: At
  length: number
}

/** The deepest used travel [m] that a cable tie shows after one braking; the deceleration [m/s²] as it was judged, and the front brake's share. */
export interface DeepestReading extends Reading, Carrying {
  kind: 'deepest'
  deceleration: number
  decelerationPlusMinus: PlusMinus
  frontBrakeShare?: number
}

/** Something that was read on a bike, or on its springs. */
export type Observation =
  LengthReading | TravelReading | LoadReading | SpringForceReading | DeepestReading

const ENDS = ['front', 'rear'] as const

/** Refuses an observation that makes no sense by itself, and gives the standard uncertainty of its reading. */
export function checkedObservation(observation: Observation): number {
  const { name, value, plusMinus } = record('observations', observation)
  if (typeof name !== 'string' || name === '')
    throw new DomainError('observations.name', name, 'must be a text, to name the reading by')
  nonNegative(`${name}.value`, value)
  oneOf(`${name}.kind`, observation.kind, ['length', 'travel', 'load', 'springForce', 'deepest'])
  if (observation.kind !== 'deepest') oneOf(`${name}.at`, observation.at, ENDS)
  checkOwn(observation)
  if (observation.kind !== 'springForce') list(`${name}.payload`, observation.payload ?? [])
  return standardUncertainty(`${name}.plusMinus`, plusMinus)
}

function checkOwn(observation: Observation): void {
  const { name } = observation
  switch (observation.kind) {
    case 'length':
      oneOf(`${name}.settled`, observation.settled, ['hanging', 'down', 'up', 'mean'])
      return
    case 'travel':
      oneOf(`${name}.settled`, observation.settled, ['down', 'up', 'mean'])
      return
    case 'load':
      checkLoad(observation)
      return
    case 'springForce':
      positive(`${name}.length`, observation.length)
      return
    case 'deepest':
      nonNegative(`${name}.deceleration`, observation.deceleration)
  }
}

function checkLoad({ name, raised, held }: LoadReading): void {
  if (raised != null) {
    oneOf(`${name}.raised.axle`, record(`${name}.raised`, raised).axle, ENDS)
    positive(`${name}.raised.by`, raised.by)
  }
  if (held != null) {
    nonNegative(`${name}.held.frontTravel`, record(`${name}.held`, held).frontTravel)
    nonNegative(`${name}.held.rearTravel`, held.rearTravel)
  }
}

import {
  type Bike,
  brakingOvershoot,
  type Observation,
  type PointMass,
  pose,
  type Prior,
  solveStance,
  springForce,
  STANDARD_GRAVITY,
  type Stance,
} from '../../src/core/index.ts'
import { stream as plainStream } from './bikes.ts'

/* A bike that is known, and readings of it with errors that are known: what a fit should find, and from what. */

// Neighbouring seeds are mixed first, or their streams would resemble each other.
const stream = (seed: number): (() => number) =>
  plainStream(Math.imul(seed + 1, 0x9e3779b1) ^ (seed << 7))

/** Deviates of normal distribution. */
export function normals(next: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
}

export const LENGTH = 0.0006
export const LOAD = 8
const TIE = 0.002
const STATED = 6.5

/** What is known beforehand, as standard uncertainties: shares of the stand-in's figures where it says so. */
const SPREAD = {
  frontRate: 0.08, // share
  frontPreload: 0.004,
  frontFriction: 14,
  airHeight: 0.01,
  rearRate: 0.08, // share
  rearPreload: 0.003,
  rearFriction: 12,
  sprungMass: 0.06, // share
  sprungX: 0.03,
  sprungZ: 0.04,
  riderMass: 4,
  riderX: 0.04,
  riderZ: 0.05,
}

export interface Known {
  prior: Prior
  truth: Record<string, number>
  bike: Bike
  rider: PointMass
}

/** Figures of a bike and rider by the names that a fit uses. */
export function figuresOf(bike: Bike, rider: PointMass): Record<string, number> {
  const [leg] = bike.fork.legs
  return {
    frontRate: leg!.spring[0]!.rate,
    frontPreload: leg!.preload,
    frontFriction: bike.fork.friction!,
    airHeight: leg!.gas!.airHeight,
    rearRate: bike.rear.spring[0]!.rate,
    rearPreload: bike.rear.preload,
    rearFriction: bike.rear.friction!,
    sprungMass: bike.sprung.mass,
    sprungX: bike.sprung.x,
    sprungZ: bike.sprung.z,
    riderMass: rider.mass,
    riderX: rider.x,
    riderZ: rider.z,
  }
}

function bikeWith(base: Bike, f: Record<string, number>): Bike {
  const leg = {
    ...base.fork.legs[0]!,
    spring: [{ rate: f['frontRate']! }],
    preload: f['frontPreload']!,
  }
  const withGas = { ...leg, gas: { ...leg.gas!, airHeight: f['airHeight']! } }
  return {
    ...base,
    sprung: { mass: f['sprungMass']!, x: f['sprungX']!, z: f['sprungZ']! },
    fork: { ...base.fork, friction: f['frontFriction']!, legs: [withGas, withGas] },
    rear: {
      ...base.rear,
      friction: f['rearFriction']!,
      spring: [{ rate: f['rearRate']! }],
      preload: f['rearPreload']!,
    },
  }
}

/** An invented stand-in of common size, small to large. */
function standIn(next: () => number): { bike: Bike; rider: PointMass } {
  const from = (low: number, high: number): number => low + (high - low) * next()
  const size = from(0.8, 1.3)
  const leg = {
    spring: [{ rate: 9000 * size }],
    preload: from(0.012, 0.022),
    gas: {
      tubeDiameter: from(0.037, 0.045),
      boreDiameter: 0.037,
      airHeight: from(0.12, 0.16),
      stackVolume: 45e-6,
    },
  }
  const bike: Bike = {
    geometry: {
      wheelbase: from(1.36, 1.52),
      rake: from(0.4, 0.47),
      pivot: { x: from(0.5, 0.58), z: 0.39 },
      frontRadius: 0.3,
      rearRadius: 0.315,
      forkOffset: 0.035,
      datum: { frontTravel: 0.03, rearTravel: 0.03 },
    },
    sprung: { mass: 160 * size, x: from(0.66, 0.74), z: 0.57 },
    frontUnsprungMass: 22 * size,
    rearUnsprungMass: 23 * size,
    fork: {
      travel: from(0.12, 0.14),
      legs: [leg, leg],
      friction: from(60, 80),
      topOut: { rate: 20000, length: 0.006 },
    },
    rear: {
      travel: 0.13,
      spring: [{ rate: 100000 * size }],
      preload: from(0.009, 0.014),
      motionRatio: { initial: from(0.43, 0.47), slope: from(0, 0.4) },
      gasForce: 150,
      friction: from(50, 70),
    },
  }
  return { bike, rider: { mass: from(65, 95), x: from(0.54, 0.6), z: 1 } }
}

/** A stand-in, what is known of it, and a bike that is drawn honestly from that. */
export function knownBike(seed: number): Known {
  const next = stream(seed)
  const normal = normals(next)
  const { bike, rider } = standIn(next)
  const figures = figuresOf(bike, rider)
  const ranges: Record<string, { standard: number }> = {}
  const truth: Record<string, number> = {}
  for (const [name, spread] of Object.entries(SPREAD)) {
    const standard =
      spread * (['frontRate', 'rearRate', 'sprungMass'].includes(name) ? figures[name]! : 1)
    ranges[name] = { standard }
    // Friction that would be below nothing, one bike in ten thousand, is none.
    truth[name] = Math.max(
      figures[name]! + standard * normal(),
      name.endsWith('Friction') ? 0 : -Infinity,
    )
  }
  Object.assign(truth, {
    frontExtended: 0.15 + 0.01 * normal(),
    rearExtended: 0.52 + 0.01 * normal(),
    frontFreeLength: 0.32 + 0.01 * normal(),
  })
  truth['overshoot'] = 0.5 + normal() / Math.sqrt(12)
  truth['brakingExponent'] = Math.min(1.4, Math.max(1, 1.2 + (0.2 / Math.sqrt(3)) * normal()))
  truth['deceleration of deepest stroke'] = STATED + 0.4 * normal()
  const ridden = { mass: truth['riderMass']!, x: truth['riderX']!, z: truth['riderZ']! }
  return { prior: { bike, rider, ranges }, truth, bike: bikeWith(bike, truth), rider: ridden }
}

/** Load on the wheel that stays down of a bike held rigid, the other axle raised: the bike turned about the axle that stays down. */
function raisedLoad(
  { bike }: Known,
  held: { frontTravel: number; rearTravel: number },
  by: number,
): number {
  const level = pose(bike.geometry, held.frontTravel, held.rearTravel)
  const { frontAxle, rearAxle, wheelbase } = level
  const rise = rearAxle.z - frontAxle.z
  const span = Math.hypot(wheelbase, rise)
  const turn = Math.asin((rise + by) / span) - Math.asin(rise / span)
  const sprung = level.toGround(bike.sprung)
  const masses = [
    { mass: bike.sprung.mass, ...sprung },
    { mass: bike.rearUnsprungMass, ...rearAxle },
  ]
  // How far behind the front axle each mass comes to stand.
  const behind = ({ x, z }: { x: number; z: number }): number =>
    (frontAxle.x - x) * Math.cos(turn) - (z - frontAxle.z) * Math.sin(turn)
  const moment = masses.reduce((sum, part) => sum + part.mass * behind(part), 0)
  const total = bike.sprung.mass + bike.frontUnsprungMass + bike.rearUnsprungMass
  return STANDARD_GRAVITY * (total - moment / behind(rearAxle))
}

const HELD = { frontTravel: 0.03, rearTravel: 0.02 }

/** The stand-in itself, as a bike that is known. */
export function standInOf({ prior }: Known): Known {
  const { bike, rider } = prior
  const lengths = { frontExtended: 0.15, rearExtended: 0.52, frontFreeLength: 0.32 }
  const braking = { overshoot: 0.5, brakingExponent: 1.2, 'deceleration of deepest stroke': STATED }
  return {
    prior,
    bike,
    rider: rider!,
    truth: { ...figuresOf(bike, rider!), ...lengths, ...braking },
  }
}

/** Readings of a known bike, each with an error of its own; without a seed, with none. */
export function readingsOf(known: Known, seed?: number): Observation[] {
  const { bike, rider, truth } = known
  const normal = seed === undefined ? () => 0 : normals(stream(seed))
  const stance = (settle: number, on: boolean): Stance =>
    solveStance(bike, { payload: on ? [rider] : [] }, { settle })
  const read = (
    value: number,
    uncertainty: number,
  ): { value: number; plusMinus: { standard: number } } => ({
    value: Math.max(0, value + uncertainty * normal()),
    plusMinus: { standard: uncertainty },
  })
  const readings: Observation[] = []
  for (const at of ['front', 'rear'] as const) {
    const extended = truth[`${at}Extended`]!
    readings.push({
      kind: 'length',
      name: `${at} hanging`,
      at,
      settled: 'hanging',
      ...read(extended, LENGTH),
    })
    for (const on of [false, true]) {
      for (const settled of ['down', 'up'] as const) {
        const travel = stance(settled === 'down' ? 1 : -1, on)[`${at}Travel`]
        readings.push({
          kind: 'length',
          name: `${at} ${on ? 'rider' : 'alone'} ${settled}`,
          at,
          settled,
          rider: on,
          ...read(extended - travel, LENGTH),
        })
      }
      readings.push({
        kind: 'load',
        name: `${at} scale ${on ? 'rider' : 'alone'}`,
        at,
        rider: on,
        ...read(stance(0, on)[`${at}Load`], LOAD),
      })
    }
  }
  readings.push({
    kind: 'load',
    name: 'front scale strapped',
    at: 'front',
    held: HELD,
    ...read(raisedLoad(known, HELD, 0), LOAD),
  })
  const raised = { axle: 'rear', by: 0.4 } as const
  readings.push({
    kind: 'load',
    name: 'front scale raised',
    at: 'front',
    held: HELD,
    raised,
    ...read(raisedLoad(known, HELD, raised.by), LOAD),
  })
  for (const length of [0.29, 0.27, 0.25]) {
    const force = springForce(bike.fork.legs[0]!.spring, truth['frontFreeLength']! - length)
    readings.push({
      kind: 'springForce',
      name: `front spring at ${length}`,
      at: 'front',
      length,
      ...read(force, LOAD),
    })
  }
  const deepest = {
    kind: 'deepest',
    name: 'deepest stroke',
    rider: true,
    deceleration: STATED,
    decelerationPlusMinus: { standard: 0.4 },
  } as const
  readings.push({ ...deepest, ...read(deepestTravel(known), TIE) })
  return readings
}

function deepestTravel({ bike, rider, truth }: Known): number {
  const riding = solveStance(bike, { payload: [rider] })
  const gasState = { exponent: truth['brakingExponent']!, from: riding.frontTravel }
  const braking = solveStance(
    bike,
    { payload: [rider], deceleration: truth['deceleration of deepest stroke']!, gasState },
    { settle: -1 },
  )
  const [low, high] = brakingOvershoot(bike.fork, riding, braking, gasState, {
    dampingRatios: [0.3, 0.4],
    rampTimes: [0.1, 0.2],
  })
  return Math.min(bike.fork.travel, braking.frontTravel + low + truth['overshoot']! * (high - low))
}

import { bikeFromScales, solveStance, STANDARD_GRAVITY } from '../core/index.ts'
import type { Bike, Fork, Geometry, Rear } from '../core/index.ts'
import type { BikeSpec } from './inSI.ts'

/** What is fitted other than standard [SI]; absent means as the bike stands. */
export interface Fitted {
  /** per leg */
  forkRate?: number
  forkPreload?: number
  airHeight?: number
  tubeRaise?: number
  forkOffset?: number
  frontRadius?: number
  rearRadius?: number
  /** rise of the back at the axle from a longer shock */
  rearRaise?: number
  rearRate?: number
  rearPreload?: number
}

/** The fork [SI] with what is fitted: two equal legs. */
export function forkOf({ fork }: BikeSpec, fitted: Fitted = {}): Fork {
  const { travel, springRate, preload, friction, topOut } = fork
  const { tubeDiameter, boreDiameter, stackVolume } = fork
  const leg = {
    spring: [{ rate: fitted.forkRate ?? springRate }],
    preload: fitted.forkPreload ?? preload,
    gas: {
      tubeDiameter,
      boreDiameter,
      stackVolume,
      airHeight: fitted.airHeight ?? fork.airHeight,
    },
  }
  return { travel, legs: [leg, leg], friction, ...(topOut ? { topOut } : {}) }
}

/** The rear suspension [SI] with what is fitted. */
export function rearOf({ rear }: BikeSpec, fitted: Fitted = {}): Rear {
  const { springRate, preload, ...rest } = rear
  return {
    ...rest,
    spring: [{ rate: fitted.rearRate ?? springRate }],
    preload: fitted.rearPreload ?? preload,
  }
}

/** What a bike's geometry follows from. */
export type Frame = Pick<
  BikeSpec,
  'quotedAt' | 'wheelbase' | 'rake' | 'pivot' | 'frontRadius' | 'rearRadius' | 'forkOffset'
>

/** The geometry [SI] with what is fitted; the quoted figures hold for the standard tyres, yokes and travels. */
export function geometryOf(frame: Frame, fitted: Fitted = {}): Geometry {
  const { wheelbase, rake, pivot, frontRadius, rearRadius, forkOffset, quotedAt } = frame
  return {
    wheelbase,
    rake,
    pivot,
    frontRadius: fitted.frontRadius ?? frontRadius,
    rearRadius: fitted.rearRadius ?? rearRadius,
    forkOffset: fitted.forkOffset ?? forkOffset,
    tubeRaise: fitted.tubeRaise ?? 0,
    rearRaise: fitted.rearRaise ?? 0,
    datum: { ...quotedAt, frontRadius, rearRadius, forkOffset },
  }
}

/** The standard bike whose loads and centre of gravity are the quoted ones where it settles by itself: few steps, since the loads barely depend on the travels. */
function standardBike(spec: BikeSpec): Bike {
  const frontLoad = spec.mass * STANDARD_GRAVITY * spec.frontShare
  const parts = {
    geometry: geometryOf(spec),
    frontUnsprungMass: spec.frontUnsprungMass,
    rearUnsprungMass: spec.rearUnsprungMass,
    fork: forkOf(spec),
    rear: rearOf(spec),
  }
  let travels = { frontTravel: parts.fork.travel / 5, rearTravel: parts.rear.travel / 10 }
  for (let step = 0; ; step++) {
    const reading = {
      frontLoad,
      rearLoad: spec.mass * STANDARD_GRAVITY - frontLoad,
      ...travels,
      centreOfGravityHeight: spec.centreOfGravityHeight,
    }
    const bike = bikeFromScales({ ...parts, reading })
    const { frontTravel, rearTravel } = solveStance(bike, {})
    const moved =
      Math.abs(frontTravel - travels.frontTravel) + Math.abs(rearTravel - travels.rearTravel)
    if (moved < 1e-12 || step === 40) return bike
    travels = { frontTravel, rearTravel }
  }
}

const standardBikes = new WeakMap<BikeSpec, Bike>()

/** The whole bike [SI] with what is fitted; its masses are those of the standard bike. */
export function bikeOf(spec: BikeSpec, fitted: Fitted = {}): Bike {
  const standard = standardBikes.get(spec) ?? standardBike(spec)
  standardBikes.set(spec, standard)
  return {
    ...standard,
    geometry: geometryOf(spec, fitted),
    fork: forkOf(spec, fitted),
    rear: rearOf(spec, fitted),
  }
}

/** Somebody or something on the bike [SI], its place in the datum frame. */
export function payloadOf(load: BikeSpec['rider'], mass = load.mass): BikeSpec['rider'] {
  return { mass, x: load.x, z: load.z }
}

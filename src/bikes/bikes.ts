import { bikeFromScales, solveStance, STANDARD_GRAVITY } from '../core/index.ts'
import type { Bike, Fork, Gas, Geometry, Rear } from '../core/index.ts'

interface Point {
  x: number
  z: number
}
interface Load extends Point {
  mass: number
}
interface SagWindow {
  static: readonly [number, number]
  rider: readonly [number, number]
}

/** A bike as the workshop writes it down: mm, kg, N/mm, N, degrees, cm³, per cent. x forward from the rear axle, z up from the ground, in the pose for which rake and wheelbase are quoted. */
export interface BikeSpec {
  id: string
  name: string
  about: string
  quotedAt: { frontTravel: number; rearTravel: number }
  wheelbase: number
  rake: number
  forkOffset: number
  frontTyre: string
  rearTyre: string
  frontRadius: number
  rearRadius: number
  pivot: Point
  /** wet, without rider */
  mass: number
  /** share of the bike alone on the front wheel [%] */
  frontShare: number
  centreOfGravityHeight: number
  frontUnsprungMass: number
  rearUnsprungMass: number
  fork: {
    kind: string
    travel: number
    /** per leg */
    springRate: number
    preload: number
    tubeDiameter: number
    boreDiameter: number
    /** oil height: collapsed, spring out */
    airHeight: number
    stackVolume: number
    friction: number
    topOut?: { rate: number; length: number }
    /** tube in sight at full extension */
    exposedTube: number
  }
  rear: {
    shocks: number
    travel: number
    springRate: number
    preload: number
    motionRatio: { initial: number; slope: number }
    gasForce: number
    friction: number
  }
  rider: Load
  passenger: Load
  luggage: Load
  frontSagWindow: SagWindow
  rearSagWindow: SagWindow
}

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

const MM = 1e-3
const CM3 = 1e-6
const N_PER_MM = 1e3

/** The gas of one leg [SI] of a bike's fork. */
export function gasOf(spec: BikeSpec, airHeight = spec.fork.airHeight * MM): Gas {
  const { tubeDiameter, boreDiameter, stackVolume } = spec.fork
  return {
    tubeDiameter: tubeDiameter * MM,
    boreDiameter: boreDiameter * MM,
    airHeight,
    stackVolume: stackVolume * CM3,
  }
}

/** The fork [SI] with what is fitted: two equal legs. */
export function forkOf(spec: BikeSpec, fitted: Fitted = {}): Fork {
  const { fork } = spec
  const leg = {
    spring: [{ rate: fitted.forkRate ?? fork.springRate * N_PER_MM }],
    preload: fitted.forkPreload ?? fork.preload * MM,
    gas: gasOf(spec, fitted.airHeight),
  }
  const topOut = fork.topOut && {
    rate: fork.topOut.rate * N_PER_MM,
    length: fork.topOut.length * MM,
  }
  return {
    travel: fork.travel * MM,
    legs: [leg, leg],
    friction: fork.friction,
    ...(topOut ? { topOut } : {}),
  }
}

/** The rear suspension [SI] with what is fitted. */
export function rearOf(spec: BikeSpec, fitted: Fitted = {}): Rear {
  const { rear } = spec
  return {
    travel: rear.travel * MM,
    shocks: rear.shocks,
    spring: [{ rate: fitted.rearRate ?? rear.springRate * N_PER_MM }],
    preload: fitted.rearPreload ?? rear.preload * MM,
    gasForce: rear.gasForce,
    motionRatio: { initial: rear.motionRatio.initial, slope: rear.motionRatio.slope / MM },
    friction: rear.friction,
  }
}

/** The geometry [SI] with what is fitted; the quoted figures hold for the standard tyres, yokes and travels. */
export function geometryOf(spec: BikeSpec, fitted: Fitted = {}): Geometry {
  const standard = {
    frontRadius: spec.frontRadius * MM,
    rearRadius: spec.rearRadius * MM,
    forkOffset: spec.forkOffset * MM,
  }
  return {
    wheelbase: spec.wheelbase * MM,
    rake: (spec.rake * Math.PI) / 180,
    pivot: { x: spec.pivot.x * MM, z: spec.pivot.z * MM },
    frontRadius: fitted.frontRadius ?? standard.frontRadius,
    rearRadius: fitted.rearRadius ?? standard.rearRadius,
    forkOffset: fitted.forkOffset ?? standard.forkOffset,
    tubeRaise: fitted.tubeRaise ?? 0,
    rearRaise: fitted.rearRaise ?? 0,
    datum: {
      frontTravel: spec.quotedAt.frontTravel * MM,
      rearTravel: spec.quotedAt.rearTravel * MM,
      ...standard,
    },
  }
}

/** The standard bike whose loads and centre of gravity are the quoted ones where it settles by itself: few steps, since the loads barely depend on the travels. */
function standardBike(spec: BikeSpec): Bike {
  const frontLoad = spec.mass * STANDARD_GRAVITY * (spec.frontShare / 100)
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
      centreOfGravityHeight: spec.centreOfGravityHeight * MM,
    }
    const bike = bikeFromScales({ ...parts, reading })
    const settled = solveStance(bike, {})
    const moved =
      Math.abs(settled.frontTravel - travels.frontTravel) +
      Math.abs(settled.rearTravel - travels.rearTravel)
    if (moved < 1e-12 || step === 40) return bike
    travels = { frontTravel: settled.frontTravel, rearTravel: settled.rearTravel }
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
export function payloadOf(load: Load, mass = load.mass): { mass: number; x: number; z: number } {
  return { mass, x: load.x * MM, z: load.z * MM }
}

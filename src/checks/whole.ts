import {
  bikeFromScales,
  chainAt,
  type ChainDrive,
  forkForceFromAxleLoad,
  frontShareFromScales,
  liftDeceleration,
  solveStance,
  STANDARD_GRAVITY,
  wheelLoads,
} from '../core/index.ts'
import type { Bike, PointMass } from '../core/index.ts'
import { call, slopeOf } from './call.ts'

/** A machine on two scales, its springs known by their rates alone: what they must push with follows. */
interface OnScales {
  frontLoad: number
  rearLoad: number
  frontUnsprungMass: number
  rearUnsprungMass: number
  rake: number
  wheelbase: number
  radius: number
  pivot: { x: number; z: number }
  forkRate: number
  shockRate: number
}

/** Settles the machine whose loads are those read; the height of its centre does not enter at rest. */
function springForces(given: OnScales) {
  const parts: Omit<Bike, 'sprung'> = {
    geometry: {
      wheelbase: given.wheelbase,
      rake: given.rake,
      pivot: given.pivot,
      frontRadius: given.radius,
      rearRadius: given.radius,
      forkOffset: 0.05,
      datum: { frontTravel: 0.05, rearTravel: 0.05 },
    },
    frontUnsprungMass: given.frontUnsprungMass,
    rearUnsprungMass: given.rearUnsprungMass,
    fork: { travel: 0.15, legs: [{ spring: [{ rate: given.forkRate }], preload: 0.05 }] },
    rear: {
      travel: 0.15,
      spring: [{ rate: given.shockRate }],
      preload: 0.01,
      motionRatio: { initial: 1 },
    },
  }
  const { frontLoad, rearLoad } = given
  let travels = { frontTravel: 0.05, rearTravel: 0.05 }
  for (let step = 0; step < 40; step++) {
    const reading = { frontLoad, rearLoad, ...travels, centreOfGravityHeight: 0.6 }
    const { frontTravel, rearTravel } = solveStance(bikeFromScales({ ...parts, reading }))
    travels = { frontTravel, rearTravel }
  }
  const reading = { frontLoad, rearLoad, ...travels, centreOfGravityHeight: 0.6 }
  const { forkForce, rearForce } = solveStance(bikeFromScales({ ...parts, reading }))
  return { fork: forkForce, shock: rearForce }
}

/** A rigid machine as the core has one: springs so stiff that nothing settles, wheels of no weight. */
function rigid(mass: number, place: { x: number; z: number }, wheelbase: number): Bike {
  return {
    geometry: {
      wheelbase,
      rake: 0.4,
      pivot: { x: wheelbase / 3, z: 0.3 },
      frontRadius: 0.3,
      rearRadius: 0.3,
      forkOffset: 0,
      datum: { frontTravel: 0, rearTravel: 0 },
    },
    sprung: { mass, ...place },
    frontUnsprungMass: 0,
    rearUnsprungMass: 0,
    fork: { travel: 0.02, legs: [{ spring: [{ rate: 1e12 }], preload: 0 }] },
    rear: {
      travel: 0.02,
      spring: [{ rate: 1e12 }],
      preload: 0,
      motionRatio: { initial: 1 },
    },
  }
}

interface Lifting {
  mass: number
  toFront: number
  height: number
  wheelbase: number
  slope?: number
}

/** Where the whole-bike solver says that a rigid machine lifts its rear wheel, as a share of g. */
function wholeBikeLift({ mass, toFront, height, wheelbase, slope = 0 }: Lifting): number {
  const bike = rigid(mass, { x: wheelbase - toFront, z: height }, wheelbase)
  return (liftDeceleration(bike, { slope }) ?? Number.NaN) / STANDARD_GRAVITY
}

/** How much faster the tangent of a swing arm's angle grows than its axle rises, times the tyre's radius. */
function armSlope(given: { armLength: number; armAngle: number; tyreRadius: number }): number {
  const drive: ChainDrive = {
    pitch: 0.0127,
    rearTeeth: 48,
    frontTeeth: 18,
    armLength: given.armLength,
    axleHeight: -given.armLength * Math.sin(given.armAngle),
    frontSprocket: { x: 0.1, z: 0 },
  }
  const tangent = (travel: number): number => Math.tan(chainAt(drive, travel).armAngle)
  return Math.abs(slopeOf(tangent, 1e-4)(0)) * given.tyreRadius
}

/** Loads on both wheels together, under a book's own g. */
function weight({ masses, wheelbase, gravity }: Weighed): number {
  const { front, rear } = wheelLoads({ masses, wheelbase })
  return ((front + rear) * gravity) / STANDARD_GRAVITY
}

interface Weighed {
  masses: PointMass[]
  wheelbase: number
  gravity: number
}

export const whole = {
  springForces: call(['bikeFromScales', 'solveStance'], springForces),
  forkForceFromAxleLoad: call(['forkForceFromAxleLoad'], forkForceFromAxleLoad),
  wholeBikeLift: call(['liftDeceleration', 'solveStance'], wholeBikeLift),
  centreFromScales: call(
    ['frontShareFromScales'],
    ({ front, rear, wheelbase }: { front: number; rear: number; wheelbase: number }) => ({
      toRear: frontShareFromScales({ front, rear }) * wheelbase,
      toFront: (1 - frontShareFromScales({ front, rear })) * wheelbase,
    }),
  ),
  armSlope: call(['chainAt'], armSlope),
  weight: call(['wheelLoads'], weight),
}

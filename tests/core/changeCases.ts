import {
  AIMS,
  type Aim,
  type AimCases,
  type AimId,
  type Bike,
  type BikeChange,
  type ChangeWanted,
  type Mean,
  MEANS,
  type MeanId,
  solveStance,
  type Stance,
} from '../../src/core/index.ts'
import { stream } from './bikes.ts'

/** A bike that could be built, with who rides it: narrower than `randomCase`, since a search is for bikes that stand between their stops. */
export function buildableBike(next: () => number): { bike: Bike; cases: AimCases } {
  const from = (low: number, high: number): number => low + (high - low) * next()
  const gas = {
    tubeDiameter: from(0.036, 0.045),
    boreDiameter: from(0.034, 0.041),
    airHeight: from(0.1, 0.16),
    stackVolume: from(3e-5, 7e-5),
  }
  const closes = next() < 0.3 ? { closes: from(0.135, 0.19) } : {}
  const leg = {
    spring: [{ rate: from(6500, 11000), ...closes }],
    preload: from(0.008, 0.02),
    ...(next() < 0.8 ? { gas } : {}),
  }
  const slope = next() < 0.5 ? 0 : from(0, 0.6)
  const bike: Bike = {
    geometry: {
      wheelbase: from(1.3, 1.6),
      rake: from(0.4, 0.5),
      pivot: { x: from(0.5, 0.6), z: from(0.34, 0.42) },
      frontRadius: from(0.28, 0.32),
      rearRadius: from(0.29, 0.33),
      forkOffset: from(0.02, 0.05),
      tubeRaise: next() < 0.3 ? from(-0.005, 0.005) : 0,
      datum: { frontTravel: 0, rearTravel: 0 },
    },
    sprung: { mass: from(110, 220), x: from(0.66, 0.78), z: from(0.5, 0.62) },
    frontUnsprungMass: from(12, 22),
    rearUnsprungMass: from(14, 26),
    fork: {
      travel: from(0.11, 0.15),
      legs: [leg, leg],
      ...(next() < 0.5 ? { topOut: { rate: 30000, length: 0.008 } } : {}),
    },
    rear: {
      travel: from(0.11, 0.15),
      spring: [{ rate: from(75000, 120000) }],
      preload: from(0.006, 0.014),
      gasForce: from(0, 220),
      motionRatio: { initial: from(0.42, 0.5), slope },
    },
  }
  const payload = [{ mass: from(55, 115), x: from(0.5, 0.7), z: from(0.9, 1.05) }]
  return {
    bike,
    cases: {
      static: {},
      rider: { payload },
      braking: { payload, deceleration: from(4, 7), gasState: { exponent: 1.4 } },
    },
  }
}

/** The same change made by hand, apart from the core's own. */
export function madeByHand(bike: Bike, change: BikeChange, rearTravel: number): Bike {
  const changed = structuredClone<{ -readonly [K in keyof Bike]: Bike[K] }>(bike)
  const { motionRatio } = bike.rear
  if (!('initial' in motionRatio)) throw new Error('these bikes have a straight ratio')
  const ratio = motionRatio.initial + (motionRatio.slope ?? 0) * rearTravel
  changed.geometry.tubeRaise = (bike.geometry.tubeRaise ?? 0) + (change.tubeRaise ?? 0)
  changed.geometry.rearRaise =
    (bike.geometry.rearRaise ?? 0) + (change.shockLengthChange ?? 0) / ratio
  changed.fork = {
    ...bike.fork,
    legs: bike.fork.legs.map((leg) => ({
      ...leg,
      spring: [{ ...leg.spring[0]!, rate: change.forkRate ?? leg.spring[0]!.rate }],
      preload: leg.preload + (change.forkPreloadChange ?? 0),
      ...(leg.gas
        ? { gas: { ...leg.gas, airHeight: leg.gas.airHeight + (change.oilHeightChange ?? 0) } }
        : {}),
    })),
  }
  changed.rear = {
    ...bike.rear,
    spring: [{ rate: change.rearRate ?? bike.rear.spring[0]!.rate }],
    preload: bike.rear.preload + (change.rearPreloadChange ?? 0),
  }
  return changed
}

/** What a bike with a change reads, and whether it may be offered, all by `solveStance` and apart from the core's own reading of aims. */
export function readAlone(
  bike: Bike,
  cases: AimCases,
  change: BikeChange,
  aims: readonly AimId[],
): { readings: Record<AimId, number>; sound: boolean } {
  const now = solveStance(bike, cases.rider)
  const after = madeByHand(bike, change, now.rearTravel)
  const alone = solveStance(after, cases.static)
  const rider = solveStance(after, cases.rider)
  const braking = solveStance(after, {
    ...cases.braking,
    gasState: { exponent: 1.4, from: rider.frontTravel },
  })
  const { geometry } = bike
  const height = (stance: Stance, end: 'front' | 'rear'): number =>
    stance.toGround(
      end === 'front'
        ? { x: geometry.wheelbase, z: geometry.frontRadius }
        : { x: 0, z: geometry.rearRadius },
    ).z
  const asked = (...ids: AimId[]): boolean => ids.some((id) => aims.includes(id))
  const free = ({ frontStop, rearStop }: Stance): boolean =>
    frontStop === 'none' && rearStop === 'none'
  const usesRider = aims.some((id) => !id.includes('Static'))
  const binds = (stance: Stance): boolean =>
    (stance.frontLimit.cause !== 'bottomed' && now.frontLimit.cause === 'bottomed') ||
    (stance.rearLimit.cause !== 'bottomed' && now.rearLimit.cause === 'bottomed')
  return {
    readings: {
      frontStaticSag: alone.frontTravel,
      frontRiderSag: rider.frontTravel,
      rearStaticSag: alone.rearTravel,
      rearRiderSag: rider.rearTravel,
      trail: rider.trail,
      rake: rider.rake,
      frontShare: rider.frontShare,
      frontHeight: height(rider, 'front') - height(now, 'front'),
      rearHeight: height(rider, 'rear') - height(now, 'rear'),
      brakingReserve: braking.frontLimit.travel - braking.frontTravel,
    },
    sound:
      !binds(rider) &&
      (!usesRider || free(rider)) &&
      (!asked('frontStaticSag', 'rearStaticSag') || free(alone)) &&
      (!asked('brakingReserve') ||
        (braking.frontStop === 'none' && ['none', 'extended'].includes(braking.rearStop))),
  }
}

/** Half as wide as a window is at most, in the unit of the aim. */
const HALF: Readonly<Record<AimId, number>> = {
  frontStaticSag: 3e-3,
  frontRiderSag: 3e-3,
  rearStaticSag: 3e-3,
  rearRiderSag: 3e-3,
  trail: 1.5e-3,
  rake: 0.003,
  frontShare: 2e-3,
  frontHeight: 3e-3,
  rearHeight: 3e-3,
  brakingReserve: 5e-3,
}

const GRIDS: Readonly<Record<MeanId, Omit<Mean, 'id' | 'work'>>> = {
  forkPreloadChange: { low: -6e-3, high: 6e-3, step: 2e-3 },
  tubeRaise: { low: -4e-3, high: 4e-3, step: 2e-3 },
  forkRate: { rates: [7500, 8500, 9500, 10500] },
  oilHeightChange: { low: -0.03, high: 0.03, step: 0.015 },
  rearPreloadChange: { low: -4e-3, high: 4e-3, step: 1e-3 },
  rearRate: { rates: [80000, 90000, 100000, 110000] },
  shockLengthChange: { low: -4e-3, high: 4e-3, step: 2e-3 },
}

const pick = <T>(all: readonly T[], count: number, next: () => number): T[] => {
  const rest = [...all]
  return Array.from({ length: count }, () => rest.splice(Math.floor(next() * rest.length), 1)[0]!)
}

/** A random bike with aims round what some change of it would read, and a small grid of four means. */
export function randomSearch(seed: number): ChangeWanted {
  const next = stream(seed)
  const { bike, cases } = buildableBike(next)
  const means = pick(MEANS, 4, next).map((id): Mean => ({
    id,
    work: 1 + Math.floor(next() * 5),
    ...GRIDS[id],
  }))
  const change: BikeChange = {}
  for (const { id, low, high, rates } of means) {
    if (next() < 0.4) continue
    change[id] = rates ? rates[Math.floor(next() * rates.length)]! : low! + (high! - low!) * next()
  }
  const ids = pick(AIMS, 2 + Math.floor(next() * 2), next)
  const { readings } = readAlone(bike, cases, change, ids)
  const aims = ids.map((id): Aim => {
    const half = HALF[id] * (0.1 + next())
    return { id, low: readings[id] - half, high: readings[id] + half }
  })
  return { bike, cases, aims, means }
}

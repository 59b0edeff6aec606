import type {
  Bike,
  Choice,
  CoilGroup,
  End,
  Gas,
  Law,
  LoadCase,
  Rear,
} from '../../src/core/index.ts'

/** A repeatable stream of numbers in 0…1 (mulberry32). */
export function stream(start: number): () => number {
  let state = start >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** An invented bike of common size, without gas, friction or top-out springs: the plain ground that a test builds on. */
export function plainBike(): Bike {
  const leg = { spring: [{ rate: 9000 }], preload: 0.015 }
  return {
    geometry: {
      wheelbase: 1.45,
      rake: (25 * Math.PI) / 180,
      pivot: { x: 0.55, z: 0.4 },
      frontRadius: 0.3,
      rearRadius: 0.31,
      forkOffset: 0.03,
      datum: { frontTravel: 0, rearTravel: 0 },
    },
    sprung: { mass: 155, x: 0.72, z: 0.58 },
    frontUnsprungMass: 17,
    rearUnsprungMass: 22,
    fork: { travel: 0.12, legs: [leg, leg] },
    rear: {
      travel: 0.13,
      spring: [{ rate: 95000 }],
      preload: 0.012,
      motionRatio: { initial: 0.45 },
    },
  }
}

/** A leg with its gas, whose spring binds past the travel of a fork in order. */
export const gassyLeg = {
  spring: [{ rate: 9000, closes: 0.17 }],
  preload: 0.015,
  gas: { tubeDiameter: 0.038, boreDiameter: 0.038, airHeight: 0.15 },
}

/** An invented bike with gas and friction in its fork, to choose springs and to ride. */
export const gassyBike: Bike = {
  geometry: { ...plainBike().geometry, pivot: { x: 0.5, z: 0.38 } },
  sprung: { mass: 155, x: 0.73, z: 0.6 },
  frontUnsprungMass: 28,
  rearUnsprungMass: 20,
  fork: { travel: 0.12, friction: 60, legs: [gassyLeg, gassyLeg] },
  rear: { travel: 0.12, spring: [{ rate: 90000 }], preload: 0.01, motionRatio: { initial: 0.435 } },
}

/** Rider of the plain bike. */
export const RIDER = { mass: 80, x: 0.6, z: 1 }

/** Gas of one leg of the plain bike. */
export const GAS: Gas = {
  tubeDiameter: 0.043,
  boreDiameter: 0.038,
  airHeight: 0.13,
  stackVolume: 56e-6,
}

/** The plain bike with gas in both legs. */
export function sealedBike(): Bike {
  const bike = plainBike()
  return {
    ...bike,
    fork: { ...bike.fork, legs: bike.fork.legs.map((leg) => ({ ...leg, gas: GAS })) },
  }
}

/** A random bike and load case: far wider than anything built, so that a search meets stops, locks, coil bind, loose springs and lifted wheels. */
export function randomCase(next: () => number): { bike: Bike; loadCase: LoadCase; settle: number } {
  const from = (low: number, high: number): number => low + (high - low) * next()
  const maybe = (share: number): boolean => next() < share
  const frontTravel = from(0.06, 0.3)
  const rearTravel = from(0.05, 0.3)
  const groups = (rate: number, closes: number): CoilGroup[] => {
    if (maybe(0.1)) return []
    if (maybe(0.5)) return [{ rate }]
    return [
      { rate: rate * from(1.2, 6), closes: closes * from(0.05, 0.8) },
      maybe(0.4)
        ? { rate: rate * from(1, 3), closes: closes * from(0.3, 1.5) }
        : { rate: rate * from(1, 3) },
    ]
  }
  const gas = (): Gas => ({
    tubeDiameter: from(0.03, 0.055),
    boreDiameter: from(0.025, 0.05),
    airHeight: from(0, 0.25),
    stackVolume: from(0, 1.2e-4),
    gaugePressure: maybe(0.2) ? from(0, 3e5) : 0,
    oilVolume: maybe(0.3) ? from(2e-4, 7e-4) : 0,
  })
  const shared = groups(from(3000, 16000), frontTravel)
  const common = maybe(0.8) ? gas() : undefined
  const leg = () => {
    const spring = maybe(0.8) ? shared : groups(from(3000, 16000), frontTravel)
    const room = spring.reduce((sum, group) => sum + (group.closes ?? Infinity), 0)
    return {
      spring,
      preload: Math.min(from(-0.01, 0.04), room / 2),
      ...(common && maybe(0.9) ? { gas: common } : {}),
    }
  }
  const ratio = from(0.3, 0.9)
  const rearSpring = maybe(0.9)
    ? [{ rate: from(20000, 180000) }]
    : groups(from(30000, 120000), rearTravel * ratio)
  const rearRoom = rearSpring.reduce((sum, group) => sum + (group.closes ?? Infinity), 0)
  const rear: Rear = {
    travel: rearTravel,
    shocks: maybe(0.3) ? 2 : 1,
    spring: rearSpring,
    preload: Math.min(from(-0.005, 0.02), rearRoom / 2),
    gasForce: from(0, 250),
    motionRatio: maybe(0.5)
      ? { initial: ratio, slope: from(0, 1.5) }
      : {
          table: [
            [0, ratio],
            [rearTravel / 3, ratio * from(1, 1.2)],
            [rearTravel, ratio * from(1.2, 1.6)],
          ],
        },
    friction: from(0, 80),
    ...(maybe(0.2) ? { topOut: { rate: from(2000, 15000), length: from(0, 0.03) } } : {}),
  }
  const bike: Bike = {
    geometry: {
      wheelbase: from(1.2, 1.8),
      rake: from(0.3, 0.65),
      pivot: { x: from(0.45, 0.65), z: from(0.3, 0.45) },
      frontRadius: from(0.26, 0.36),
      rearRadius: from(0.26, 0.36),
      forkOffset: from(0, 0.07),
      tubeRaise: maybe(0.3) ? from(-0.02, 0.02) : 0,
      rearRaise: maybe(0.3) ? from(-0.02, 0.02) : 0,
      datum: {
        frontTravel: from(0, 0.05),
        rearTravel: from(0, 0.05),
        ...(maybe(0.3) ? { frontRadius: 0.31, rearRadius: 0.32, forkOffset: 0.04 } : {}),
      },
    },
    sprung: { mass: from(70, 350), x: from(0.5, 0.9), z: from(0.4, 0.75) },
    frontUnsprungMass: from(0, 25),
    rearUnsprungMass: from(0, 35),
    fork: {
      travel: frontTravel,
      legs: maybe(0.1) ? [leg()] : [leg(), leg()],
      friction: from(0, 80),
      ...(maybe(0.3) ? { topOut: { rate: from(2000, 15000), length: from(0, 0.03) } } : {}),
    },
    rear,
  }
  const braking = maybe(0.4)
  const loadCase: LoadCase = {
    payload: maybe(0.8) ? [{ mass: from(0, 150), x: from(0.2, 0.8), z: from(0.8, 1.2) }] : [],
    deceleration: braking ? from(0, 14) : 0,
    frontBrakeShare: next(),
    lean: maybe(0.3) ? from(0, 1) : 0,
    ...(maybe(0.3)
      ? { gasState: { exponent: from(1, 1.4), from: from(0, 0.01), temperature: from(273, 340) } }
      : {}),
  }
  return { bike, loadCase, settle: Math.floor(next() * 3) - 1 }
}

/** A damper that grows evenly with speed [N·s/m]. */
export const linear = (coefficient: number): Law => ({ kind: 'linear', coefficient })

/** The front of a bike to ride over roads, its spring preloaded by 300 N, with damping [N·s/m] both ways. */
export const frontEnd = (compression: number, rebound = compression): End => ({
  sprungMass: 110,
  unsprungMass: 14,
  force: (x) => 300 + 18000 * x,
  travel: 0.12,
  tyreRate: 180000,
  stopRate: 500000,
  damper: { compression: linear(compression), rebound: linear(rebound) },
})

/** Aboard the bike with gas. */
export const gassyPayload = [{ mass: 80, x: 0.55, z: 1.05 }]

/** A choice among twenty rates for the bike with gas. */
export const gassyChoice: Choice = {
  bike: gassyBike,
  cases: {
    static: {},
    rider: { payload: gassyPayload },
    braking: { payload: gassyPayload, deceleration: 6, gasState: { exponent: 1.4, from: 0.036 } },
  },
  target: { riderSag: 0.036, staticSag: [0.015, 0.0243], reserve: 0.005 },
  rates: Array.from({ length: 20 }, (_, i) => 5000 + 500 * i),
}

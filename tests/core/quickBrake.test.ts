import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  bounceAndPitch,
  type HalfBike,
  liftBand,
  liftDeceleration,
  rampOvershoot,
  rearUnloadingOvershoot,
} from '../../src/core/index.ts'
import { plainBike, RIDER } from './bikes.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const half: HalfBike = {
  mass: 270,
  gyrationRadius: 0.5,
  toFront: 0.74,
  toRear: 0.68,
  height: 0.62,
  frontRate: 21000,
  rearRate: 19000,
  frontDamping: 0.3,
  rearDamping: 0.3,
}
/** A half-bike whose ends do not disturb each other: gyration radius² = product of both distances. */
const apart: HalfBike = { ...half, gyrationRadius: Math.sqrt(0.74 * 0.68) }

test('bounceAndPitch(…) is 5.8593 and 9.4341 rad/s for a car of 1,000 kg: Rao, Mechanical Vibrations, example 5.7 (from memory, four figures that agree)', () => {
  const { low, high } = bounceAndPitch({
    ...half,
    mass: 1000,
    gyrationRadius: 0.9,
    toFront: 1,
    toRear: 1.5,
    frontRate: 18000,
    rearRate: 22000,
  })
  near(low, 5.8593, 5e-5)
  near(high, 9.4341, 5e-5)
})

test('bounceAndPitch(…) of ends that do not disturb each other are their own frequencies', () => {
  const { low, high } = bounceAndPitch(apart)
  const front = Math.sqrt((21000 * (0.74 + 0.68)) / (270 * 0.68))
  const rear = Math.sqrt((19000 * (0.74 + 0.68)) / (270 * 0.74))
  near(low, Math.min(front, rear), 1e-9)
  near(high, Math.max(front, rear), 1e-9)
})

test('rearUnloadingOvershoot(…) without damping, ends apart, is that of one mass: rampOvershoot(…)', () => {
  const naturalFrequency = Math.sqrt((19000 * (0.74 + 0.68)) / (270 * 0.74))
  for (const rampTime of [0, 0.1, 0.2, 0.4]) {
    const undamped = { ...apart, frontDamping: 0, rearDamping: 0 }
    near(
      rearUnloadingOvershoot(undamped, { rampTime }),
      rampOvershoot({ dampingRatio: 0, naturalFrequency, rampTime }),
      1e-4, // the peak is met to within half a step of 1 ms
    )
  }
})

test('rearUnloadingOvershoot(…) of a step, ends apart, is the peak of spring and damper together, worked out in closed form', () => {
  const naturalFrequency = Math.sqrt((19000 * (0.74 + 0.68)) / (270 * 0.74))
  for (const zeta of [0.2, 0.3, 0.5]) {
    // transmitted load of a damped mass under a step: 1 − e^(−ζωt)(cos − ζ/√ sin) of the damped angle
    const root = Math.sqrt(1 - zeta * zeta)
    let most = 0
    for (let t = 0; t < 2; t += 1e-4) {
      const angle = naturalFrequency * root * t
      const fall = Math.exp(-zeta * naturalFrequency * t)
      most = Math.max(most, 1 - fall * (Math.cos(angle) - (zeta / root) * Math.sin(angle)))
    }
    near(rearUnloadingOvershoot({ ...apart, rearDamping: zeta }, { rampTime: 0 }), most - 1, 1e-4)
  }
})

test('rearUnloadingOvershoot(…) is never below 0, and vanishes for a brake put on over seconds', () => {
  fc.assert(
    fc.property(
      between(0.05, 0.9),
      between(0.05, 0.9),
      between(0.3, 0.7),
      (f, r, gyrationRadius) => {
        const it = { ...half, frontDamping: f, rearDamping: r, gyrationRadius }
        const quick = rearUnloadingOvershoot(it, { rampTime: 0.1, brakeAlongFork: 0.46 })
        const slow = rearUnloadingOvershoot(it, { rampTime: 3, brakeAlongFork: 0.46 })
        expect(quick).toBeGreaterThanOrEqual(0)
        expect(slow).toBeLessThan(0.15)
        expect(slow).toBeLessThanOrEqual(quick + 1e-6)
      },
    ),
    { numRuns: 15 },
  )
})

test('rearUnloadingOvershoot(…) does not change with the size of the machine: mass and rates grown together', () => {
  fc.assert(
    fc.property(between(0.3, 3), (size) => {
      const grown = {
        ...half,
        mass: half.mass * size,
        frontRate: half.frontRate * size,
        rearRate: half.rearRate * size,
      }
      const timing = { rampTime: 0.15, brakeAlongFork: 0.4 }
      same(rearUnloadingOvershoot(grown, timing), rearUnloadingOvershoot(half, timing), 1e-9)
    }),
    { numRuns: 10 },
  )
})

const bike = plainBike()
const ridden = { payload: [RIDER] }
const spread = {
  frontDamping: [0.25, 0.45],
  rearDamping: [0.25, 0.45],
  rampTimes: [0.15, 0.3],
  gyrationRadii: [0.45, 0.6],
}

test('liftBand(…) reaches from a quick brake, less than the steady lift, up to the steady lift', () => {
  const { low, high, steady } = liftBand(bike, ridden, spread)!
  same(steady, liftDeceleration(bike, ridden)!)
  expect(high).toBe(steady)
  expect(low).toBeLessThan(0.95 * steady)
  expect(low).toBeGreaterThan(0.5 * steady)
})

test('liftBand(…) grows with what is left open, and a slope takes its lower end down', () => {
  const narrow = liftBand(bike, ridden, { ...spread, frontDamping: [0.35], rampTimes: [0.3] })!
  const wide = liftBand(bike, ridden, spread)!
  expect(wide.low).toBeLessThanOrEqual(narrow.low)
  const down = liftBand(bike, ridden, { ...spread, slopes: [0, 0.08] })!
  expect(down.low).toBeLessThan(wide.low)
  expect(down.high).toBe(wide.high)
  expect(down.steady).toBe(wide.steady)
})

test('liftBand(…) is null where nothing lifts the wheel, and refuses what makes no sense', () => {
  const low = {
    ...bike,
    sprung: { ...bike.sprung, x: 0.4, z: 0.3 },
    geometry: { ...bike.geometry, wheelbase: 1.9 },
  }
  expect(liftBand(low, {}, spread)).toBeNull()
  expectRefusal(() => liftBand(bike, ridden, { ...spread, rampTimes: [] }), 'rampTimes')
  expectRefusal(() => rearUnloadingOvershoot({ ...half, mass: 0 }, { rampTime: 0.1 }), 'mass')
  expectRefusal(() => rearUnloadingOvershoot(half, { rampTime: -1 }), 'rampTime')
  expectRefusal(
    () => rearUnloadingOvershoot({ ...half, rearDamping: -1 }, { rampTime: 0.1 }),
    'rearDamping',
  )
  expectRefusal(() => bounceAndPitch({ ...half, rearRate: 0 }), 'rearRate')
})

test('rearUnloadingOvershoot(…) takes the brake along the fork as the fork’s own balance has it: a second stepping, along the axis', () => {
  // N cos ε + F sin ε = k x + c x′ with x = sunk ÷ cos ε, stepped by Euler and Cromer a hundred times as finely
  const rake = 0.43
  const [cos, sin] = [Math.cos(rake), Math.sin(rake)]
  for (const gyrationRadius of [0.5, 0.85]) {
    const it = { ...half, gyrationRadius }
    const { mass, toFront: b, toRear: c, height } = it
    const rate = it.frontRate * cos * cos
    const damper = (k: number, zeta: number, far: number): number =>
      2 * zeta * Math.sqrt((k * mass * far) / (b + c))
    const alongDamper = damper(it.frontRate, it.frontDamping, c) * cos * cos
    const rearDamper = damper(it.rearRate, it.rearDamping, b)
    let [z, pitch, rise, turn, most] = [0, 0, 0, 0, 0]
    for (let time = 0; time < 2; time += 1e-5) {
      const brake = Math.min(1, time / 0.15)
      const [x, speed] = [(b * pitch - z) / cos, (b * turn - rise) / cos]
      const front = (rate * x + alongDamper * speed - brake * sin) / cos
      const rear = it.rearRate * (-z - c * pitch) + rearDamper * (-rise - c * turn)
      most = Math.max(most, -rear)
      rise += (1e-5 * (front + rear)) / mass
      turn += (1e-5 * (height * brake - b * front + c * rear)) / (mass * gyrationRadius ** 2)
      z += 1e-5 * rise
      pitch += 1e-5 * turn
    }
    near(
      rearUnloadingOvershoot(it, { rampTime: 0.15, brakeAlongFork: Math.tan(rake) }),
      (most * (b + c)) / height - 1,
      2e-4, // a first-order step of 10 µs against a swing of a tenth of a second
    )
  }
})

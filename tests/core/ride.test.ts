import { createRequire } from 'node:module'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { STANDARD_GRAVITY } from '../../src/core/constants.ts'
import { damperForce, type Law } from '../../src/core/damper.ts'
import { dampedFree, transmissibility } from '../../src/core/damping.ts'
import { motionOf } from '../../src/core/end.ts'
import { stepFactor, stepper } from '../../src/core/integrate.ts'
import { type End, type Profile, rideOver } from '../../src/core/ride.ts'
import { roadOf } from '../../src/core/road.ts'
import { frontEnd, linear } from './bikes.ts'
import { expectRefusal, expectWithin, rounding } from './tolerance.ts'

// odex 2 holds TypeScript sources that a strict check would read too, so it comes in untyped.
interface Odex {
  absoluteTolerance: number
  relativeTolerance: number
  maxSteps: number
  maxStepSize: number
  solve(
    f: (t: number, y: number[]) => number[],
    t0: number,
    y0: number[],
    t1: number,
  ): { y: number[] }
}
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Odex }

const digressive: Law = { kind: 'digressive', knee: { velocity: 0.1, force: 200 }, after: 600 }
const end = frontEnd(1100)
const step: Profile = { kind: 'step', height: 0.02, length: 0, speed: 10 }
const bump: Profile = { kind: 'bump', height: 0.05, length: 0.5, speed: 15 }
const waves: Profile = { kind: 'waves', height: 0.01, length: 5, speed: 10 }
const last = (values: number[]): number => values.at(-1) ?? NaN
const sprungWeight = 110 * STANDARD_GRAVITY

/** The state at a time by odex, with the equations written out anew and the road's joins kept apart. */
function byOdex(profile: Profile, what: End, time: number): number[] {
  const road = roadOf(profile)
  const rest = (what.sprungMass * STANDARD_GRAVITY - 300) / 18000
  const weight = (what.sprungMass + what.unsprungMass) * STANDARD_GRAVITY
  const f = (
    t: number,
    [body = NaN, bodySpeed = NaN, wheel = NaN, wheelSpeed = NaN]: number[],
  ): number[] => {
    const x = rest + wheel - body
    const stop = what.stopRate * (Math.min(0, x) + Math.max(0, x - what.travel))
    const push =
      what.force(Math.min(Math.max(x, 0), what.travel)) +
      stop +
      damperForce(what.damper, wheelSpeed - bodySpeed)
    const tyre = Math.max(0, weight + what.tyreRate * (road.height(t) - wheel))
    return [
      bodySpeed,
      push / what.sprungMass - STANDARD_GRAVITY,
      wheelSpeed,
      (tyre - push) / what.unsprungMass - STANDARD_GRAVITY,
    ]
  }
  const solver = new Solver(4)
  solver.absoluteTolerance = 1e-11
  solver.relativeTolerance = 1e-11
  solver.maxSteps = 200000
  let [y, t] = [[0, 0, 0, 0], 0]
  // in short pieces, so that kinks cost it little
  const pieces = [
    ...Array.from({ length: 500 }, (_, i) => (time * (i + 1)) / 500),
    ...road.changes.filter((change) => change < time),
  ].sort((a, b) => a - b)
  for (const next of pieces) {
    y = solver.solve(f, t, y, next).y
    t = next
  }
  return y
}

describe('rideOver', () => {
  test('rideOver starts at rest under gravity: travel carries the sprung weight, the tyre carries all', () => {
    const ride = rideOver(bump, end, { duration: 1 })
    expect([ride.time[0], ride.body[0], ride.wheel[0], ride.road[0]]).toEqual([0, 0, 0, 0])
    expectWithin(ride.travel[0] ?? NaN, (sprungWeight - 300) / 18000, rounding(1))
    expectWithin(ride.tyreForce[0] ?? NaN, 124 * STANDARD_GRAVITY, rounding(1300))
  })

  test('rideOver samples each 2.5 ms, 400 to 4,000 even intervals, all arrays alike, both ends included', () => {
    for (const [duration, intervals] of [
      [3, 1200],
      [0.5, 400],
      [1.0025, 401],
      [30, 4000],
    ] as const) {
      // prettier-ignore
      const { events: _events, ...arrays } = rideOver(waves, end, { duration })
      for (const values of Object.values(arrays)) expect(values).toHaveLength(intervals + 1)
      expect(last(arrays.time)).toBe(duration)
      arrays.time.forEach((time, i) =>
        expectWithin(time, (duration * i) / intervals, rounding(duration)),
      )
    }
  })

  test('rideOver on a flat road stays at rest', () => {
    const flats: Profile[] = [
      { ...waves, height: 0 },
      { ...bump, speed: 0 },
      { ...step, speed: 0 },
    ]
    for (const profile of flats) {
      const ride = rideOver(
        profile,
        { ...end, damper: { compression: digressive, rebound: linear(900) } },
        { duration: 2 },
      )
      expect(Math.max(...ride.body.map(Math.abs), ...ride.wheel.map(Math.abs))).toBeLessThan(1e-12) // rounding of the rest travel
      expect(ride.events).toEqual([])
    }
  })

  test('rideOver over a step settles one height higher, with the travel and load of before', () => {
    const ride = rideOver(step, end, { duration: 6, relativeTolerance: 1e-9 })
    expectWithin(last(ride.body), 0.02, 1e-8) // e^(−ζωt) leaves less
    expectWithin(last(ride.travel), ride.travel[0] ?? NaN, 1e-8)
    expectWithin(last(ride.tyreForce), 124 * STANDARD_GRAVITY, 1e-3)
    expect(ride.road.every((height) => height === 0.02)).toBe(true)
  })

  test('rideOver on a hard tyre and a light wheel follows dampedFree after a step', () => {
    // the wheel follows the road at once, and the body is a mass on a spring and a damper whose base was moved: with half the critical damping
    // the base's jump also kicks the body, by damping × height ÷ mass
    const quick: End = {
      ...end,
      unsprungMass: 1e-3,
      tyreRate: 1e9,
      travel: 1,
      force: (x) => 18000 * x,
      damper: { compression: linear(1400), rebound: linear(1400) },
    }
    const ride = rideOver({ ...step, height: 1e-3, length: 0 }, quick, {
      duration: 0.6,
      relativeTolerance: 1e-8,
    })
    const free = {
      mass: 110,
      stiffness: 18000,
      damping: 1400,
      displacement: -1e-3,
      velocity: (1400 * 1e-3) / 110,
    }
    ride.time.forEach((time, i) => {
      // tyre 55,000 times as stiff as the spring; the wheel takes a millisecond to settle
      expectWithin((ride.body[i] ?? NaN) - 1e-3, dampedFree(free, time), 5e-6)
    })
  })

  test('rideOver over long waves passes on what transmissibility says', () => {
    const ratio = 1.7
    const natural = Math.sqrt(18000 / 110)
    const quick: End = {
      ...end,
      unsprungMass: 0.01,
      tyreRate: 1e8,
      travel: 1,
      force: (x) => 18000 * x,
      damper: { compression: linear(1100), rebound: linear(1100) },
    }
    const ride = rideOver(
      { kind: 'waves', height: 0.004, length: 1, speed: (ratio * natural) / (2 * Math.PI) },
      quick,
      {
        duration: 8,
        relativeTolerance: 1e-7,
      },
    )
    const late = ride.body.filter((_, i) => (ride.time[i] ?? 0) > 5)
    const amplitude = (Math.max(...late) - Math.min(...late)) / 2
    const zeta = 1100 / (2 * Math.sqrt(18000 * 110))
    expectWithin(
      amplitude / 0.002,
      transmissibility({ frequencyRatio: ratio, dampingRatio: zeta }),
      2e-3,
    ) // peaks lie between samples; the tyre gives a little
  })

  test('rideOver agrees with odex over step, bump and waves, with stops, flight and laws that change', () => {
    const laws: [string, End['damper']][] = [
      ['linear', end.damper],
      ['digressive', { compression: linear(700), rebound: digressive }],
      [
        'square',
        {
          compression: { kind: 'square', coefficient: 900 },
          rebound: { kind: 'square', coefficient: 2500 },
        },
      ],
    ]
    for (const [name, damper] of laws) {
      for (const profile of [
        { ...step, height: 0.06 },
        bump,
        { ...waves, height: 0.06 },
        { ...bump, height: -0.05 },
        { ...step, length: 0.4 },
      ]) {
        for (const duration of [0.15, 0.6]) {
          const ride = rideOver(profile, { ...end, damper }, { duration, relativeTolerance: 1e-9 })
          const [body = NaN, , wheel = NaN] = byOdex(profile, { ...end, damper }, duration)
          // both keep 1e-9 of 10 mm a step or better; kinks let odex down to about 1e-8
          expectWithin(last(ride.body), body, 1e-7)
          expectWithin(last(ride.wheel), wheel, 1e-7)
          expect(name).toBeTruthy()
        }
      }
    }
  })

  test('rideOver without damping keeps the energy of both masses, spring and tyre', () => {
    const free: End = { ...end, damper: { compression: linear(0), rebound: linear(0) } }
    const duration = 2
    const ride = rideOver({ ...step, height: 0.004 }, free, { duration, relativeTolerance: 1e-10 })
    const dt = duration / 800
    const rate = (values: number[], i: number): number => {
      const at = (k: number): number => values[i + k] ?? NaN
      // central difference of order 8
      return (
        ((4 / 5) * (at(1) - at(-1)) -
          (1 / 5) * (at(2) - at(-2)) +
          (4 / 105) * (at(3) - at(-3)) -
          (1 / 280) * (at(4) - at(-4))) /
        dt
      )
    }
    const energy = (i: number): number => {
      const [body = NaN, wheel = NaN, x = NaN] = [ride.body[i], ride.wheel[i], ride.travel[i]]
      const moving = 55 * rate(ride.body, i) ** 2 + 7 * rate(ride.wheel, i) ** 2
      const pressed = (ride.tyreForce[i] ?? NaN) ** 2 / (2 * end.tyreRate)
      return (
        moving + 300 * x + 9000 * x * x + pressed + STANDARD_GRAVITY * (110 * body + 14 * wheel)
      )
    }
    const start = energy(10)
    // about 46 J, 1.4 J of it in motion; the differences of order 8 at 0.3 rad a sample leave 1e-6 of that
    for (let i = 10; i < 790; i += 13) expectWithin(energy(i), start, 5e-6)
    expect(ride.events).toEqual([])
  })

  test('rideOver is linear while nothing leaves the road: twice the bump, twice the motion', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.003, noNaN: true }), (height) => {
        const one = rideOver({ ...bump, height }, end, { duration: 0.5, relativeTolerance: 1e-9 })
        const two = rideOver({ ...bump, height: 2 * height }, end, {
          duration: 0.5,
          relativeTolerance: 1e-9,
        })
        expect(two.events).toEqual([])
        one.body.forEach((body, i) => expectWithin(two.body[i] ?? NaN, 2 * body, 3e-9)) // 1e-11 m a step and some 200 steps, in both
      }),
      { numRuns: 10 },
    )
  })

  test('rideOver does not depend on the tolerance beyond it', () => {
    const what = { ...end, damper: { compression: linear(700), rebound: digressive } }
    const fine = rideOver(bump, what, { duration: 1, relativeTolerance: 1e-11 })
    for (const relativeTolerance of [1e-4, 1e-6, 1e-8]) {
      const ride = rideOver(bump, what, { duration: 1, relativeTolerance })
      ride.body.forEach((body, i) =>
        expectWithin(body, fine.body[i] ?? NaN, 5 * relativeTolerance * 0.01 + 1e-11),
      ) // of 10 mm a step; errors die out
    }
    expect(rideOver(bump, what, { duration: 1 })).toEqual(
      rideOver(bump, what, { duration: 1, relativeTolerance: 1e-6 }),
    )
  })

  test('rideOver tells when the tyre leaves the road and lands, and the tyre force is 0 between', () => {
    const ride = rideOver({ ...bump, height: 0.08 }, end, { duration: 1, relativeTolerance: 1e-9 })
    const leaves = ride.events.find(({ kind }) => kind === 'leavesRoad')
    const lands = ride.events.find(({ kind }) => kind === 'lands')
    if (!leaves || !lands) throw new Error('the bump was meant to throw the wheel')
    expect(lands.time).toBeGreaterThan(leaves.time)
    ride.time.forEach((time, i) => {
      if (time > leaves.time && time < lands.time) expect(ride.tyreForce[i]).toBe(0)
      if (time < leaves.time) expect(ride.tyreForce[i]).toBeGreaterThan(0)
    })
    const flight = ride.events
      .filter(({ kind }) => kind === 'leavesRoad' || kind === 'lands')
      .map(({ kind }) => kind)
    flight.forEach((kind, i) => expect(kind).toBe(i % 2 ? 'lands' : 'leavesRoad'))
  })

  test('rideOver tells when an end bottoms and tops out, in order, and goes past its travel by what the stop gives', () => {
    const ride = rideOver({ ...bump, height: 0.12, length: 1 }, end, {
      duration: 1,
      relativeTolerance: 1e-9,
    })
    const stops = ride.events
      .filter(({ kind }) => /Stop|bottoms|topsOut/.test(kind))
      .map(({ kind }) => kind)
    expect(stops[0]).toBe('bottoms')
    expect(stops[1]).toBe('leavesBottomStop')
    expect(stops).toContain('topsOut')
    expect(Math.max(...ride.travel)).toBeGreaterThan(end.travel)
    expect(Math.min(...ride.travel)).toBeLessThan(0)
    ride.events
      .slice(1)
      .forEach(({ time }, i) => expect(time).toBeGreaterThanOrEqual(ride.events[i]?.time ?? NaN))
  })

  test('rideOver goes on to the end, its events in turn and its figures finite, for any road, spring, stop and damper', () => {
    const some = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    const laws = fc.oneof(
      fc.record({
        kind: fc.constantFrom('linear' as const, 'square' as const),
        coefficient: some(0, 3000),
      }),
      fc.record({
        kind: fc.constant('digressive' as const),
        knee: fc.record({ velocity: some(0.02, 0.3), force: some(0, 500) }),
        after: some(0, 2000),
      }),
    )
    const ends = fc.record({
      sprungMass: some(20, 250),
      unsprungMass: some(3, 40),
      travel: some(0.03, 0.2),
      tyreRate: some(5e4, 4e5),
      stopRate: some(5e4, 2e6),
      damper: fc.record({ compression: laws, rebound: laws }),
    })
    const kinds = fc.constantFrom('step' as const, 'bump' as const, 'waves' as const)
    const profiles = fc.record({
      kind: kinds,
      height: some(-0.1, 0.12),
      length: some(0.3, 5),
      speed: some(1, 40),
    })
    const pairs = [
      /bottoms|leavesBottomStop/,
      /topsOut|leavesTopStop/,
      /^compression|^rebound/,
      /lands|leavesRoad/,
    ]
    fc.assert(
      fc.property(
        ends,
        profiles,
        some(3000, 40000),
        some(0, 1500),
        fc.constantFrom(1e-3, 1e-6, 1e-8),
        (what, profile, rate, preload, relativeTolerance) => {
          const ride = rideOver(
            profile,
            { ...what, force: (x) => preload + rate * x },
            { duration: 1, relativeTolerance },
          )
          for (const values of [ride.body, ride.wheel, ride.travel, ride.tyreForce])
            expect(values.every(Number.isFinite)).toBe(true)
          for (const pair of pairs) {
            const kinds = ride.events.map(({ kind }) => kind).filter((kind) => pair.test(kind))
            kinds.slice(1).forEach((kind, i) => expect(kind).not.toBe(kinds[i]))
          }
        },
      ),
      { numRuns: 60 },
    )
  })

  test('rideOver places the turn of the damper where the travel turns', () => {
    const ride = rideOver(
      waves,
      { ...end, damper: { compression: linear(500), rebound: linear(1500) } },
      { duration: 3, relativeTolerance: 1e-9 },
    )
    const turns = ride.events.filter(({ kind }) => kind === 'compression' || kind === 'rebound')
    expect(turns.length).toBeGreaterThan(8)
    for (const { time, kind } of turns) {
      const i = Math.round(time / 0.0025)
      const window = ride.travel.slice(Math.max(0, i - 2), i + 3)
      if (window.length < 5 || i < 4) continue
      const extreme = kind === 'rebound' ? Math.max(...window) : Math.min(...window)
      expect([window[1], window[2], window[3]]).toContain(extreme)
    }
  })

  test('rideOver names the knee both ways', () => {
    const ride = rideOver(
      bump,
      { ...end, damper: { compression: digressive, rebound: digressive } },
      { duration: 1 },
    )
    const knees = ride.events.filter(({ kind }) => kind === 'aboveKnee' || kind === 'belowKnee')
    expect(knees[0]?.kind).toBe('aboveKnee')
    knees.forEach(({ kind }, i) => expect(kind).toBe(i % 2 ? 'belowKnee' : 'aboveKnee'))
  })

  test('rideOver over a sharp drop leaves the road at time 0', () => {
    const ride = rideOver({ ...step, height: -0.05 }, end, { duration: 1 })
    expect(ride.events[0]).toEqual({ time: 0, kind: 'leavesRoad' })
    expect(ride.tyreForce[0]).toBe(0)
  })

  test('rideOver starts on a stop where the spring is too strong or too weak, and stays finite', () => {
    const stiff = rideOver(
      { ...waves, height: 0 },
      { ...end, force: (x) => 2000 + 18000 * x },
      { duration: 0.5 },
    )
    expectWithin(stiff.travel[0] ?? NaN, (sprungWeight - 2000) / 500000, 1e-12)
    const weak = rideOver(
      { ...waves, height: 0 },
      { ...end, force: (x) => 1000 * x },
      { duration: 0.5 },
    )
    expectWithin(weak.travel[0] ?? NaN, 0.12 + (sprungWeight - 120) / 500000, 1e-12)
    for (const ride of [stiff, weak])
      expect(Math.max(...ride.body.map(Math.abs))).toBeLessThan(1e-8) // 1e-6 of 10 mm a step
  })

  test('rideOver asks the force law for travels from 0 to full alone', () => {
    let [least, most] = [Infinity, -Infinity]
    const force = (x: number): number => {
      least = Math.min(least, x)
      most = Math.max(most, x)
      return 300 + 18000 * x
    }
    rideOver({ ...bump, height: 0.15, length: 1 }, { ...end, force }, { duration: 1 })
    expect(least).toBe(0)
    expect(most).toBe(0.12)
  })

  test('rideOver refuses what makes no end, no road and no duration', () => {
    const options = { duration: 1 }
    for (const name of ['sprungMass', 'unsprungMass', 'travel', 'tyreRate', 'stopRate'] as const) {
      expectRefusal(() => rideOver(bump, { ...end, [name]: 0 }, options), `end.${name}`)
      expectRefusal(() => rideOver(bump, { ...end, [name]: NaN }, options), `end.${name}`)
    }
    expectRefusal(() => rideOver(bump, { ...end, force: () => NaN }, options), 'end.force')
    expectRefusal(
      () => rideOver(bump, { ...end, force: 3 as unknown as End['force'] }, options),
      'end.force',
    )
    expectRefusal(
      () =>
        rideOver(
          bump,
          { ...end, damper: { compression: linear(-1), rebound: linear(1) } },
          options,
        ),
      'end.damper.compression.coefficient',
    )
    expectRefusal(() => rideOver({ ...bump, length: 0 }, end, options), 'profile.length')
    expectRefusal(() => rideOver({ ...waves, length: 0 }, end, options), 'profile.length')
    expectRefusal(() => rideOver({ ...bump, speed: -1 }, end, options), 'profile.speed')
    expectRefusal(() => rideOver({ ...bump, height: NaN }, end, options), 'profile.height')
    expectRefusal(
      () => rideOver({ ...bump, kind: 'hole' as Profile['kind'] }, end, options),
      'profile.kind',
    )
    expectRefusal(() => rideOver(bump, end, { duration: 0 }), 'duration')
    expectRefusal(
      () => rideOver(bump, end, { duration: 1, relativeTolerance: 0 }),
      'relativeTolerance',
    )
  })
})

describe('roadOf', () => {
  test('roadOf rises once, humps once or humps on, by its height, from a level start', () => {
    const ramp = roadOf({ ...step, length: 1 })
    expect([0, 0.1, 5].map(ramp.height)).toEqual([0, 0.02, 0.02])
    expectWithin(ramp.height(0.05), 0.01, rounding(1))
    const hump = roadOf({ ...bump, length: 1.5 })
    expectWithin(hump.height(0.05), 0.05, rounding(1))
    expect([0, 0.1, 5].map(hump.height)).toEqual([0, 0, 0])
    const rows = roadOf(waves)
    expectWithin(rows.height(10.25), 0.01, 1e-12) // sine of 41 half turns
    expectWithin(rows.height(10.5), 0, 1e-12)
    expect(roadOf(step).height(0)).toBe(0.02)
  })
})

describe('motionOf', () => {
  test('motionOf without damping keeps its energy through a hundred flights of the wheel', () => {
    const profile: Profile = { ...step, height: 0.01 }
    const motion = motionOf(
      { ...end, damper: { compression: linear(0), rebound: linear(0) } },
      roadOf(profile),
    )
    const energy = (y: Float64Array): number => {
      const [body = NaN, bodySpeed = NaN, wheel = NaN, wheelSpeed = NaN] = y
      const x = motion.restTravel + wheel - body
      const pressed = motion.tyreForce(0, y) ** 2 / (2 * end.tyreRate)
      return (
        55 * bodySpeed ** 2 +
        7 * wheelSpeed ** 2 +
        300 * x +
        9000 * x * x +
        pressed +
        STANDARD_GRAVITY * (110 * body + 14 * wheel)
      )
    }
    const solver = stepper(motion.slopes, 0, [0, 0, 0, 0], [0.01, 0.1, 0.01, 0.1], 1e-10)
    const start = energy(solver.y)
    let [t, wish] = [0, 1e-4]
    while (t < 5) {
      const error = solver.attempt(t, wish)
      if (error <= 1) {
        t += wish
        solver.accept()
      }
      wish *= stepFactor(error)
    }
    expectWithin(energy(solver.y), start, 2e-6) // of 55 J: some 10,000 steps of 1e-10
  })

  test('motionOf is in balance at rest', () => {
    const motion = motionOf(end, roadOf({ ...waves, height: 0 }))
    const slope = new Float64Array(4)
    motion.slopes(0, new Float64Array(4), slope)
    slope.forEach((value) => expectWithin(value, 0, 1e-12)) // m/s², rounding of the rest travel times rate ÷ mass
  })
})

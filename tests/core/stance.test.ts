import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Bike,
  DomainError,
  forkForce,
  type LoadCase,
  pose,
  rearWheelForce,
  solveStance,
  STANDARD_GRAVITY,
  type Stance,
} from '../../src/core/index.ts'
import { GAS, plainBike, randomCase, RIDER, sealedBike, stream } from './bikes.ts'
import { near, same } from './near.ts'
import { leftOver } from './stanceBalance.ts'

const bike = plainBike()
const ridden: LoadCase = { payload: [RIDER] }
const seeds = fc.integer({ min: 0, max: 2 ** 31 })

const weight = (of: Bike, { payload = [] }: LoadCase): number =>
  (of.sprung.mass +
    of.frontUnsprungMass +
    of.rearUnsprungMass +
    payload.reduce((sum, { mass }) => sum + mass, 0)) *
  STANDARD_GRAVITY

/** A random bike that makes sense, or null. */
function solved(
  seed: number,
): { bike: Bike; loadCase: LoadCase; settle: number; stance: Stance } | null {
  const it = randomCase(stream(seed))
  try {
    return { ...it, stance: solveStance(it.bike, it.loadCase, { settle: it.settle }) }
  } catch (error) {
    expect(error).toBeInstanceOf(DomainError)
    return null
  }
}

const withFork = (change: object, of: Bike = bike): Bike => ({
  ...of,
  fork: { ...of.fork, ...change },
})
const withRear = (change: object, of: Bike = bike): Bike => ({
  ...of,
  rear: { ...of.rear, ...change },
})

describe('the balance', () => {
  test('solveStance(…) leaves at most 1e-6 N over, on 400 random bikes, stops included', () => {
    const next = stream(1)
    let refused = 0
    for (let i = 0; i < 400; i++) {
      const it = randomCase(next)
      try {
        const over = leftOver(
          it.bike,
          it.loadCase,
          it.settle,
          solveStance(it.bike, it.loadCase, { settle: it.settle }),
        )
        near(over.front, 0, 1e-6)
        near(over.rear, 0, 1e-6)
      } catch (error) {
        if (!(error instanceof DomainError)) throw error
        refused++
      }
    }
    expect(refused).toBeLessThan(10) // fewer than one random bike in forty has no room for gas
  })

  test('solveStance(…) keeps each travel within 0…limit, its stop forces one-sided, and every figure finite', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const it = solved(seed)
        if (!it) return
        const { stance } = it
        for (const [travel, limit, stop, force] of [
          [stance.frontTravel, stance.frontLimit, stance.frontStop, stance.frontStopForce],
          [stance.rearTravel, stance.rearLimit, stance.rearStop, stance.rearStopForce],
        ] as const) {
          expect(travel).toBeGreaterThanOrEqual(0)
          expect(travel).toBeLessThanOrEqual(limit.travel)
          if (stop === 'none') expect(force).toBe(0)
          else if (stop === 'extended') expect([travel, force < 0]).toEqual([0, true])
          else expect([travel, force > 0, stop]).toEqual([limit.travel, true, limit.cause])
        }
        for (const value of Object.values(stance))
          if (typeof value === 'number') expect(value).toSatisfy(Number.isFinite)
      }),
    )
  })

  test('solveStance(…) shares out the whole weight: front and rear load add up to M g ÷ cos lean', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const it = solved(seed)
        if (!it) return
        const { stance, loadCase } = it
        same(
          stance.frontLoad + stance.rearLoad,
          weight(it.bike, loadCase) / Math.cos(loadCase.lean ?? 0),
        )
        near(stance.frontShare, stance.frontLoad / (stance.frontLoad + stance.rearLoad), 1e-12)
      }),
    )
  })

  test('solveStance(…) returns the pose and the spring forces at its travels', () => {
    const stance = solveStance(sealedBike(), ridden)
    const there = pose(bike.geometry, stance.frontTravel, stance.rearTravel)
    for (const field of ['pitch', 'rake', 'trail', 'normalTrail', 'wheelbase'] as const)
      same(stance[field], there[field])
    expect(stance.toGround({ x: 0.5, z: 0.5 })).toEqual(there.toGround({ x: 0.5, z: 0.5 }))
    same(stance.forkForce, forkForce(sealedBike().fork, stance.frontTravel))
    same(stance.rearForce, rearWheelForce(bike.rear, stance.rearTravel))
  })

  test('solveStance(…) finds the centre of gravity that its loads and deceleration imply', () => {
    const stance = solveStance(bike, { ...ridden, deceleration: 4 })
    const mass = weight(bike, ridden) / STANDARD_GRAVITY
    const { x, z } = stance.centreOfGravity
    same(stance.frontLoad, (mass * (STANDARD_GRAVITY * x + 4 * z)) / stance.wheelbase)
  })
})

describe('what a change does', () => {
  test('solveStance(…) moves the fork by just the preload added, on a linear fork without gas between the stops', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.01, max: 0.01, noNaN: true }), (extra) => {
        const before = solveStance(bike, ridden)
        // Raise the tubes by the preload, so that the front stays where it was: then the load does too.
        const legs = bike.fork.legs.map((leg) => ({ ...leg, preload: leg.preload + extra }))
        const after = solveStance(
          { ...withFork({ legs }), geometry: { ...bike.geometry, tubeRaise: extra } },
          ridden,
        )
        near(after.frontTravel, before.frontTravel - extra, 1e-12)
        // Tubes up and preload in cancel: the same geometry at the same front height.
        near(after.trail, before.trail, 1e-12)
        near(after.pitch, before.pitch, 1e-12)
      }),
    )
  })

  test('solveStance(…) with fitted parts named equal to the quoted ones changes nothing', () => {
    const { frontRadius, rearRadius, forkOffset, datum } = bike.geometry
    const named = {
      ...bike,
      geometry: {
        ...bike.geometry,
        tubeRaise: 0,
        rearRaise: 0,
        datum: { ...datum, frontRadius, rearRadius, forkOffset },
      },
    }
    const plain = ({ toGround: _, ...rest }: Stance) => rest
    expect(plain(solveStance(named, ridden))).toEqual(plain(solveStance(bike, ridden)))
  })

  test('solveStance(…) sits deeper at both ends with more mass at the same place', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), (extra) => {
        const [before, after] = [ridden, { payload: [RIDER, { ...RIDER, mass: extra }] }].map(
          (loadCase) => solveStance(bike, loadCase),
        )
        expect(after!.frontTravel).toBeGreaterThan(before!.frontTravel)
        expect(after!.rearTravel).toBeGreaterThan(before!.rearTravel)
      }),
    )
  })

  test('solveStance(…) does not depend on the order of legs or payload', () => {
    const legs = [
      { spring: [{ rate: 18000 }], preload: 0.01 },
      { spring: [], preload: 0, gas: GAS },
    ]
    const pillion = { mass: 60, x: 0.3, z: 1.05 }
    const one = solveStance(withFork({ legs }), { payload: [RIDER, pillion] })
    const other = solveStance(withFork({ legs: [...legs].reverse() }), {
      payload: [pillion, RIDER],
    })
    near(other.frontTravel, one.frontTravel, 1e-12)
    near(other.rearTravel, one.rearTravel, 1e-12)
  })

  test('solveStance(…) keeps its travels when everything with force in its dimension is scaled alike', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (times) => {
        const scaled: Bike = {
          ...bike,
          sprung: { ...bike.sprung, mass: times * bike.sprung.mass },
          frontUnsprungMass: times * bike.frontUnsprungMass,
          rearUnsprungMass: times * bike.rearUnsprungMass,
          fork: {
            ...bike.fork,
            friction: times * 40,
            legs: bike.fork.legs.map((leg) => ({
              ...leg,
              spring: [{ rate: times * 9000 }],
              gas: { ...GAS, closed: { pressure: times * 101325 } },
            })),
            topOut: { rate: times * 4000, length: 0.02 },
          },
          rear: { ...bike.rear, spring: [{ rate: times * 95000 }], gasForce: times * 185 },
        }
        const base: Bike = {
          ...bike,
          fork: {
            ...bike.fork,
            friction: 40,
            topOut: { rate: 4000, length: 0.02 },
            legs: bike.fork.legs.map((leg) => ({ ...leg, gas: GAS })),
          },
          rear: { ...bike.rear, gasForce: 185 },
        }
        const loadCase = {
          payload: [RIDER],
          deceleration: 3,
          gasState: { exponent: 1.3, from: 0.02 },
        }
        const [one, other] = [
          solveStance(base, loadCase, { settle: 1 }),
          solveStance(
            scaled,
            { ...loadCase, payload: [{ ...RIDER, mass: times * RIDER.mass }] },
            { settle: 1 },
          ),
        ]
        near(other.frontTravel, one.frontTravel, 1e-10)
        near(other.rearTravel, one.rearTravel, 1e-10)
        same(other.frontLoad, times * one.frontLoad, 1e-10)
      }),
    )
  })

  test('solveStance(…) sits deeper by friction ÷ rate when it rises out of compression, higher when it sinks', () => {
    const rough = withFork({ friction: 60 })
    const [down, none, up] = [1, 0, -1].map(
      (settle) => solveStance(rough, ridden, { settle }).frontTravel,
    )
    // Load shifts a little with the geometry, so the band is near 2·60/18000, 6.7 mm, and not that exactly.
    near(down! - up!, 0.0067, 0.0004)
    expect(up).toBeLessThan(none!)
    expect(solveStance(rough, ridden).frontTravel).toBe(none)
    expect(solveStance(bike, ridden, { settle: 1 }).frontTravel).toBe(
      solveStance(bike, ridden).frontTravel,
    )
  })

  test('solveStance(…) with lean loads the springs by 1/cos lean, either way, and with none changes nothing', () => {
    const lean = (40 * Math.PI) / 180
    const leant = solveStance(bike, { ...ridden, lean })
    same(leant.frontLoad + leant.rearLoad, weight(bike, ridden) / Math.cos(lean))
    expect(leant.frontTravel).toBe(solveStance(bike, { ...ridden, lean: -lean }).frontTravel)
    expect(solveStance(bike, { ...ridden, lean: 0 }).frontTravel).toBe(
      solveStance(bike, ridden).frontTravel,
    )
  })

  test('solveStance(…) slightly loads the front when the tubes go up 10 mm: less than 1 kg in 280', () => {
    const up = { ...bike, geometry: { ...bike.geometry, tubeRaise: 0.01 } }
    const gained =
      (solveStance(up, ridden).frontLoad - solveStance(bike, ridden).frontLoad) / STANDARD_GRAVITY
    expect(gained).toBeGreaterThan(0.3)
    expect(gained).toBeLessThan(1)
  })
})

describe('braking', () => {
  const stop = (of: Bike): { base: Stance; braking: Stance } => {
    const base = solveStance(of, ridden)
    return {
      base,
      braking: solveStance(of, {
        ...ridden,
        deceleration: 0.6 * STANDARD_GRAVITY,
        gasState: { exponent: 1.4, from: base.frontTravel },
      }),
    }
  }

  test('solveStance(…) transfers the same load to the front with springs of 18 and of 20 N/mm: within 1 %', () => {
    const stiff = sealedBike()
    const legs = stiff.fork.legs.map((leg) => ({
      ...leg,
      spring: [{ rate: 10000 }],
      preload: 0.0096,
    }))
    const [soft, hard] = [stop(sealedBike()), stop(withFork({ legs }, stiff))].map(
      ({ base, braking }) => ({
        transfer: braking.frontLoad - base.frontLoad,
        dive: braking.frontTravel - base.frontTravel,
      }),
    )
    same(hard!.transfer, soft!.transfer, 0.01)
    expect(hard!.dive).toBeLessThan(soft!.dive)
  })

  test('solveStance(…) compresses the fork by the brake force along the raked axis too', () => {
    const { braking } = stop(bike)
    const brake = 0.6 * weight(bike, ridden)
    const axis = (braking.frontLoad - 17 * STANDARD_GRAVITY) * Math.cos(braking.rake)
    const along = (brake - 17 * 0.6 * STANDARD_GRAVITY) * Math.sin(braking.rake)
    near(braking.forkForce + braking.frontStopForce, axis + along, 1e-6)
  })

  test('solveStance(…) takes half the brake force off the fork when the rear brake does half', () => {
    const half = solveStance(bike, { ...ridden, deceleration: 3, frontBrakeShare: 0.5 })
    same(half.neededGrip.front, (1.5 * weight(bike, ridden)) / STANDARD_GRAVITY / half.frontLoad)
    same(half.neededGrip.rear, (1.5 * weight(bike, ridden)) / STANDARD_GRAVITY / half.rearLoad)
    expect(half.frontTravel).toBeLessThan(
      solveStance(bike, { ...ridden, deceleration: 3 }).frontTravel,
    )
  })

  test('solveStance(…) squats the rear when its brake works: the caliper on the swing arm pulls it down', () => {
    const front = solveStance(bike, { ...ridden, deceleration: 2 })
    const rear = solveStance(bike, { ...ridden, deceleration: 2, frontBrakeShare: 0 })
    expect(rear.rearTravel).toBeGreaterThan(front.rearTravel)
    expect(rear.neededGrip.front).toBe(0)
  })

  test('solveStance(…) needs no grip at a steady speed', () =>
    expect(solveStance(bike, ridden).neededGrip).toEqual({ front: 0, rear: 0 }))
})

describe('bad outcomes are results', () => {
  test('solveStance(…) reports an end that tops out, with a stop force below 0', () => {
    const stance = solveStance(withFork({ legs: [{ spring: [{ rate: 30000 }], preload: 0.06 }] }))
    expect([stance.frontStop, stance.frontTravel, stance.frontStopForce < 0]).toEqual([
      'extended',
      0,
      true,
    ])
  })

  test('solveStance(…) reports a bottomed end, with a stop force above 0', () => {
    const stance = solveStance(withRear({ spring: [{ rate: 9000 }] }), ridden)
    expect([stance.rearStop, stance.rearTravel, stance.rearStopForce > 0]).toEqual([
      'bottomed',
      0.13,
      true,
    ])
  })

  test('solveStance(…) reports coil bind at either end', () => {
    const front = solveStance(
      withFork({ legs: [{ spring: [{ rate: 9000, closes: 0.04 }], preload: 0.015 }] }),
      ridden,
    )
    expect([front.frontStop, front.frontLimit.cause]).toEqual(['coilBound', 'coilBound'])
    near(front.frontTravel, 0.025, 1e-15)
    const rear = solveStance(withRear({ spring: [{ rate: 60000, closes: 0.03 }] }), ridden)
    expect([rear.rearStop, rear.rearLimit.cause]).toEqual(['coilBound', 'coilBound'])
  })

  test('solveStance(…) approaches a hydraulic lock and calls it no stop', () => {
    const legs = [{ spring: [], preload: 0, gas: { ...GAS, airHeight: 0.03 } }]
    const stance = solveStance(withFork({ legs }), { ...ridden, deceleration: 8 })
    expect([stance.frontStop, stance.frontLimit.cause, stance.frontStopForce]).toEqual([
      'none',
      'locked',
      0,
    ])
    expect(stance.frontTravel).toBeLessThan(stance.frontLimit.travel)
  })

  test('solveStance(…) sits on the far stop without any spring, and floats nowhere', () => {
    const stance = solveStance(
      withRear({ spring: [] }, withFork({ legs: [{ spring: [], preload: 0 }] })),
      ridden,
    )
    expect([stance.frontStop, stance.rearStop]).toEqual(['bottomed', 'bottomed'])
  })

  test('solveStance(…) carries a loose spring', () => {
    const legs = bike.fork.legs.map((leg) => ({ ...leg, preload: -0.01 }))
    const [loose, fitted] = [solveStance(withFork({ legs }), ridden), solveStance(bike, ridden)]
    expect(loose.frontTravel).toBeGreaterThan(fitted.frontTravel + 0.02)
  })

  test('solveStance(…) reports a lifted rear wheel as a load below 0, and no grip for it', () => {
    const stance = solveStance(bike, { ...ridden, deceleration: 15, frontBrakeShare: 0.9 })
    expect([
      stance.rearWheelLifts,
      stance.frontWheelLifts,
      stance.rearLoad < 0,
      stance.neededGrip.rear,
    ]).toEqual([true, false, true, null])
  })

  test('solveStance(…) reports a lifted front wheel when the load sits behind the rear axle', () => {
    const stance = solveStance(bike, { payload: [{ mass: 300, x: -0.5, z: 1 }] })
    expect([stance.frontWheelLifts, stance.rearWheelLifts, stance.neededGrip.front]).toEqual([
      true,
      false,
      null,
    ])
  })
})

describe('arguments', () => {
  test('solveStance(bike) needs no load case: the bike alone, at rest, without friction', () => {
    const { toGround: _a, ...one } = solveStance(bike)
    const { toGround: _b, ...other } = solveStance(
      bike,
      { payload: [], deceleration: 0, frontBrakeShare: 1, lean: 0, gasState: {} },
      { settle: 0 },
    )
    expect(one).toEqual(other)
  })

  test('solveStance(…) leaves its arguments as they were', () => {
    const before = structuredClone({ bike, ridden })
    solveStance(bike, ridden)
    expect({ bike, ridden }).toEqual(before)
  })

  test('solveStance(…) refuses what makes no sense, and names it', () => {
    const badLoads: [object, string][] = [
      [{ deceleration: -1 }, 'deceleration'],
      [{ deceleration: NaN }, 'deceleration'],
      [{ frontBrakeShare: 1.1 }, 'frontBrakeShare'],
      [{ frontBrakeShare: -0.1 }, 'frontBrakeShare'],
      [{ lean: Math.PI / 2 }, 'lean'],
      [{ payload: [{ mass: -1, x: 0, z: 0 }] }, 'payload.mass'],
      [{ payload: [{ mass: 1, x: NaN, z: 0 }] }, 'payload.x'],
      [{ payload: {} }, 'payload'],
      [{ gasState: { exponent: NaN } }, 'exponent'],
    ]
    for (const [loadCase, parameter] of badLoads) {
      expect(() => solveStance(sealedBike(), loadCase as LoadCase), parameter).toThrow(
        expect.objectContaining({ name: 'DomainError', parameter }),
      )
    }
    const badBikes: [object, string][] = [
      [{ sprung: { mass: 0, x: 0, z: 0 } }, 'sprung.mass'],
      [{ sprung: { mass: 1, x: 0, z: Infinity } }, 'sprung.z'],
      [{ frontUnsprungMass: -1 }, 'frontUnsprungMass'],
      [{ rearUnsprungMass: undefined }, 'rearUnsprungMass'],
      [{ fork: undefined }, 'fork'],
      [{ rear: undefined }, 'rear'],
      [{ geometry: undefined }, 'geometry'],
    ]
    for (const [change, parameter] of badBikes) {
      expect(() => solveStance({ ...bike, ...change }), parameter).toThrow(
        expect.objectContaining({ name: 'DomainError', parameter }),
      )
    }
    expect(() => solveStance(bike, ridden, { settle: 2 })).toThrow(
      expect.objectContaining({ parameter: 'settle' }),
    )
    expect(() => solveStance(undefined as never)).toThrow(DomainError)
    expect(() => solveStance(bike, { deceleration: 1e308 })).toThrow(DomainError)
  })
})

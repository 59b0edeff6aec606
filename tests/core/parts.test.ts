import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import * as core from '../../src/core/index.ts'
import { GAS, gassyLeg, plainBike } from './bikes.ts'
import { between } from './draws.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'

/* The parts that the core's files hand to one another, ready to evaluate many times: each gives what the public function gives that is made of it. */

const share = between(0, 0.98)
/** Two groups, of which the softer closes first: at 60 mm and 480 N. */
const stack = [
  { rate: 12_000, closes: 0.2 },
  { rate: 8_000, closes: 0.06 },
] as const
const law = (...parts: Parameters<typeof fc.property<[number, number]>>): void => {
  fc.assert(fc.property(...parts))
}

describe('springs', () => {
  const curve = core.springCurve(stack)

  test('curveForce(…), curveRate(…) and curveEnergy(…) give force, slope and work of the groups in series', () => {
    law(share, share, (deep, _) => {
      const deflection = deep * core.springLimit(stack)!
      same(core.curveForce(curve, deflection), core.springForce(stack, deflection))
      same(core.curveRate(curve, deflection), core.springRate(stack, deflection))
      same(core.curveEnergy(curve, deflection), core.springEnergy(stack, deflection))
    })
    // 480 N press 0.04 m out of 12 N/mm and 0.06 m out of 8: half of 480 · 0.1 J so far, and 12 N/mm alone from there
    near(core.curveEnergy(curve, 0.1), 24, 1e-9)
    near(core.curveRate(curve, 0.11), 12_000, 1e-9)
  })

  test('beforeCoilBind(…) hands a deflection back up to coil bind, and refuses one beyond it', () => {
    expect(core.beforeCoilBind(curve, 'x', curve.limit)).toBe(curve.limit)
    expectRefusal(() => core.beforeCoilBind(curve, 'x', curve.limit + 1e-6), 'x')
  })
})

describe('gas', () => {
  const travel = 0.12

  test('gasCurveRate(…) and gasCurveEnergy(…) give slope and work of the gas', () => {
    law(share, between(1, 1.4), (deep, exponent) => {
      const x = deep * travel
      const curve = core.gasCurve(GAS, travel, { exponent })
      same(core.gasCurveRate(curve, x), core.gasRate(GAS, travel, x, { exponent }))
      same(core.gasCurveEnergy(curve, 0, x), core.gasEnergy(GAS, travel, 0, x, { exponent }))
    })
  })

  test('beforeLock(…) refuses the travel at which no gas is left', () => {
    const curve = core.gasCurve({ ...GAS, airHeight: 0.06 }, travel)
    expect(core.beforeLock(curve, 'x', curve.lock * 0.99)).toBe(curve.lock * 0.99)
    expectRefusal(() => core.beforeLock(curve, 'x', curve.lock), 'x')
  })
})

describe('fork and rear', () => {
  const fork = { travel: 0.12, legs: [gassyLeg, gassyLeg], topOut: { rate: 20_000, length: 0.02 } }
  const { rear } = plainBike()

  test('forkCurveRate(…) gives the slope of the fork', () => {
    const curve = core.forkCurve(fork)
    law(share, share, (deep, _) => {
      same(core.forkCurveRate(curve, deep * 0.12), core.forkRate(fork, deep * 0.12))
    })
  })

  test('rearCurveForce(…) and rearCurveRate(…) give force and slope of the rear wheel', () => {
    const curve = core.rearCurve(rear)
    law(share, share, (deep, _) => {
      const x = deep * rear.travel
      same(core.rearCurveForce(curve, x), core.rearWheelForce(rear, x))
      same(core.rearCurveRate(curve, x), core.rearWheelRate(rear, x))
    })
  })

  test('heldTravel(…) finds where a rising force meets one, and stays between the stops', () => {
    law(between(100, 200), between(0, 1), (rate, force) => {
      near(
        core.heldTravel((x) => rate * x, 0.01, force),
        Math.min(0.01, force / rate),
        1e-9,
      )
    })
    expect(core.heldTravel((x) => 100 + x, 0.1, 50)).toBe(0)
  })

  test('topOutOf(…) takes a fork without a top-out spring for one of no length, and refuses a rate below 0', () => {
    expect(core.topOutOf(undefined).length).toBe(0)
    expect(core.topOutOf(fork.topOut)).toEqual(fork.topOut)
    expectRefusal(() => core.topOutOf({ rate: -1, length: 0.02 }), 'topOut.rate')
  })
})

describe('pose and steering', () => {
  const { geometry } = plainBike()

  test('poseOf(…) of an attitude taken gives the pose', () => {
    const body = core.chassis(geometry)
    law(share, share, (front, rear) => {
      const at = core.takeAttitude(body, 0.12 * front, 0.12 * rear, core.blankAttitude())
      const [part, whole] = [core.poseOf(body, at), core.pose(geometry, 0.12 * front, 0.12 * rear)]
      for (const name of ['pitch', 'rake', 'trail', 'normalTrail', 'wheelbase'] as const)
        same(part[name], whole[name])
    })
  })

  test('usableRake(…) hands a rake back, and refuses one that lies along the ground', () => {
    expect(core.usableRake(0.42)).toBe(0.42)
    expectRefusal(() => core.usableRake(Math.PI / 2), 'rake')
  })
})

describe('readings', () => {
  test('shareOf(…) is a length over a travel, nothing without one, and refuses more than all of it', () => {
    law(between(0, 0.1), between(0.1, 0.3), (length, travel) => {
      same(core.shareOf('sag', length, travel).share, length / travel)
    })
    expect(core.shareOf('sag', 0.03, undefined)).toEqual({})
    expectRefusal(() => core.shareOf('sag', 0.2, 0.1), 'travel')
  })

  test('readings(…) hands points back, and refuses fewer than asked for and what is no number', () => {
    const points = [
      [0, 1],
      [1, 3],
    ] as const
    expect(core.readings(points, 2)).toBe(points)
    expectRefusal(() => core.readings(points, 3), 'points')
    expectRefusal(() => core.readings([[0, Number.NaN]], 1), 'y')
  })
})

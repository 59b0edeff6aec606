import { describe, expect, test } from 'vitest'
import { STANDARD_GRAVITY } from '../../src/core/constants.ts'
import type { Law } from '../../src/core/damper.ts'
import { type End, motionOf } from '../../src/core/end.ts'
import { roadOf } from '../../src/core/road.ts'
import { frontEnd, linear } from './bikes.ts'
import { expectRefusal, expectWithin, rounding } from './tolerance.ts'

const digressive = (velocity: number): Law => ({
  kind: 'digressive',
  knee: { velocity, force: 200 },
  after: 600,
})
const end = frontEnd(700, 1500)
const rest = (110 * STANDARD_GRAVITY - 300) / 18000
/** A road that is 10 mm up from time 0 on. */
const up = roadOf({ kind: 'step', height: 0.01, length: 0, speed: 1 })
const flat = roadOf({ kind: 'step', height: 0, length: 0, speed: 1 })

/** Accelerations of body and wheel [m/s²] by Newton's second law, written out for one state. */
function slopesOf(what: End, road: typeof flat, y: number[]): number[] {
  const slope = new Float64Array(4)
  motionOf(what, road).slopes(0.5, Float64Array.from(y), slope)
  return [...slope]
}

describe('motionOf: the equations', () => {
  test('motionOf(…).slopes between the stops: spring, damper by its way, tyre, weight', () => {
    for (const [bodySpeed, wheelSpeed, damper] of [
      [0.1, 0.4, 700 * 0.3],
      [0.4, 0.1, -1500 * 0.3],
      [0.2, 0.2, 0],
    ] as const) {
      // prettier-ignore
      const [body, wheel] = [0.004, 0.011]
      const suspension = 300 + 18000 * (rest + wheel - body) + damper
      const tyre = 124 * STANDARD_GRAVITY + 180000 * (0.01 - wheel)
      const got = slopesOf(end, up, [body, bodySpeed, wheel, wheelSpeed])
      const wanted = [
        bodySpeed,
        suspension / 110 - STANDARD_GRAVITY,
        wheelSpeed,
        (tyre - suspension) / 14 - STANDARD_GRAVITY,
      ]
      got.forEach((value, i) => expectWithin(value, wanted[i]!, 1e-11)) // forces of kN over 14 kg
    }
  })

  test('motionOf(…).slopes past either stop add the stop’s stiffness to the force at the end of the travel', () => {
    const full = 300 + 18000 * 0.12
    for (const [x, force] of [
      [0.125, full + 500000 * 0.005],
      [-0.004, 300 - 500000 * 0.004],
    ] as const) {
      // prettier-ignore
      const [, acceleration = NaN] = slopesOf(end, flat, [rest - x, 0, 0, 0])
      expectWithin(acceleration, force / 110 - STANDARD_GRAVITY, 1e-10)
    }
  })

  test('motionOf(…).tyreForce is that of the road under the wheel, and 0 in the air', () => {
    const motion = motionOf(end, up)
    expectWithin(
      motion.tyreForce(0.5, Float64Array.of(0, 0, 0.012, 0)),
      124 * STANDARD_GRAVITY - 180000 * 0.002,
      rounding(2000),
    )
    expect(motion.tyreForce(0.5, Float64Array.of(0, 0, 0.03, 0))).toBe(0)
    const [, , , fall = NaN] = slopesOf({ ...end, force: () => 0 }, up, [0.05, 0, 0.05, 0])
    // without load in the spring a wheel in the air falls freely, on the far stop or not
    expect(fall).toBeLessThanOrEqual(-STANDARD_GRAVITY)
  })

  test('motionOf(…).restTravel carries the sprung weight: by the spring, by either stop, or exactly where a stop begins', () => {
    const weight = 110 * STANDARD_GRAVITY
    expectWithin(motionOf(end, flat).restTravel, rest, 1e-15)
    expectWithin(
      motionOf({ ...end, force: () => weight + 50 }, flat).restTravel,
      -50 / 500000,
      1e-15,
    )
    expectWithin(
      motionOf({ ...end, force: () => weight - 50 }, flat).restTravel,
      0.12 + 50 / 500000,
      1e-15,
    )
    expectWithin(motionOf({ ...end, force: (x) => weight + 1000 * x }, flat).restTravel, 0, 0)
    expectWithin(
      motionOf({ ...end, force: (x) => weight + 1000 * (x - 0.12) }, flat).restTravel,
      0.12,
      0,
    )
  })

  test('motionOf refuses what is no end and a force law that gives no number', () => {
    for (const name of ['sprungMass', 'unsprungMass', 'travel', 'tyreRate', 'stopRate'] as const) {
      expectRefusal(() => motionOf({ ...end, [name]: 0 }, flat), `end.${name}`)
    }
    expectRefusal(
      () => motionOf({ ...end, force: 3 as unknown as End['force'] }, flat),
      'end.force',
    )
    expectRefusal(() => motionOf({ ...end, force: () => Infinity }, flat), 'end.force')
    expectRefusal(
      () => motionOf({ ...end, damper: undefined as unknown as End['damper'] }, flat),
      'end.damper',
    )
    expectRefusal(
      () => motionOf({ ...end, damper: { compression: linear(1), rebound: linear(-1) } }, flat),
      'end.damper.rebound.coefficient',
    )
    expectRefusal(() => motionOf(undefined as unknown as End, flat), 'end')
  })
})

describe('motionOf: what a ride must not step over', () => {
  const watched = (damper: End['damper']) => motionOf({ ...end, damper }, up).watches
  const value = (damper: End['damper'], rising: string, y: number[]): number[] =>
    watched(damper)
      .filter((watch) => watch.rising === rising)
      .map((watch) => watch.value(0.5, Float64Array.from(y)))

  test('motionOf(…).watches the tyre’s load, which stands on the road at first, and both stops', () => {
    const [tyre, top, bottom] = watched(end.damper)
    const y = Float64Array.of(0.004, 0, 0.03, 0)
    // 180 N/mm over 20 mm is 3600 N, more than it carries: it pulls, so it has left the road
    expectWithin(tyre!.value(0.5, y), 124 * STANDARD_GRAVITY - 3600, rounding(4000))
    expectWithin(top!.value(0.5, y), rest + 0.026, 1e-15)
    expectWithin(bottom!.value(0.5, y), rest + 0.026 - 0.12, 1e-15)
    expect(
      [tyre, top, bottom].map((watch) => [watch?.startSide, watch?.rising, watch?.falling]),
    ).toEqual([
      [1, 'lands', 'leavesRoad'],
      [undefined, 'leavesTopStop', 'topsOut'],
      [undefined, 'bottoms', 'leavesBottomStop'],
    ])
  })

  test('motionOf(…).watches the damper’s turning round unless both ways are one line', () => {
    expect(watched({ compression: linear(900), rebound: linear(900) })).toHaveLength(3)
    const turning = value(end.damper, 'compression', [0, 0.1, 0, 0.4])
    expect(turning).toHaveLength(1)
    expectWithin(turning[0]!, 0.3, 1e-15)
    expect(
      watched({ compression: linear(900), rebound: { kind: 'square', coefficient: 900 } }),
    ).toHaveLength(4)
  })

  test('motionOf(…).watches the knee of each way, above 0 beyond it', () => {
    const y = [0, 0.1, 0, 0.4]
    const closing = value({ compression: digressive(0.25), rebound: linear(9) }, 'aboveKnee', y)
    expect(closing).toHaveLength(1)
    expectWithin(closing[0]!, 0.05, 1e-15)
    const opening = value(
      { compression: linear(9), rebound: digressive(0.1) },
      'aboveKnee',
      [0, 0.4, 0, 0.1],
    )
    expect(opening).toHaveLength(1)
    expectWithin(opening[0]!, 0.2, 1e-15)
    expect(
      value({ compression: digressive(0.25), rebound: digressive(0.1) }, 'aboveKnee', y),
    ).toHaveLength(2)
  })
})

import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import DampingFigure from '../../src/calculators/damping/Figure.tsx'
import { evaluate } from '../../src/machine/evaluate.ts'
import { NO_SWING, SWINGS_ON } from '../../src/calculators/damping/remarks.ts'
import { rideOver } from '../../src/core/index.ts'
import {
  asDefinition,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  ROUNDING,
  shown,
} from './evaluated.ts'

const damping = loadCalculator('damping')

interface Picture {
  time: number[]
  body: number[]
  force: [number, number][]
}
const pictureOf = (given: Record<string, number | string>): Picture =>
  shown(damping, given).now.picture as Picture

/** Times of the body's local highs [s]. */
function peaks({ time, body }: Picture): number[] {
  return time.filter(
    (_, place) =>
      place > 0 &&
      place < body.length - 1 &&
      body[place]! > body[place - 1]! &&
      body[place]! >= body[place + 1]!,
  )
}

describe('damping', () => {
  test('damping leaves the travel at rest where it is, whatever the setting', () => {
    for (const coefficient of [0, 700, 6000])
      expectNear(
        result(damping, { compression: coefficient, rebound: coefficient }, 'rest'),
        38,
        1e-6,
      )
  })

  test('damping swings the body at the frequency of spring and tyre in series', () => {
    // by hand: 22 × 180/202 = 19.6 N/mm under 112 kg is 13.2 rad/s, a swing each 0.475 s; damping of 0.11 and the wheel's mass change it by
    // less than 3 %
    const [first, second] = peaks(pictureOf({ compression: 345, rebound: 345 })) as [number, number]
    expectNear(second - first, 0.475, 0.015)
  })

  test('damping passes the new height by less the more it damps', () => {
    const overs = [300, 700, 1100, 2000].map((coefficient) =>
      result(damping, { compression: coefficient, rebound: coefficient }, 'overshoot'),
    )
    expect(overs).toEqual([...overs].sort((a, b) => b - a))
  })

  test('damping measures the overshoot of a drop downwards', () => {
    expect(result(damping, { height: -30 }, 'overshoot')).toBeGreaterThan(1)
  })

  test('damping’s mean over the waves is that of the ride’s second half, when the start has died out', () => {
    const waves = {
      road: 'waves',
      compression: 300,
      rebound: 3000,
      height: 20,
      length: 2,
      speed: 40,
    }
    const preload = (112 * 9.80665) / 22000 - 0.038
    const straight = (coefficient: number) => ({ kind: 'linear', coefficient }) as const
    const ride = rideOver(
      { kind: 'waves', height: 0.02, length: 2, speed: 40 / 3.6 },
      {
        sprungMass: 112,
        unsprungMass: 28,
        force: (x) => 22000 * Math.max(0, preload + x),
        travel: 0.12,
        tyreRate: 180e3,
        stopRate: 2e6,
        damper: { compression: straight(300), rebound: straight(3000) },
      },
      { duration: 2.5 },
    )
    const late = ride.travel.filter((_, place) => ride.time[place]! >= 1.25)
    // a finer step than the card's moves the mean by less than a hundredth of a millimetre
    expectNear(
      result(damping, waves, 'meanTravel'),
      1e3 * (late.reduce((sum, x) => sum + x, 0) / late.length),
      0.02,
    )
    const whole = 1e3 * (ride.travel.reduce((sum, x) => sum + x, 0) / ride.travel.length)
    expect(Math.abs(result(damping, waves, 'meanTravel') - whole)).toBeGreaterThan(0.1)
  })

  test('damping refuses a sag past the travel, uses no more travel than there is, and settles at once where nothing moves', () => {
    const { problems } = evaluate(asDefinition(damping), { sag: 87, travel: 60 }, { bikes: {} })
    expect(problems.sag).toMatch(/must be less than the full travel/)
    expectNear(
      result(damping, { height: 80, speed: 100, travel: 60, road: 'bump' }, 'peakTravel'),
      60,
      ROUNDING,
    )
    expect(result(damping, { height: 0 }, 'settling')).toBe(0)
  })

  test('damping sits deeper over waves when rebound is far slower than compression', () => {
    const packed = { road: 'waves', length: 3, compression: 500, rebound: 4000 }
    expect(result(damping, packed, 'meanTravel')).toBeGreaterThan(45)
    expect(remarksOf(damping, packed)).toMatch(/packs down/)
    expect(remarksOf(damping, { ...packed, compression: 1500, rebound: 1500 })).not.toMatch(
      /packs down/,
    )
  })

  test('damping has no overshoot but over a step, and no settling over waves', () => {
    expect(shown(damping, { road: 'bump' }).now.output.overshoot).toBeNull()
    const waves = shown(damping, { road: 'waves' }).now.output
    expect([waves.overshoot, waves.settling]).toEqual([null, null])
    expect(shown(damping, { road: 'step' }).now.output.meanTravel).toBeNull()
  })

  test('damping lets the force of a hole meet the even law at the knee', () => {
    const at = (given: Record<string, number | string>): number =>
      pictureOf(given).force.find(([speed]) => Math.abs(speed - 0.2) < 1e-9)![1]
    expectNear(at({ law: 'square', knee: 0.2, compression: 700 }), 140, 1e-6)
    expectNear(at({ law: 'linear', compression: 700 }), 140, 1e-6)
    // shims that open at 0.1 m/s: 70 N and on with a quarter of 700 N·s/m for 0.1 m/s
    expectNear(at({ law: 'digressive', knee: 0.1, after: 25, compression: 700 }), 87.5, 1e-6)
  })

  test('damping reads a ratio below 0.11 as wallowing and one from 0.7 on as hard', () => {
    expectNear(SWINGS_ON, 0.11, ROUNDING)
    expectNear(NO_SWING, 0.7, ROUNDING)
    // critical is 3139 N·s/m
    expect(remarksOf(damping, { compression: 340, rebound: 340 })).toMatch(/wallows/)
    expect(remarksOf(damping, { compression: 350, rebound: 350 })).not.toMatch(/wallows/)
    expect(remarksOf(damping, { compression: 2200, rebound: 2200 })).toMatch(/does not swing on/)
    expect(remarksOf(damping, { compression: 2150, rebound: 2150 })).not.toMatch(
      /does not swing on/,
    )
  })

  test('damping says how far a firmly damped body is still thrown past its new height', () => {
    const firm = { compression: 2200, rebound: 2200 }
    const over = result(damping, firm, 'overshoot')
    // a quarter of the ramp: not little
    expect(over / 30).toBeGreaterThan(0.25)
    expect(remarksOf(damping, firm)).toContain(`past its new height, by ${over.toFixed(1)} mm`)
    expect(remarksOf(damping, { ...firm, road: 'waves' })).not.toMatch(/past its new height/)
    // and it does not swing on: by exp(−π·0.7/√(1 − 0.49)) = 0.046 (Ogata, ch. 5) the way back goes less than 5 % below; the wheel's own
    // movement, which the free body has not, may add as much again
    const { body, time } = pictureOf(firm)
    const top = body.indexOf(Math.max(...body))
    expect(time[top]).toBeLessThan(0.5)
    expect(Math.min(...body.slice(top))).toBeGreaterThan(0.03 - 2 * 0.05 * over * 1e-3)
  })

  test('damping says of a body that stays below its new height that it does, and sends to the waves', () => {
    const slow = { compression: 700, rebound: 3000 }
    expect(result(damping, slow, 'overshoot')).toBe(0)
    expect(remarksOf(damping, slow)).not.toMatch(/swings past its new height/)
    expect(remarksOf(damping, slow)).toMatch(/does not pass its new height here.*over waves/)
    expect(remarksOf(damping, { compression: 700, rebound: 1500 })).toMatch(
      /swings past its new height/,
    )
    // waves and a bump have no new height
    for (const road of ['waves', 'bump'])
      expect(remarksOf(damping, { road })).not.toMatch(/new height/)
  })

  test('damping tells when the tyre leaves the road and when the stop is reached', () => {
    const hard = remarksOf(damping, { road: 'bump', height: 80, length: 1, speed: 100 })
    expect(hard).toMatch(/leaves the road/)
    expect(remarksOf(damping, { sag: 110, height: 80, length: 0.5 })).toMatch(/reaches its stop/)
  })

  test('damping says that a hole has no ratio of its own', () =>
    expect(remarksOf(damping, { law: 'square' })).toMatch(/plain hole has no damping ratio/))
})

describe('DampingFigure', () => {
  test('DampingFigure draws each road and each law', () => {
    for (const road of ['step', 'bump', 'waves']) {
      for (const law of ['linear', 'digressive', 'square'])
        expectSound(drawn(damping, DampingFigure, { road, law }))
    }
    expectSound(drawn(damping, DampingFigure, { compression: 0, rebound: 0 }, null, true))
  })

  test('DampingFigure labels body, wheel and road', () => {
    const markup = drawn(damping, DampingFigure)
    for (const label of ['body now', 'body before', 'wheel now', 'road'])
      expect(markup).toContain(label)
  })
})

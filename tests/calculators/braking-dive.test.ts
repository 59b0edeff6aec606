import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import BrakingDiveFigure from '../../src/calculators/braking-dive/Figure.tsx'
import { bikeOf, payloadOf } from '../../src/bikes/bikes.ts'
import { ends } from '../../src/units/interval.ts'
import {
  liftDeceleration,
  solveStance,
  STANDARD_GRAVITY,
  wheelLoads,
} from '../../src/core/index.ts'
import { dots, valueAt } from './drawn.ts'
import { bikes, drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'
import { specs } from './bikes.ts'

const brakingDive = loadCalculator('braking-dive')

const ids = Object.keys(bikes)

function stanceOf(id: string, deceleration: number) {
  const spec = specs[id]!
  const bike = bikeOf(spec)
  const payload = [payloadOf(spec.rider, 80)]
  const rest = solveStance(bike, { payload })
  const loadCase = {
    payload,
    frontBrakeShare: 1,
    gasState: { exponent: 1.4, from: rest.frontTravel },
  }
  return {
    bike,
    rest,
    loadCase,
    braking: solveStance(bike, { ...loadCase, deceleration: deceleration * STANDARD_GRAVITY }),
  }
}

describe('braking-dive', () => {
  test.each(ids)(
    'braking-dive of %s is solveStance with the gas fast from where it stood, digit for digit',
    (id) => {
      const { bike, loadCase, braking } = stanceOf(id, 0.6)
      const { output } = shown(brakingDive, { bike: id }).now
      for (const key of [
        'frontTravel',
        'rearTravel',
        'frontLoad',
        'rearLoad',
        'trail',
        'rake',
        'wheelbase',
        'pitch',
      ] as const)
        expect(output[key], key).toBe(braking[key])
      expect(output.liftDeceleration).toBe(liftDeceleration(bike, loadCase))
    },
  )

  test('braking-dive reckons its reserve from the quickest brake to the slowest', () => {
    const reserve = (quickest: number, slowest: number) =>
      ends(shown(brakingDive, { quickest, slowest }).now.output.reserve)!
    const [low, high] = reserve(0.1, 0.3)
    expectNear(low, reserve(0.1, 0.1)[0], 1e-12)
    expectNear(high, reserve(0.3, 0.3)[1], 1e-12)
    expect(high - reserve(0.1, 0.1)[1]).toBeGreaterThan(1e-3)
  })

  test('braking-dive lays to the brake what the brake does, also once the fork is on its stop', () => {
    // by hand: the fork slows bike and people but not its own wheel: (200 + 160 + 140 − 28) kg · 1.1 g along the fork, whatever holds the fork up
    const heavy = { rider: 160, passenger: 140, deceleration: 1.1 }
    const { output } = shown(brakingDive, heavy).now
    expectNear(Number(output.travelShare), 1, 1e-9)
    expectNear(Number(output.brakePart), 472 * 1.1 * 9.80665 * Math.sin(Number(output.rake)), 1)
  })

  test.each(ids)('braking-dive of %s: transfer and brake parts are those worked by hand', (id) => {
    const { bike, rest, braking } = stanceOf(id, 0.6)
    const { output } = shown(brakingDive, { bike: id }).now
    const total = (braking.frontLoad + braking.rearLoad) / STANDARD_GRAVITY
    const brake = (total - bike.frontUnsprungMass) * 0.6 * STANDARD_GRAVITY * Math.sin(braking.rake)
    // residuals of the balance are below a micronewton
    expectNear(output.brakePart, brake, 2e-6)
    expectNear(
      output.transferPart,
      (braking.frontLoad - rest.frontLoad) * Math.cos(braking.rake),
      2e-6,
    )
  })

  test('braking-dive: the load that moves forward has no spring in it', () => {
    const soft = result(brakingDive, { bike: 'middleweight-roadster', exponent: 1 }, 'frontLoad')
    const firm = result(brakingDive, { bike: 'middleweight-roadster', exponent: 1.4 }, 'frontLoad')
    // only the pose differs: a few hundred grams
    expectNear(soft, firm, 0.5)
  })

  test('the core’s wheelLoads agrees with a textbook’s braking and driving cases', () => {
    // Bedford and Fowler, Engineering Mechanics: Dynamics, Problem 18.9: a motorcycle driven at 2.5 m/s², g = 9.81; printed N_rear 1055 N, N_front 514.6 N
    const { front, rear } = wheelLoads({
      masses: [{ mass: 160, x: 0.66, z: 0.66 }],
      wheelbase: 1.5,
      deceleration: (-2.5 * STANDARD_GRAVITY) / 9.81,
    })
    expectNear((rear * 9.81) / STANDARD_GRAVITY, 1055, 0.5)
    expectNear((front * 9.81) / STANDARD_GRAVITY, 514.6, 0.05)
  })

  test('braking-dive’s reserve is the travel less the deepest stroke, at both ends', () => {
    const { peak, reserve } = shown(brakingDive).now.output
    const [shallow, deep] = ends(peak)!
    const [least, most] = ends(reserve)!
    expectNear(least + deep, 0.12, 1e-12)
    expectNear(most + shallow, 0.12, 1e-12)
    // model's size of the overshoot: 15 to 32 % of the dive, for 0.1 to 0.2 s and a damping ratio of 0.3 to 0.4; a stiffer front comes out a few points below
    const dive =
      result(brakingDive, {}, 'frontTravel') -
      result(brakingDive, { deceleration: 0 }, 'frontTravel')
    const shares = [shallow, deep].map(
      (travel) => (travel * 1e3 - result(brakingDive, {}, 'frontTravel')) / dive,
    )
    expect(shares[0]).toBeGreaterThan(0.1)
    expect(shares[1]).toBeLessThan(0.35)
  })

  test('braking-dive without brake is the bike at rest', () => {
    const { output } = shown(brakingDive, { deceleration: 0 }).now
    // the same balance with the gas's exponent at 1.4 from where it stands: rounding
    expectNear(output.frontTravel, stanceOf('middleweight-roadster', 0).rest.frontTravel, 1e-12)
    // two numbers of a kilonewton, subtracted
    expectNear(output.transferPart, 0, 1e-9)
    expectNear(output.brakePart, 0, 2e-6)
  })

  test('braking-dive never promises that the fork keeps off its stop', () => {
    for (const deceleration of [0, 0.2, 0.4, 0.6, 0.8, 1]) {
      for (const bike of ids)
        expect(remarksOf(brakingDive, { bike, deceleration })).not.toMatch(
          /won’t bottom|will not bottom|never bottom|cannot bottom|can’t bottom|safe/i,
        )
    }
  })

  test('braking-dive remarks follow the reserve and the lift', () => {
    expect(remarksOf(brakingDive, { deceleration: 0.3 })).toMatch(
      /reserve for bumps, and no promise/,
    )
    expect(remarksOf(brakingDive, { deceleration: 0.65 })).toMatch(/A bump can ask for more/)
    expect(remarksOf(brakingDive, { deceleration: 0.75 })).toMatch(/can take the fork to its stop/)
    expect(remarksOf(brakingDive, { deceleration: 1.1 })).toMatch(/takes the fork to its stop/)
    expect(remarksOf(brakingDive, { deceleration: 1.2 })).toMatch(
      /the rear wheel is off the ground/,
    )
    expect(remarksOf(brakingDive, { deceleration: 1.1 })).toMatch(/A crest or a bump lifts it here/)
  })

  test('the braking-dive figure puts its points at the results', () => {
    const markup = drawn(brakingDive, BrakingDiveFigure)
    expectSound(markup)
    const [x, y] = dots(markup, 'now')[0]!
    // tenths of a unit on some 150 mm and 1.2 g
    expectNear(valueAt(markup, 'x', x), 0.6, 0.01)
    expectNear(valueAt(markup, 'y', y), result(brakingDive, {}, 'frontTravel'), 1)
  })
})

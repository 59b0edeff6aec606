import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { damperForce, type Damper, isOneLine, kneeOf, type Law } from '../../src/core/damper.ts'
import { expectRefusal, expectWithin, rounding } from './tolerance.ts'

const digressive: Law = { kind: 'digressive', knee: { velocity: 0.1, force: 200 }, after: 500 }
const damper: Damper = { compression: { kind: 'linear', coefficient: 800 }, rebound: digressive }

describe('damperForce', () => {
  test('damperForce follows its law each way and has the sign of the velocity', () => {
    expectWithin(damperForce(damper, 0.5), 400, rounding(400))
    expectWithin(damperForce(damper, -0.05), -100, rounding(100))
    expectWithin(damperForce(damper, -0.1), -200, rounding(200))
    expectWithin(damperForce(damper, -0.3), -300, rounding(300))
    expectWithin(damperForce(damper, -0.14), -220, rounding(220))
    expectWithin(
      damperForce({ ...damper, compression: { kind: 'square', coefficient: 300 } }, 2),
      1200,
      rounding(1200),
    )
  })

  test('damperForce is 0 at rest, whatever the law: damping holds nothing up', () => {
    for (const compression of [
      digressive,
      { kind: 'square', coefficient: 9 },
      { kind: 'linear', coefficient: 9 },
    ] satisfies Law[]) {
      expect(damperForce({ compression, rebound: digressive }, 0)).toBe(0)
    }
  })

  test('damperForce never gives energy back', () => {
    const laws = fc.constantFrom<Law>(
      digressive,
      { kind: 'square', coefficient: 300 },
      { kind: 'linear', coefficient: 0 },
      { kind: 'linear', coefficient: 900 },
    )
    fc.assert(
      fc.property(
        laws,
        laws,
        fc.double({ min: -5, max: 5, noNaN: true }),
        (compression, rebound, v) => damperForce({ compression, rebound }, v) * v >= 0,
      ),
    )
  })

  test('damperForce has no jump at the knee', () => {
    expectWithin(damperForce(damper, -0.1 - 1e-12), damperForce(damper, -0.1 + 1e-12), 1e-8) // slopes up to 2,000 N s/m
  })

  test('damperForce refuses negative coefficients, a knee at speed 0 and a law that it does not know', () => {
    expectRefusal(
      () => damperForce({ ...damper, compression: { kind: 'linear', coefficient: -1 } }, 1),
      'damper.compression.coefficient',
    )
    expectRefusal(
      () =>
        damperForce(
          { ...damper, rebound: { kind: 'digressive', knee: { velocity: 0, force: 1 }, after: 1 } },
          1,
        ),
      'damper.rebound.knee.velocity',
    )
    expectRefusal(
      () => damperForce({ ...damper, rebound: { kind: 'cubic' } as unknown as Law }, 1),
      'damper.rebound.kind',
    )
    expectRefusal(() => damperForce(damper, NaN), 'velocity')
  })
})

describe('kneeOf', () => {
  test('kneeOf is the speed at which a digressive law bends, and null for laws without a bend', () => {
    expect(kneeOf(digressive)).toBe(0.1)
    expect(kneeOf({ kind: 'linear', coefficient: 800 })).toBeNull()
    expect(kneeOf({ kind: 'square', coefficient: 800 })).toBeNull()
  })
})

describe('isOneLine', () => {
  test('isOneLine is true where damperForce is one straight line through rest, and nowhere else', () => {
    const laws: Law[] = [
      { kind: 'linear', coefficient: 800 },
      { kind: 'linear', coefficient: 900 },
      { kind: 'square', coefficient: 800 },
      digressive,
    ]
    for (const compression of laws) {
      for (const rebound of laws) {
        const bothWays: Damper = { compression, rebound }
        // one line: odd in the velocity, and twice the force at twice the speed
        const odd = damperForce(bothWays, 0.3) === -damperForce(bothWays, -0.3)
        const even = damperForce(bothWays, 0.4) === 2 * damperForce(bothWays, 0.2)
        expect(isOneLine(bothWays)).toBe(odd && even)
      }
    }
  })
})

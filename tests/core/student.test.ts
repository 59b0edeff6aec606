import fc from 'fast-check'
import jstat from 'jstat'
import { expect, test } from 'vitest'
import { coverageFactor } from '../../src/core/index.ts'
import { near, same } from './near.ts'

// JCGM 100:2008, table G.2.
test.each([
  [16, 0.95, 2.12],
  [16, 0.9545, 2.17],
  [16, 0.99, 2.92],
  [Infinity, 0.9545, 2.0],
])(
  'coverageFactor(…) with %d degrees at %d is the tabulated %d',
  (degreesOfFreedom, probability, expected) => {
    near(coverageFactor({ degreesOfFreedom, probability }), expected, 0.005) // half the last printed digit
  },
)

test('coverageFactor(…) with 1 degree is tan(πp/2), and with 2 is p √(2/(1 − p²)): the closed forms', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (probability) => {
      // the series for the beta function leaves 1e-12 at 20, and 1 − p loses three digits at the upper end
      same(
        coverageFactor({ degreesOfFreedom: 1, probability }),
        Math.tan((Math.PI * probability) / 2),
        1e-11,
      )
      same(
        coverageFactor({ degreesOfFreedom: 2, probability }),
        probability * Math.sqrt(2 / (1 - probability ** 2)),
        1e-11,
      )
    }),
  )
})

test('coverageFactor(…) agrees with jstat for any degrees, whole or not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 500, noNaN: true }),
      fc.double({ min: 0.1, max: 0.999, noNaN: true }),
      (degreesOfFreedom, probability) => {
        const theirs = jstat.studentt.inv((1 + probability) / 2, degreesOfFreedom)
        same(coverageFactor({ degreesOfFreedom, probability }), theirs, 1e-6) // their inverse stops at 1e-8
      },
    ),
  )
})

test('coverageFactor(…) of very many degrees runs into the normal 1.959963984540 without a step', () => {
  near(coverageFactor({ degreesOfFreedom: Infinity, probability: 0.95 }), 1.95996398454, 1e-10)
  const [below, above] = [0.999999e6, 1.000001e6].map((degreesOfFreedom) =>
    coverageFactor({ degreesOfFreedom, probability: 0.95 }),
  )
  near(above, below!, 1e-10)
  near(coverageFactor({ degreesOfFreedom: 1e9, probability: 0.95 }), 1.95996398454, 1e-8)
})

test('coverageFactor(…) with 4 degrees turns round their closed form p = sin θ (1 + cos² θ ÷ 2), tan θ = t/2 (Abramowitz and Stegun, 26.7.4)', () => {
  for (const t of [0.01, 0.3, 1, 2, 5, 40]) {
    const theta = Math.atan(t / 2)
    same(
      coverageFactor({
        degreesOfFreedom: 4,
        probability: Math.sin(theta) * (1 + Math.cos(theta) ** 2 / 2),
      }),
      t,
      1e-9,
    )
  }
})

test('coverageFactor(…) refuses degrees not above 0 and probabilities not between 0 and 1', () => {
  for (const degreesOfFreedom of [0, -1, NaN, -Infinity]) {
    expect(() => coverageFactor({ degreesOfFreedom, probability: 0.95 })).toThrow(
      expect.objectContaining({ parameter: 'degreesOfFreedom' }),
    )
  }
  expect(() => coverageFactor(undefined as never)).toThrow(
    expect.objectContaining({ parameter: 'wanted' }),
  )
  for (const probability of [0, 1, NaN, 95]) {
    expect(() => coverageFactor({ degreesOfFreedom: 5, probability })).toThrow(
      expect.objectContaining({ parameter: 'probability' }),
    )
  }
})

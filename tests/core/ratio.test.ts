import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ratioAt, ratioCurve, strokeAt, travelAtStroke } from '../../src/core/index.ts'
import { near } from './near.ts'

const table = fc
  .array(fc.double({ min: 0.3, max: 0.9, noNaN: true }), { minLength: 2, maxLength: 6 })
  .map((ratios) => ({ table: ratios.map((ratio, i): [number, number] => [(0.2 * i) / (ratios.length - 1), ratio]) }))
const travel = fc.double({ min: 0, max: 0.2, noNaN: true })

test('strokeAt(…) is the integral of ratioAt(…), and travelAtStroke(…) its inverse', () => {
  fc.assert(
    fc.property(table, travel, (ratio, x) => {
      const curve = ratioCurve(ratio, 0.2)
      let sum = 0
      for (let i = 0; i < 1000; i++) sum += (ratioAt(curve, ((i + 0.5) / 1000) * x) * x) / 1000
      near(strokeAt(curve, x), sum, 1e-7) // the midpoint rule across the joints
      near(travelAtStroke(curve, strokeAt(curve, x)), x, 1e-12)
    }),
  )
})

test('ratioAt(…) goes straight from point to point', () => {
  const curve = ratioCurve(
    {
      table: [
        [0, 0.4],
        [0.1, 0.5],
        [0.2, 0.45],
      ],
    },
    0.2,
  )
  near(ratioAt(curve, 0.05), 0.45, 1e-15)
  near(ratioAt(curve, 0.15), 0.475, 1e-15)
  expect(ratioAt(curve, 0.1)).toBe(0.5)
})

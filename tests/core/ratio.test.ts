import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ratioAt, ratioCurve, ratioPiece, strokeAt, travelAtStroke } from '../../src/core/index.ts'
import { near } from './near.ts'
import { expectRefusal } from './tolerance.ts'
import { between } from './draws.ts'

const table = fc
  .array(fc.double({ min: 0.3, max: 0.9, noNaN: true }), { minLength: 2, maxLength: 6 })
  .map((ratios) => ({
    table: ratios.map((ratio, i): [number, number] => [(0.2 * i) / (ratios.length - 1), ratio]),
  }))
const travel = between(0, 0.2)

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

describe('ratioCurve', () => {
  test('ratioCurve(…) of a line is one piece, with no slope unless it is given', () => {
    expect(ratioCurve({ initial: 0.5, slope: -1 }, 0.125)).toEqual({
      travels: [0],
      ratios: [0.5],
      slopes: [-1],
      strokes: [0],
    })
    expect(ratioCurve({ initial: 0.5 }, 0.125).slopes).toEqual([0])
    expect(ratioCurve({ initial: 0.5, table: undefined }, 0.125).ratios).toEqual([0.5])
  })

  test('ratioCurve(…) of a table counts from full extension: what lies before it is left out, and a piece across it is cut', () => {
    const points = [[-0.25, 0.25], [-0.125, 0.75], [0.125, 0.5], [0.25, 1]] as const // prettier-ignore
    const curve = ratioCurve({ table: points }, 0.25)
    // the mean of 0.75 and 0.5 at the cut; strokes by trapezium: (0.625 + 0.5)/2 × 0.125
    expect(curve).toEqual({
      travels: [0, 0.125],
      ratios: [0.625, 0.5],
      slopes: [-1, 4],
      strokes: [0, 0.0703125],
    })
    const there = ratioCurve({ table: [[-0.5, 0.4], [0, 0.5], [0.25, 0.5]] }, 0.25) // prettier-ignore
    expect(there).toEqual({ travels: [0], ratios: [0.5], slopes: [0], strokes: [0] })
  })

  test('ratioPiece(…) at a joint is the piece to its right; before the first it is the first, which goes on', () => {
    const curve = ratioCurve({ table: [[0, 0.5], [0.125, 0.75], [0.25, 0.75]] }, 0.25) // prettier-ignore
    expect([-0.1, 0, 0.1249, 0.125, 0.25].map((x) => ratioPiece(curve, x))).toEqual([0, 0, 0, 1, 1])
    near(ratioAt(curve, -0.125), 0.25, 1e-15)
    near(travelAtStroke(curve, strokeAt(curve, -0.0625)), -0.0625, 1e-15)
  })

  test('ratioCurve(…) refuses a ratio that is 0 anywhere in the travel, its very end included', () => {
    const bad: [unknown, string][] = [
      [{ initial: 0 }, 'motionRatio.initial'],
      [{ initial: NaN }, 'motionRatio.initial'],
      [{ initial: 0.5, slope: -4 }, 'motionRatio.slope'],
      [{ initial: 0.5, slope: NaN }, 'motionRatio.slope'],
      [undefined, 'motionRatio'],
      [{ table: [[0, 0.5]] }, 'motionRatio.table'],
      [{ table: [[0, 0.5], [0.125]] }, 'motionRatio.table'],
      [{ table: [[0, 0.5], null] }, 'motionRatio.table'],
      [{ table: [[0.01, 0.5], [0.125, 0.5]] }, 'motionRatio.table'],
      [{ table: [[0, 0.5], [0.12, 0.5]] }, 'motionRatio.table'],
      [{ table: [[0, 0.5], [0.1, 0.5], [0.1, 0.6], [0.125, 0.6]] }, 'motionRatio.table'],
      [{ table: [[0, 0.5], [0.125, 0]] }, 'motionRatio.table'],
    ] // prettier-ignore
    for (const [ratio, parameter] of bad)
      expectRefusal(() => ratioCurve(ratio as never, 0.125), parameter)
    near(ratioAt(ratioCurve({ initial: 0.5, slope: -3.9 }, 0.125), 0.125), 0.0125, 1e-15)
  })

  test('ratioCurve(…) lets a table pass that ends short of the travel by rounding alone', () => {
    const last = 0.125 * (1 - 1e-9)
    expect(ratioCurve({ table: [[0, 0.5], [last, 0.5]] }, 0.125).ratios).toEqual([0.5]) // prettier-ignore
    expectRefusal(() => ratioCurve({ table: [[0, 0.5], [0.125 * (1 - 3e-9), 0.5]] }, 0.125), 'motionRatio.table') // prettier-ignore
  })
})

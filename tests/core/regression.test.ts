import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { linearRegression, rSquared } from 'simple-statistics'
import { describe, expect, test } from 'vitest'
import { type DataPoint, fitLine, fitThroughOrigin } from '../../src/core/index.ts'
import { near, same } from './near.ts'
import { cloud } from './draws.ts'

const file = JSON.parse(readFileSync(new URL('data/line-fits.json', import.meta.url), 'utf8'))
const pairs = (x: number[], y: number[]): DataPoint[] =>
  x.map((value, i) => [value, y[i]!] as const)

describe('NIST Statistical Reference Datasets, Norris (certified values)', () => {
  const { x, y, certified } = file.norris
  const fit = fitLine(pairs(x, y))

  test('fitLine(…) gives the certified intercept, slope and their errors', () => {
    near(fit.intercept, certified.b0, 1e-11)
    near(fit.slope, certified.b1, 1e-13)
    near(fit.interceptError, certified.sb0, 1e-12)
    near(fit.slopeError, certified.sb1, 1e-15)
  })

  test('fitLine(…) gives the certified residual deviation and r², and the covariance of the GSL tests', () => {
    near(fit.residualDeviation, certified.residual_sd, 1e-12)
    near(fit.rSquared, certified.r2, 1e-14)
    near(fit.covariance, certified.cov01_octave, 1e-14)
  })
})

test('fitThroughOrigin(…) gives the certified values of NIST NoInt1', () => {
  const { x, y, certified } = file.noint1
  const fit = fitThroughOrigin(pairs(x, y))
  near(fit.slope, certified.b1, 4e-13)
  near(fit.slopeError, certified.sb1, 2e-13)
  near(fit.residualSumOfSquares, certified.ss_res, 2.5e-11)
})

test('fitLine(…) gives the calibration line of JCGM 100:2008, H.3, and predict(…) its value and uncertainty at 30 °C', () => {
  const { t, b, t0, expected } = file.gum_h3
  const fit = fitLine(
    pairs(
      t.map((each: number) => each - t0),
      b,
    ),
  )
  near(fit.intercept, expected.y1, 5e-5) // half the last printed digit of each
  near(fit.interceptError, expected.s_y1, 5e-5)
  near(fit.slope, expected.y2, 5e-6)
  near(fit.slopeError, expected.s_y2, 5e-6)
  near(fit.covariance! / (fit.interceptError! * fit.slopeError!), expected.r, 5e-4)
  near(fit.predict(10).value, expected.b30, 5e-5)
  near(fit.predict(10).error, expected.u_b30, 5e-5)
})

test('fitLine(…) agrees with simple-statistics on random clouds', () => {
  fc.assert(
    fc.property(cloud, (points) => {
      const theirs = linearRegression(points)
      const fit = fitLine(points)
      near(fit.slope, theirs.m, 1e-9 * (1 + Math.abs(theirs.m))) // their sums are not centred
      near(fit.intercept, theirs.b, 1e-8 * (1 + Math.abs(theirs.b)))
      if (Math.max(...points.map(([, y]) => y)) - Math.min(...points.map(([, y]) => y)) > 1) {
        near(
          fit.rSquared,
          rSquared(points, (x) => fit.intercept + fit.slope * x),
          1e-9,
        )
      }
    }),
  )
})

test('fitLine(…) predicts with u² = u²(a) + x² u²(b) + 2 x cov, JCGM 100 equation (H.15)', () => {
  fc.assert(
    fc.property(cloud, fc.double({ min: -50, max: 50, noNaN: true }), (points, x) => {
      const fit = fitLine(points)
      const variance =
        fit.interceptError! ** 2 + x * x * fit.slopeError! ** 2 + 2 * x * fit.covariance!
      near(
        fit.predict(x).error! ** 2,
        variance,
        1e-9 * (fit.interceptError! ** 2 + x * x * fit.slopeError! ** 2) + 1e-12,
      )
    }),
  )
})

test('fitLine(…) has no errors with 2 points, and no r² on level ones', () => {
  const two = fitLine([
    [0, 1],
    [2, 5],
  ])
  expect(two).toMatchObject({
    intercept: 1,
    slope: 2,
    interceptError: null,
    slopeError: null,
    covariance: null,
    residualDeviation: null,
    rSquared: 1,
  })
  expect(two.predict(3)).toEqual({ value: 7, error: null })
  expect(
    fitLine([
      [0, 1],
      [1, 1],
      [2, 1],
    ]).rSquared,
  ).toBeNull()
})

test('fitThroughOrigin(…) has no error with 1 point', () => {
  expect(fitThroughOrigin([[2, 6]])).toEqual({
    slope: 3,
    slopeError: null,
    residualSumOfSquares: 0,
  })
  same(
    fitThroughOrigin([
      [0.01, 91],
      [0.02, 179],
    ]).slope,
    (0.01 * 91 + 0.02 * 179) / 0.0005,
  )
})

test('fitLine(…) and fitThroughOrigin(…) refuse what no line goes through', () => {
  expect(() => fitLine([[0, 1]])).toThrow(expect.objectContaining({ parameter: 'points' }))
  expect(() =>
    fitLine([
      [1, 1],
      [1, 2],
    ]),
  ).toThrow('must not all lie at one x')
  expect(() =>
    fitLine([
      [0, 1],
      [1, NaN],
    ]),
  ).toThrow(expect.objectContaining({ parameter: 'y' }))
  expect(() =>
    fitLine([
      [0, 1],
      [Infinity, 1],
    ]),
  ).toThrow(expect.objectContaining({ parameter: 'x' }))
  expect(() => fitLine([[1], [2, 3]] as never)).toThrow(
    expect.objectContaining({ parameter: 'points' }),
  )
  expect(() => fitLine(undefined as never)).toThrow(
    expect.objectContaining({ parameter: 'points' }),
  )
  expect(() =>
    fitLine([
      [0, 1],
      [1, 2],
    ]).predict(NaN),
  ).toThrow(expect.objectContaining({ parameter: 'x' }))
  expect(() => fitThroughOrigin([])).toThrow(expect.objectContaining({ parameter: 'points' }))
  expect(() => fitThroughOrigin([[0, 5]])).toThrow('must not all lie at x = 0')
})

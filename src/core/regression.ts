import { DomainError, finite, list, representable } from './domain.ts'

/** A measured pair: what was set, and what was read; units are the caller's. */
export type DataPoint = readonly [x: number, y: number]

/** A straight line through points, with what the scatter about it says; null where too few points say nothing. */
export interface LineFit {
  intercept: number
  slope: number
  interceptError: number | null
  slopeError: number | null
  covariance: number | null
  residualDeviation: number | null
  rSquared: number | null
  /** The line at x, and the standard error of the line there (not of a single reading). */
  predict: (x: number) => { value: number; error: number | null }
}

/**
 * Least-squares line y = intercept + slope·x with standard errors. Refuses fewer than 2 points and points at one x.
 * With 2 points the errors do not exist; with one y throughout, r² does not. Source: JCGM 100:2008, H.3; NIST StRD for the certified values.
 */
export function fitLine(points: readonly DataPoint[]): LineFit {
  const { n, x, y, sxx, sxy, syy } = sums(points)
  const slope = representable('slope', sxy / sxx)
  const intercept = representable('intercept', y - slope * x)
  const residuals = sumOf(points, ([px, py]) => (py - y - slope * (px - x)) ** 2)
  const variance = n > 2 ? residuals / (n - 2) : null
  const error = (weight: number): number | null =>
    variance === null ? null : Math.sqrt(variance * weight)
  return {
    intercept,
    slope,
    interceptError: error(1 / n + (x * x) / sxx),
    slopeError: error(1 / sxx),
    covariance: variance === null ? null : (-variance * x) / sxx,
    residualDeviation: error(1),
    rSquared: syy > 0 ? 1 - residuals / syy : null,
    predict: (at) => ({
      value: intercept + slope * finite('x', at),
      error: error(1 / n + (at - x) ** 2 / sxx),
    }),
  }
}

// Centred on the means: sums of raw squares lose the digits that the errors are made of.
function sums(points: readonly DataPoint[]): {
  n: number
  x: number
  y: number
  sxx: number
  sxy: number
  syy: number
} {
  const n = readings(points, 2).length
  const x = sumOf(points, (point) => point[0]) / n
  const y = sumOf(points, (point) => point[1]) / n
  const sxx = sumOf(points, (point) => (point[0] - x) ** 2)
  if (!(sxx > 0)) throw new DomainError('points', points, 'must not all lie at one x')
  const sxy = sumOf(points, (point) => (point[0] - x) * (point[1] - y))
  return { n, x, y, sxx, sxy, syy: sumOf(points, (point) => (point[1] - y) ** 2) }
}

/** Refuses fewer points than `least` and points that are not two finite numbers, and hands the points back. */
export function readings(points: readonly DataPoint[], least: number): readonly DataPoint[] {
  for (const point of list('points', points, least)) {
    list('points', point, 2)
    finite('x', point[0])
    finite('y', point[1])
  }
  return points
}

function sumOf(points: readonly DataPoint[], term: (point: DataPoint) => number): number {
  return representable(
    'points',
    points.reduce((sum, point) => sum + term(point), 0),
  )
}

/** A straight line through the origin. */
export interface OriginFit {
  slope: number
  slopeError: number | null
  residualSumOfSquares: number
}

/**
 * Least-squares line y = slope·x; the slope's standard error does not exist with 1 point. Refuses no points and points that all lie at x = 0.
 * Source: NIST StRD, NoInt1, for the certified values.
 */
export function fitThroughOrigin(points: readonly DataPoint[]): OriginFit {
  const n = readings(points, 1).length
  const sxx = sumOf(points, ([x]) => x * x)
  if (!(sxx > 0)) throw new DomainError('points', points, 'must not all lie at x = 0')
  const slope = representable('slope', sumOf(points, ([x, y]) => x * y) / sxx)
  const residualSumOfSquares = sumOf(points, ([x, y]) => (y - slope * x) ** 2)
  return {
    slope,
    slopeError: n > 1 ? Math.sqrt(residualSumOfSquares / (n - 1) / sxx) : null,
    residualSumOfSquares,
  }
}

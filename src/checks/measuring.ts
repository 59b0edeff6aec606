import {
  coverageFactor,
  fitLine,
  fitThroughOrigin,
  propagate,
  type DataPoint,
} from '../core/index.ts'
import { call } from './call.ts'

interface Readings {
  x: number[]
  y: number[]
  /** what the x are counted from */
  from?: number
  /** where to predict, counted as the x are given */
  at?: number
}

const pairs = ({ x, y, from = 0 }: Readings): DataPoint[] =>
  x.map((value, place) => [value - from, y[place] ?? Number.NaN])

/** A line with what certified values list beside it, each by its definition from what the core gives. */
function line(readings: Readings) {
  const points = pairs(readings)
  const fit = fitLine(points)
  const { covariance, slopeError, interceptError, residualDeviation } = fit
  const mean = points.reduce((sum, [, y]) => sum + y, 0) / points.length
  const regressionSum = points.reduce((sum, [x]) => sum + (fit.predict(x).value - mean) ** 2, 0)
  const spread = residualDeviation ?? Number.NaN
  return {
    ...fit,
    correlation:
      (covariance ?? Number.NaN) / ((slopeError ?? Number.NaN) * (interceptError ?? Number.NaN)),
    residualSum: spread ** 2 * (points.length - 2),
    regressionSum,
    f: regressionSum / spread ** 2,
    predicted: fit.predict((readings.at ?? 0) - (readings.from ?? 0)),
  }
}

interface Gauge {
  values: number[]
  uncertainties: number[]
}

/** Length of an end gauge [nm] from a comparison with a standard: ℓs + d − ℓs(δα θ + αs δθ), in that order: ℓs, d, αs, θ, δα, δθ (JCGM 100, H.1). */
function endGauge({ values, uncertainties }: Gauge) {
  const length = ([
    standard = 0,
    difference = 0,
    expansion = 0,
    warmth = 0,
    expansions = 0,
    warmths = 0,
  ]: number[]): number =>
    standard + difference - standard * (expansions * warmth + expansion * warmths)
  return propagate(length, values, uncertainties)
}

export const measuring = {
  fitLine: call(['fitLine'], line),
  fitThroughOrigin: call(['fitThroughOrigin'], (readings: Readings) =>
    fitThroughOrigin(pairs(readings)),
  ),
  coverageFactor: call(['coverageFactor'], coverageFactor),
  endGauge: call(['propagate'], endGauge),
  expandedUncertainty: call(
    ['propagate', 'coverageFactor'],
    ({ degreesOfFreedom, probability, ...gauge }: Gauge & Parameters<typeof coverageFactor>[0]) =>
      endGauge(gauge).uncertainty * coverageFactor({ degreesOfFreedom, probability }),
  ),
}

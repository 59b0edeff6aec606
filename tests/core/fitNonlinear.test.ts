import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { REFERENCE_CURVES } from '../../src/checks/curves.ts'
import { type CurveToFit, DomainError, fitLine, fitNonlinear } from '../../src/core/index.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'
import { cloud } from './draws.ts'

interface ReferenceSet {
  start1: number[]
  start2: number[]
  parameters: number[]
  standardDeviations: number[]
  residualSumOfSquares: number
  residualDeviation: number
  degreesOfFreedom: number
  x: number[]
  y: number[]
}

// NIST StRD, nonlinear regression: files of the reference data sets as stored in a public fitting library; certified to 11 digits.
const reference = JSON.parse(
  readFileSync(new URL('data/nonlinear-fits.json', import.meta.url), 'utf8'),
) as {
  tolerance: { parameters: number; standardDeviations: number; residualSumOfSquares: number }
  sets: Record<string, ReferenceSet>
}
const cases = Object.entries(reference.sets).flatMap(([name, set]) => [
  { name, from: 'start 1', start: set.start1, set },
  { name, from: 'start 2', start: set.start2, set },
])

describe('NIST StRD, nonlinear regression', () => {
  test('fitNonlinear(…) is checked against 7 sets from 2 starts each', () =>
    expect(cases).toHaveLength(14))

  test.each(cases)(
    'fitNonlinear(…) gives the certified values of $name from $from',
    ({ name, start, set }) => {
      const { tolerance } = reference
      const fit = fitNonlinear({
        model: REFERENCE_CURVES[name]!,
        points: set.x.map((x, i) => [x, set.y[i]!] as const),
        start,
      })
      expect(fit.converged).toBe(true)
      set.parameters.forEach((certified, j) =>
        same(fit.parameters[j], certified, tolerance.parameters),
      )
      set.standardDeviations.forEach((certified, j) =>
        same(fit.errors![j], certified, tolerance.standardDeviations),
      )
      same(fit.residualSumOfSquares, set.residualSumOfSquares, tolerance.residualSumOfSquares)
      same(fit.residualDeviation, set.residualDeviation, tolerance.residualSumOfSquares)
      expect(fit.degreesOfFreedom).toBe(set.degreesOfFreedom)
    },
  )

  test('fitNonlinear(…) finds BoxBOD, of the higher level, from a start that flings a parameter out of sight', () => {
    // Six readings and certified values of the set, from memory.
    const points = [
      [1, 109],
      [2, 149],
      [3, 149],
      [5, 191],
      [7, 213],
      [10, 224],
    ] as const
    const fit = fitNonlinear({ model: REFERENCE_CURVES['Misra1a']!, points, start: [1, 1] })
    expect(fit.converged).toBe(true)
    same(fit.parameters[0], 213.80940889, 1e-8)
    same(fit.parameters[1], 0.54723748542, 1e-8)
    same(fit.errors![1], 0.10455993237, 1e-7)
  })
})

const line: CurveToFit<number>['model'] = ([a = 0, b = 0], x) => a + b * x

test('fitNonlinear(…) of a straight line is fitLine(…), errors and covariance too', () => {
  fc.assert(
    fc.property(cloud, fc.integer({ min: -50, max: 50 }), (points, from) => {
      const straight = fitLine(points)
      const fit = fitNonlinear({ model: line, points, start: [from, from / 10] })
      const scatter = straight.residualDeviation! + 1e-3
      // slopes by differences of numbers near 100 leave 1e-12 of them
      near(fit.parameters[0], straight.intercept, 1e-8 * scatter + 1e-9)
      near(fit.parameters[1], straight.slope, 1e-8 * scatter + 1e-9)
      near(fit.errors![0], straight.interceptError!, 1e-6 * straight.interceptError! + 1e-9)
      near(
        fit.covariance![0]![1],
        straight.covariance!,
        1e-6 * straight.interceptError! * straight.slopeError! + 1e-9,
      )
      expect(fit.converged).toBe(true)
    }),
  )
})

test('fitNonlinear(…) of one value read several times is the weighted mean, 1/u² = Σ 1/uᵢ² (JCGM 100, 5.1.3, from memory)', () => {
  const reading = fc.tuple(
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.double({ min: 0.1, max: 5, noNaN: true }),
  )
  fc.assert(
    fc.property(fc.array(reading, { minLength: 1, maxLength: 8 }), (readings) => {
      const fit = fitNonlinear({
        model: ([value = 0]) => value,
        points: readings.map(([y]) => [0, y] as const),
        uncertainties: readings.map(([, u]) => u),
        start: [0],
      })
      const weight = readings.reduce((sum, [, u]) => sum + u ** -2, 0)
      near(fit.parameters[0], readings.reduce((sum, [y, u]) => sum + y / u ** 2, 0) / weight, 1e-9)
      same(fit.errors![0], 1 / Math.sqrt(weight), 1e-9)
    }),
  )
})

test('fitNonlinear(…) does not care in what units its parameters are counted', () => {
  const { x, y, parameters, standardDeviations } = reference.sets['Misra1a']!
  for (const unit of [1e-9, 1e9]) {
    const model: CurveToFit<number>['model'] = ([a = 0, b = 0], at) =>
      a * unit * (1 - Math.exp((-b / unit) * at))
    const fit = fitNonlinear({
      model,
      points: x.map((at, i) => [at, y[i]!] as const),
      start: [250 / unit, 5e-4 * unit],
    })
    same(fit.parameters[0], parameters[0]! / unit, 1e-8)
    same(fit.errors![1], standardDeviations[1]! * unit, 1e-7)
  }
})

test('fitNonlinear(…) holds a parameter at the end of its range, and fits the others as if it were fixed there', () => {
  const points = [
    [0, 1],
    [1, 2.2],
    [2, 2.9],
    [3, 4.1],
  ] as const
  const free = fitNonlinear({ model: line, points, start: [2, 0.5] })
  expect(free.parameters[1]).toBeGreaterThan(0.8)
  const held = fitNonlinear({ model: line, points, start: [2, 0.5], upper: [Infinity, 0.8] })
  expect(held.parameters[1]).toBe(0.8)
  // with a fixed slope the intercept is the mean of y − slope·x
  near(held.parameters[0], 2.55 - 0.8 * 1.5, 1e-10)
  const inside = fitNonlinear({
    model: line,
    points,
    start: [2, 0.5],
    lower: [-10, -10],
    upper: [10, 10],
  })
  near(inside.parameters[1], free.parameters[1]!, 1e-12)
})

test('fitNonlinear(…) says where parameters cannot be told apart: no errors, not converged', () => {
  const points = [1, 2, 3, 4].map((x) => [x, 3 * x + 0.1 * (x % 2)] as const)
  const fit = fitNonlinear({ model: ([a = 0, b = 0], x) => (a + b) * x, points, start: [1, 1] })
  expect(fit).toMatchObject({ errors: null, covariance: null, converged: false })
  near(
    fit.parameters[0]! + fit.parameters[1]!,
    fitNonlinear({ model: ([a = 0], x) => a * x, points, start: [1] }).parameters[0]!,
    1e-9,
  )
})

test('fitNonlinear(…) with as many parameters as points has no errors unless the readings bring theirs', () => {
  const points = [
    [0, 1],
    [2, 5],
  ] as const
  expect(fitNonlinear({ model: line, points, start: [0, 0] })).toMatchObject({
    errors: null,
    covariance: null,
    residualDeviation: null,
    degreesOfFreedom: 0,
  })
  const { errors, residuals } = fitNonlinear({
    model: line,
    points,
    start: [0, 0],
    uncertainties: [0.1, 0.2],
  })
  near(errors![0], 0.1, 1e-10)
  near(errors![1], Math.hypot(0.1, 0.2) / 2, 1e-10)
  residuals.forEach((residual) => near(residual, 0, 1e-9))
})

test('fitNonlinear(…) hands back read less fitted, in the unit of the readings', () => {
  const points = [0, 1, 2].map((x) => [x, [1, 4, 1][x]!] as const)
  const { residuals } = fitNonlinear({
    model: ([a = 0]) => a,
    points,
    start: [0],
    uncertainties: [0.5, 0.5, 0.5],
  })
  ;[-1, 2, -1].forEach((residual, i) => near(residuals[i], residual, 1e-9))
})

test('fitNonlinear(…) gives a step up that leads where the model makes no sense', () => {
  // The square root exists for a ≥ x alone; the search starts where the straight line points far below.
  const points = [0, 1, 2, 3].map((x) => [x, Math.sqrt(3.2 - x)] as const)
  const fit = fitNonlinear({
    model: ([a = 0], x) => {
      if (a < x) throw new DomainError('a', a, 'must not be below x')
      return Math.sqrt(a - x)
    },
    points,
    start: [40],
  })
  near(fit.parameters[0], 3.2, 1e-9)
})

test('fitNonlinear(…) lets an error pass that is no refusal', () => {
  const model = (): number => {
    throw new Error('a fault in the model')
  }
  expect(() => fitNonlinear({ model, points: [[0, 1]], start: [1] })).toThrow(
    'a fault in the model',
  )
})

test('fitNonlinear(…) refuses what cannot be fitted', () => {
  const good: CurveToFit<number> = {
    model: line,
    points: [0, 1, 2].map((x) => [x, x] as const),
    start: [0, 0],
  }
  expectRefusal(() => fitNonlinear(undefined as never), 'curve')
  expectRefusal(() => fitNonlinear({ ...good, points: [[0, 1]] }), 'points')
  expectRefusal(() => fitNonlinear({ ...good, points: [[0], [1], [2]] as never }), 'points')
  expectRefusal(
    () => fitNonlinear({ ...good, points: [0, 1, 2].map((x) => [x, x === 1 ? NaN : x] as const) }),
    'points',
  )
  expectRefusal(() => fitNonlinear({ ...good, start: [] }), 'start')
  expectRefusal(() => fitNonlinear({ ...good, start: [0, NaN] }), 'start')
  expectRefusal(() => fitNonlinear({ ...good, uncertainties: [1, 1] }), 'uncertainties')
  expectRefusal(() => fitNonlinear({ ...good, uncertainties: [1, 0, 1] }), 'uncertainties')
  expectRefusal(() => fitNonlinear({ ...good, lower: [0] }), 'lower')
  expectRefusal(() => fitNonlinear({ ...good, upper: [1, 2, 3] }), 'upper')
  expectRefusal(() => fitNonlinear({ ...good, lower: [1, -1] }), 'start')
  expectRefusal(() => fitNonlinear({ ...good, upper: [1, -1] }), 'start')
  expectRefusal(() => fitNonlinear({ ...good, model: () => NaN }), 'start')
  expectRefusal(
    () => fitNonlinear({ ...good, model: (b, x) => Math.log(-Math.abs(x) * b[0]!) }),
    'start',
  )
})

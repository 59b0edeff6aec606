import { describe, expect, test } from 'vitest'
import { type Derivatives, stepFactor, stepper } from '../../src/core/integrate.ts'
import { expectWithin } from './tolerance.ts'

function integrate(
  f: Derivatives,
  t0: number,
  y0: number[],
  t1: number,
  tolerance: number,
  onStep?: (inside: (theta: number) => number[], t: number, h: number) => void,
) {
  const solver = stepper(f, t0, y0, y0.map(() => 1e-3), tolerance) // prettier-ignore
  const state = new Float64Array(y0.length)
  let t = t0
  let wish = (t1 - t0) / 1000
  while (t < t1) {
    const h = Math.min(wish, t1 - t)
    const error = solver.attempt(t, h)
    wish = h * stepFactor(error)
    if (error > 1) continue
    onStep?.((theta) => (solver.inside(theta, state), [...state]), t, h)
    solver.accept()
    t = h === t1 - t ? t1 : t + h
  }
  return [...solver.y]
}

describe('stepper', () => {
  test('stepper takes van der Pol with ε = 0.1 to y(2) = −1.58184, y′(2) = 0.978449 (odex test suite, after Hairer and Wanner)', () => {
    const f: Derivatives = (_, y, slope) => {
      slope[0] = y[1]!
      slope[1] = ((1 - y[0]! ** 2) * y[1]! - y[0]!) / 0.1
    }
    const [y = NaN, slope = NaN] = integrate(f, 0, [2, 0], 2, 1e-10)
    expectWithin(y, -1.581840823174, 1e-8) // full digits by DOP853; tolerance 1e-10 a step
    expectWithin(slope, 0.978448915836, 1e-8)
  })

  test('stepper follows Airy’s y″ = x y to Ai(1) and Bi(1) (Abramowitz and Stegun 10.4)', () => {
    const f: Derivatives = (x, y, slope) => {
      slope[0] = y[1]!
      slope[1] = x * y[0]!
    }
    const [ai = NaN, aiSlope = NaN] = integrate(f, 0, [0.3550280539, -0.2588194038], 1, 1e-12)
    expectWithin(ai, 0.1352924163, 1e-9) // starting values are printed to ten decimals
    expectWithin(aiSlope, -0.1591474413, 1e-9)
    const [bi = NaN, biSlope = NaN] = integrate(f, 0, [0.6149266274, 0.4482883574], 1, 1e-12)
    expectWithin(bi, 1.207423595, 1e-9)
    expectWithin(biSlope, 0.9324359334, 1e-9)
  })

  test('stepper follows Bessel’s equation from x = 1 to J₁(2) (Abramowitz and Stegun 9.1)', () => {
    const f: Derivatives = (x, y, slope) => {
      slope[0] = y[1]!
      slope[1] = (-x * y[1]! - (x * x - 1) * y[0]!) / (x * x)
    }
    const [y = NaN, slope = NaN] = integrate(f, 1, [0.4400505857, 0.3251471008], 2, 1e-12)
    expectWithin(y, 0.5767248078, 1e-9) // ten decimals printed
    expectWithin(slope, -0.06447162474, 1e-9)
  })

  test('stepper keeps the energy of a stiffening spring to the tolerance', () => {
    const f: Derivatives = (_, y, slope) => {
      slope[0] = y[1]!
      slope[1] = -y[0]! - y[0]! ** 3
    }
    const energy = ([x = NaN, v = NaN]: number[]) => v ** 2 / 2 + x ** 2 / 2 + x ** 4 / 4
    const start = energy([1, 0])
    expectWithin(energy(integrate(f, 0, [1, 0], 50, 1e-9)), start, 1e-7) // some hundred steps of 1e-9
  })

  test('stepper interpolates inside a step as well as at its end', () => {
    const f: Derivatives = (_, y, slope) => {
      slope[0] = y[1]!
      slope[1] = -y[0]!
    }
    let worst = 0
    integrate(f, 0, [0, 1], 20, 1e-9, (inside, t, h) => {
      for (const theta of [0, 0.3, 0.5, 0.8, 1])
        worst = Math.max(worst, Math.abs((inside(theta)[0] ?? NaN) - Math.sin(t + theta * h)))
    })
    expect(worst).toBeLessThan(1e-7) // 20 rad at 1e-9 a step, with an interpolant one order lower
  })

  test('stepper’s error estimate falls with the fifth power of the step', () => {
    const solver = stepper((_, y, slope) => (slope[0] = y[0]!), 0, [1], [1], 1)
    const ratio = solver.attempt(0, 0.2) / solver.attempt(0, 0.1)
    expectWithin(Math.log2(ratio), 5, 0.3) // higher orders still show at such steps
  })
})

describe('the order of a step', () => {
  // y′ = t y from t = 1: y = e^((t² − 1)/2), a law that asks for the times of the stages too
  const law: Derivatives = (t, y, slope) => {
    slope[0] = t * y[0]!
  }
  const exact = (t: number): number => Math.exp((t * t - 1) / 2)
  const errors = (h: number): { end: number; inside: number } => {
    const solver = stepper(law, 1, [1], [1], 1)
    solver.attempt(1, h)
    const state = new Float64Array(1)
    solver.inside(0.3, state)
    return {
      end: Math.abs(solver.end[0]! - exact(1 + h)),
      inside: Math.abs(state[0]! - exact(1 + 0.3 * h)),
    }
  }

  test('stepper errs in one step with the sixth power of it, and inside with the fifth (Hairer, Nørsett and Wanner, II.5 and II.6)', () => {
    const [long, short] = [errors(0.1), errors(0.05)]
    // the next order shows as some tenths; a wrong coefficient costs a whole one or more
    expect(Math.log2(long.end / short.end)).toBeGreaterThan(5.7)
    expect(Math.log2(long.inside / short.inside)).toBeGreaterThan(4.7)
  })

  test('stepper integrates t⁴ exactly and t³ without an error to report: orders 5 and 4', () => {
    for (const power of [0, 1, 2, 3, 4]) {
      const solver = stepper((t, _, slope) => (slope[0] = (power + 1) * t ** power), 0, [0], [1], 1)
      const error = solver.attempt(0, 1)
      expectWithin(solver.end[0]!, 1, 1e-14)
      if (power < 4) expectWithin(error, 0, 1e-14)
      else expect(error).toBeGreaterThan(1e-4)
    }
  })

  test('stepper measures its error against the larger of both ends and the floor, as a root mean square over the entries', () => {
    const f: Derivatives = (t, _, slope) => slope.fill(5 * t ** 4)
    const error = (start: number[], floor: number, tolerance = 1): number => stepper(f, 0, start, start.map(() => floor), tolerance).attempt(0, 1) // prettier-ignore
    const whole = error([0], 1)
    for (const [start, floor, size] of [
      [0, 10, 10],
      [99, 10, 100],
      [-100, 10, 100],
      [0, 1e-3, 1],
    ] as const) {
      // prettier-ignore
      expectWithin(error([start], floor) * size, whole, 1e-12 * size)
    }
    expectWithin(error([0], 1, 0.5), 2 * whole, 1e-15)
    expectWithin(error([0, 0], 1), whole, 1e-15)
    expectWithin(error([0, 99], 1) ** 2, (whole ** 2 * (1 + 1e-4)) / 2, 1e-12)
  })

  test('stepper looks inside the step that it tried last', () => {
    const solver = stepper(law, 1, [1], [1], 1)
    const [first, second] = [new Float64Array(1), new Float64Array(1)]
    solver.attempt(1, 0.1)
    solver.inside(0.5, first)
    solver.attempt(1, 0.05)
    solver.inside(0.5, second)
    expectWithin(first[0]!, exact(1.05), 1e-7)
    expectWithin(second[0]!, exact(1.025), 1e-8)
    solver.accept()
    solver.attempt(1.05, 0.05)
    solver.inside(0.5, second)
    expectWithin(second[0]!, exact(1.075), 1e-8)
  })
})

describe('stepFactor', () => {
  test('stepFactor is 0.9 of the fifth root of what the error leaves', () => {
    expectWithin(stepFactor(1), 0.9, 0)
    expectWithin(stepFactor(1 / 32), 1.8, 1e-15)
    expectWithin(stepFactor(32), 0.45, 1e-15)
  })

  test('stepFactor shortens after an error above 1, lengthens after a small one, and keeps within 1/5 and 5', () => {
    expect(stepFactor(2)).toBeLessThan(0.9)
    expect(stepFactor(0.01)).toBeGreaterThan(1)
    expect(stepFactor(0)).toBe(5)
    expect(stepFactor(1e12)).toBe(0.2)
  })
})

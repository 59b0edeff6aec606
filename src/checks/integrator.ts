import { stepFactor, stepper, type Derivatives } from '../core/integrate.ts'
import { call } from './call.ts'

/** Equations with tabulated solutions, y and its slope: what the integrator behind `rideOver` can be measured against. */
const equations = {
  'van der Pol': (_x, y, slope) => {
    slope[0] = y[1]!
    slope[1] = ((1 - y[0]! ** 2) * y[1]! - y[0]!) / 0.1
  },
  Airy: (x, y, slope) => {
    slope[0] = y[1]!
    slope[1] = x * y[0]!
  },
  Bessel: (x, y, slope) => {
    slope[0] = y[1]!
    slope[1] = -y[1]! / x - (1 - 1 / x ** 2) * y[0]!
  },
} satisfies Record<string, Derivatives>

interface Problem {
  equation: keyof typeof equations
  from: number
  to: number
  start: number[]
  tolerance: number
}

function solve({ equation, from, to, start, tolerance }: Problem) {
  const solver = stepper(equations[equation], from, start, [1, 1], tolerance)
  let [x, wish] = [from, 1e-3]
  while (x < to) {
    const step = Math.min(wish, to - x)
    const error = solver.attempt(x, step)
    wish = step * stepFactor(error)
    if (error > 1) continue
    solver.accept()
    x = step === to - x ? to : x + step
  }
  return { value: solver.y[0], slope: solver.y[1] }
}

export const integrator = { solve: call(['stepper'], solve) }

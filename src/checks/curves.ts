import { fitNonlinear } from '../core/index.ts'
import { call } from './call.ts'

type Curve = (b: readonly number[], x: number) => number

const rational: Curve = ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0], x) =>
  (a + x * (b + x * (c + x * d))) / (1 + x * (e + x * (f + x * g)))

/** The curves of NIST's nonlinear reference sets, by the name of the set. */
export const REFERENCE_CURVES: Readonly<Record<string, Curve>> = {
  Misra1a: ([a = 0, b = 0], x) => a * (1 - Math.exp(-b * x)),
  DanWood: ([a = 0, b = 0], x) => a * x ** b,
  Lanczos3: ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0], x) =>
    a * Math.exp(-b * x) + c * Math.exp(-d * x) + e * Math.exp(-f * x),
  Hahn1: rational,
  MGH09: ([a = 0, b = 0, c = 0, d = 0], x) => (a * (x * x + x * b)) / (x * x + x * c + d),
  Thurber: rational,
  Eckerle4: ([a = 0, b = 0, c = 0], x) => (a / b) * Math.exp(-0.5 * ((x - c) / b) ** 2),
}

interface Readings {
  model: string
  start: number[]
  x: number[]
  y: number[]
}

export const curves = {
  fitNonlinear: call(['fitNonlinear'], ({ model, start, x, y }: Readings) =>
    fitNonlinear({
      model: REFERENCE_CURVES[model] ?? (() => Number.NaN),
      start,
      points: x.map((value, i) => [value, y[i] ?? Number.NaN] as const),
    }),
  ),
}

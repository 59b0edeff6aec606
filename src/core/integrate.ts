// Dormand and Prince's embedded pair of order 5(4) with its dense output (Hairer, Nørsett and Wanner, Solving Ordinary
// Differential Equations I, II.4–II.6). The last stage of a step is the first of the next.
const A21 = 1 / 5
const [A31, A32] = [3 / 40, 9 / 40]
const [A41, A42, A43] = [44 / 45, -56 / 15, 32 / 9]
const [A51, A52, A53, A54] = [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729]
const [A61, A62, A63, A64, A65] = [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656]
const [B1, B3, B4, B5, B6] = [35 / 384, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84]
const [E1, E3, E4, E5, E6, E7] = [
  71 / 57600,
  -71 / 16695,
  71 / 1920,
  -17253 / 339200,
  22 / 525,
  -1 / 40,
]
const [D1, D3, D4] = [
  -12715105075 / 11282082432,
  87487479700 / 32700410799,
  -10690763975 / 1880347072,
]
const [D5, D6, D7] = [701980252875 / 199316789632, -1453857185 / 822651844, 69997945 / 29380423]

/** Writes the derivatives of the state y at time t into `slope`. */
export type Derivatives = (t: number, y: Float64Array, slope: Float64Array) => void

type Row = Float64Array
/** The slopes at the seven stages of a step. */
type Slopes = [Row, Row, Row, Row, Row, Row, Row]

/** Steps through y' = f(t, y): try a step, look inside it, then accept it or try another. */
class Stepper {
  /** the state at the start of the step */
  readonly y: Float64Array
  /** the state at the end of the step just tried */
  readonly end: Float64Array
  private readonly f: Derivatives
  private readonly floor: Float64Array
  private readonly tolerance: number
  private readonly stage: Float64Array
  // the seven slopes of a step, and the three rows that its interpolant adds to its ends
  private readonly slopes: Float64Array[]
  private readonly bends: Float64Array[]
  private step = 0
  private prepared = false

  constructor(
    f: Derivatives,
    t0: number,
    start: readonly number[],
    floor: readonly number[],
    tolerance: number,
  ) {
    const rows = (count: number): Float64Array[] =>
      Array.from({ length: count }, () => new Float64Array(start.length))
    this.f = f
    this.y = Float64Array.from(start)
    this.floor = Float64Array.from(floor)
    this.tolerance = tolerance
    this.end = new Float64Array(start.length)
    this.stage = new Float64Array(start.length)
    this.slopes = rows(7)
    this.bends = rows(3)
    f(t0, this.y, this.slopes[0]!)
  }

  /** Tries a step from t over h; its estimated error in units of what is allowed, so that above 1 it is too long. */
  attempt(t: number, h: number): number {
    const { f, y, end, stage } = this
    const n = y.length
    const [k1, k2, k3, k4, k5, k6, k7] = this.slopes as Slopes
    this.step = h
    this.prepared = false
    for (let i = 0; i < n; i++) stage[i] = y[i]! + h * A21 * k1[i]!
    f(t + h / 5, stage, k2)
    for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (A31 * k1[i]! + A32 * k2[i]!)
    f(t + 0.3 * h, stage, k3)
    for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (A41 * k1[i]! + A42 * k2[i]! + A43 * k3[i]!)
    f(t + 0.8 * h, stage, k4)
    for (let i = 0; i < n; i++)
      stage[i] = y[i]! + h * (A51 * k1[i]! + A52 * k2[i]! + A53 * k3[i]! + A54 * k4[i]!)
    f(t + (8 / 9) * h, stage, k5)
    for (let i = 0; i < n; i++)
      stage[i] =
        y[i]! + h * (A61 * k1[i]! + A62 * k2[i]! + A63 * k3[i]! + A64 * k4[i]! + A65 * k5[i]!)
    f(t + h, stage, k6)
    for (let i = 0; i < n; i++)
      end[i] = y[i]! + h * (B1 * k1[i]! + B3 * k3[i]! + B4 * k4[i]! + B5 * k5[i]! + B6 * k6[i]!)
    f(t + h, end, k7)
    let sum = 0
    for (let i = 0; i < n; i++) {
      const error =
        h * (E1 * k1[i]! + E3 * k3[i]! + E4 * k4[i]! + E5 * k5[i]! + E6 * k6[i]! + E7 * k7[i]!)
      sum += (error / Math.max(Math.abs(y[i]!), Math.abs(end[i]!), this.floor[i]!)) ** 2
    }
    return Math.sqrt(sum / n) / this.tolerance
  }

  /** Writes the state at the share theta (0…1) of the step just tried into `target`. */
  inside(theta: number, target: Float64Array): void {
    if (!this.prepared) this.prepare()
    const { y, end } = this
    const [second, third, fourth] = this.bends as [Float64Array, Float64Array, Float64Array]
    const rest = 1 - theta
    for (let i = 0; i < y.length; i++) {
      const bend = second[i]! + theta * (third[i]! + rest * fourth[i]!)
      target[i] = y[i]! + theta * (end[i]! - y[i]! + rest * bend)
    }
  }

  private prepare(): void {
    const { y, end, step } = this
    const [k1, , k3, k4, k5, k6, k7] = this.slopes as Slopes
    const [second, third, fourth] = this.bends as [Float64Array, Float64Array, Float64Array]
    for (let i = 0; i < y.length; i++) {
      const rise = end[i]! - y[i]!
      second[i] = step * k1[i]! - rise
      third[i] = rise - step * k7[i]! - second[i]!
      fourth[i] =
        step * (D1 * k1[i]! + D3 * k3[i]! + D4 * k4[i]! + D5 * k5[i]! + D6 * k6[i]! + D7 * k7[i]!)
    }
    this.prepared = true
  }

  /** Takes the end of the step just tried as the new start. */
  accept(): void {
    const first = this.slopes[0]!
    const last = this.slopes[6]!
    // One by one: for a handful of numbers a call of set takes longer.
    for (let i = 0; i < this.y.length; i++) {
      this.y[i] = this.end[i]!
      first[i] = last[i]!
    }
  }
}

export type { Stepper }

/** A stepper for y' = f(t, y) from y at t0. An entry may err in a step by `tolerance` times the larger of its size and its entry in `floor`. */
export function stepper(
  f: Derivatives,
  t0: number,
  start: readonly number[],
  floor: readonly number[],
  tolerance: number,
): Stepper {
  return new Stepper(f, t0, start, floor, tolerance)
}

/** The factor by which the next step may be longer (or must be shorter) after a step with this error. */
export function stepFactor(error: number): number {
  return Math.min(5, Math.max(0.2, 0.9 * error ** -0.2))
}

import { nonNegative } from './domain.ts'
import { eigenvalues, type Complex } from './eigen.ts'
import { quadraticRoots } from './quadratic.ts'
import {
  determinant,
  whippleMatrices,
  type Matrix2,
  type WhippleMatrices,
  type WhippleParameters,
} from './whipple.ts'

export { whippleMatrices, type WhippleMatrices, type WhippleParameters } from './whipple.ts'
export type { Complex } from './eigen.ts'

/** M⁻¹ B for 2 × 2 matrices. */
function solve(M: Matrix2, B: Matrix2): Matrix2 {
  const [[a, b], [c, d]] = M
  const [[p, q], [r, s]] = B
  const det = determinant(M)
  return [
    [(d * p - b * r) / det, (d * q - b * s) / det],
    [(a * r - c * p) / det, (a * s - c * q) / det],
  ]
}

function combine(x: number, A: Matrix2, y: number, B: Matrix2): Matrix2 {
  return [
    [x * A[0][0] + y * B[0][0], x * A[0][1] + y * B[0][1]],
    [x * A[1][0] + y * B[1][0], x * A[1][1] + y * B[1][1]],
  ]
}

function stateMatrix(
  { M, C1, K0, K2 }: WhippleMatrices,
  gravity: number,
  speed: number,
): number[][] {
  const v = nonNegative('speed', speed)
  const [k1, k2] = solve(M, combine(-gravity, K0, -v * v, K2))
  const [c1, c2] = solve(M, combine(-v, C1, 0, C1))
  return [
    [0, 0, 1, 0],
    [0, 0, 0, 1],
    [...k1, ...c1],
    [...k2, ...c2],
  ]
}

/**
 * State matrix (4 × 4, over roll, steer, roll rate, steer rate) of the Whipple bicycle at a speed [m/s ≥ 0]; refuses a speed below 0
 * and what `whippleMatrices` refuses. Source: Meijaard et al. 2007.
 */
export function whippleStateMatrix(parameters: WhippleParameters, speed: number): number[][] {
  return stateMatrix(whippleMatrices(parameters), parameters.g, speed)
}

/** As `linearModes`, ready to call for one speed [m/s ≥ 0] after another: the bicycle's matrices are worked out once. */
export function modesBySpeed(parameters: WhippleParameters): (speed: number) => Complex[] {
  const matrices = whippleMatrices(parameters)
  return (speed) => eigenvalues(stateMatrix(matrices, parameters.g, speed))
}

/**
 * The four eigenvalues [1/s, rad/s] of the Whipple bicycle at a speed [m/s ≥ 0], largest real part first; a real part above 0 grows.
 * A bicycle with a rigid rider: no verdict on any motorcycle's stability. Source: Meijaard et al. 2007, table 2.
 */
export function linearModes(parameters: WhippleParameters, speed: number): Complex[] {
  return modesBySpeed(parameters)(speed)
}

/**
 * Coefficients of det(M s² + v C₁ s + g K₀ + v² K₂) = a₄s⁴ + a₃s³ + a₂s² + a₁s + a₀, with u = v²:
 * a₃ = v·third, a₂ = second[0] + u second[1], a₁ = v (first[0] + u first[1]), a₀ = zeroth[0] + u zeroth[1]
 * (K₂'s empty first column leaves no u² in a₀).
 */
function characteristic(parameters: WhippleParameters) {
  const { M, C1, K0, K2 } = whippleMatrices(parameters)
  const G = combine(parameters.g, K0, 0, K0)
  return {
    fourth: determinant(M),
    third: mixed(M, C1),
    second: [mixed(M, G), mixed(M, K2) + determinant(C1)] as const,
    first: [mixed(C1, G), mixed(C1, K2)] as const,
    zeroth: [determinant(G), mixed(G, K2)] as const,
  }
}

/** The part of det(A + B) that is linear in both. */
function mixed(A: Matrix2, B: Matrix2): number {
  return A[0][0] * B[1][1] + B[0][0] * A[1][1] - A[0][1] * B[1][0] - B[0][1] * A[1][0]
}

/**
 * Lowest speed [m/s] at which the weave stops growing: a pair of eigenvalues crosses from a positive to a negative real part. Null if none does.
 * Exact: Hurwitz's a₁a₂a₃ − a₀a₃² − a₄a₁² is v² times a quadratic in v². Source: Meijaard et al. 2007 (the speed); Hurwitz's criterion.
 */
export function weaveSpeed(parameters: WhippleParameters): number | null {
  const { fourth, third, second, first, zeroth } = characteristic(parameters)
  const a = third * first[1] * second[1] - fourth * first[1] ** 2
  const b =
    third * (first[0] * second[1] + first[1] * second[0]) -
    third ** 2 * zeroth[1] -
    2 * fourth * first[0] * first[1]
  const c = third * first[0] * second[0] - third ** 2 * zeroth[0] - fourth * first[0] ** 2
  for (const u of quadraticRoots(a, b, c)) {
    // On the boundary s² = −a₁/a₃; the determinant has the sign of −(real part) where a₃ > 0, so it rises through 0.
    const swings = (first[0] + u * first[1]) / third > 0
    const settles = (2 * a * u + b) * third > 0
    if (u > 0 && swings && settles) return Math.sqrt(u)
  }
  return null
}

/**
 * Speed [m/s] at which the capsize eigenvalue passes 0: det(g K₀ + v² K₂) = 0. Null if it does at no speed above 0. Source: Meijaard et al. 2007.
 */
export function capsizeSpeed(parameters: WhippleParameters): number | null {
  const [constant, slope] = characteristic(parameters).zeroth
  const square = -constant / slope
  return Number.isFinite(square) && square > 0 ? Math.sqrt(square) : null
}

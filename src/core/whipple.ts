import { between, DomainError, finite, nonNegative, positive, record } from './domain.ts'

/** Parameters of a bicycle under the symbols of the paper: SI units, x forward, y right, z down (heights above ground are negative). */
export interface WhippleParameters {
  /** wheelbase [m] */ w: number
  /** trail [m] */ c: number
  /** tilt of the steering axis from the vertical [rad] */ lam: number
  /** gravity [m/s²] */ g: number
  /** rear wheel: radius [m], mass [kg], moments of inertia [kg m²] (its zz equals its xx) */
  rR: number
  mR: number
  IRxx: number
  IRyy: number
  /** rear body and frame with a rigid rider: centre of mass [m], mass [kg], moments and product of inertia [kg m²] */
  xB: number
  zB: number
  mB: number
  IBxx: number
  IBxz: number
  IBzz: number
  /** handlebar and fork */
  xH: number
  zH: number
  mH: number
  IHxx: number
  IHxz: number
  IHzz: number
  /** front wheel */
  rF: number
  mF: number
  IFxx: number
  IFyy: number
  /** the two that never enter the linear equations */
  IByy?: number
  IHyy?: number
}

/** A 2 × 2 matrix over roll and steer. */
export type Matrix2 = [[number, number], [number, number]]

/** Coefficients of M q̈ + v C₁ q̇ + (g K₀ + v² K₂) q = 0, q = (roll, steer): [kg m²], [kg m], [kg m], [kg]. */
export interface WhippleMatrices {
  M: Matrix2
  C1: Matrix2
  K0: Matrix2
  K2: Matrix2
}

const POSITIVE = ['w', 'g', 'rR', 'rF'] as const
const AT_LEAST_0 = [
  'mR',
  'IRxx',
  'IRyy',
  'mB',
  'IBxx',
  'IBzz',
  'mH',
  'IHxx',
  'IHzz',
  'mF',
  'IFxx',
  'IFyy',
] as const
const FINITE = ['c', 'xB', 'zB', 'IBxz', 'xH', 'zH', 'IHxz'] as const

function check(parameters: WhippleParameters): void {
  record('parameters', parameters)
  between('lam', parameters.lam, -Math.PI / 2, Math.PI / 2)
  for (const name of POSITIVE) positive(name, parameters[name])
  for (const name of AT_LEAST_0) nonNegative(name, parameters[name])
  for (const name of FINITE) finite(name, parameters[name])
}

/** The front assembly (bars, fork, front wheel) about the steering axis. */
function frontAssembly(p: WhippleParameters, sin: number, cos: number) {
  const mass = p.mH + p.mF
  if (mass === 0)
    throw new DomainError(
      'mH',
      p.mH,
      'must be above 0 where the front wheel has no mass: something has to steer',
    )
  const x = (p.xH * p.mH + p.w * p.mF) / mass
  const z = (p.zH * p.mH - p.rF * p.mF) / mass
  const Ixx = p.IHxx + p.IFxx + p.mH * (p.zH - z) ** 2 + p.mF * (p.rF + z) ** 2
  const Ixz = p.IHxz - p.mH * (p.xH - x) * (p.zH - z) + p.mF * (p.w - x) * (p.rF + z)
  const Izz = p.IHzz + p.IFxx + p.mH * (p.xH - x) ** 2 + p.mF * (p.w - x) ** 2
  // distance of its centre of mass ahead of the steering axis
  const u = (x - p.w - p.c) * cos - z * sin
  return {
    mu: mass * u,
    Ill: mass * u * u + Ixx * sin * sin + 2 * Ixz * sin * cos + Izz * cos * cos,
    Ilx: -mass * u * z + Ixx * sin + Ixz * cos,
    Ilz: mass * u * x + Ixz * sin + Izz * cos,
  }
}

/** The whole bicycle about the rear contact. */
function whole(p: WhippleParameters) {
  return {
    mx: p.xB * p.mB + p.xH * p.mH + p.w * p.mF,
    mz: -p.rR * p.mR + p.zB * p.mB + p.zH * p.mH - p.rF * p.mF,
    Ixx:
      p.IRxx +
      p.IBxx +
      p.IHxx +
      p.IFxx +
      p.mR * p.rR ** 2 +
      p.mB * p.zB ** 2 +
      p.mH * p.zH ** 2 +
      p.mF * p.rF ** 2,
    Ixz: p.IBxz + p.IHxz - p.mB * p.xB * p.zB - p.mH * p.xH * p.zH + p.mF * p.w * p.rF,
    Izz: p.IRxx + p.IBzz + p.IHzz + p.IFxx + p.mB * p.xB ** 2 + p.mH * p.xH ** 2 + p.mF * p.w ** 2,
  }
}

/**
 * The four coefficient matrices of the linearised Whipple bicycle (rigid, tyres that neither slip nor deform, no suspension, a rigid rider).
 * Takes the parameters in the paper's symbols [SI]; refuses lengths and gravity of 0 or below, negative masses and moments of inertia, and a
 * mass matrix that is not positive definite. Source: Meijaard, Papadopoulos, Ruina and Schwab 2007, Proc. R. Soc. A 463:1955–1982, appendix A.
 */
export function whippleMatrices(parameters: WhippleParameters): WhippleMatrices {
  check(parameters)
  const p = parameters
  const sin = Math.sin(p.lam)
  const cos = Math.cos(p.lam)
  const total = whole(p)
  const front = frontAssembly(p, sin, cos)
  const mu = (p.c / p.w) * cos
  const spinRear = p.IRyy / p.rR
  const spinFront = p.IFyy / p.rF
  const spin = spinRear + spinFront
  const SA = front.mu + mu * total.mx
  const M12 = front.Ilx + mu * total.Ixz
  const gyro = mu * spin + spinFront * cos
  const matrices: WhippleMatrices = {
    M: [
      [total.Ixx, M12],
      [M12, front.Ill + 2 * mu * front.Ilz + mu * mu * total.Izz],
    ],
    C1: [
      [0, gyro + (total.Ixz * cos) / p.w - mu * total.mz],
      [-gyro, (front.Ilz * cos) / p.w + mu * (SA + (total.Izz * cos) / p.w)],
    ],
    K0: [
      [total.mz, -SA],
      [-SA, -SA * sin],
    ],
    K2: [
      [0, ((spin - total.mz) * cos) / p.w],
      [0, ((SA + spinFront * sin) * cos) / p.w],
    ],
  }
  // The inertia in roll is a sum of what was checked to be 0 or above, so the determinant alone tells.
  if (!(determinant(matrices.M) > 0)) {
    throw new DomainError(
      'parameters',
      parameters,
      'must give a positive definite mass matrix: check masses and moments of inertia',
    )
  }
  return matrices
}

/** Determinant of a 2 × 2 matrix. */
export function determinant([[a, b], [c, d]]: Matrix2): number {
  return a * d - b * c
}

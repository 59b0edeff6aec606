import type { WhippleParameters } from '../../core/index.ts'

/**
 * The benchmark bicycle with its rigid rider [SI; x forward, y right, z down], as published. No motorcycle's figures.
 * Source: Meijaard, Papadopoulos, Ruina and Schwab 2007, Proc. R. Soc. A 463:1955–1982, table 1.
 */
export const BENCHMARK_BICYCLE: WhippleParameters = {
  w: 1.02,
  c: 0.08,
  lam: Math.PI / 10,
  g: 9.81,
  rR: 0.3,
  mR: 2,
  IRxx: 0.0603,
  IRyy: 0.12,
  xB: 0.3,
  zB: -0.9,
  mB: 85,
  IBxx: 9.2,
  IBxz: 2.4,
  IByy: 11,
  IBzz: 2.8,
  xH: 0.9,
  zH: -0.7,
  mH: 4,
  IHxx: 0.05892,
  IHxz: -0.00756,
  IHyy: 0.06,
  IHzz: 0.00708,
  rF: 0.35,
  mF: 3,
  IFxx: 0.1405,
  IFyy: 0.28,
}

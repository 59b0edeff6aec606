import { finite } from './domain.ts'

/**
 * Probability that a number of normal distribution, mean 0 and standard deviation 1, is at most z; within 1e-7. Refuses what is not finite.
 * Source: Abramowitz and Stegun, 26.2.17 (from memory).
 */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(finite('z', z)))
  const sum =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  const above = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * sum
  return z < 0 ? above : 1 - above
}

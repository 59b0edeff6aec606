import { nonNegative, positive, record, within } from './domain.ts'
import { bracketedRoot } from './root.ts'
import { betaFraction } from './betaFraction.ts'

/**
 * Probability [0 to 1] that a ratio of two variances of one size is above `ratio` [1], by chance: the tail of Fisher’s F, from the degrees
 * of freedom above and below the line. Refuses a negative ratio and degrees not above 0. Source: Abramowitz and Stegun, 26.6.2.
 */
export function varianceRatioTail(of: { ratio: number; above: number; below: number }): number {
  record('of', of)
  const ratio = nonNegative('ratio', of.ratio)
  const above = positive('above', of.above)
  const below = positive('below', of.below)
  return incompleteBeta(below / 2, above / 2, below / (below + above * ratio))
}

/**
 * The ratio of variances [1] that chance exceeds with a probability [0 to 1, ends left out] only: the inverse of `varianceRatioTail`.
 */
export function varianceRatioLimit(of: { tail: number; above: number; below: number }): number {
  record('of', of)
  const tail = within('tail', of.tail, 1e-12, 1 - 1e-12)
  const excess = (ratio: number): number => varianceRatioTail({ ...of, ratio }) - tail
  let high = 1
  while (excess(high) > 0) high *= 2
  return bracketedRoot(excess, 0, high)
}

/** Regularised incomplete beta function (Abramowitz and Stegun, 26.5.1), by the side on which its fraction settles fast. */
function incompleteBeta(a: number, b: number, x: number): number {
  if (x <= 0) return 0
  if (x >= 1) return 1
  const scale = Math.exp(
    a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b),
  )
  return x < (a + 1) / (a + b + 2)
    ? (scale * betaFraction(x, a, b)) / a
    : 1 - (scale * betaFraction(1 - x, b, a)) / b
}

/** ln Γ(z) for z > 0: Stirling’s series from 10 on (Abramowitz and Stegun, 6.1.41), brought there by Γ(z + 1) = zΓ(z). */
function logGamma(z: number): number {
  if (z < 10) return logGamma(z + 1) - Math.log(z)
  const w = 1 / (z * z)
  const series = 1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w / 1188)))
  return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series / z
}

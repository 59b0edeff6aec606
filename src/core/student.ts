import { between, positive, record, representable } from './domain.ts'
import { bracketedRoot } from './root.ts'
import { betaFraction } from './betaFraction.ts'

/**
 * Factor [1] that widens a standard uncertainty to an interval of the given probability, from the degrees of freedom (infinite: normal).
 * Refuses degrees not above 0 and a probability not between 0 and 1. Source: Student's t; JCGM 100:2008, table G.2.
 */
export function coverageFactor(wanted: { degreesOfFreedom: number; probability: number }): number {
  const { degreesOfFreedom, probability } = record('wanted', wanted)
  const unlimited = degreesOfFreedom === Infinity
  if (!unlimited) positive('degreesOfFreedom', degreesOfFreedom)
  between('probability', probability, 0, 1)
  if (degreesOfFreedom <= MANY) return quantile(degreesOfFreedom, probability)
  // Student's t nears the normal as z + (z³ + z)/(4ν); what is left out is of order 1/ν² (Abramowitz and Stegun, 26.7.5).
  const many = quantile(MANY, probability)
  const normal = many - (many ** 3 + many) / (4 * MANY)
  return unlimited ? normal : normal + (normal ** 3 + normal) / (4 * degreesOfFreedom)
}

const MANY = 1e6

function quantile(degrees: number, probability: number): number {
  const short = (t: number): number => coverage(degrees, t) - probability
  let high = 1
  while (short(high) < 0) high = representable('coverageFactor', high * 2)
  return bracketedRoot(short, 0, high)
}

/** Probability that Student's t lies within ±t, a regularised incomplete beta function (Abramowitz and Stegun, 26.7.1). */
function coverage(degrees: number, t: number): number {
  const inside = (t * t) / (degrees + t * t)
  const outside = degrees / (degrees + t * t)
  const a = degrees / 2
  const scale = Math.exp(a * Math.log(outside) + 0.5 * Math.log(inside)) * inverseBeta(a)
  // The fraction settles fast on one side of the hump only.
  if (inside < 1.5 / (a + 2.5)) return 2 * scale * betaFraction(inside, 0.5, a)
  return 1 - (scale / a) * betaFraction(outside, a, 0.5)
}

/** 1/B(a, ½) = Γ(a + ½)/(Γ(a)√π): a series for large a (Abramowitz and Stegun, 6.1.47), reached by Γ(a + 1) = aΓ(a). */
function inverseBeta(a: number): number {
  if (a < 20) return inverseBeta(a + 1) * (a / (a + 0.5))
  const growth = 0.5 * Math.log(a) - 1 / (8 * a) + 1 / (192 * a ** 3) - 1 / (640 * a ** 5)
  return Math.exp(growth) / Math.sqrt(Math.PI)
}

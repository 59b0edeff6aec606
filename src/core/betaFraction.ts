/** Continued fraction of the incomplete beta function [-] at x [-] in 0 to 1, for a and b [-] above 0 (Abramowitz and Stegun, 26.5.8), by Lentz's method. It settles fast below the hump, where x < (a + 1)/(a + b + 2). */
export function betaFraction(x: number, a: number, b: number): number {
  let c = 1
  let d = 1 / (1 - ((a + b) * x) / (a + 1))
  let result = d
  for (let m = 1; m < 10000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / (1 + even * d)
    c = 1 + even / c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    result *= d * c
    d = 1 / (1 + odd * d)
    c = 1 + odd / c
    result *= d * c
    if (Math.abs(d * c - 1) < 1e-15) break
  }
  return result
}

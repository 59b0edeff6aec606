/**
 * Where a continuous function crosses 0 between two ends at which its signs differ, found without derivatives.
 * Inverse quadratic steps where they are safe, halving where they are not. Source: Chandrupatla, Advances in Engineering Software 28 (1997) 145–149.
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  fLow = f(low),
  fHigh = f(high),
): number {
  if (fLow === 0) return low
  if (fHigh === 0) return high
  let a = high
  let b = low
  let fa = fHigh
  let fb = fLow
  let step = 0.5
  // 200 halvings are far more than a number has digits.
  for (let i = 0; i < 200; i++) {
    const x = a + step * (b - a)
    const fx = f(x)
    let c = a
    let fc = fa
    if (fx > 0 !== fa > 0) {
      c = b
      fc = fb
      b = a
      fb = fa
    }
    a = x
    fa = fx
    const best = Math.abs(fa) < Math.abs(fb) ? a : b
    const smallest = (2 * Number.EPSILON * Math.abs(best) + 1e-300) / Math.abs(b - a)
    if (fa === 0 || smallest > 0.5) return best
    step = Math.min(1 - smallest, Math.max(smallest, safeStep(a, fa, b, fb, c, fc)))
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b
}

function safeStep(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const xi = (a - b) / (c - b)
  const phi = (fa - fb) / (fc - fb)
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5
  return (
    (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
  )
}

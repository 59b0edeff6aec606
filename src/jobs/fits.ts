/* Whether what was measured is what was worked out. */

/** A length with the half-width of its ± [same unit]. */
export interface Within {
  value: number
  within: number
}

export type Fit = 'fits' | 'more' | 'less'

/** The ± of a difference: the two added in squares, as for errors that know nothing of each other (JCGM 100, 5.1.2). */
export const jointWithin = (a: Within, b: Within): number => Math.hypot(a.within, b.within)

/** Whether a measured value agrees with a predicted one within both their ±. */
export function fitOf(measured: Within, predicted: Within): Fit {
  const off = measured.value - predicted.value
  if (Math.abs(off) <= jointWithin(measured, predicted)) return 'fits'
  return off > 0 ? 'more' : 'less'
}

/** What a change of unit and a difference of two readings leave of two values that are one, as a share of the larger, or of 1 mm where both are smaller. */
const ROUNDING = 1e-9
const SMALL = 1e-3

/** Whether a value [SI] is really above another, and not by rounding: 35 mm of 140 mm is 25 %, and not less. */
export const exceeds = (value: number, other: number): boolean =>
  value - other > ROUNDING * Math.max(SMALL, Math.abs(value), Math.abs(other))

import { round } from './state.ts'

/** A stretch of a length, drawn enlarged: a finger can set a millimetre on it, and what is drawn of it fits a phone's stage. */
export interface Stretch {
  /** its ends [m] */
  low: number
  high: number
  /** viewBox units per metre */
  scale: number
  /** whether a length lies on it [m] */
  holds(length: number): boolean
}

/** A stretch turns to the next after so many metres, like a page, and stands still while a length moves within it. */
const TURN = 0.06
/** 1.8 units a millimetre: 1.6 px of a phone's stage. */
const SCALE = 1800

/** The stretch of a length about a place on it [m], `long` from end to end [m]. */
export function stretchAbout(place: number, long = 0.1): Stretch {
  const low = TURN * Math.floor(place / TURN + 1e-9) - (long - TURN) / 2
  const high = low + long
  return { low, high, scale: SCALE, holds: (length) => length >= low && length <= high }
}

/** Between the lines of a stretch's ruler [m]. */
export const RULED = 0.01

/** Where the lines of its ruler are [m]. */
export function ruledIn({ low, high }: Stretch): number[] {
  const first = Math.ceil(low / RULED - 1e-9)
  const last = Math.floor(high / RULED + 1e-9)
  return Array.from({ length: last - first + 1 }, (_, index) => round((first + index) * RULED))
}

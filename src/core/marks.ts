import { nonNegative, record } from './domain.ts'
import { shareOf } from './sag.ts'

/**
 * Change [m] between two marks of the same kind [m], whether friction alone could have made it (`frictionBand` [m]), and with the travel [m]
 * the share of it. Refuses lengths below 0 and a change above the travel. Source: two settled readings differ by up to the band with nothing changed.
 */
export function compareMarks(marks: {
  before: number
  after: number
  frictionBand: number
  travel?: number
}): {
  change: number
  share?: number
  withinBand: boolean
} {
  const { before, after, frictionBand, travel } = record('marks', marks)
  const change = nonNegative('after', after) - nonNegative('before', before)
  return {
    change,
    ...shareOf('change', change, travel),
    withinBand: Math.abs(change) <= nonNegative('frictionBand', frictionBand),
  }
}

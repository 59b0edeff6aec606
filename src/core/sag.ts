import { DomainError, finite, nonNegative, positive, record, representable } from './domain.ts'

/**
 * Sag [m] and friction band [m] from three lengths of exposed tube [m]: hanging, settled after pushing down, settled after lifting up; with the
 * travel [m], the share of it. Refuses readings in the wrong order and a sag above the travel.
 * Source: common practice for the readings; the mean cancels friction that is equal both ways.
 */
export function sagFromMarks(marks: {
  extended: number
  settledDown: number
  settledUp: number
  travel?: number
}): {
  sag: number
  frictionBand: number
  share?: number
} {
  const { extended, settledDown, settledUp, travel } = record('marks', marks)
  finite('extended', extended)
  finite('settledUp', settledUp)
  nonNegative('settledDown', settledDown)
  if (settledUp < settledDown)
    throw new DomainError(
      'settledUp',
      settledUp,
      'must not be below the reading after pushing down',
    )
  if (extended < settledUp)
    throw new DomainError('extended', extended, 'must not be below the settled readings')
  const sag = extended - (settledDown + settledUp) / 2
  return {
    sag: representable('sag', sag),
    frictionBand: settledUp - settledDown,
    ...shareOf('sag', sag, travel),
  }
}

/** A length [m] as a share of a travel [m], or nothing without one; refuses a length above the travel. */
export function shareOf(
  parameter: string,
  length: number,
  travel: number | undefined,
): { share?: number } {
  if (travel == null) return {}
  const share = length / positive('travel', travel)
  if (Math.abs(share) > 1)
    throw new DomainError(
      'travel',
      travel,
      `must not be below the ${parameter}, ${Math.abs(length)} m`,
    )
  return { share: representable('share', share) }
}

import { DomainError, finite, list, nonNegative, representable } from './domain.ts'

/** A result with its standard uncertainty, and what each input adds to that: the uncertainty is the root of the sum of their squares. */
export interface Propagated {
  value: number
  uncertainty: number
  contributions: number[]
}

// A hundredth of the uncertainty: small enough to be a slope, large enough to stand clear of rounding.
const STEP = 0.01

/**
 * Carries standard uncertainties of independent inputs through a measurement function, to first order with numeric central derivatives.
 * Units are the caller's. Refuses lists of unequal length, uncertainties below 0 and a function that gives no finite value nearby.
 * Source: JCGM 100:2008, 5.1.2 and 5.1.3.
 */
export function propagate(
  measure: (values: number[]) => number,
  values: readonly number[],
  standardUncertainties: readonly number[],
): Propagated {
  list('values', values).forEach((value) => finite('values', value))
  if (list('standardUncertainties', standardUncertainties).length !== values.length) {
    throw new DomainError(
      'standardUncertainties',
      standardUncertainties,
      'must hold one entry for each value',
    )
  }
  const at = (index: number, shift: number): number => {
    const moved = [...values]
    moved[index]! += shift
    return finite('measure', measure(moved))
  }
  const contributions = standardUncertainties.map((uncertainty, index) => {
    if (nonNegative('standardUncertainties', uncertainty) === 0) return 0
    // An uncertainty far below the value would vanish in its rounding.
    const step = Math.max(STEP * uncertainty, 1e-9 * Math.abs(values[index]!))
    return Math.abs(((at(index, step) - at(index, -step)) / (2 * step)) * uncertainty)
  })
  return {
    value: finite('measure', measure([...values])),
    uncertainty: representable('uncertainty', Math.hypot(...contributions)),
    contributions,
  }
}

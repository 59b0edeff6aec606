import { DomainError, finite, list, nonNegative, positive, record, wholeNumber } from './domain.ts'
import { coverageFactor } from './student.ts'
import { varianceRatioLimit } from './fisher.ts'

/**
 * Index of the value that lies further from the others than their own spread explains, or null: Grubbs’ test, two-sided, by Student’s t of
 * each value against the rest. `chance` [0 to 1] is how often it may name one of values that are all alike. Values in any one unit.
 * Refuses fewer than three. Source: Grubbs, Technometrics 11 (1969) 1 (from memory).
 */
export function farValue(of: { values: readonly number[]; chance: number }): number | null {
  record('of', of)
  const values = list('values', of.values).map((value) => finite('values', value))
  const count = values.length
  if (count < 3) throw new DomainError('values', values, 'must hold at least three')
  const mean = values.reduce((sum, value) => sum + value, 0) / count
  const far = values.reduce(
    (worst, value, index) =>
      Math.abs(value - mean) > Math.abs(values[worst]! - mean) ? index : worst,
    0,
  )
  const rest = values.filter((_, index) => index !== far)
  const centre = rest.reduce((sum, value) => sum + value, 0) / rest.length
  const spread = Math.sqrt(
    rest.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (rest.length - 1),
  )
  const limit = coverageFactor({
    degreesOfFreedom: count - 2,
    probability: 1 - positive('chance', of.chance) / count,
  })
  const away = Math.abs(values[far]! - centre)
  return away > limit * spread * Math.sqrt(1 + 1 / (count - 1)) ? far : null
}

/**
 * Index of the variance that is larger than the others by more than chance, or null: Cochran’s test. Variances [unit²] with equal degrees of
 * freedom; `chance` [0 to 1] as in `farValue`. Refuses fewer than two. Source: Cochran 1941; ISO 5725-2 (from memory).
 */
export function wideVariance(of: {
  variances: readonly number[]
  degreesOfFreedom: number
  chance: number
}): number | null {
  record('of', of)
  const variances = list('variances', of.variances).map((each) => nonNegative('variances', each))
  const count = variances.length
  if (count < 2) throw new DomainError('variances', variances, 'must hold at least two')
  const degrees = wholeNumber('degreesOfFreedom', of.degreesOfFreedom, 1)
  const sum = variances.reduce((all, each) => all + each, 0)
  if (sum === 0) return null
  const widest = variances.indexOf(Math.max(...variances))
  const ratio = varianceRatioLimit({
    tail: positive('chance', of.chance) / count,
    above: degrees,
    below: degrees * (count - 1),
  })
  return variances[widest]! / sum > ratio / (ratio + count - 1) ? widest : null
}

/**
 * Index of the group whose mean lies above every other group’s by more than chance, or null: Student’s t between the largest mean and the
 * next, with the groups’ pooled variance, for as many pairs as there are. Values in any one unit; `chance` [0 to 1] as in `farValue`.
 * Refuses fewer than two groups and groups of fewer than two values. Source: JCGM 100:2008, H.5 (pooled variance); Bonferroni’s bound.
 */
export function largestMean(of: {
  groups: readonly (readonly number[])[]
  chance: number
}): number | null {
  record('of', of)
  const groups = list('groups', of.groups)
  if (groups.length < 2 || groups.some((group) => group.length < 2))
    throw new DomainError('groups', groups, 'must hold at least two groups of at least two values')
  const means = groups.map((group) => {
    const sum = group.reduce((all, value) => all + finite('groups', value), 0)
    return sum / group.length
  })
  const degreesOfFreedom = groups.reduce((sum, group) => sum + group.length - 1, 0)
  const squares = groups.map((group, index) =>
    group.reduce((sum, value) => sum + (value - means[index]!) ** 2, 0),
  )
  const variance = squares.reduce((sum, each) => sum + each, 0) / degreesOfFreedom
  const [first, next] = means.map((_, index) => index).sort((a, b) => means[b]! - means[a]!)
  const pairs = (groups.length * (groups.length - 1)) / 2
  const limit =
    coverageFactor({ degreesOfFreedom, probability: 1 - positive('chance', of.chance) / pairs }) *
    Math.sqrt(variance * (1 / groups[first!]!.length + 1 / groups[next!]!.length))
  return means[first!]! - means[next!]! > limit ? first! : null
}

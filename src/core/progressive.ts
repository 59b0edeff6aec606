import { DomainError, nonNegative } from './domain.ts'
import { type DataPoint, fitThroughOrigin, readings } from './regression.ts'
import type { CoilGroup } from './spring.ts'

/**
 * A spring for a measured curve: its coil groups, the deflection [m] at which the softer group closes (null with one rate), the standard deviation
 * of a reading about it [N] (null without readings to spare), and the chance that one rate would scatter as well (null when not tested).
 */
export interface ProgressiveFit {
  spring: CoilGroup[]
  kink: number | null
  residualDeviation: number | null
  pValue: number | null
}

// The usual 5 %: common practice, no physical reason.
const SIGNIFICANCE = 0.05

interface Bend {
  soft: number
  stiff: number
  kink: number
  residuals: number
}

/**
 * The best two-group spring for points [deflection in m, force in N] that start from no force at no deflection; or one rate, when an F test
 * (3 parameters against 1) finds no reason for two. Refuses what `fitThroughOrigin` refuses, deflections below 0 and forces that do not rise.
 * Source: Hudson, Journal of the American Statistical Association 61 (1966) 1097–1129, for the join; Draper and Smith, Applied Regression Analysis, for the test.
 */
export function fitProgressive(points: readonly DataPoint[]): ProgressiveFit {
  const sorted = [...readings(points, 1)].sort((a, b) => a[0] - b[0])
  nonNegative('points', sorted[0]![0])
  const line = fitThroughOrigin(sorted)
  if (!(line.slope > 0))
    throw new DomainError('points', points, 'must show a force that rises with deflection')
  const straight = line.residualSumOfSquares
  const one: ProgressiveFit = {
    spring: [{ rate: line.slope }],
    kink: null,
    residualDeviation: deviation(straight, sorted.length - 1),
    pValue: null,
  }
  const spare = sorted.length - 3
  const bend = spare > 0 ? bestBend(sorted) : null
  if (bend === null) return one
  // What rounding alone leaves over is no scatter: comparing two such remainders would test nothing.
  const rounding = 1e-24 * sorted.reduce((sum, [, force]) => sum + force * force, 0)
  if (straight <= rounding) return one
  const pValue = chance(straight, Math.max(bend.residuals, rounding), spare)
  if (pValue >= SIGNIFICANCE) return { ...one, pValue }
  return {
    spring: groupsOf(bend),
    kink: bend.kink,
    residualDeviation: deviation(bend.residuals, spare),
    pValue,
  }
}

function deviation(residuals: number, spare: number): number | null {
  return spare > 0 ? Math.sqrt(residuals / spare) : null
}

// The F distribution with 2 degrees above has this tail in closed form: (1 + 2F/ν)^(−ν/2).
function chance(straight: number, bent: number, spare: number): number {
  const f = Math.max(0, (straight - bent) / 2) / (bent / spare)
  return (1 + (2 * f) / spare) ** (-spare / 2)
}

// With both groups working the compliances add: 1/soft = 1/first + 1/stiff; the first closes under the force at the kink.
function groupsOf({ soft, stiff, kink }: Bend): CoilGroup[] {
  const first = 1 / (1 / soft - 1 / stiff)
  return [{ rate: first, closes: (soft * kink) / first }, { rate: stiff }]
}

// Between two neighbouring points the best kink is where two free lines meet, if they meet there; otherwise it is at a point. Where they meet elsewhere is
// a kink like any other, and does no harm.
function bestBend(points: readonly DataPoint[]): Bend | null {
  let best: Bend | null = null
  const consider = (kink: number): void => {
    const bend = bendAt(points, kink)
    if (bend && (best === null || bend.residuals < best.residuals)) best = bend
  }
  for (const i of points.keys()) {
    consider(points[i]![0])
    consider(meetingOf(points.slice(0, i + 1), points.slice(i + 1)))
  }
  return best
}

/** Where the best line through the origin for the first points meets the best free line for the rest; no number where there is none. */
function meetingOf(first: readonly DataPoint[], rest: readonly DataPoint[]): number {
  const soft = ratio(first, 0, 0)
  const x = rest.reduce((sum, point) => sum + point[0], 0) / rest.length
  const y = rest.reduce((sum, point) => sum + point[1], 0) / rest.length
  const stiff = ratio(rest, x, y)
  return (stiff * x - y) / (stiff - soft)
}

function ratio(points: readonly DataPoint[], x: number, y: number): number {
  const sxx = points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0)
  return points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0) / sxx
}

/** The best stiffening pair of slopes with the kink where it is given: least squares on x and max(0, x − kink); null if there is none. */
function bendAt(points: readonly DataPoint[], kink: number): Bend | null {
  let [xx, xu, uu, xy, uy] = [0, 0, 0, 0, 0]
  for (const [x, y] of points) {
    const u = Math.max(0, x - kink)
    xx += x * x
    xu += x * u
    uu += u * u
    xy += x * y
    uy += u * y
  }
  const determinant = xx * uu - xu * xu
  const soft = (uu * xy - xu * uy) / determinant
  const stiff = soft + (xx * uy - xu * xy) / determinant
  // Without two slopes to find, they come out as no numbers.
  if (!(kink > 0 && soft > 0 && stiff > soft)) return null
  const residuals = points.reduce(
    (sum, [x, y]) => sum + (y - soft * x - (stiff - soft) * Math.max(0, x - kink)) ** 2,
    0,
  )
  return { soft, stiff, kink, residuals }
}

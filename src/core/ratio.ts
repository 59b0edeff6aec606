import { DomainError, finite, list, positive, record } from './domain.ts'

/** Shock stroke per unit of wheel travel [1]: a straight line in travel (slope per m), or points [travel in m, ratio] joined by straight lines. */
export type MotionRatio =
  | { initial: number; slope?: number }
  | { table: readonly (readonly [travel: number, ratio: number])[] }

/** A motion ratio as straight pieces: from `travels[i]` [m] it starts at `ratios[i]` and changes by `slopes[i]` per metre; `strokes` [m] so far. */
export interface RatioCurve {
  travels: number[]
  ratios: number[]
  slopes: number[]
  strokes: number[]
}

/** The straight pieces from 0 to the full travel [m]; refuses a ratio that is not above 0 there, and a table that does not cover it. */
export function ratioCurve(ratio: MotionRatio, travel: number): RatioCurve {
  record('motionRatio', ratio)
  return 'table' in ratio && ratio.table != null
    ? tableCurve(ratio.table, travel)
    : lineCurve(ratio as { initial: number; slope?: number }, travel)
}

function lineCurve(
  { initial, slope = 0 }: { initial: number; slope?: number },
  travel: number,
): RatioCurve {
  positive('motionRatio.initial', initial)
  if (!(initial + finite('motionRatio.slope', slope) * travel > 0)) {
    throw new DomainError(
      'motionRatio.slope',
      slope,
      'must keep the ratio above 0 over the whole travel',
    )
  }
  return { travels: [0], ratios: [initial], slopes: [slope], strokes: [0] }
}

function tableCurve(table: readonly (readonly [number, number])[], travel: number): RatioCurve {
  const points = list('motionRatio.table', table, 2).map((point) => {
    list('motionRatio.table', point, 2)
    return { x: finite('motionRatio.table', point[0]), m: positive('motionRatio.table', point[1]) }
  })
  // Outside its points a table says nothing: a guess there would shift every stroke. Rounding of the last point is let pass.
  if (points[0]!.x > 0 || points.at(-1)!.x < travel * (1 - 1e-9)) {
    throw new DomainError(
      'motionRatio.table',
      table,
      `must reach from 0 to the full travel, ${travel} m`,
    )
  }
  const curve: RatioCurve = { travels: [], ratios: [], slopes: [], strokes: [] }
  for (let i = 0; i + 1 < points.length; i++) addPiece(curve, points[i]!, points[i + 1]!)
  return curve
}

function addPiece(
  curve: RatioCurve,
  from: { x: number; m: number },
  to: { x: number; m: number },
): void {
  if (!(to.x > from.x)) throw new DomainError('motionRatio.table', to.x, 'must have rising travels')
  const slope = (to.m - from.m) / (to.x - from.x)
  if (to.x <= 0) return
  const last = curve.travels.length - 1
  // The stroke counts from full extension, wherever the table begins.
  curve.strokes.push(last < 0 ? 0 : strokeAt(curve, from.x))
  const start = Math.max(0, from.x)
  curve.travels.push(start)
  curve.ratios.push(from.m + slope * (start - from.x))
  curve.slopes.push(slope)
}

/** Index of the piece that holds a travel [m]; at a joint, the piece to its right. */
export function ratioPiece(curve: RatioCurve, x: number): number {
  let piece = curve.travels.length - 1
  while (piece > 0 && curve.travels[piece]! > x) piece--
  return piece
}

/** Motion ratio [1] at a travel [m]. */
export function ratioAt(curve: RatioCurve, x: number): number {
  const piece = ratioPiece(curve, x)
  return curve.ratios[piece]! + curve.slopes[piece]! * (x - curve.travels[piece]!)
}

/** Shock stroke [m] used at a travel [m], the integral of the ratio. */
export function strokeAt(curve: RatioCurve, x: number): number {
  const piece = ratioPiece(curve, x)
  const past = x - curve.travels[piece]!
  return curve.strokes[piece]! + past * (curve.ratios[piece]! + (curve.slopes[piece]! * past) / 2)
}

/** Travel [m] at which a stroke [m] is used, the inverse of `strokeAt`. */
export function travelAtStroke(curve: RatioCurve, stroke: number): number {
  let piece = curve.travels.length - 1
  while (piece > 0 && curve.strokes[piece]! > stroke) piece--
  const past = stroke - curve.strokes[piece]!
  const start = curve.ratios[piece]!
  // The root of a quadratic, written so that a slope of 0 needs no case of its own.
  return (
    curve.travels[piece]! +
    (2 * past) / (start + Math.sqrt(start * start + 2 * curve.slopes[piece]! * past))
  )
}

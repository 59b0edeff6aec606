import {
  DomainError,
  finite,
  list,
  nonNegative,
  positive,
  record,
  representable,
} from './domain.ts'

/** One length of coils in a spring: its rate [N/m], and how far it deflects before its coils touch [m] (absent: never). */
export interface CoilGroup {
  rate: number
  closes?: number
}

/**
 * A stack as straight pieces: from `deflections[i]` [m] at `forces[i]` [N] the rate is `rates[i]` [N/m].
 * `limit` [m] is the deflection at coil bind, or infinite. Built once, so that a search need not sort groups again.
 */
export interface SpringCurve {
  deflections: number[]
  forces: number[]
  rates: number[]
  limit: number
}

/** The straight pieces of a stack of coil groups in series; refuses a rate that is not above 0 or a group that closes below 0. */
export function springCurve(groups: readonly CoilGroup[]): SpringCurve {
  const open = list('spring', groups).map((group) => ({
    rate: positive('rate', record('spring', group).rate),
    closes: group.closes == null ? Infinity : nonNegative('closes', group.closes),
  }))
  const limit = open.length === 0 ? Infinity : open.reduce((sum, group) => sum + group.closes, 0)
  const curve: SpringCurve = { deflections: [0], forces: [0], rates: [], limit }
  // A group leaves the series when its coils touch: the lowest closing force first.
  open.sort((a, b) => a.rate * a.closes - b.rate * b.closes)
  open.forEach((closing, first) => {
    const piece = curve.rates.length
    const from = curve.forces[piece]
    const to = closing.rate * closing.closes
    // Groups that never close share the last piece, which ends nowhere; groups that close together share one piece.
    if (from === undefined || to <= from) return
    const rate =
      first === open.length - 1
        ? closing.rate
        : 1 / open.slice(first).reduce((sum, group) => sum + 1 / group.rate, 0)
    curve.rates.push(representable('rate', rate))
    if (to === Infinity) return
    curve.deflections.push(curve.deflections[piece]! + (to - from) / rate)
    curve.forces.push(to)
  })
  // Every coil touches at the last joint: no piece follows it.
  if (curve.rates.length === 0) curve.rates.push(0)
  return curve
}

/** Index of the piece that holds a deflection of 0 or above [m]; at a joint, the piece to its right. */
function pieceAt(curve: SpringCurve, deflection: number): number {
  let piece = curve.rates.length - 1
  while (curve.deflections[piece]! > deflection) piece--
  return piece
}

/** Force [N] of a curve at a deflection [m] that is known to be short of coil bind. */
export function curveForce(curve: SpringCurve, deflection: number): number {
  if (deflection <= 0) return 0
  const piece = pieceAt(curve, deflection)
  return curve.forces[piece]! + curve.rates[piece]! * (deflection - curve.deflections[piece]!)
}

/** Slope [N/m] of a curve to the right of a deflection [m] that is known to be short of coil bind. */
export function curveRate(curve: SpringCurve, deflection: number): number {
  return deflection < 0 ? 0 : curve.rates[pieceAt(curve, deflection)]!
}

/** Energy [J] stored in a curve at a deflection [m] that is known to be short of coil bind. */
export function curveEnergy(curve: SpringCurve, deflection: number): number {
  let energy = 0
  for (let piece = 0; piece < curve.rates.length; piece++) {
    const from = curve.deflections[piece]!
    if (deflection <= from) break
    const span = Math.min(deflection, curve.deflections[piece + 1] ?? Infinity) - from
    energy += span * (curve.forces[piece]! + (curve.rates[piece]! * span) / 2)
  }
  return energy
}

/** Refuses a deflection past coil bind, and hands back the deflection. Rounding in a sum of lengths is let pass. */
export function beforeCoilBind(curve: SpringCurve, parameter: string, deflection: number): number {
  if (deflection > curve.limit * (1 + 1e-12)) {
    throw new DomainError(
      parameter,
      deflection,
      `must not press the spring past coil bind, ${curve.limit} m`,
    )
  }
  return deflection
}

function curveReaching(groups: readonly CoilGroup[], deflection: number): SpringCurve {
  const curve = springCurve(groups)
  beforeCoilBind(curve, 'deflection', finite('deflection', deflection))
  return curve
}

/**
 * Force [N] of coil groups in series at a deflection [m]; 0 at or below 0, for a coil spring cannot pull, and 0 for an empty stack.
 * Refuses a deflection past coil bind. Source: deflection(F) = Σ min(F/kᵢ, closesᵢ), Hooke's law for springs in series.
 */
export function springForce(groups: readonly CoilGroup[], deflection: number): number {
  return representable('force', curveForce(curveReaching(groups, deflection), deflection))
}

/**
 * Slope [N/m] of the force to the right of a deflection [m]; at coil bind, where none exists to the right, the slope before it.
 * Refuses a deflection past coil bind. Source: as `springForce`.
 */
export function springRate(groups: readonly CoilGroup[], deflection: number): number {
  return curveRate(curveReaching(groups, deflection), deflection)
}

/** Energy [J] stored at a deflection [m], the integral of `springForce`. Refuses a deflection past coil bind. */
export function springEnergy(groups: readonly CoilGroup[], deflection: number): number {
  return representable('energy', curveEnergy(curveReaching(groups, deflection), deflection))
}

/** Deflection [m] under a force [N], no further than coil bind. Refuses a force below 0, or any force on an empty stack. */
export function springDeflection(groups: readonly CoilGroup[], force: number): number {
  springCurve(groups)
  if (nonNegative('force', force) === 0) return 0
  if (groups.length === 0)
    throw new DomainError('force', force, 'must be 0 on a stack without a spring')
  return representable(
    'deflection',
    groups.reduce((sum, { rate, closes }) => sum + Math.min(force / rate, closes ?? Infinity), 0),
  )
}

/** Deflection [m] at which every coil of the stack touches, or null if it never does. */
export function springLimit(groups: readonly CoilGroup[]): number | null {
  const { limit } = springCurve(groups)
  return Number.isFinite(limit) ? limit : null
}

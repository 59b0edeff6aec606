import { blankMatrix, columnLength, type Matrix } from './qr.ts'

/** What is left over at some parameters: one number a reading, or null where the parameters make no sense. */
export type LeftOver = (parameters: readonly number[]) => ArrayLike<number> | null

// The step that balances rounding against what four points leave out of a function that changes over its own size.
const FIRST_STEP = Number.EPSILON ** 0.2
// Two points against four: up to this share of a slope the step fits the curve, and four points leave out about the square of the share.
const TOO_CURVED = 1e-5
const WANTED = 1e-6
const TRIES = 12

/**
 * A finder of slopes by differences of four points, central where both sides make sense, else on one side. It remembers a step for each parameter and fits
 * it to the curve that it met, so that the second look is better than the first. `fine` false: of two points, in half the time, for curves that bend little
 * over the sizes. Null where no step finds finite values.
 * Source: Taylor series; Abramowitz and Stegun, table 25.2 (from memory).
 */
export function slopeFinder(
  leftOver: LeftOver,
  sizes: readonly number[],
  fine = true,
): (at: readonly number[], here: ArrayLike<number>) => Matrix | null {
  const shares = sizes.map(() => ({ share: FIRST_STEP, kept: false }))
  return (at, here) => {
    const slopes = blankMatrix(here.length, at.length)
    const found = shares.every((step, j) =>
      column(
        { leftOver, at, here, slopes, j, fine, size: Math.max(sizes[j]!, Math.abs(at[j]!)) },
        step,
      ),
    )
    return found ? slopes : null
  }
}

interface Column {
  leftOver: LeftOver
  at: readonly number[]
  here: ArrayLike<number>
  slopes: Matrix
  j: number
  size: number
  fine: boolean
}

/** Writes one column of slopes. A step too long for the curve is shortened; where that helps little, a corner or rounding is what bends, and it is kept. */
function column(place: Column, step: { share: number; kept: boolean }): boolean {
  let before = Infinity
  for (let tries = 0; tries < TRIES; tries++) {
    const curved = differences(place, step.share * place.size)
    if (curved === null) {
      step.share /= 8
    } else if (curved <= TOO_CURVED || step.kept) {
      return true
    } else if (curved > before / 4) {
      step.share *= 10
      step.kept = true
    } else {
      before = curved
      step.share *= Math.max(0.1, Math.sqrt(WANTED / curved))
    }
  }
  return false
}

/** The share of the slope by which fewer points differ, or null where neither side makes sense. */
function differences(place: Column, step: number): number | null {
  return (
    (place.fine ? central(place, step) : straight(place, step)) ??
    oneSided(place, step) ??
    oneSided(place, -step)
  )
}

function central({ leftOver, at, slopes, j }: Column, step: number): number | null {
  const [near, before, far, beyond] = [1, -1, 2, -2].map((times) =>
    leftOver(moved(at, j, times * step)),
  )
  if (!near || !before || !far || !beyond) return null
  const curve = blankMatrix(slopes.rows, 1)
  for (let i = 0; i < slopes.rows; i++) {
    const two = (near[i]! - before[i]!) / (2 * step)
    const wide = (far[i]! - beyond[i]!) / (4 * step)
    slopes.entries[i * slopes.columns + j] = two + (two - wide) / 3
    curve.entries[i] = (two - wide) / 3
  }
  return shareOfSlope(curve, slopes, j)
}

function straight({ leftOver, at, slopes, j }: Column, step: number): number | null {
  const ahead = leftOver(moved(at, j, step))
  const behind = ahead && leftOver(moved(at, j, -step))
  if (!ahead || !behind) return null
  for (let i = 0; i < slopes.rows; i++)
    slopes.entries[i * slopes.columns + j] = (ahead[i]! - behind[i]!) / (2 * step)
  return 0
}

function oneSided({ leftOver, at, here, slopes, j }: Column, step: number): number | null {
  const [one, two, three] = [1, 2, 3].map((times) => leftOver(moved(at, j, times * step)))
  if (!one || !two || !three) return null
  const curve = blankMatrix(slopes.rows, 1)
  for (let i = 0; i < slopes.rows; i++) {
    slopes.entries[i * slopes.columns + j] =
      (-11 * here[i]! + 18 * one[i]! - 9 * two[i]! + 2 * three[i]!) / (6 * step)
    curve.entries[i] = (-here[i]! + 3 * one[i]! - 3 * two[i]! + three[i]!) / (3 * step)
  }
  return shareOfSlope(curve, slopes, j)
}

function moved(at: readonly number[], j: number, by: number): number[] {
  const parameters = [...at]
  parameters[j]! += by
  return parameters
}

function shareOfSlope(curve: Matrix, slopes: Matrix, j: number): number {
  const slope = columnLength(slopes, j)
  return slope > 0 ? columnLength(curve, 0) / slope : 0
}

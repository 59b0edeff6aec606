import type { Bike, PointMass } from './bike.ts'
import { isBikeParameter, leastOf, type Ridden, withFigures } from './bikeParameters.ts'
import { chassis } from './chassis.ts'
import { DomainError, list, record, wholeNumber } from './domain.ts'
import type { BikeFit } from './fitBike.ts'
import { forkCurve } from './fork.ts'
import { normalStream, randomStream } from './random.ts'
import { rearCurve } from './rear.ts'

/** A bike as it may be, and who rides it (null: nobody was fitted with it). */
export interface DrawnBike extends Bike {
  rider: PointMass | null
}

/** What of a fit a draw needs. */
export type Drawable = Pick<BikeFit, 'bike' | 'rider' | 'parameters' | 'values' | 'covariance'>

/**
 * `n` bikes drawn from a fit, with its rider, so that the spread of anything worked out from them is the uncertainty of that: the figures vary together as
 * the fit's covariance says, by normal distributions. A figure that physically cannot be (friction, mass or rate below 0, a spring bound before it moves)
 * is drawn anew. The same seed gives the same bikes, and more of them begin with the same ones. Refuses an `n` below 1 and a seed below 0 or not whole.
 * Source: propagation of distributions, JCGM 101:2008 and, for figures that vary together, JCGM 102:2011 (both from memory).
 */
export function sampleBike(fit: Drawable, n: number, seed: number): DrawnBike[] {
  wholeNumber('n', n, 1)
  const { names, means, root } = drawFrom(record('fit', fit))
  const normal = normalStream(randomStream(wholeNumber('seed', seed)))
  const ridden: Ridden = { bike: fit.bike, rider: fit.rider }
  const draw = (): DrawnBike | null => {
    const deviates = names.map(normal)
    const values = root.map((row, i) =>
      row.reduce((sum, factor, k) => sum + factor * deviates[k]!, means[i]!),
    )
    return built(ridden, names, values)
  }
  return Array.from({ length: n }, () => drawnAnew(draw))
}

// Even at the edge of what can be, every second draw is good; a fit of which none is says nothing.
const TRIES = 1000

function drawnAnew(draw: () => DrawnBike | null): DrawnBike {
  for (let tries = 0; tries < TRIES; tries++) {
    const bike = draw()
    if (bike) return bike
  }
  throw new DomainError('fit', TRIES, 'must hold figures of which a bike can be built')
}

function built(
  ridden: Ridden,
  names: readonly string[],
  values: readonly number[],
): DrawnBike | null {
  if (names.some((name, j) => isBikeParameter(name) && values[j]! < leastOf(name))) return null
  const { bike, rider } = withFigures(ridden, names, values)
  try {
    forkCurve(bike.fork)
    rearCurve(bike.rear)
    chassis(bike.geometry)
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
  return { ...bike, rider }
}

/** The figures of the bike alone, with a square root of their covariance. */
function drawFrom({ parameters, values, covariance }: Drawable): {
  names: string[]
  means: number[]
  root: number[][]
} {
  const kept = list('fit.parameters', parameters).flatMap((name, j) =>
    isBikeParameter(name) ? [j] : [],
  )
  const names = kept.map((j) => parameters[j]!)
  return {
    names,
    means: names.map((name) => record(`fit.values.${name}`, values[name]!).value),
    root: squareRoot(kept.map((i) => kept.map((j) => list('fit.covariance', covariance)[i]![j]!))),
  }
}

/** The triangle that gives a covariance when multiplied by its transpose. Source: Cholesky, as any book of linear algebra has it. */
function squareRoot(covariance: readonly (readonly number[])[]): number[][] {
  const root = covariance.map((row) => row.map(() => 0))
  covariance.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      let left = row[j]!
      for (let k = 0; k < j; k++) left -= root[i]![k]! * root[j]![k]!
      if (i !== j) root[i]![j] = root[j]![j]! > 0 ? left / root[j]![j]! : 0
      // Rounding may leave a figure that hangs on the others with less than nothing of its own.
      else root[i]![i] = Math.sqrt(Math.max(0, left))
    }
  })
  return root
}

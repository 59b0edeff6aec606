import { DomainError, finite, nonNegative, positive, record, representable } from './domain.ts'
import { type Fork, forkCurve } from './fork.ts'
import { gasForce } from './gas.ts'

/** Two sags and the forces that made them: exposed tube [m], forces of the pair along the axis [N], standard uncertainties, accuracy wanted [1]. */
export interface SpringReadings {
  extended: number
  staticReading: number
  riderReading: number
  staticForce: number
  riderForce: number
  uncertainty: { reading: number; force: number }
  wanted?: number
  fork?: Fork
}

/** Rate [N/m] and preload [m] of the pair with standard uncertainties; with a fork, the same without its gas (null: gas explains all force). */
export interface SpringEstimate {
  rate: number
  preload: number
  rateUncertainty: number
  preloadUncertainty: number
  correlation: number | null
  conclusive: boolean
  springRate?: number
  springPreload?: number | null
}

/**
 * Rate and preload of a fork from two readings, with first-order uncertainties from five independent readings, the extended one shared by both
 * sags. Conclusive when twice the rate's uncertainty is at most `wanted` of the rate. With `fork`, its gas at rest is taken out.
 * Correlation is null when nothing is uncertain. Refuses readings or forces in the wrong order. Source: JCGM 100:2008, 5.1.2 and F.1.2.
 */
export function estimateSpring(readings: SpringReadings): SpringEstimate {
  const {
    extended,
    staticReading,
    riderReading,
    staticForce,
    riderForce,
    uncertainty,
    wanted = 0.1,
    fork,
  } = record('readings', readings)
  inOrder(readings)
  const deeper = staticReading - riderReading
  const rate = representable('rate', (riderForce - staticForce) / deeper)
  const preload = representable('preload', staticForce / rate - (extended - staticReading))
  const spread = spreads(rate, deeper, staticForce / (riderForce - staticForce), uncertainty)
  return {
    rate,
    preload,
    ...spread,
    conclusive: 2 * spread.rateUncertainty <= positive('wanted', wanted) * rate,
    ...(fork == null ? {} : withoutGas(readings, fork)),
  }
}

function inOrder({
  extended,
  staticReading,
  riderReading,
  staticForce,
  riderForce,
}: SpringReadings): void {
  nonNegative('riderReading', riderReading)
  if (finite('staticReading', staticReading) <= riderReading) {
    throw new DomainError(
      'staticReading',
      staticReading,
      'must be above the reading with the rider',
    )
  }
  if (finite('extended', extended) < staticReading)
    throw new DomainError('extended', extended, 'must not be below the reading without the rider')
  nonNegative('staticForce', staticForce)
  if (finite('riderForce', riderForce) <= staticForce)
    throw new DomainError('riderForce', riderForce, 'must be above the force without the rider')
}

/** Standard uncertainties and correlation; `share` is the static force over the force that the rider adds. */
function spreads(
  rate: number,
  deeper: number,
  share: number,
  uncertainty: { reading: number; force: number },
): Pick<SpringEstimate, 'rateUncertainty' | 'preloadUncertainty' | 'correlation'> {
  const reading = nonNegative('uncertainty.reading', record('uncertainty', uncertainty).reading)
  const force = nonNegative('uncertainty.force', uncertainty.force)
  // Sensitivities [rate, preload] to: static force, rider force, extended, static reading, rider reading.
  const effects = [
    [-force / deeper, (force * (1 + share)) / rate],
    [force / deeper, (-force * share) / rate],
    [0, -reading],
    [(-reading * rate) / deeper, reading * (1 + share)],
    [(reading * rate) / deeper, -reading * share],
  ] as const
  const rateUncertainty = representable(
    'rateUncertainty',
    Math.hypot(...effects.map(([onRate]) => onRate)),
  )
  const preloadUncertainty = representable(
    'preloadUncertainty',
    Math.hypot(...effects.map(([, onPreload]) => onPreload)),
  )
  const covariance = effects.reduce((sum, [onRate, onPreload]) => sum + onRate * onPreload, 0)
  const product = rateUncertainty * preloadUncertainty
  return {
    rateUncertainty,
    preloadUncertainty,
    correlation: product > 0 ? covariance / product : null,
  }
}

function withoutGas(
  readings: SpringReadings,
  fork: Fork,
): Pick<SpringEstimate, 'springRate' | 'springPreload'> {
  forkCurve(fork)
  const gasAt = (reading: number): number =>
    fork.legs.reduce(
      (sum, { gas }) => sum + (gas ? gasForce(gas, fork.travel, readings.extended - reading) : 0),
      0,
    )
  const staticSpring = readings.staticForce - gasAt(readings.staticReading)
  const riderSpring = readings.riderForce - gasAt(readings.riderReading)
  const springRate = representable(
    'springRate',
    (riderSpring - staticSpring) / (readings.staticReading - readings.riderReading),
  )
  const sag = readings.extended - readings.staticReading
  return { springRate, springPreload: springRate > 0 ? staticSpring / springRate - sag : null }
}

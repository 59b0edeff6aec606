import { finite, representable, wholeNumber } from './domain.ts'

/**
 * Evenly spaced places from `from` to `to` (any one unit) for drawing a curve: n steps, so n + 1 places. The first is `from` and the last is `to` to
 * the last digit, and none lies beyond them: a function that ends at `to` can be asked at every place. Runs downwards where `to` is below `from`.
 * Refuses ends that are not finite or too far apart for a number, and an n that is not a whole number of at least 1.
 */
export function sample(from: number, to: number, n: number): number[] {
  const span = representable('to', finite('to', to) - finite('from', from))
  const steps = wholeNumber('n', n, 1)
  const places = [from]
  for (let step = 1; step < steps; step++) places.push(from + span * (step / steps))
  places.push(to)
  return places
}

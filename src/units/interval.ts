/** A result known only within bounds [SI]. `value` is the estimate of what was measured; what hangs on an input that is not known has none. */
export interface Interval {
  low: number
  high: number
  value?: number
}

/** The range of what hangs on something that is not known: it has ends and no middle. */
export interface Span {
  low: number
  high: number
  value?: never
}

/** Whether a result is an interval. */
export const isInterval = (value: unknown): value is Interval =>
  typeof value === 'object' && value !== null && 'low' in value

/** The number itself, or an interval's estimate (its midpoint where it has none: for a drawing, never for words); null where there is no number. */
export function middle(value: unknown): number | null {
  if (typeof value === 'number') return value
  return isInterval(value) ? (value.value ?? (value.low + value.high) / 2) : null
}

/** The number itself, or the estimate of what was measured; null where there is none, and where the result is a range of what is not known. */
export function estimate(value: number | Interval | Span | null | undefined): number | null {
  return typeof value === 'number' ? value : (value?.value ?? null)
}

/** Both ends of a result; a number is its own ends. */
export function ends(value: unknown): readonly [number, number] | null {
  if (typeof value === 'number') return [value, value]
  return isInterval(value) ? [value.low, value.high] : null
}

/** Whether a result is a number, or a range that has one: what there is to be said. */
export const exists = (value: unknown): value is number | Interval =>
  typeof value === 'number' || isInterval(value)

/** A value with its sign turned. */
export const negated = (value: number | Interval): number | Interval => mapped(value, (x) => -x)

/** The largest size that a value may have. */
export const largest = (value: number | Interval): number =>
  Math.max(...(ends(value) ?? [0]).map(Math.abs))

/** One value over another, each at both its ends: wider than the truth where the two move together, never narrower. The second must keep its sign. */
export function quotient(one: number | Interval, other: number | Interval): number | Interval {
  if (typeof one === 'number' && typeof other === 'number') return one / other
  const all = (ends(one) ?? []).flatMap((above) =>
    (ends(other) ?? []).map((below) => above / below),
  )
  return { low: Math.min(...all), high: Math.max(...all) }
}

/** The size of a value without its sign. */
export function sizeOf(value: number | Interval): number | Interval {
  if (typeof value === 'number') return Math.abs(value)
  const least =
    value.low <= 0 && value.high >= 0 ? 0 : Math.min(Math.abs(value.low), Math.abs(value.high))
  return { low: least, high: largest(value) }
}

/** A value taken through a function that only rises or only falls. */
export function mapped(
  value: number | Interval,
  through: (x: number) => number,
): number | Interval {
  if (typeof value === 'number') return through(value)
  const [one, other] = [through(value.low), through(value.high)]
  return { low: Math.min(one, other), high: Math.max(one, other) }
}

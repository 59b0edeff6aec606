import type { Cell, Interval, OutputValue } from './define.ts'

/** Whether a result is an interval. */
export const isInterval = (value: unknown): value is Interval => typeof value === 'object' && value !== null && 'low' in value

/** The number itself, or an interval's middle estimate (its midpoint where it has none); null where there is no number. */
export function middle(value: OutputValue | undefined): number | null {
  if (typeof value === 'number') return value
  return isInterval(value) ? (value.value ?? (value.low + value.high) / 2) : null
}

/** Both ends of a result; a number is its own ends. */
export function ends(value: Cell | undefined): readonly [number, number] | null {
  if (typeof value === 'number') return [value, value]
  return isInterval(value) ? [value.low, value.high] : null
}

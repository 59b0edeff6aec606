import { useEffect, useState } from 'preact/hooks'

/** A value that follows `value` once it has stood still for a while [ms]: what nobody watches need not move with a slider. */
export function useSettled<T>(value: T, start: T, pause: number): T {
  const [settled, setSettled] = useState(start)
  useEffect(() => {
    const later = setTimeout(() => setSettled(value), pause)
    return () => clearTimeout(later)
  }, [value])
  return settled
}

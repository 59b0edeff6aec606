import { useEffect, useRef, useState } from 'preact/hooks'

/** A value that follows `value` once it has stood still for `pause` [ms]: what nobody watches need not move with a slider. One timer waits as often as needed, since setting one at every move costs too. */
export function useSettled<T>(value: T, start: T, pause: number): T {
  const [settled, setSettled] = useState(start)
  const latest = useRef({ value: start, since: 0, timer: 0 })
  useEffect(() => {
    const last = latest.current
    if (Object.is(last.value, value)) return
    last.value = value
    last.since = performance.now()
    const look = (): void => {
      const left = last.since + pause - performance.now()
      last.timer = left > 0 ? window.setTimeout(look, left) : 0
      if (left <= 0) setSettled(() => last.value)
    }
    if (last.timer === 0) last.timer = window.setTimeout(look, pause)
  }, [value])
  useEffect(() => () => clearTimeout(latest.current.timer), [])
  return settled
}

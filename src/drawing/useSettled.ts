import { useEffect, useRef, useState } from 'preact/hooks'

interface Options<T> {
  start: T
  /** how long the value stands still [ms] */
  pause: number
  /** a change after a pause is followed at once, when its frame has been painted: only a run of changes waits for its end */
  firstAtOnce?: boolean
}

/** A value that follows `value` once it has stood still: what nobody watches need not move with a slider. One timer waits as often as needed, since setting one at every move costs too. */
export function useSettled<T>(value: T, { start, pause, firstAtOnce = false }: Options<T>): T {
  const [settled, setSettled] = useState(start)
  const latest = useRef({ value: start, since: -Infinity, timer: 0 })
  useEffect(() => {
    const last = latest.current
    if (Object.is(last.value, value)) return
    const now = performance.now()
    const still = now - last.since > pause
    last.value = value
    last.since = now
    const follow = (): void => setSettled(() => last.value)
    const look = (): void => {
      const left = last.since + pause - performance.now()
      last.timer = left > 0 ? window.setTimeout(look, left) : 0
      if (left <= 0) follow()
    }
    if (still && firstAtOnce) follow()
    else if (last.timer === 0) last.timer = window.setTimeout(look, pause)
  }, [value, pause, firstAtOnce])
  useEffect(() => () => clearTimeout(latest.current.timer), [])
  return settled
}

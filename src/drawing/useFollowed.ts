import type { RefObject } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { useSettled } from './useSettled.ts'

/** How long values stand still before what is out of sight follows them [ms]. */
export const PAUSE = 100

function useInSight(place: RefObject<Element>): boolean {
  const [seen, setSeen] = useState(true)
  useEffect(() => {
    if (place.current === null) return
    const observer = new IntersectionObserver((entries) => setSeen(entries.at(-1)!.isIntersecting))
    observer.observe(place.current)
    return () => observer.disconnect()
  }, [place])
  return seen
}

/** What to draw from at a place of the page: `value` while the place is in sight, else `value` once it has stood still, since drawing what nobody sees costs as much. */
export function useFollowed<T>(value: T, place: RefObject<Element>): T {
  const seen = useInSight(place)
  const settled = useSettled(value, { start: value, pause: PAUSE, firstAtOnce: true })
  return seen ? value : settled
}

import { useEffect, useRef, useState } from 'preact/hooks'
import type { Given } from '../../src/machine/given.ts'

/** How long a change takes when it is played [ms]. */
const TAKES = 1200
/** How long the state before stays where the reader wants no motion [ms]. */
const STILL = 900

const prefersStills = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches

/** The numbers that differ between two states. */
const movedIn = (from: Given, to: Given): string[] =>
  Object.keys(to).filter(
    (id) => typeof from[id] === 'number' && typeof to[id] === 'number' && from[id] !== to[id],
  )

function between(from: Given, to: Given, share: number): Given {
  const numbers = movedIn(from, to).map((id) => {
    const [low, high] = [from[id] as number, to[id] as number]
    return [id, low + (high - low) * share]
  })
  return { ...to, ...Object.fromEntries(numbers) }
}

/** Plays the change from the state before to this one, once: each frame is a state of its own. Gives the state of the frame, or null at rest. */
export function usePlay(
  from: Given | null,
  to: Given,
): { playing: Given | null; play: (() => void) | null } {
  const [playing, setPlaying] = useState<Given | null>(null)
  const cancel = useRef<() => void>(() => undefined)
  const stop = (): void => {
    cancel.current()
    setPlaying(null)
  }
  // a hand on a control ends it
  useEffect(() => stop, [to])
  const start = (origin: Given): void => {
    stop()
    if (prefersStills()) {
      setPlaying(between(origin, to, 0))
      const timer = setTimeout(stop, STILL)
      cancel.current = () => clearTimeout(timer)
      return
    }
    const began = performance.now()
    let frame = 0
    cancel.current = () => cancelAnimationFrame(frame)
    const next = (now: number): void => {
      const share = Math.min(1, Math.max(0, (now - began) / TAKES))
      if (share === 1) return setPlaying(null)
      setPlaying(between(origin, to, share * share * (3 - 2 * share)))
      frame = requestAnimationFrame(next)
    }
    frame = requestAnimationFrame(next)
  }
  const able = from !== null && movedIn(from, to).length > 0
  return { playing, play: able ? () => start(from) : null }
}

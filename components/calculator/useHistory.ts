import { useRef, useState } from 'preact/hooks'

/** Changes of one control that follow each other within this time [ms] are one step, as are all of one drag. */
const TOGETHER = 700
const STEPS = 100

/** A value whose changes can be taken back. */
export interface History<T> {
  value: T
  /** changes the value; changes with the same key in one gesture are one step */
  change(update: (now: T) => T, key: string): void
  /** puts another value in its place, without a step */
  replace(value: T): void
  /** the hand has let go: what follows is a step of its own */
  endGesture(): void
  undo: (() => void) | null
  redo: (() => void) | null
}

interface Steps<T> {
  past: readonly T[]
  value: T
  future: readonly T[]
}

/** Keeps a value and the values that it had. */
export function useHistory<T>(start: T): History<T> {
  const [steps, setSteps] = useState<Steps<T>>({ past: [], value: start, future: [] })
  const last = useRef({ key: '', at: 0, held: false })
  const move = (from: 'past' | 'future'): (() => void) | null =>
    steps[from].length === 0
      ? null
      : () => {
          last.current.key = ''
          setSteps(({ past, value, future }) =>
            from === 'past'
              ? { past: past.slice(0, -1), value: past.at(-1)!, future: [value, ...future] }
              : { past: [...past, value], value: future[0]!, future: future.slice(1) },
          )
        }
  return {
    value: steps.value,
    change(update, key) {
      const now = performance.now()
      const { key: before, at, held } = last.current
      const same = key !== '' && key === before && (held || now - at < TOGETHER)
      last.current = { key, at: now, held: true }
      setSteps(({ past, value }) => ({
        past: same ? past : [...past, value].slice(-STEPS),
        value: update(value),
        future: [],
      }))
    },
    replace: (value) => setSteps({ past: [], value, future: [] }),
    endGesture() {
      last.current.held = false
    },
    undo: move('past'),
    redo: move('future'),
  }
}
